// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks.secondmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.ServiceLoader;
import java.util.TreeMap;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.benchmarks.RandomHouse;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Series;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.search.RemedySearch;
import twinfeed.calculator.search.WorkCost;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.survey.Survey;

/** The program's figures in random houses, as found and with the work done, against those of a second model. */
class SecondModelTest {
    private static final int HOUSES = 60;
    private static final int FIGURES_A_HOUSE = 40;

    /** Largest relative difference: the program's water is a fit, and its roots stop earlier. */
    private static final double TOLERANCE = 0.005;

    /** Differences under this are none, in the figure's own unit (0.002 bar, 0.002 A ...): figures near 0 have no relative difference. */
    private static final double FLOOR = 0.002;

    private static final Runner RUNNER = new Runner(calculators(), (mean, spread, month, southern) -> mean);

    private final Map<String, Double> fittings = fittings();
    private final Map<String, Integer> compared = new TreeMap<>();
    private final List<String> differences = new ArrayList<>();

    private static List<Calculator> calculators() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return found;
    }

    /** The table of loss coefficients is data, not a formula; its cells have guards of their own. */
    private static Map<String, Double> fittings() {
        Map<String, Double> table = new HashMap<>();
        try (InputStream stream = Objects.requireNonNull(SecondModelTest.class.getResourceAsStream(
                        "/twinfeed/calculator/pressure/survey/fittings.csv"));
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("kind,"))
                    .map(line -> line.split(",", -1))
                    .forEach(cells -> table.put(cells[0], Double.valueOf(cells[1])));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return table;
    }

    @Test
    void theProgramAgreesWithASecondModel() {
        int withWork = 0;
        int fewest = Integer.MAX_VALUE;
        for (long seed = 0; seed < HOUSES; seed++) {
            RandomHouse house = RandomHouse.of(seed);
            OptionResult asFound = RUNNER.judge(house.survey(), house.candidate());
            fewest = Math.min(fewest, compare("house " + seed, house, house.survey(), asFound));
            WorkPlan plan = new RemedySearch(RUNNER::judge, WorkCost.BY_COUNT, RUNNER.influence())
                    .plan(house.survey(), house.candidate(), asFound);
            if (!plan.works().isEmpty()) {
                Survey changed = EcoreUtil.copy(house.survey());
                plan.works().forEach(work -> work.edit().accept(changed));
                compare("house " + seed + " with the work done", house, changed, plan.after());
                withWork++;
            }
        }
        System.out.println("second model: "
                + compared.values().stream().mapToInt(Integer::intValue).sum() + " figures compared, " + withWork
                + " houses also with the work done, at least " + fewest + " figures a house");
        assertEquals(List.of(), differences);
        assertTrue(fewest >= FIGURES_A_HOUSE, "figures compared in the house with the fewest: " + fewest);
        assertTrue(withWork >= HOUSES / 4, "houses with work: " + withWork);
        // A figure that the program never gives, or under another name, would go unseen.
        Map<String, Double> names = figures(RandomHouse.of(0), RandomHouse.of(0).survey());
        assertEquals(
                List.of(),
                names.keySet().stream()
                        .filter(name -> !compared.containsKey(name))
                        .toList());
    }

    private Map<String, Double> figures(RandomHouse house, Survey survey) {
        double outletC = survey.getTargetOutlet().si();
        return SecondModel.figures(survey, house.survey(), house.candidate().heater(), outletC, fittings);
    }

    private int compare(String what, RandomHouse house, Survey survey, OptionResult result) {
        int count = 0;
        for (Map.Entry<String, Double> figure : figures(house, survey).entrySet()) {
            Double said = said(result, figure.getKey());
            if (said != null) {
                count++;
                compared.merge(figure.getKey(), 1, Integer::sum);
                double off = Math.abs(said - figure.getValue());
                if (!(off <= Math.max(FLOOR, TOLERANCE * Math.abs(figure.getValue())))) {
                    differences.add(what + ", " + figure.getKey() + ": the program says " + said + ", the second model "
                            + figure.getValue());
                }
            }
        }
        return count;
    }

    /** What the program says under the name of a figure, or null where it does not answer that check in this house. */
    private static @Nullable Double said(OptionResult result, String name) {
        String check = name.split("[:#]", 2)[0];
        Finding finding = result.finding(check).orElse(null);
        if (finding == null || finding.printed() == null) {
            return null;
        }
        if (name.contains(":")) {
            Object argument = finding.arguments().get(name.substring(name.indexOf(':') + 1));
            return argument instanceof Number number ? Double.valueOf(number.doubleValue()) : null;
        }
        if (name.contains("#")) {
            String key = name.substring(name.indexOf('#') + 1, name.indexOf('['));
            int point = Integer.parseInt(name.substring(name.indexOf('[') + 1, name.indexOf(']')));
            for (Series series : finding.series()) {
                if (series.key().equals(key)) {
                    return series.yAxis().unit().fromSi(series.y()[point]);
                }
            }
            return null;
        }
        return answersThis(finding) ? Double.valueOf(finding.printed().value()) : null;
    }

    /** Some checks have several ways to an answer, and the second model knows one of them. */
    private static boolean answersThis(Finding finding) {
        return switch (finding.check().key()) {
            case "circuit.loopImpedance" -> finding.variant().contains("alculated");
            case "circuit.protectiveConductor" -> finding.variant().equals("byEnergy");
            default -> true;
        };
    }
}
