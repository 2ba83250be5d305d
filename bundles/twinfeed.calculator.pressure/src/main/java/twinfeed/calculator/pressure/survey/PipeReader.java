// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Context;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.units.Quantity;
import twinfeed.units.text.Phrase;

/** Maps pipes of the survey to pieces; bores, roughness and loss coefficients that it does not say come from the tables. */
final class PipeReader {
    private static final double MM_PER_M = 1000;

    private static final double LEAST_BORE_M = 0.001;
    private static final double MOST_BORE_M = 1;
    private static final double MOST_K = 1e6;
    private static final int MOST_FITTINGS = 1000;

    private final Context context;
    private final List<String> faults;

    PipeReader(Context context, List<String> faults) {
        this.context = context;
        this.faults = faults;
    }

    /** The pieces; a pipe that cannot be used is left out and named among the faults. */
    List<NamedPipe> read(List<PipeSegment> segments, String path) {
        List<NamedPipe> pieces = new ArrayList<>();
        for (int i = 0; i < segments.size(); i++) {
            PipeSegment segment = segments.get(i);
            String name = segment.getName() == null ? String.valueOf(i + 1) : segment.getName();
            read(segment, name, path + "[" + name + "]").ifPresent(pieces::add);
        }
        return pieces;
    }

    private Optional<NamedPipe> read(PipeSegment segment, String name, String path) {
        PipeMaterial material = segment.getMaterial();
        Double boreM = bore(segment, material, path);
        Double lengthM = si(segment.getLength());
        if (lengthM == null || lengthM < 0 || lengthM > ReadingLimits.MAX_LENGTH_M) {
            faults.add(path + ".length");
            return Optional.empty();
        }
        if (boreM == null) {
            return Optional.empty();
        }
        double roughnessM = roughness(segment, material);
        Optional<List<PipeOrigin.Fitting>> fittings = fittings(segment, path);
        if (roughnessM < 0 || roughnessM > boreM * Pipe.LARGEST_RELATIVE_ROUGHNESS) {
            faults.add(path + ".roughness");
            return Optional.empty();
        }
        double riseM = segment.getRise() == null ? 0 : segment.getRise().si();
        if (Math.abs(riseM) > ReadingLimits.MAX_LENGTH_M) {
            faults.add(path + ".rise");
            return Optional.empty();
        }
        return fittings.map(known -> new NamedPipe(
                name,
                new twinfeed.engineering.pipe.PipeSegment(lengthM, boreM, roughnessM, k(known), riseM),
                new PipeOrigin(path, path + ".rise", known)));
    }

    /** The fittings of a pipe; none where one cannot be used, which is named. */
    private Optional<List<PipeOrigin.Fitting>> fittings(PipeSegment segment, String path) {
        List<PipeOrigin.Fitting> fittings = new ArrayList<>();
        for (Fitting fitting : segment.getFittings()) {
            boolean counted = fitting.getCount() != null;
            int count = counted ? fitting.getCount() : 1;
            Double one = one(fitting);
            if (one == null || one < 0 || one > MOST_K || count < 0 || count > MOST_FITTINGS) {
                faults.add(path + ".fittings");
                return Optional.empty();
            }
            fittings.add(new PipeOrigin.Fitting(
                    count,
                    counted,
                    one,
                    fitting.getK() == null
                            ? "table.fitting[" + fitting.getKind() + "]"
                            : path + ".fittings[" + (fittings.size() + 1) + "].k"));
        }
        return Optional.of(fittings);
    }

    private static double k(List<PipeOrigin.Fitting> fittings) {
        double sum = 0;
        for (PipeOrigin.Fitting fitting : fittings) {
            sum += fitting.count() * fitting.k();
        }
        return sum;
    }

    /** Names a reading that cannot be used. */
    void fault(String path) {
        faults.add(path);
    }

    /** What share of its usual figures a table is taken at: all of them are off alike. */
    private double share(String key) {
        return context.parameters().si(key);
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : Double.valueOf(quantity.si());
    }

    private @Nullable Double bore(PipeSegment segment, PipeMaterial material, String path) {
        Double given = si(segment.getBore());
        if (given == null && segment.getSize() != null) {
            Optional<Double> usual =
                    PipeTables.boreM(material, segment.getSize()).map(bore -> bore * share("table-bores"));
            usual.ifPresent(bore -> context.assumeTabulated(
                    "bore",
                    () -> Map.of(
                            "material", Phrase.of("material." + material.getLiteral()),
                            "size", segment.getSize(),
                            "bore", bore * MM_PER_M)));
            given = usual.orElse(null);
        }
        if (given == null || given < LEAST_BORE_M || given > MOST_BORE_M) {
            faults.add(path + ".bore");
            return null;
        }
        return given;
    }

    private double roughness(PipeSegment segment, PipeMaterial material) {
        if (segment.getRoughness() != null) {
            return segment.getRoughness().si();
        }
        double usual = PipeTables.roughnessM(material) * share("table-roughness");
        context.assumeTabulated(
                "roughness",
                () -> Map.of(
                        "material", Phrase.of("material." + material.getLiteral()), "roughness", usual * MM_PER_M));
        return usual;
    }

    private @Nullable Double one(Fitting fitting) {
        if (fitting.getK() != null) {
            return fitting.getK().si();
        }
        String kind = fitting.getKind() == null ? "" : fitting.getKind();
        Optional<Double> usual = PipeTables.k(kind).map(k -> k * share("table-losses"));
        usual.ifPresent(
                k -> context.assumeTabulated("fitting", () -> Map.of("kind", Phrase.of("fitting." + kind), "k", k)));
        return usual.orElse(null);
    }
}
