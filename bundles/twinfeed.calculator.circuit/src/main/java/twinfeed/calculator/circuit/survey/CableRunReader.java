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
        Double sizeMm2 = SiValues.mm2(segment.getSize());
        CableSize size = sizeMm2 == null
                ? null
                : rules.cables().find(cable(segment), sizeMm2).orElse(null);
        Double cpcMm2 = SiValues.mm2(segment.getCpc());
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
                place(segment, name));
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
        String word = segment.getMethod() == null ? "" : segment.getMethod();
        Method method = rules.method(word).orElse(null);
        double insulatedM =
                segment.getInsulated() == null ? 0 : segment.getInsulated().si();
        return new RunSegment.Place(
                word,
                method,
                segment.isSetConfidence() ? segment.getConfidence() : Confidence.ASSUMED,
                boxed(rules.ambientFactor(ambientC(segment, name))),
                boxed(rules.groupingFactor(layout(segment), circuits(segment, name))),
                rules.insulationFactor(insulatedM));
    }

    private static @Nullable Double boxed(OptionalDouble value) {
        return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
    }

    private double ambientC(CableSegment segment, String name) {
        if (segment.getAmbient() != null) {
            return segment.getAmbient().si();
        }
        boolean loft = Boolean.TRUE.equals(segment.getLoft());
        double ambientC = context.parameters().si(loft ? "loftAmbient" : "ambient");
        context.assumeTabulated(loft ? "loftAmbient" : "ambient", Map.of("segment", name, "temperature", ambientC));
        return ambientC;
    }

    private double circuits(CableSegment segment, String name) {
        Integer grouped = segment.getGrouped();
        if (grouped != null) {
            return grouped;
        }
        context.assumeTabulated("alone", Map.of("segment", name));
        return 1;
    }

    /** Bunched is the worse of the two. */
    private static String layout(CableSegment segment) {
        return segment.isSetLayout() ? segment.getLayout().getLiteral() : "bunched";
    }
}
