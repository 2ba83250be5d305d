// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.text.ProblemText;
import twinfeed.desktop.text.ReadingName;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.QuoteRow.Level;
import twinfeed.document.Figures;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.quote.TaxSum;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.QuoteBuilder;
import twinfeed.pricing.QuoteRequest;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.quote.QuotingService;

/** What the panes show, as rows. */
final class ViewTest {
    private static final String STRONGEST = "h105";

    private final Words words = new Words(Locale.UK);
    private final Figures figures = new Figures(Locale.UK);

    @TempDir
    Path folder;

    private TwinfeedService service;

    private AssessedJob judged() throws Exception {
        DemoFiles.copyInto(folder);
        service = DemoFiles.service();
        return service.quickAssess(service.open(folder.resolve("alder-beck.job"), null), Locale.UK);
    }

    @Test
    void presentUnitAndTheSameHeaterOfferedAreTwoRows() throws Exception {
        JobResult result = new JobResult(1, true, judged(), null, "");
        List<OptionRow> rows = new OptionTable(words).of(result, result);
        assertEquals(5, rows.size());
        assertEquals("present:h85", rows.get(0).key());
        assertEquals("offered:h85", rows.get(1).key());
        assertTrue(rows.get(0).title().startsWith("There now"), rows.get(0).title());
        assertEquals(
                "h85", OptionTable.chosen(result, "offered:h85").orElseThrow().getHeaterId());
        assertFalse(OptionTable.chosen(result, "offered:h85").orElseThrow().getPresent());
    }

    @Test
    void verdictIsLeftOpenUntilTheWholeAnswerIsThere() throws Exception {
        AssessedJob judged = judged();
        OptionRow quick = new OptionTable(words)
                .of(new JobResult(1, false, judged, null, ""), null)
                .get(1);
        assertEquals(Tone.QUIET, quick.verdict().tone());
        OptionRow whole = new OptionTable(words)
                .of(new JobResult(1, true, judged, null, ""), null)
                .get(1);
        assertFalse(whole.verdict().tone() == Tone.QUIET);
    }

    /** The quick answer after a change has no works and no prices: those before the change stay, the verdict does not. */
    @Test
    void worksAndPricesOfTheAnswerBeforeStayUntilTheNextIsWhole() throws Exception {
        AssessedJob quick = judged();
        PriceBook prices = service.book(folder.resolve("prices.csv"));
        AssessedJob planned =
                service.judge(service.open(folder.resolve("alder-beck.job"), null), prices, null, Locale.UK);
        Quote quote = QuoteBuilder.draft(QuoteRequest.of(
                planned.opened().job().getSurvey(), planned.record(), prices, LocalDate.of(2026, 11, 25)));
        JobResult whole = new JobResult(1, true, planned, quote, "");
        OptionTable table = new OptionTable(words);
        List<OptionRow> before = table.of(whole, whole);
        List<OptionRow> after = table.of(new JobResult(2, false, quick, null, ""), whole);
        assertTrue(
                before.stream()
                        .anyMatch(row -> !row.work().isEmpty() && !row.price().isEmpty()),
                before.toString());
        for (int i = 0; i < before.size(); i++) {
            assertEquals(before.get(i).work(), after.get(i).work());
            assertEquals(before.get(i).price(), after.get(i).price());
            assertEquals(table.open(), after.get(i).verdict());
        }
        assertEquals(
                "",
                table.of(new JobResult(2, false, quick, null, ""), null).get(1).price(),
                "none was there before");
        assertNull(OptionTable.same(null, planned.record().getOptions().get(0)));
    }

    /** What nobody decided is shown as open, never as good. */
    @Test
    void whatNobodyDecidedIsNotChecked() {
        assertEquals(
                Tone.DOUBT,
                Mark.of(AssessmentFactory.eINSTANCE.createOptionAssessment().getVerdict(), Locale.UK)
                        .tone());
        assertEquals(
                Tone.DOUBT,
                Mark.of(AssessmentFactory.eINSTANCE.createFinding().getOutcome(), Locale.UK)
                        .tone());
    }

    @Test
    void findingsAreGroupedByCalculatorWithItsTitle() throws Exception {
        OptionAssessment option = judged().record().getOptions().get(1);
        List<FindingGroup> groups = FindingGroup.of(option, FindingFilter.ALL, service.calculators(), words);
        assertEquals(
                option.getFindings().size(),
                groups.stream().mapToInt(group -> group.findings().size()).sum());
        assertTrue(groups.stream().noneMatch(group -> group.title().startsWith("[")), groups.toString());
        long distinct = groups.stream().map(FindingGroup::title).distinct().count();
        assertEquals(groups.size(), distinct, "one group for each calculator");
    }

    /**
     * The demonstration's cable lies in the loft under more than 100 mm of insulation: 27 A for 6 mm² by reference method 101,
     * times 0.87 for the loft's 40 °C (BS 7671 tables 4D5 and 4B1, from memory) is far under what 10.5 kW asks for.
     */
    @Test
    void pieceThatGovernsCarriesItsFinding() throws Exception {
        AssessedJob judged = judged();
        Survey survey = judged.opened().job().getSurvey();
        OptionAssessment option = judged.record().getOptions().get(indexOf(judged, STRONGEST));
        HouseDrawing picture = HouseDrawing.asItIs(survey, option, Locale.UK);
        DrawnPiece loft = picture.power().stream()
                .filter(piece -> piece.name().equals("loft, under insulation"))
                .findFirst()
                .orElseThrow();
        assertEquals(Tone.BAD, loft.mark().tone());
        assertTrue(loft.margin().startsWith("\u2212") && loft.margin().endsWith(" A"), loft.margin());
        assertTrue(loft.sentence().contains("6 mm²"), loft.sentence());
    }

    private static int indexOf(AssessedJob judged, String heater) {
        List<OptionAssessment> options = judged.record().getOptions();
        for (int i = 0; i < options.size(); i++) {
            if (heater.equals(options.get(i).getHeaterId())) {
                return i;
            }
        }
        throw new AssertionError("no option " + heater);
    }

    @Test
    void feedOfWhichNothingIsRecordedIsShownAsUnknown() {
        Survey empty = twinfeed.model.survey.SurveyFactory.eINSTANCE.createSurvey();
        HouseDrawing picture = HouseDrawing.unassessed(empty, Locale.UK);
        assertEquals("not recorded", picture.water().get(0).detail());
        assertEquals(4, picture.power().size(), "service fuse, device, RCD, isolator");
    }

    @Test
    void quoteRowsRepeatTheQuotesOwnSums() {
        QuoteFactory make = QuoteFactory.eINSTANCE;
        Quote quote = make.createQuote();
        quote.setCurrency("GBP");
        QuoteOption option = make.createQuoteOption();
        option.setHeaterId("h85");
        // Sums that no addition would give: what is shown must be what the quote says.
        option.setNet(new BigDecimal("100.01"));
        option.setTotal(new BigDecimal("120.03"));
        TaxSum tax = make.createTaxSum();
        tax.setRate(new BigDecimal("0.20"));
        tax.setTax(new BigDecimal("20.02"));
        option.getTaxes().add(tax);
        QuoteSection section = make.createQuoteSection();
        section.setTitle("Unit");
        QuoteLine line = make.createQuoteLine();
        line.setDescription("A heater");
        line.setQuantity(new BigDecimal("1"));
        line.setUnit("each");
        line.setUnitPrice(new BigDecimal("99.50"));
        line.setNet(new BigDecimal("99.50"));
        section.getLines().add(line);
        option.getSections().add(section);
        quote.getOptions().add(option);
        List<QuoteRow> rows = new QuoteRows(words).of(quote, option);
        assertEquals(
                List.of(Level.SECTION, Level.LINE, Level.SUM, Level.SUM, Level.SUM),
                rows.stream().map(QuoteRow::level).toList());
        assertEquals(
                List.of("", "£99.50", "£100.01", "£20.02", "£120.03"),
                rows.stream().map(QuoteRow::net).toList());
        assertEquals("1", rows.get(1).quantity());
        line.setUnit("h");
        line.setQuantity(new BigDecimal("0.8333"));
        assertEquals("50 min", new QuoteRows(words).of(quote, option).get(1).quantity());
    }

    @Test
    void everyAnswerHasASignOfItsOwnAndAWord() {
        assertEquals(
                Outcome.values().length,
                java.util.stream.Stream.of(Outcome.values())
                        .map(outcome -> Mark.of(outcome, Locale.UK).sign())
                        .distinct()
                        .count());
        assertEquals(
                Verdict.values().length,
                java.util.stream.Stream.of(Verdict.values())
                        .map(verdict -> Mark.of(verdict, Locale.UK).word())
                        .filter(word -> !word.startsWith("["))
                        .distinct()
                        .count());
    }

    @Test
    void figuresHaveThreeSignificantDigitsInThePersonsWay() {
        assertEquals("0.350 ohm", figures.withUnit(0.35, "ohm"));
        assertEquals("11.5 V", figures.withUnit(11.5, "V"));
        assertEquals("235 V", figures.withUnit(235.4, "V"));
        assertEquals("12345 A", figures.withUnit(12345.0, "A"));
        assertEquals("1.52 × 10⁻⁶ m²/s", figures.withUnit(1.519e-6, "m²/s"));
        assertEquals("−2.00 × 10⁻⁵ m", figures.margin(-0.00002, 1.0, "m"));
        assertEquals("", figures.withUnit(null, "A"));
        assertEquals("0,350 ohm", new Figures(Locale.GERMANY).withUnit(0.35, "ohm"));
        assertEquals(
                "1234,50\u00A0€",
                new Figures(Locale.GERMANY)
                        .money(new BigDecimal("1234.50"), "EUR")
                        .replace(".", ""));
        assertEquals("£0.00", figures.money(BigDecimal.ZERO, "GBP"));
    }

    @Test
    void marginHasASignAndNeverReadsAsNone() {
        assertEquals("+8.9 V", figures.margin(8.86, 11.5, "V"));
        assertEquals("\u221216.5 A", figures.margin(-16.51, 40.0, "A"));
        assertEquals("+0.004 m/s", figures.margin(0.0036, 2.0, "m/s"));
        assertEquals("+0.0 A", figures.margin(0.0, 40.0, "A"));
        assertEquals("", figures.margin(null, 40.0, "A"));
    }

    @Test
    void readingIsCalledByItsLabelAndItsElement() {
        assertEquals("Running pressure", ReadingName.of("survey.water.test.runningPressure", words));
        assertEquals("Length (rising main)", ReadingName.of("survey.water.segments[rising main].length", words));
        assertEquals("Rated power (h95)", ReadingName.of("heaters[h95].power", words));
        assertEquals("survey.nothing.such", ReadingName.of("survey.nothing.such", words));
    }

    @Test
    void problemOfAFileNamesTheReadingAsThePagesDo() {
        Words words = new Words(Locale.ENGLISH);
        InputProblem loop = new InputProblem(
                "alder-beck.job",
                0,
                "survey.electricity.circuit.measuredLoop",
                "0.15 ohm",
                "it is below Ze",
                "measure again");
        assertEquals("Loop at the unit Zs \"0.15 ohm\": it is below Ze; measure again", ProblemText.line(loop, words));
        assertEquals(
                "alder-beck.job, Loop at the unit Zs [survey.electricity.circuit.measuredLoop] \"0.15 ohm\": it is below Ze;"
                        + " measure again",
                ProblemText.reason(new InputException(loop), words));
        InputProblem whole = InputProblem.ofFile("alder-beck.job", "it is empty", "choose another one");
        assertEquals(
                "alder-beck.job: it is empty; choose another one",
                ProblemText.reason(new InputException(whole), words));
        assertEquals("no", ProblemText.reason(new IllegalStateException("no"), words));
    }

    /** Four options have room on a quote (QuoteRequest.MOST_OPTIONS); the demonstration has four heaters that suit, and a repair beside them. */
    @Test
    void rowWithoutAPriceSaysWhyTheQuoteLeavesItOut() throws Exception {
        judged();
        PriceBook prices = service.book(folder.resolve("prices.csv"));
        AssessedJob planned =
                service.judge(service.open(folder.resolve("alder-beck.job"), null), prices, null, Locale.UK);
        Quote quote = QuotingService.draft(planned, prices, LocalDate.of(2026, 11, 25), FirmFile.none(), Locale.UK);
        JobResult whole = new JobResult(1, true, planned, quote, "");
        OptionTable table = new OptionTable(words);
        List<OptionRow> rows = table.of(whole, whole);
        assertEquals(
                List.of("not offered"),
                rows.stream()
                        .map(OptionRow::noPrice)
                        .filter(text -> !text.isEmpty())
                        .toList());
        rows.forEach(row -> assertEquals(row.price().isEmpty(), !row.noPrice().isEmpty(), row.toString()));
        OptionAssessment left = planned.record().getOptions().stream()
                .filter(option -> QuoteRows.option(quote, option).isEmpty())
                .findFirst()
                .orElseThrow();
        assertTrue(table.whyNotOffered(left, quote, false).contains("room for 4 options"));
        assertTrue(table.whyNotOffered(left, quote, true).contains("by hand"));
        left.setVerdict(Verdict.CANNOT_TELL);
        assertTrue(table.whyNotOffered(left, quote, false).contains("readings are missing"));
        left.setVerdict(Verdict.DOES_NOT_SUIT);
        left.getUnmended().add(left.getBinding());
        assertTrue(table.whyNotOffered(left, quote, false).contains("no available work fixes"));
    }
}
