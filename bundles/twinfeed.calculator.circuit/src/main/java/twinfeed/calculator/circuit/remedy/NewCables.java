// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
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
import twinfeed.units.text.Phrase;

/**
 * New cables: by the same route, or by another way where no cable carries the heater on this one. Whatever piece can be lifted out of insulation or
 * clipped apart is laid so when the cable is run anew, which is no work beside it.
 */
final class NewCables {
    private static final int MICROMETRE = 6;

    private final CircuitSurvey survey;
    private final MovedCable moved;

    NewCables(CircuitSurvey survey, MovedCable moved) {
        this.survey = survey;
        this.moved = moved;
    }

    /**
     * New cables by the same route.
     *
     * @param same whether one of the present size will do; otherwise it is thicker than the thinnest piece
     */
    List<Remedy> sameRoute(ShowerCase shower, boolean same) {
        Double lengthM = survey.run().lengthM();
        CableSize present = thinnest();
        if (lengthM == null || present == null) {
            return List.of();
        }
        List<Remedy> remedies = new ArrayList<>();
        for (CableSize size : survey.rules().cables().sizes(present.cable())) {
            if (better(size, present, same) && fits(size, shower) && carries(size, shower)) {
                remedies.add(cable(size, lengthM));
            }
        }
        return remedies;
    }

    /**
     * New cables that leave the pieces where no cable of their size carries the heater: these are laid clear of insulation and
     * neighbours by another way.
     *
     * @param ratings of the devices that the heater may have, A; the cable has to carry the smallest
     * @param same whether one of the present size will do
     */
    List<Remedy> elsewhere(ShowerCase shower, List<Double> ratings, boolean same) {
        CableSize present = thinnest();
        if (survey.run().lengthM() == null || present == null || ratings.isEmpty()) {
            return List.of();
        }
        double leastA = Collections.min(ratings);
        List<Remedy> remedies = new ArrayList<>();
        for (CableSize size : survey.rules().cables().sizes(present.cable())) {
            List<Integer> places = better(size, present, same) && fits(size, shower) ? unfit(size, leastA) : List.of();
            if (!places.isEmpty()) {
                remedies.add(elsewhere(size, places));
            }
        }
        return remedies;
    }

    /** The pieces where a cable carries less than a rating, A, and cannot be brought into better surroundings. */
    private List<Integer> unfit(CableSize size, double ratingA) {
        List<RunSegment> segments = survey.run().segments();
        return IntStream.range(0, segments.size())
                .filter(at -> !MovedCable.canMove(segments.get(at))
                        && moved.limits(resized(segments.get(at), size), ratingA, 1))
                .boxed()
                .toList();
    }

    private Remedy elsewhere(CableSize size, List<Integer> places) {
        double longer = survey.rules().number("new.route");
        String clipped = survey.rules().text("method.clipped");
        List<RunSegment> segments = survey.run().segments();
        double lengthM = IntStream.range(0, segments.size())
                .mapToDouble(at -> MovedCable.lengthM(segments.get(at)) * (places.contains(at) ? longer : 1))
                .sum();
        String names = String.join(
                ", ", places.stream().map(at -> segments.get(at).name()).toList());
        String number = CodeNumbers.number(size.sizeMm2());
        BigDecimal metres = metres(lengthM);
        return new Remedy(
                "cable-elsewhere-" + number,
                "cable-elsewhere",
                Map.of("size", number, "length", metres.doubleValue(), "segments", names),
                items(number, metres, true),
                false,
                0,
                copy -> {
                    renew(copy, size.sizeMm2());
                    places.forEach(at -> {
                        twinfeed.model.survey.CableSegment piece =
                                CircuitChanges.circuit(copy).getSegments().get(at);
                        piece.setLength(CircuitChanges.length(piece.getLength().si() * longer));
                        piece.setMethod(clipped);
                        MovedCable.free(piece);
                    });
                });
    }

    private static boolean better(CableSize size, CableSize present, boolean same) {
        return size.sizeMm2() > present.sizeMm2() || (same && size.sizeMm2() == present.sizeMm2());
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

    /** Whether the cable carries the heater everywhere on its route; one that does not is no help with any device. */
    private boolean carries(CableSize size, ShowerCase shower) {
        ShowerLoad load = shower.load();
        for (RunSegment segment : survey.run().segments()) {
            RunSegment laid = moved.clear(resized(segment, size));
            Method method = laid.place().method();
            CableSegment placed = method == null ? null : laid.placed(method, 1);
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
        List<RunSegment> segments = survey.run().segments();
        boolean hidden = segments.stream().anyMatch(NewCables::hidden);
        boolean clear = segments.stream().anyMatch(MovedCable::canMove);
        return new Remedy(
                "cable-" + number,
                "cable",
                Map.of(
                        "size",
                        number,
                        "length",
                        metres.doubleValue(),
                        "route",
                        Phrase.of(clear ? "route.clear" : "route.same"),
                        "forCustomer",
                        Phrase.of(hidden ? "customer.cable.hidden" : "customer.cable.open")),
                items(number, metres, hidden),
                false,
                0,
                copy -> renew(copy, size.sizeMm2()));
    }

    private static List<Remedy.Item> items(String size, BigDecimal metres, boolean makingGood) {
        List<Remedy.Item> items = new ArrayList<>();
        items.add(new Remedy.Item("cable-" + size, metres));
        items.add(new Remedy.Item("task-run-cable", metres));
        if (makingGood) {
            items.add(Remedy.Item.of("making-good", 1));
        }
        return items;
    }

    /** Work inside a wall or along a way that nobody has seen leaves something to make good, but none in a loft. */
    private static boolean hidden(RunSegment segment) {
        return MovedCable.moves(segment, Method.Move.NO)
                || (segment.place().confidence() == Confidence.CONCEALED
                        && !MovedCable.moves(segment, Method.Move.LIFT));
    }

    /** Where nobody can say any more how an old cable lies, the new one is clipped to the surface or lies in masonry. */
    private void renew(Survey copy, double sizeMm2) {
        String clipped = survey.rules().text("method.clipped");
        List<RunSegment> surveyed = survey.run().segments();
        List<twinfeed.model.survey.CableSegment> pieces =
                CircuitChanges.circuit(copy).getSegments();
        for (int at = 0; at < pieces.size(); at++) {
            twinfeed.model.survey.CableSegment segment = pieces.get(at);
            moved.layClear(surveyed.get(at), segment);
            if (segment.isSetOldCable() && segment.getMethod() == null) {
                segment.setMethod(clipped);
            }
            segment.setSize(CircuitChanges.area(sizeMm2));
            segment.setCpc(null);
            segment.setHasCpc(null);
            segment.unsetOldCable();
        }
        CircuitChanges.forgetReadings(CircuitChanges.circuit(copy));
    }

    /** Up to the next decimetre; what a sum of lengths misses by the last binary digit is no length of cable. */
    static BigDecimal metres(double lengthM) {
        return BigDecimal.valueOf(lengthM)
                .setScale(MICROMETRE, RoundingMode.HALF_UP)
                .setScale(1, RoundingMode.CEILING);
    }
}
