// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
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

/**
 * Asks some checks about one heater in one house again and again while readings move. Where only some of them have moved since the readings as
 * taken, only those calculators are run that read one of them or take from others what has changed; the rest have nothing else to say.
 */
public final class Rejudging {
    private final List<Calculator> calculators;
    private final Set<String> asked;
    private final Set<SharedQuantity> quantities;
    private final Candidate candidate;
    private final Supplier<Preparation> preparation;
    private @Nullable AsTaken asTaken;

    /**
     * What was said of the readings as taken.
     *
     * @param given what each calculator gave to the others
     * @param said what each calculator said
     */
    private record AsTaken(Grid grid, SharedQuantities given, List<List<Finding>> said) {}

    /**
     * Judgements.
     *
     * @param calculators those that answer a check, and those that they depend on
     * @param asked keys of the checks
     */
    Rejudging(List<Calculator> calculators, Set<String> asked, Candidate candidate, Supplier<Preparation> preparation) {
        this.calculators = calculators;
        this.asked = asked;
        this.candidate = candidate;
        this.preparation = preparation;
        this.quantities = calculators.stream()
                .flatMap(calculator -> calculator.descriptor().consumes().stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Takes the readings as they are now for those as taken, from which {@link #moved} starts. */
    public Rejudging fromHere() {
        Preparation taken = preparation.get();
        SharedQuantities given = quantities(taken);
        Session session = taken.sessionOfFigures(calculators, asked);
        List<List<Finding>> said = new ArrayList<>();
        for (int i = 0; i < calculators.size(); i++) {
            said.add(session.answers(i, candidate, given));
        }
        asTaken = new AsTaken(taken.grid(), given, said);
        return this;
    }

    private SharedQuantities quantities(Preparation prepared) {
        return SharedQuantities.consumedOnly(prepared.grid(), quantities);
    }

    /** What is to be said of the readings as they are now, wherever they have moved. */
    public List<Finding> all() {
        return all(preparation.get());
    }

    private List<Finding> all(Preparation now) {
        return now.sessionOfFigures(calculators, asked).findings(candidate, quantities(now));
    }

    /**
     * What is to be said where some readings have moved and all others are as taken.
     *
     * @param reads whether a calculator reads one that has moved
     * @throws IllegalStateException if nobody said from where, see {@link #fromHere}
     */
    public List<Finding> moved(Predicate<CalculatorDescriptor> reads) {
        AsTaken then = asTaken;
        if (then == null) {
            throw new IllegalStateException("no readings to start from");
        }
        Preparation now = preparation.get();
        if (!now.grid().same(then.grid)) {
            return all(now);
        }
        SharedQuantities given = quantities(now);
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < calculators.size(); i++) {
            CalculatorDescriptor calculator = calculators.get(i).descriptor();
            if (reads.test(calculator) || !given.same(then.given, calculator.consumes())) {
                findings.addAll(
                        now.sessionOfFigures(List.of(calculators.get(i)), asked).answers(0, candidate, given));
            } else {
                given.putAgain(then.given, calculator.provides());
                findings.addAll(then.said.get(i));
            }
        }
        return findings;
    }
}
