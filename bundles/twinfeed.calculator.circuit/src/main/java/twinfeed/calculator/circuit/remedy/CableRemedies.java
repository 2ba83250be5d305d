// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.circuit.survey.RunSegment;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.rules.CableSize;
import twinfeed.calculator.rules.Method;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;

/** Remedies on the cable: a thicker one by the same route, or the present one brought into better surroundings. */
public final class CableRemedies {
    private static final int MICROMETRE = 6;

    private final CircuitSurvey survey;

    CableRemedies(CircuitSurvey survey) {
        this.survey = survey;
    }

    /** New cables that are thicker than the thinnest piece. */
    List<Remedy> thicker(ShowerCase shower) {
        return cables(shower, false);
    }

    /** New cables of the present size and thicker. */
    List<Remedy> renewed(ShowerCase shower) {
        return cables(shower, true);
    }

    private List<Remedy> cables(ShowerCase shower, boolean same) {
        Double lengthM = survey.run().lengthM();
        CableSize present = thinnest();
        if (lengthM == null || present == null) {
            return List.of();
        }
        List<Remedy> remedies = new ArrayList<>();
        for (CableSize size : survey.rules().cables().sizes(present.cable())) {
            boolean better = size.sizeMm2() > present.sizeMm2() || (same && size.sizeMm2() == present.sizeMm2());
            if (better && fits(size, shower) && (canBeMoved() || carries(size, shower))) {
                remedies.add(cable(size, lengthM));
            }
        }
        return remedies;
    }

    private @Nullable CableSize thinnest() {
        CableSize thinnest = null;
        for (RunSegment segment : survey.run().segments()) {
            CableSize size = segment.size();
            if (size == null) {
                return null;
            }
            thinnest = thinnest == null || size.sizeMm2() < thinnest.sizeMm2() ? size : thinnest;
        }
        return thinnest;
    }

    /** An isolator that does not take the cable can be changed, the heater cannot. */
    private boolean fits(CableSize size, ShowerCase shower) {
        Double heaterMm2 = SiValues.mm2(shower.heater().getMaximumConductor());
        return size.sizeMm2() <= survey.rules().number("largest.cable")
                && (heaterMm2 == null || size.sizeMm2() <= heaterMm2);
    }

    private boolean canBeMoved() {
        return survey.run().segments().stream()
                .anyMatch(segment -> moves(segment, Method.Move.LIFT) || moves(segment, Method.Move.CLIP));
    }

    private static boolean moves(RunSegment segment, Method.Move move) {
        Method method = segment.place().method();
        return method != null && method.move() == move;
    }

    /** Whether the cable carries the heater everywhere on its route; one that does not is no help with any device. */
    private boolean carries(CableSize size, ShowerCase shower) {
        ShowerLoad load = shower.load();
        for (RunSegment segment : survey.run().segments()) {
            Method method = segment.place().method();
            CableSegment placed = method == null ? null : resized(segment, size).placed(method, 1);
            if (placed != null && load != null && LimitType.fallsShort(placed.capacityA(), load.designA())) {
                return false;
            }
        }
        return true;
    }

    private static RunSegment resized(RunSegment segment, CableSize size) {
        return new RunSegment(
                segment.name(),
                size.sizeMm2(),
                segment.lengthM(),
                size,
                size.cpcMm2(),
                segment.loopOhmPerM(),
                segment.place(),
                segment.state());
    }

    private Remedy cable(CableSize size, double lengthM) {
        BigDecimal metres = metres(lengthM);
        String number = CodeNumbers.number(size.sizeMm2());
        List<Remedy.Item> items = new ArrayList<>();
        items.add(new Remedy.Item("cable-" + number, metres));
        items.add(new Remedy.Item("task-run-cable", metres));
        if (survey.run().segments().stream().anyMatch(CableRemedies::hidden)) {
            items.add(Remedy.Item.of("making-good", 1));
        }
        return new Remedy(
                "cable-" + number,
                "cable",
                Map.of("size", number, "length", metres.doubleValue()),
                items,
                false,
                0,
                copy -> renew(copy, size.sizeMm2()));
    }

    /** Work inside a wall or along a way that nobody has seen leaves something to make good, but none in a loft. */
    private static boolean hidden(RunSegment segment) {
        return moves(segment, Method.Move.NO)
                || (segment.place().confidence() == Confidence.CONCEALED && !moves(segment, Method.Move.LIFT));
    }

    private static void renew(Survey copy, double sizeMm2) {
        CircuitChanges.circuit(copy).getSegments().forEach(segment -> {
            segment.setSize(CircuitChanges.area(sizeMm2));
            segment.setCpc(null);
            segment.setHasCpc(null);
            segment.unsetOldCable();
        });
        CircuitChanges.forgetReadings(CircuitChanges.circuit(copy));
    }

    /** Up to the next decimetre; what a sum of lengths misses by the last binary digit is no length of cable. */
    private static BigDecimal metres(double lengthM) {
        return BigDecimal.valueOf(lengthM)
                .setScale(MICROMETRE, RoundingMode.HALF_UP)
                .setScale(1, RoundingMode.CEILING);
    }

    /**
     * The pieces that carry less than a device of a rating, A, lifted out of insulation or clipped apart.
     *
     * @param ratingA rating of the present device
     * @param newA ratings of those that may take its place: they limit other pieces, so that the same work is offered for each
     */
    List<Remedy> moved(double ratingA, List<Double> newA) {
        Map<String, Remedy> remedies = new LinkedHashMap<>();
        moved(remedies, ratingA, survey.run().deviceFactor());
        newA.forEach(each -> moved(remedies, each, 1));
        return List.copyOf(remedies.values());
    }

    private void moved(Map<String, Remedy> remedies, double ratingA, double deviceFactor) {
        String clipped = survey.rules().text("method.clipped");
        add(
                remedies,
                "lift-out-of-insulation",
                segment -> moves(segment, Method.Move.LIFT) && limits(segment, ratingA, deviceFactor),
                piece -> {
                    piece.setMethod(clipped);
                    free(piece);
                });
        add(
                remedies,
                "clip-cable",
                segment -> hampered(segment) && limits(segment, ratingA, deviceFactor),
                CableRemedies::free);
    }

    /** Whether a clipped piece that can be reached suffers from neighbours or insulation. */
    private static boolean hampered(RunSegment segment) {
        Double cg = segment.place().cg();
        return moves(segment, Method.Move.CLIP)
                && segment.place().confidence() != Confidence.CONCEALED
                && (segment.place().ci() < 1 || (cg != null && cg < 1));
    }

    /** What was moved by hand has been seen. */
    private static void free(twinfeed.model.survey.CableSegment piece) {
        piece.setInsulated(null);
        piece.setGrouped(1);
        piece.setConfidence(Confidence.SEEN);
    }

    private void add(
            Map<String, Remedy> remedies,
            String code,
            Predicate<RunSegment> movable,
            Consumer<twinfeed.model.survey.CableSegment> change) {
        List<RunSegment> segments = survey.run().segments();
        List<Integer> places = IntStream.range(0, segments.size())
                .filter(at -> movable.test(segments.get(at)) && segments.get(at).lengthM() != null)
                .boxed()
                .toList();
        if (places.isEmpty()) {
            return;
        }
        List<RunSegment> pieces = places.stream().map(segments::get).toList();
        double lengthM = pieces.stream().mapToDouble(CableRemedies::lengthM).sum();
        String names = String.join(", ", pieces.stream().map(RunSegment::name).toList());
        remedies.putIfAbsent(
                code + places,
                new Remedy(
                        code,
                        code,
                        Map.of("segments", names, "length", lengthM),
                        List.of(new Remedy.Item(code, metres(lengthM))),
                        false,
                        0,
                        copy -> places.forEach(at -> change.accept(
                                CircuitChanges.circuit(copy).getSegments().get(at)))));
    }

    private static double lengthM(RunSegment segment) {
        Double lengthM = segment.lengthM();
        return lengthM == null ? 0 : lengthM;
    }

    /** Whether a piece carries less than a rating, A, by its method or, where nobody saw it, by one that it may really have. */
    private boolean limits(RunSegment segment, double ratingA, double deviceFactor) {
        return methods(segment).stream()
                .map(method -> segment.placed(method, deviceFactor))
                .anyMatch(placed -> placed != null && placed.capacityA() < ratingA);
    }

    private List<Method> methods(RunSegment segment) {
        Method method = segment.place().method();
        List<Method> methods = new ArrayList<>();
        if (method != null) {
            methods.add(method);
            if (!segment.place().seen()) {
                method.plausible().forEach(key -> survey.rules().method(key).ifPresent(methods::add));
            }
        }
        return methods;
    }
}
