// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Assumption;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Step;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.units.Kind;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FormulaAnswer;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;

/** What of an assessment, a quote and a calculation stands on the screen, in which order. */
class TextReportTest {
    private static final TwinfeedService SERVICE = new TwinfeedService(List.of());

    /** Any job's, without calculators: a test puts in what it prints. */
    private static final AssessedJob JOB =
            SERVICE.judge(SERVICE.open(Run.DEMO.resolve("rowan-brook.job"), null), null, null, Locale.ROOT);

    private final Assessment record = AssessmentFactory.eINSTANCE.createAssessment();
    private final AssessedJob judged = new AssessedJob(JOB.opened(), JOB.assessed(), JOB.plans(), record);
    private final String cautions = new CliContext(SERVICE, Run.DAY, System.out, System.err).cautions();

    @BeforeEach
    void rules() {
        record.setRules("The rules");
        record.setRulesNote("as they were in May.");
    }

    private static String text(Consumer<TextReport> printing) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        printing.accept(new TextReport(new CliContext(SERVICE, Run.DAY, out, out)));
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    private OptionAssessment option(String heater, String title, boolean present, Verdict verdict) {
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        option.setHeaterId(heater);
        option.setTitle(title);
        option.setPresent(present);
        option.setVerdict(verdict);
        record.getOptions().add(option);
        return option;
    }

    private static Finding finding(OptionAssessment option, String title, FindingClass kind, Outcome outcome) {
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setTitle(title);
        finding.setText("as it is.");
        finding.setKind(kind);
        finding.setOutcome(outcome);
        option.getFindings().add(finding);
        return finding;
    }

    private static Step step(String symbol, double value, String unit, @Nullable String expression, String source) {
        Step step = AssessmentFactory.eINSTANCE.createStep();
        step.setSymbol(symbol);
        step.setMeaning("head loss");
        step.setValue(value);
        step.setUnit(unit);
        step.setExpression(expression);
        step.setSource(source);
        return step;
    }

    /** The present unit with a check that fails and one of comfort, and a candidate that passes. */
    private void house() {
        OptionAssessment present = option("h85", "Shower 8.5 kW", true, Verdict.SUITS_WITH_WORK);
        Finding cable = finding(present, "Cable", FindingClass.SAFETY, Outcome.FAILS);
        cable.setValue(38.12345);
        cable.setUnit("A");
        cable.setLimit(32.0);
        cable.setMargin(-6.12345);
        cable.setCondition("in insulation");
        cable.setSource("table 4D5");
        cable.getSteps().add(step("h", 0, "m", "0.1 * L", "a book"));
        finding(present, "Flow", FindingClass.PERFORMANCE, Outcome.FAILS).setValue(4.0);
        present.getFindings().get(1).setUnit("L/min");
        Remedy work = AssessmentFactory.eINSTANCE.createRemedy();
        work.setTitle("Renew the cable");
        present.getRemedies().add(work);
        present.getUnmended().addAll(List.of("Flow", "Noise"));
        OptionAssessment candidate = option("h95", "Shower 9.5 kW", false, Verdict.SUITS);
        finding(candidate, "Earthing", FindingClass.SAFETY, Outcome.PASSES);
        finding(candidate, "Hardness", FindingClass.SAFETY, Outcome.NOT_APPLICABLE);
        finding(candidate, "Drop", FindingClass.SAFETY, Outcome.TOO_CLOSE);
        finding(candidate, "Main", FindingClass.SAFETY, Outcome.CANNOT_TELL);
        finding(candidate, "Pump", FindingClass.SAFETY, Outcome.NOT_CHECKED);
        Assumption assumption = AssessmentFactory.eINSTANCE.createAssumption();
        assumption.setText("The main is cold.");
        record.getAssumptions().add(assumption);
    }

    @Test
    void anAssessmentHasEveryFindingWithFiguresWorkingAndSource() {
        house();
        assertEquals(
                """
                Shower 8.5 kW (there now): suits with work
                  [NO] Cable: as it is.
                      38.123 A, limit 32, margin -6.1235 (in insulation)
                      h = 0.1 * L = 0 m  head loss [a book]
                      source: table 4D5
                  [ !] Flow: as it is.
                      4 L/min
                  work: Renew the cable
                  not fixed by any available work: Flow, Noise

                Shower 9.5 kW: suits
                  [ok] Earthing: as it is.
                  [--] Hardness: as it is.
                  [~?] Drop: as it is.
                  [??] Main: as it is.
                  [??] Pump: as it is.

                Assumed, because it was not measured or stated:
                  - The main is cold.
                The rules: as they were in May.
                """
                        + cautions + "\n",
                text(report -> report.assessment(judged, true)));
    }

    @Test
    void inBriefThereAreNoWorkings() {
        house();
        String brief = text(report -> report.assessment(judged, false));
        assertTrue(brief.contains("[NO] Cable") && !brief.contains("0.1 * L"), brief);
    }

    @Test
    void optionsNameOnlyTheChecksThatAreNotPassed() {
        house();
        assertEquals(
                """
                Shower 8.5 kW (there now): suits with work
                  [NO] Cable: as it is.
                      38.123 A, limit 32, margin -6.1235 (in insulation)
                      source: table 4D5
                  [ !] Flow: as it is.
                      4 L/min
                  work: Renew the cable
                  not fixed by any available work: Flow, Noise

                Shower 9.5 kW: suits
                  [~?] Drop: as it is.
                  [??] Main: as it is.
                  [??] Pump: as it is.

                Assumed, because it was not measured or stated:
                  - The main is cold.
                The rules: as they were in May.
                """
                        + cautions + "\n",
                text(report -> report.options(judged)));
    }

    @Test
    void whereNothingWasAssumedNothingIsSaidOfIt() {
        assertEquals(
                "The rules: as they were in May.\n" + cautions + "\n", text(report -> report.assessment(judged, true)));
    }

    private static BigDecimal money(String text) {
        return new BigDecimal(text);
    }

    private static Quote quote() {
        QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
        line.setDescription("Heater 9.5 kW");
        line.setQuantity(BigDecimal.ONE);
        line.setUnit("each");
        line.setNet(money("158.00"));
        QuoteSection section = QuoteFactory.eINSTANCE.createQuoteSection();
        section.getLines().add(line);
        QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
        option.setHeaterId("h95");
        option.setTitle("Shower 9.5 kW");
        option.setVerdict(Verdict.SUITS);
        option.setNet(money("158.00"));
        option.setTax(money("31.60"));
        option.setTotal(money("189.60"));
        option.getSections().add(section);
        Quote quote = QuoteFactory.eINSTANCE.createQuote();
        quote.setCurrency("GBP");
        quote.getOptions().add(option);
        return quote;
    }

    @Test
    void aQuoteBeginsWithDangerAndNamesWhatIsNotOffered() {
        house();
        option("h105", "Shower 10.5 kW", false, Verdict.DOES_NOT_SUIT);
        Quote quote = quote();
        quote.setSummary("Shower 9.5 kW suits.");
        quote.setBookNote("Prices of May.");
        assertEquals(
                """
                DANGER: the shower must not be used until this has been put right:
                  [NO] Cable: as it is.
                The notice to leave with the customer is written by the verb notice, or in the window.

                Shower 9.5 kW suits.

                Shower 9.5 kW: suits
                               1  Heater 9.5 kW                                                  158.00
                  Sum without tax                                                                158.00 GBP
                  Tax                                                                             31.60 GBP
                  Total                                                                          189.60 GBP

                Checked and not offered: Shower 10.5 kW: does not suit

                Prices of May.
                """
                        + cautions + "\n"
                        + "Written: quote.xlsx\n",
                text(report -> report.quote(judged, quote, OutputPaths.workbook(Path.of("quote.xlsx")))));
    }

    /** Every amount ends in the same column, that of the sums too. */
    @Test
    void aQuoteWithoutDangerOrNotesIsThePricesAlone() {
        option("h95", "Shower 9.5 kW", false, Verdict.SUITS);
        assertEquals(
                """
                Shower 9.5 kW: suits
                               1  Heater 9.5 kW                                                  158.00
                  Sum without tax                                                                158.00 GBP
                  Tax                                                                             31.60 GBP
                  Total                                                                          189.60 GBP

                """
                        + cautions + "\n",
                text(report -> report.quote(judged, quote(), new OutputPaths(null, null))));
    }

    @Test
    void aCalculationSaysResultsTroubleWarningsAndWorking() {
        FormulaAnswer answer = new FormulaAnswer(
                List.of(new FormulaAnswer.Result("flow", "mass flow", Kind.MASS_FLOW, 0.0595617)),
                new FormulaAnswer.Note("cold", "It heats nothing."),
                List.of(new FormulaAnswer.Note("hot", "It is hot.")),
                List.of(step("h", 1.23456e-9, "", null, ""), step("x", 1.23456e-8, "m", "a / b", "")));
        assertEquals(
                """
                mass flow = 3.574 kg/min
                It heats nothing.
                It is hot.
                  h = 1.2346E-9  head loss
                  x = a / b = 0.000000012346 m  head loss
                """
                        + cautions + "\n",
                text(report -> report.answer(answer, 4)));
        FormulaAnswer sound = new FormulaAnswer(answer.results(), FormulaAnswer.Note.NONE, List.of(), List.of());
        assertFalse(text(report -> report.answer(sound, 3)).contains("heats nothing"));
    }
}
