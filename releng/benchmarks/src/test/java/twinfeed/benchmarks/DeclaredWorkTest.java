// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.RemedyKind;
import twinfeed.calculator.engine.Runner;

/** Whatever house it is, calculators offer only work of the kinds, and with the price-book codes, that they declare. */
class DeclaredWorkTest {
    private static final int HOUSES = 200;

    @Test
    void allOfferedWorkIsDeclared() {
        List<Calculator> calculators = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(calculators::add);
        List<RemedyKind> declared = calculators.stream()
                .flatMap(calculator -> calculator.descriptor().remedies().stream())
                .toList();
        Runner runner = new Runner(calculators, (mean, spread, month, southern) -> mean);
        Set<String> offered = new TreeSet<>();
        Set<String> strange = new TreeSet<>();
        for (long seed = 0; seed < HOUSES; seed++) {
            RandomHouse house = RandomHouse.of(seed);
            for (Finding finding :
                    runner.judge(house.survey(), house.candidate()).findings()) {
                for (Remedy work : finding.remedies()) {
                    offered.add(work.kind());
                    if (declared.stream().noneMatch(kind -> kind.declares(work))) {
                        strange.add(work.kind() + " " + work.items());
                    }
                }
            }
        }
        assertTrue(offered.size() >= 15, "kinds: " + offered);
        assertEquals(Set.of(), strange);
    }
}
