// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** Works of one calculator that mend a check of another, through what the one gives to the other. */
class InfluenceTest {
    private static final Check CABLE = Check.of("made.cable", FindingClass.SAFETY, Sense.AT_LEAST, "");
    private static final Check FLOW = Check.of("made.flow", FindingClass.SAFETY, Sense.AT_LEAST, "");

    private static final Calculator CIRCUIT = new Linked("circuit", List.of(), List.of(ExchangeKey.DELIVERED_POWER));
    private static final Calculator WATER =
            new Linked("water", List.of(ExchangeKey.DELIVERED_POWER), List.of(ExchangeKey.WISHED_FLOW));
    private static final Calculator HEAT = new Linked("heat", List.of(ExchangeKey.WISHED_FLOW), List.of());

    /** One that offers two works for the cable, and one whose check only the second of them mends. */
    private record Linked(String id, List<ExchangeKey> takes, List<ExchangeKey> gives) implements Calculator {
        @Override
        public Statement statement() {
            return new Statement(id, "1", Runner.TEXTS, gives, takes, List.of(CABLE, FLOW), List.of(), List.of());
        }

        @Override
        public Assessor prepare(Context context) {
            String done = String.valueOf(context.survey().getNotes());
            return (candidate, exchange, findings) -> {
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
