// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.OpenedJob;

/**
 * A tap's outlet is what it was when its flow was read, whatever is done to the pipes: with full-bore valves it gives more than was
 * read behind the half-shut one. The figures are those of an independent model of the house (published formulas, no code of the
 * program's own).
 */
class CarriedFitTest {
    private static final OpenedJob JOB = new Books().opened("alder-beck.job");
    private static final Runner RUNNER = runner();

    private static Runner runner() {
        List<Calculator> calculators = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(calculators::add);
        return new Runner(calculators, (mean, spread, day, southern) -> mean);
    }

    private static Candidate candidate(String id) {
        Heater heater = JOB.catalogue().getHeaters().stream()
                .filter(each -> each.getId().equals(id))
                .findFirst()
                .orElseThrow();
        return new Candidate(heater, false);
    }

    private static OptionResult withFullBoreValves(String id) {
        Survey survey = JOB.job().getSurvey();
        Remedy valves = RUNNER.judge(survey, candidate(id)).findings().stream()
                .flatMap(finding -> finding.remedies().stream())
                .filter(remedy -> remedy.id().equals("full-bore-valve"))
                .findFirst()
                .orElseThrow();
        Survey changed = EcoreUtil.copy(survey);
        valves.edit().accept(changed);
        return RUNNER.judge(survey, changed, candidate(id));
    }

    private static Finding.Figures figures(OptionResult result, String check) {
        Finding.Figures figures = result.finding(check).orElseThrow().printed();
        if (figures == null) {
            throw new AssertionError(check + " has no figures");
        }
        return figures;
    }

    @ParameterizedTest
    @CsvSource({"h85, 0.293", "h95, 0.293", "h105, 0.377"})
    void pressureAtTheSwitchWithBothTapsOpen(String heater, double bar) {
        assertEquals(bar, figures(withFullBoreValves(heater), "pressure.switch").value(), 0.0005);
    }

    @Test
    void theTapGivesMoreThanWasRead() {
        assertEquals(
                11.7, figures(withFullBoreValves("h95"), "pressure.dropOut").limit(), 0.05);
    }
}
