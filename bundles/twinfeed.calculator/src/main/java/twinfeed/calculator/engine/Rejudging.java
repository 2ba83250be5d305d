// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.SharedQuantities;

/**
 * Judges one heater in one house again and again while readings move. Where only some of them have moved since the readings as taken, only
 * those calculators are run that read one of them or take from others what has changed; the rest have nothing else to say.
 */
public final class Rejudging {
    private final List<Calculator> calculators;
    private final Candidate candidate;
    private final Supplier<Preparation> preparation;
    private final Preparation taken;
    private final SharedQuantities givenThen;
    private final List<List<Finding>> saidThen = new ArrayList<>();

    Rejudging(List<Calculator> calculators, Candidate candidate, Supplier<Preparation> preparation) {
        this.calculators = calculators;
        this.candidate = candidate;
        this.preparation = preparation;
        this.taken = preparation.get();
        this.givenThen = new SharedQuantities(taken.grid());
        Session session = taken.sessionOfFigures(calculators);
        for (int i = 0; i < calculators.size(); i++) {
            saidThen.add(session.answers(i, candidate, givenThen));
        }
    }

    /** What all calculators say of the readings as they are now, wherever they have moved. */
    public List<Finding> all() {
        return preparation.get().sessionOfFigures(calculators).findings(candidate);
    }

    /**
     * What is to be said where some readings have moved and all others are as taken.
     *
     * @param reads whether a calculator reads one that has moved
     */
    public List<Finding> moved(Predicate<CalculatorDescriptor> reads) {
        Preparation now = preparation.get();
        if (!now.grid().same(taken.grid())) {
            return now.sessionOfFigures(calculators).findings(candidate);
        }
        SharedQuantities given = new SharedQuantities(now.grid());
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < calculators.size(); i++) {
            CalculatorDescriptor calculator = calculators.get(i).descriptor();
            if (reads.test(calculator) || !given.same(givenThen, calculator.takes())) {
                findings.addAll(
                        now.sessionOfFigures(List.of(calculators.get(i))).answers(0, candidate, given));
            } else {
                given.giveAgain(givenThen, calculator.gives());
                findings.addAll(saidThen.get(i));
            }
        }
        return findings;
    }
}
