// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Check;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;

/** What is said of any check, whatever its calculator's own words: every outcome with all its values, in every language. */
class FindingTextTest {
    private static final Check PASSING = check("made.passing");
    private static final Check FAILING = check("made.failing");
    private static final Check CLOSE = check("made.close");
    private static final Check BLIND = check("made.blind");
    private static final Check UNNAMED = check("made.unnamed");
    private static final Check BESIDE = check("made.beside");
    private static final Check SILENT = check("made.silent");

    private static Check check(String key) {
        return Check.of(key, FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
    }

    @Test
    void everyOutcomeIsSaidWithItsValues() {
        Runner runner = Fixtures.runner(new SyntheticCalculator(
                "made-up", List.of(PASSING, FAILING, CLOSE, BLIND, UNNAMED, BESIDE, SILENT), (survey, findings) -> {
                    findings.on(PASSING).compare(1, 0).add();
                    findings.on(FAILING).compare(-1, 0).add();
                    findings.on(CLOSE).compare(0.1, 0).add();
                    findings.on(BLIND)
                            .cannotTell(List.of("survey.water.test.flow"))
                            .add();
                    findings.on(UNNAMED).cannotTell(List.of()).add();
                    findings.on(BESIDE).outcome(Outcome.NOT_APPLICABLE).add();
                }));
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        List<Finding> findings = new ArrayList<>();
        runner.judge(survey, Fixtures.candidate())
                .findings()
                .forEach(each -> findings.add(
                        each.check().equals(CLOSE)
                                ? each.withChance(new PassProbability(0.37, 0, 1, "survey.water.test.flow"))
                                : each));
        Set<Outcome> said = EnumSet.noneOf(Outcome.class);
        for (Locale locale : List.of(Locale.UK, Locale.GERMAN)) {
            FindingText words = new FindingText(runner, locale);
            for (Finding finding : findings) {
                said.add(finding.outcome());
                String sentence = words.sentence(finding);
                assertFalse(sentence.matches("(?s).*[{}\u2026\\[\\]].*"), sentence);
            }
        }
        assertEquals(EnumSet.allOf(Outcome.class), said);
        FindingText english = new FindingText(runner, Locale.UK);
        assertTrue(findings.stream().map(english::sentence).anyMatch(text -> text.contains("37 %")));
    }
}
