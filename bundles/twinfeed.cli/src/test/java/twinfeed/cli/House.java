// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;

/** The demonstration house in which one heater suits without any work, to be changed by a test and judged whole, with its prices. */
final class House {
    private static final TwinfeedService OFFICE = TwinfeedService.onClassPath();

    private final OpenedJob job = OFFICE.open(Run.DEMO.resolve("birch-syke.job"), null);
    private final Heater heater;

    /** The house with one candidate, by its place in the catalogue. */
    House(String heaterId) {
        survey().getCandidates().clear();
        survey().getCandidates().add(heaterId);
        heater = job.catalogue().getHeaters().stream()
                .filter(each -> each.getId().equals(heaterId))
                .findFirst()
                .orElseThrow();
    }

    Survey survey() {
        return job.job().getSurvey();
    }

    ElectricalFeed feed() {
        return survey().getElectricity();
    }

    Circuit circuit() {
        return feed().getCircuit();
    }

    Heater heater() {
        return heater;
    }

    /** The verdict on the candidate, with the work that makes it suit. */
    WorkPlan plan() {
        return OFFICE
                .judge(job, OFFICE.book(Run.DEMO.resolve("prices.csv")), heater.getId(), Locale.UK)
                .plans()
                .stream()
                .filter(plan -> !plan.before().candidate().present())
                .findFirst()
                .orElseThrow();
    }

    static void assertPlan(WorkPlan plan, Verdict verdict, String... works) {
        assertEquals(verdict, plan.verdict(), () -> open(plan));
        assertEquals(List.of(works), works(plan), () -> open(plan));
    }

    static List<String> works(WorkPlan plan) {
        return plan.works().stream().map(Remedy::id).toList();
    }

    /** The checks that rule the heater out as the house is. */
    static List<String> ruledOutBy(WorkPlan plan) {
        return plan.before().findings().stream()
                .filter(Finding::rulesOut)
                .map(finding -> finding.check().key())
                .toList();
    }

    static Outcome outcome(WorkPlan plan, String check) {
        return plan.before().finding(check).orElseThrow().outcome();
    }

    private static String open(WorkPlan plan) {
        return plan.before().findings().stream()
                        .filter(Finding::stands)
                        .map(finding -> finding.check().key() + " " + finding.outcome())
                        .toList()
                + " works " + works(plan) + " unmended " + plan.unmended();
    }
}
