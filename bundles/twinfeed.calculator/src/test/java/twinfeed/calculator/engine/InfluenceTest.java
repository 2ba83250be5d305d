// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.search.RemedySearch;
import twinfeed.calculator.search.WorkCost;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;

/** Works of one calculator that mend a check of another, through what the one gives to the other. */
class InfluenceTest {
    private static final Check CABLE = Check.of("made.cable", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
    private static final Check FLOW = Check.of("made.flow", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);

    private static final Calculator CIRCUIT = new Linked("circuit", List.of(), List.of(SharedQuantity.DELIVERED_POWER));
    private static final Calculator WATER =
            new Linked("water", List.of(SharedQuantity.DELIVERED_POWER), List.of(SharedQuantity.TARGET_FLOW));
    private static final Calculator HEAT = new Linked("heat", List.of(SharedQuantity.TARGET_FLOW), List.of());

    /** One that offers two works for the cable, and one whose check only the second of them mends. */
    private record Linked(String id, List<SharedQuantity> takes, List<SharedQuantity> gives) implements Calculator {
        @Override
        public CalculatorDescriptor descriptor() {
            List<Check> checks =
                    switch (id) {
                        case "circuit" -> List.of(CABLE);
                        case "water" -> List.of(FLOW);
                        default -> List.of();
                    };
            return new CalculatorDescriptor(id, "1", Runner.TEXTS, gives, takes, checks, List.of(), List.of());
        }

        @Override
        public Assessor prepare(Context context) {
            String done = String.valueOf(context.survey().getNotes());
            return (candidate, shared, findings) -> {
                if (id.equals("circuit")) {
                    boolean mended = done.contains("cheap") || done.contains("dear");
                    FindingBuilder cable = findings.on(CABLE).compare(mended ? 1 : -1, 0);
                    if (!mended) {
                        cable.remedy(Fixtures.work("cheap")).remedy(Fixtures.work("dear"));
                    }
                    cable.add();
                } else if (id.equals("water")) {
                    findings.on(FLOW).compare(done.contains("dear") ? 1 : -1, 0).add();
                }
            };
        }
    }

    private static WorkCost cost(List<Remedy> works) {
        long sum = works.stream()
                .mapToLong(work -> work.id().equals("dear") ? 100 : 1)
                .sum();
        return new WorkCost(0, BigDecimal.valueOf(sum), 0);
    }

    @Test
    void followsWhatIsGivenOn() {
        Influence influence = Fixtures.runner(CIRCUIT, WATER, HEAT).influence();
        assertTrue(influence.reaches("circuit", "water"));
        assertTrue(influence.reaches("water", "heat"));
        assertTrue(influence.reaches("circuit", "heat"));
        assertFalse(influence.reaches("heat", "circuit"));
        assertFalse(influence.reaches("circuit", "circuit"));
        assertFalse(influence.reaches("nobody", "heat"));
    }

    @Test
    void aWorkOfTheGiverMendsACheckThatOffersNone() {
        Runner runner = Fixtures.runner(CIRCUIT, WATER);
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        for (Influence influence : List.of(runner.influence(), Influence.UNKNOWN)) {
            WorkPlan plan = new RemedySearch(runner::judge, InfluenceTest::cost, influence)
                    .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
            assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
            assertEquals(List.of("dear"), plan.works().stream().map(Remedy::id).toList());
        }
    }
}
