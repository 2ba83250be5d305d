// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Context;
import twinfeed.calculator.rules.CableSize;
import twinfeed.calculator.rules.Method;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Confidence;

/** Reads the segments of a survey and looks them up in the rule set; defaults are recorded as assumptions. */
public final class CableRunReader {
    /** The usual new cable of a heating circuit, mm2 (common practice). */
    private static final double NEW_MM2 = 10;

    private final Context context;
    private final RuleSet rules;

    CableRunReader(Context context) {
        this.context = context;
        this.rules = context.rules();
    }

    public CableRun read(List<CableSegment> segments, double deviceFactor) {
        List<RunSegment> run = new ArrayList<>(segments.size());
        for (CableSegment segment : segments) {
            run.add(read(segment, run.size() + 1));
        }
        return new CableRun(run, deviceFactor);
    }

    private RunSegment read(CableSegment segment, int number) {
        String name = segment.getName() == null ? String.valueOf(number) : segment.getName();
        boolean old = segment.isSetOldCable();
        Double sizeMm2 = old ? Double.valueOf(newSizeMm2(name)) : SiValues.mm2(segment.getSize());
        CableSize size = sizeMm2 == null
                ? null
                : rules.cables().find(cable(segment), sizeMm2).orElse(null);
        boolean withoutCpc = Boolean.FALSE.equals(segment.getHasCpc());
        Double cpcMm2 = old ? null : SiValues.mm2(segment.getCpc());
        if (cpcMm2 == null && size != null) {
            cpcMm2 = size.cpcMm2();
        }
        Double lengthM = SiValues.of(segment.getLength());
        return new RunSegment(
                name,
                sizeMm2,
                lengthM != null && lengthM < 0 ? null : lengthM,
                size,
                cpcMm2,
                loopOhmPerM(size, cpcMm2),
                place(segment, name),
                new RunSegment.State(old, withoutCpc));
    }

    /** What an old cable will be replaced by: only with it can be said what arrives at a heater. */
    private double newSizeMm2(String name) {
        context.assume("newCable", Map.of("segment", name, "size", CodeNumbers.number(NEW_MM2)));
        return NEW_MM2;
    }

    private String cable(CableSegment segment) {
        return segment.getCable() == null ? rules.cables().first() : segment.getCable();
    }

    private @Nullable Double loopOhmPerM(@Nullable CableSize size, @Nullable Double cpcMm2) {
        if (size == null || cpcMm2 == null) {
            return null;
        }
        OptionalDouble cpc = rules.cables().conductorOhmPerM(cpcMm2);
        return cpc.isPresent() ? Double.valueOf(size.lineOhmPerM() + cpc.getAsDouble()) : null;
    }

    private RunSegment.Place place(CableSegment segment, String name) {
        String unstated = segment.isSetOldCable() ? rules.text("method.clipped") : "";
        String word = segment.getMethod() == null ? unstated : segment.getMethod();
        Method method = rules.method(word).orElse(null);
        double insulatedM =
                segment.getInsulated() == null ? 0 : segment.getInsulated().si();
        return new RunSegment.Place(
                word,
                method,
                segment.isSetConfidence() ? segment.getConfidence() : Confidence.ASSUMED,
                boxed(rules.ambientFactor(ambientC(segment, name))),
                boxed(rules.groupingFactor(layout(segment), circuits(segment, name))),
                rules.insulationFactor(insulatedM),
                hotFactor(segment, method));
    }

    private static @Nullable Double boxed(OptionalDouble value) {
        return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
    }

    private double ambientC(CableSegment segment, String name) {
        if (segment.getAmbient() != null) {
            return segment.getAmbient().si();
        }
        double ambientC = context.parameters().si("ambient");
        context.assumeTabulated("ambient", () -> Map.of("segment", name, "temperature", ambientC));
        return ambientC;
    }

    /**
     * The factor for a hot loft, where the cable lies free in one; where a method puts it at the ceiling under the insulation the room
     * below sets its temperature.
     */
    private @Nullable Double hotFactor(CableSegment segment, @Nullable Method method) {
        boolean free = Boolean.TRUE.equals(segment.getLoft()) && method != null && !method.insulated();
        return free && segment.getAmbient() == null
                ? boxed(rules.ambientFactor(context.parameters().si("loftAmbient")))
                : null;
    }

    private double circuits(CableSegment segment, String name) {
        Integer grouped = segment.getGrouped();
        if (grouped != null) {
            return grouped;
        }
        context.assumeTabulated("alone", () -> Map.of("segment", name));
        return 1;
    }

    /** Bunched is the worse of the two. */
    private static String layout(CableSegment segment) {
        return segment.isSetLayout() ? segment.getLayout().getLiteral() : "bunched";
    }
}
