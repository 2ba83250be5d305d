// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Grid;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.calculator.cache.CalculatorAnswer;
import twinfeed.calculator.cache.CheckMargin;
import twinfeed.calculator.cache.HouseInputs;
import twinfeed.calculator.cache.ReadingPositions;

/**
 * Asks some checks about one heater in one house again and again while readings move. Where only some of them have moved since the readings as
 * taken, only those calculators are run that read one of them or take from others what has changed; the rest have nothing else to say. What was
 * answered before, with the same readings in the same places, is taken from a cache where there is one.
 */
public final class Rejudging {
    private static final double[] AS_TAKEN = {};

    private final List<Calculator> calculators;
    private final Set<String> asked;
    private final Set<SharedQuantity> quantities;
    private final Candidate candidate;
    private final Supplier<Preparation> preparation;
    private final List<AnswerCache.Answers> cached;
    private @Nullable AsTaken asTaken;

    /**
     * What was said of the readings as taken.
     *
     * @param given what each calculator gave to the others
     * @param said what each calculator said
     */
    private record AsTaken(Grid grid, SharedQuantities given, List<List<CheckMargin>> said) {}

    /**
     * Judgements of a house that is now as its readings were taken.
     *
     * @param calculators those that answer a check, and those that they depend on
     * @param asked keys of the checks
     * @param cache keeps answers; absent where nobody asks again
     */
    Rejudging(
            List<Calculator> calculators,
            Set<String> asked,
            Candidate candidate,
            Supplier<Preparation> preparation,
            @Nullable AnswerCache cache) {
        this.calculators = calculators;
        this.asked = asked;
        this.candidate = candidate;
        this.preparation = preparation;
        this.quantities = calculators.stream()
                .flatMap(calculator -> calculator.descriptor().consumes().stream())
                .collect(Collectors.toUnmodifiableSet());
        this.cached =
                cache == null ? List.of() : answers(cache, preparation.get().inputs());
    }

    /** Asks all now, while the readings are as taken, so that later those are passed over that nothing has moved for. */
    public Rejudging fromHere() {
        Preparation taken = preparation.get();
        SharedQuantities given = quantities(taken);
        List<List<CheckMargin>> said = new ArrayList<>();
        for (int i = 0; i < calculators.size(); i++) {
            said.add(answer(i, AS_TAKEN, taken, given));
        }
        asTaken = new AsTaken(taken.grid(), given, said);
        return this;
    }

    private List<AnswerCache.Answers> answers(AnswerCache from, HouseInputs house) {
        return calculators.stream()
                .map(Calculator::descriptor)
                .map(each -> from.answersFor(house.of(each, candidate, asked, quantities)))
                .toList();
    }

    private SharedQuantities quantities(Preparation prepared) {
        return SharedQuantities.consumedOnly(prepared.grid(), quantities);
    }

    /** What is to be said of the readings as they are now, wherever they have moved; nothing is taken from the cache. */
    public List<Finding> all() {
        Preparation now = preparation.get();
        return now.sessionOfFigures(calculators, asked).findings(candidate, quantities(now));
    }

    /**
     * What is to be said where some readings have moved and all others are as taken.
     *
     * @param positions where those readings stand that a calculator reads; 0 for one as taken
     */
    public List<CheckMargin> moved(Function<CalculatorDescriptor, double[]> positions) {
        Preparation now = preparation.get();
        SharedQuantities given = quantities(now);
        AsTaken then = asTaken != null && now.grid().same(asTaken.grid) ? asTaken : null;
        List<CheckMargin> margins = new ArrayList<>();
        for (int i = 0; i < calculators.size(); i++) {
            CalculatorDescriptor calculator = calculators.get(i).descriptor();
            double[] at = positions.apply(calculator);
            if (then != null && isAsTaken(at) && given.same(then.given, calculator.consumes())) {
                given.putAgain(then.given, calculator.provides());
                margins.addAll(then.said.get(i));
            } else {
                margins.addAll(answer(i, at, now, given));
            }
        }
        return margins;
    }

    private static boolean isAsTaken(double[] positions) {
        for (double position : positions) {
            if (position != 0) {
                return false;
            }
        }
        return true;
    }

    /** What one calculator says where its readings stand at some positions. */
    private List<CheckMargin> answer(int number, double[] positions, Preparation now, SharedQuantities given) {
        CalculatorDescriptor calculator = calculators.get(number).descriptor();
        if (cached.isEmpty() || now.isSetAside(calculator)) {
            return run(number, now, given);
        }
        ReadingPositions readings = new ReadingPositions(positions, now.grid(), given, calculator.consumes());
        AnswerCache.Answers known = cached.get(number);
        CalculatorAnswer answer = known.get(readings);
        if (answer == null) {
            List<CheckMargin> margins = run(number, now, given);
            if (margins.stream().noneMatch(margin -> margin.check().equals(Runner.BROKEN.key()))) {
                known.put(readings, new CalculatorAnswer(margins, given.valuesOnly(calculator.provides())));
            }
            return margins;
        }
        given.putAgain(answer.provided(), calculator.provides());
        return answer.margins();
    }

    private List<CheckMargin> run(int number, Preparation now, SharedQuantities given) {
        return now.sessionOfFigures(List.of(calculators.get(number)), asked).answers(0, candidate, given).stream()
                .map(CheckMargin::of)
                .toList();
    }
}
