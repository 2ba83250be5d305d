// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.Method;
import twinfeed.engineering.cable.CableSegment;

/** The cable from the consumer unit to the heater. What depends on the whole run is absent while one segment lacks it. */
public final class CableRun {
    private final List<RunSegment> segments;
    private final double deviceFactor;
    private final @Nullable List<CableSegment> placed;
    private final @Nullable List<CableSegment> resistive;

    CableRun(List<RunSegment> segments, double deviceFactor) {
        this.segments = List.copyOf(segments);
        this.deviceFactor = deviceFactor;
        this.placed = all(this::placed);
        this.resistive = all(RunSegment::resistive);
    }

    private @Nullable CableSegment placed(RunSegment segment) {
        Method method = segment.place().method();
        return method == null ? null : segment.placed(method, deviceFactor);
    }

    private @Nullable List<CableSegment> all(Function<RunSegment, @Nullable CableSegment> map) {
        List<CableSegment> result = new ArrayList<>(segments.size());
        for (RunSegment segment : segments) {
            CableSegment mapped = map.apply(segment);
            if (mapped == null) {
                return null;
            }
            result.add(mapped);
        }
        return result.isEmpty() ? null : List.copyOf(result);
    }

    public List<RunSegment> segments() {
        return segments;
    }

    /** Whether a piece is of an old construction, so that the whole cable is to be renewed. */
    public boolean old() {
        return segments.stream().anyMatch(segment -> segment.state().old());
    }

    /** The names of the pieces that are old. */
    public String oldNames() {
        return String.join(
                ", ",
                segments.stream()
                        .filter(segment -> segment.state().old())
                        .map(RunSegment::name)
                        .toList());
    }

    /** The names of the pieces that are said to have no protective conductor; empty if there are none. */
    public String namesWithoutCpc() {
        return String.join(
                ", ",
                segments.stream()
                        .filter(segment -> segment.state().withoutCpc())
                        .map(RunSegment::name)
                        .toList());
    }

    /** Factor that the protective device puts on the cable. */
    public double deviceFactor() {
        return deviceFactor;
    }

    /** The run with capacities, absent while a size, a method or a factor of one segment is not known. */
    @Nullable
    public List<CableSegment> placed() {
        return placed;
    }

    /** The run as a resistance, absent while a size or a length is not known. */
    @Nullable
    public List<CableSegment> resistive() {
        return resistive;
    }

    /** The whole length, m, absent while one is not known. */
    @Nullable
    public Double lengthM() {
        double sum = 0;
        for (RunSegment segment : segments) {
            if (segment.lengthM() == null) {
                return null;
            }
            sum += segment.lengthM();
        }
        return segments.isEmpty() ? null : Double.valueOf(sum);
    }

    /** R1 + R2 at 20 degC, ohm, absent while a length or a conductor is not known. */
    @Nullable
    public Double coldLoopOhm() {
        double sum = 0;
        for (RunSegment segment : segments) {
            if (segment.lengthM() == null || segment.loopOhmPerM() == null) {
                return null;
            }
            sum += segment.lengthM() * segment.loopOhmPerM();
        }
        return segments.isEmpty() ? null : Double.valueOf(sum);
    }

    /** Cross-section of the thinnest protective conductor, mm2, absent while one is not known. */
    @Nullable
    public RunSegment thinnestCpc() {
        RunSegment thinnest = null;
        for (RunSegment segment : segments) {
            if (segment.cpcMm2() == null) {
                return null;
            }
            if (thinnest == null || segment.cpcMm2() < Objects.requireNonNull(thinnest.cpcMm2())) {
                thinnest = segment;
            }
        }
        return thinnest;
    }

    /** The thickest line conductor that is connected at the end of the run, mm2, absent if not known. */
    @Nullable
    public Double lastSizeMm2() {
        return segments.isEmpty() ? null : segments.get(segments.size() - 1).sizeMm2();
    }

    /** The thinnest line conductor of the run, mm2, absent while one is not known. */
    public @Nullable Double thinnestMm2() {
        Double thinnest = null;
        for (RunSegment segment : segments) {
            Double sizeMm2 = segment.sizeMm2();
            if (sizeMm2 == null) {
                return null;
            }
            thinnest = thinnest == null ? sizeMm2 : Double.valueOf(Math.min(thinnest, sizeMm2));
        }
        return thinnest;
    }

    /** The readings of the run that were not taken: size, length and method of each segment. */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        for (RunSegment segment : segments) {
            if (segment.sizeMm2() == null) {
                missing.add(ReadingPaths.ofSegment(segment.name(), "size"));
            }
            if (segment.lengthM() == null) {
                missing.add(ReadingPaths.ofSegment(segment.name(), "length"));
            }
            if (segment.place().word().isEmpty()) {
                missing.add(ReadingPaths.ofSegment(segment.name(), "method"));
            }
        }
        return segments.isEmpty() ? List.of(ReadingPaths.SEGMENTS) : missing;
    }

    /** The first thing that survey or tables lack for capacities; call it only while {@link #placed()} is absent. */
    public Gap placingGap() {
        for (RunSegment segment : segments) {
            RunSegment.Place place = segment.place();
            if (segment.size() == null) {
                return Gap.of(segment, "size", segment.sizeMm2() == null ? "" : Gap.size(segment));
            }
            if (place.method() == null) {
                return Gap.of(segment, "method", place.word());
            }
            if (segment.tabulatedA(place.method().key()) == null) {
                return Gap.of(segment, "method", Gap.size(segment) + ", " + place.word());
            }
            if (place.ca() == null) {
                return Gap.of(segment, "ambient", segment.name());
            }
            if (place.cg() == null) {
                return Gap.of(segment, "grouped", segment.name());
            }
        }
        return Gap.NO_RUN;
    }

    /** The first thing that survey or tables lack for R1 + R2; call it only while {@link #coldLoopOhm()} is absent. */
    public Gap loopGap() {
        for (RunSegment segment : segments) {
            if (segment.size() == null) {
                return Gap.of(segment, "size", segment.sizeMm2() == null ? "" : Gap.size(segment));
            }
            if (segment.lengthM() == null) {
                return Gap.of(segment, "length", "");
            }
            if (segment.loopOhmPerM() == null) {
                return Gap.of(
                        segment, "cpc", CodeNumbers.number(Objects.requireNonNullElse(segment.cpcMm2(), 0.0)) + " mm²");
            }
        }
        return Gap.NO_RUN;
    }

    /**
     * What is not known about a run.
     *
     * @param path the reading
     * @param what what was read but is in no table; empty if it was not read at all
     */
    public record Gap(String path, String what) {
        public static final Gap NO_RUN = new Gap(ReadingPaths.SEGMENTS, "");

        public static Gap of(RunSegment segment, String reading, String what) {
            return new Gap(ReadingPaths.ofSegment(segment.name(), reading), what);
        }

        public static String size(RunSegment segment) {
            return CodeNumbers.number(Objects.requireNonNullElse(segment.sizeMm2(), 0.0)) + " mm²";
        }
    }
}
