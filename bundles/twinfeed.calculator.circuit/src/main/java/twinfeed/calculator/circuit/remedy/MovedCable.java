// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.RunSegment;
import twinfeed.calculator.rules.Method;
import twinfeed.model.survey.Confidence;

/** Remedies on the cable that is there: brought into better surroundings. */
final class MovedCable {
    private final CircuitSurvey survey;

    MovedCable(CircuitSurvey survey) {
        this.survey = survey;
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

    /** Whether a fitter can better a piece so. */
    static boolean moves(RunSegment segment, Method.Move move) {
        Method method = segment.place().method();
        return method != null && method.move() == move;
    }

    /** Whether a piece can be brought into better surroundings at all. */
    static boolean canMove(RunSegment segment) {
        return moves(segment, Method.Move.LIFT) || hampered(segment);
    }

    private void moved(Map<String, Remedy> remedies, double ratingA, double deviceFactor) {
        String clipped = survey.rules().text("method.clipped");
        add(
                remedies,
                "lift-out-of-insulation",
                segment -> moves(segment, Method.Move.LIFT) && limits(segment, ratingA, deviceFactor),
                piece -> lift(piece, clipped));
        add(
                remedies,
                "clip-cable",
                segment -> hampered(segment) && limits(segment, ratingA, deviceFactor),
                MovedCable::free);
    }

    /** Whether a clipped piece that can be reached suffers from neighbours or insulation. */
    private static boolean hampered(RunSegment segment) {
        Double cg = segment.place().cg();
        return moves(segment, Method.Move.CLIP)
                && segment.place().confidence() != Confidence.CONCEALED
                && (segment.place().ci() < 1 || (cg != null && cg < 1));
    }

    private static void lift(twinfeed.model.survey.CableSegment piece, String clipped) {
        piece.setMethod(clipped);
        free(piece);
    }

    /** Lays a piece that is run anew clear of what hampers it, where that can be: as one that is there can be lifted or clipped. */
    void layClear(RunSegment surveyed, twinfeed.model.survey.CableSegment piece) {
        if (moves(surveyed, Method.Move.LIFT)) {
            lift(piece, survey.rules().text("method.clipped"));
        } else if (hampered(surveyed)) {
            free(piece);
        }
    }

    /** A piece as it lies once it has been run anew and laid clear; as it is where that cannot be. */
    RunSegment clear(RunSegment segment) {
        RunSegment.Place place = segment.place();
        String word = moves(segment, Method.Move.LIFT) ? survey.rules().text("method.clipped") : place.word();
        Method method = survey.rules().method(word).orElse(null);
        return canMove(segment) && method != null
                ? segment.placed(new RunSegment.Place(word, method, Confidence.SEEN, place.ca(), 1.0, 1, place.hotCa()))
                : segment;
    }

    /** What was moved by hand has been seen. */
    static void free(twinfeed.model.survey.CableSegment piece) {
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
        double lengthM = pieces.stream().mapToDouble(MovedCable::lengthM).sum();
        String names = String.join(", ", pieces.stream().map(RunSegment::name).toList());
        remedies.putIfAbsent(
                code + places,
                new Remedy(
                        code,
                        code,
                        Map.of("segments", names, "length", lengthM),
                        List.of(new Remedy.Item(code, NewCables.metres(lengthM))),
                        false,
                        0,
                        copy -> places.forEach(at -> change.accept(
                                CircuitChanges.circuit(copy).getSegments().get(at)))));
    }

    static double lengthM(RunSegment segment) {
        Double lengthM = segment.lengthM();
        return lengthM == null ? 0 : lengthM;
    }

    /** Whether a piece carries less than a rating, A, by its method or, where nobody saw it, by one that it may really have. */
    boolean limits(RunSegment segment, double ratingA, double deviceFactor) {
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
