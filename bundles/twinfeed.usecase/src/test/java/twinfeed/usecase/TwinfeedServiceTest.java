// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.calculator.search.WorkCost;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.io.InputException;
import twinfeed.model.job.Job;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.rows.CsvRows;
import twinfeed.model.survey.Survey;
import twinfeed.units.Kind;
import twinfeed.units.Length;
import twinfeed.units.Power;
import twinfeed.units.Pressure;

/** The service at a house of the demonstration, whose breaker is too small for the strongest heater. */
final class TwinfeedServiceTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();
    private static final Path BOOK = Demo.FOLDER.resolve("prices.csv");
    private static final PriceBook PRICES = SERVICE.book(BOOK);

    private static final Check MADE = Check.of("made.up", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);

    @TempDir
    private Path folder;

    private static OpenedJob rowan() {
        return SERVICE.open(Demo.FOLDER.resolve("rowan-brook.job"), null);
    }

    private static List<String> offered(AssessedJob judged) {
        return judged.record().getOptions().stream()
                .map(OptionAssessment::getHeaterId)
                .toList();
    }

    private static OptionAssessment last(AssessedJob judged) {
        return judged.record().getOptions().get(judged.record().getOptions().size() - 1);
    }

    @Test
    void oneHeaterIsJudgedWithItsWork() {
        AssessedJob judged = SERVICE.judge(rowan(), PRICES, "h105", Locale.UK);
        assertEquals(List.of("h75", "h105"), offered(judged));
        OptionAssessment strong = last(judged);
        assertEquals(Verdict.SUITS_WITH_WORK, strong.getVerdict());
        assertFalse(judged.unanswered());
        Survey surveyed = judged.opened().job().getSurvey();
        assertEquals(
                "50 A",
                judged.withWork(strong)
                        .getElectricity()
                        .getCircuit()
                        .getDevice()
                        .getRating()
                        .toString());
        assertEquals(
                "40 A",
                surveyed.getElectricity().getCircuit().getDevice().getRating().toString(),
                "the survey is not changed");
        assertTrue(
                EcoreUtil.equals(surveyed, judged.withWork(EcoreUtil.copy(strong))),
                "work is that of an option of this job");
    }

    @Test
    void heatersOfTheCatalogueAreAskedForBesideThoseOfTheSurvey() {
        AssessedJob judged = SERVICE.oneByOne().judgeWith(rowan(), PRICES, List.of("h105"), Locale.GERMANY);
        assertEquals(List.of("h75", "h85", "h95", "h105"), offered(judged));
        assertEquals(
                twinfeed.pricing.TranslatedBook.text(PRICES, Locale.GERMANY, "Heater 10.5 kW, two-element"),
                last(judged).getTitle());
        assertFalse(last(judged).getTitle().startsWith("Heater"), last(judged).getTitle());
    }

    @Test
    void anAnswerThatIsNoLongerWantedIsGivenUp() {
        OpenedJob alder = SERVICE.open(Demo.FOLDER.resolve("alder-beck.job"), null);
        AtomicInteger asked = new AtomicInteger();
        AssessedJob judged = SERVICE.oneByOne()
                .judge(alder, PRICES, Locale.UK, () -> asked.incrementAndGet() > 0, new AnswerCache());
        assertEquals(
                SERVICE.judge(alder, PRICES, null, Locale.UK)
                        .record()
                        .getOptions()
                        .size(),
                judged.record().getOptions().size());
        int houses = asked.get();
        assertTrue(houses > judged.record().getOptions().size(), "before each option and each set of works: " + houses);
        asked.set(0);
        assertThrows(NoLongerWantedException.class, () -> SERVICE.oneByOne()
                .judge(alder, PRICES, Locale.UK, () -> asked.incrementAndGet() < houses, new AnswerCache()));
        assertEquals(houses, asked.get(), "nothing is judged after the answer is not wanted");
    }

    @Test
    void answersFromBeforeAnEditChangeNothingAfterIt() {
        OpenedJob alder = SERVICE.open(Demo.FOLDER.resolve("alder-beck.job"), null);
        Survey survey = alder.job().getSurvey();
        AnswerCache cache = new AnswerCache();
        List<Runnable> edits = List.of(
                () -> {},
                () -> survey.getElectricity().getLoads().get(0).setPower(Power.valueOf("2.2 kW ± 0.1 kW")),
                () -> survey.getWater().getTest().setRunningPressure(Pressure.valueOf("1.9 bar")),
                () -> survey.getElectricity().getCircuit().getSegments().get(0).setLength(Length.valueOf("4 m")));
        for (Runnable edit : edits) {
            edit.run();
            Assessment kept =
                    SERVICE.judge(alder, PRICES, Locale.UK, () -> true, cache).record();
            Assessment fresh = SERVICE.judge(alder, PRICES, null, Locale.UK).record();
            assertTrue(EcoreUtil.equals(fresh, kept));
        }
    }

    @Test
    void aFirstLookFindsNoWork() {
        OpenedJob opened = rowan();
        opened.job().getSurvey().getCandidates().add("h105");
        AssessedJob quick = SERVICE.quickAssess(opened, Locale.UK);
        assertEquals(List.of("h75", "h85", "h95", "h105"), offered(quick));
        assertEquals(Verdict.SUITS, quick.record().getOptions().get(1).getVerdict());
        assertTrue(last(quick).getRemedies().isEmpty());
        assertTrue(last(quick).getVerdict() != Verdict.SUITS);
        assertEquals(
                last(quick).getVerdict(),
                SERVICE.asItStands(
                                Candidates.withPresentHeater(opened.job().getSurvey(), new Candidates(opened).all()),
                                new Candidates(opened).only("h105"),
                                Locale.UK)
                        .getOptions()
                        .get(1)
                        .getVerdict());
    }

    private static Remedy remedy(String code, int quantity, int leadDays) {
        return new Remedy(code, code, Map.of(), List.of(Remedy.Item.of(code, quantity)), false, leadDays, survey -> {});
    }

    @Test
    void theCheaperWorkWinsByTheBookInForce() {
        WorkCost.Source costs = BookCosts.of(PRICES, rowan());
        assertEquals(new WorkCost(0, BigDecimal.ZERO.setScale(2), 0), costs.of(List.of()));
        Remedy cable = remedy("cable-10", 7, 9);
        WorkCost cost = costs.of(List.of(cable));
        assertEquals(0, cost.enquiries());
        assertTrue(cost.price().signum() > 0);
        assertEquals(9, cost.leadDays());
        Remedy unknown = remedy("no-such-code", 1, 0);
        assertEquals(1, costs.of(List.of(unknown)).enquiries(), "nobody knows its price");
        assertEquals(
                WorkCost.BY_COUNT.of(List.of(cable)),
                BookCosts.of(null, rowan()).of(List.of(cable)));
    }

    @Test
    void formulasAreFoundByName() {
        List<String> names = SERVICE.formulas().stream().map(NamedFormula::name).toList();
        assertEquals(names.stream().sorted().toList(), names);
        assertTrue(names.size() > 5, names.toString());
        assertEquals(names.get(3), SERVICE.formula(names.get(3)).orElseThrow().name());
        assertTrue(SERVICE.formula("no.such.formula").isEmpty());
        assertTrue(SERVICE.check(CheckTopic.WINTER_FLOW).isPresent());
        assertEquals(List.of(), SERVICE.problems());
        assertTrue(new TwinfeedService(List.of()).check(CheckTopic.WINTER_FLOW).isEmpty());
    }

    @Test
    void aPriceListSaysWhatItWouldChange() throws IOException {
        String text = Files.readString(BOOK);
        Path list = Files.writeString(
                folder.resolve("new.csv"),
                text.replaceAll("(?m)^cable-10,", "cable-11,").replaceFirst("(?m)^# title: .*$", "# title: Spring"));
        BookReport report = SERVICE.bookReport(list, PRICES);
        assertEquals(List.of("cable-11"), report.added());
        assertEquals(List.of("cable-10"), report.removed());
        assertTrue(
                report.changed().stream()
                        .anyMatch(each -> each.code().isEmpty() && each.after().equals("Spring")),
                report.changed().toString());
        assertTrue(report.lacking().stream().anyMatch(each -> each.codes().contains("cable-10")));
        assertTrue(report.text() != null && report.text().contains("cable-11"));
        BookReport first = SERVICE.bookReport(list, null);
        assertTrue(first.added().size() > 10);
        assertEquals(List.of(), first.changed());
    }

    @Test
    void aPriceListWithARefusedRowIsNotTaken() throws IOException {
        Path list = Files.writeString(
                folder.resolve("new.csv"),
                Files.readString(BOOK).replaceAll("(?m)^(cable-10,.*),standard", "$1,luxury"));
        BookReport report = SERVICE.bookReport(list, PRICES);
        assertEquals(1, report.refused().size(), report.refused().toString());
        assertNull(report.text());
        assertEquals(List.of(), report.lacking());
        UnusableException refused = assertThrows(UnusableException.class, () -> SERVICE.book(list));
        assertTrue(refused.getMessage().contains("luxury"), refused.getMessage());
        Path nowhere = folder.resolve("nowhere.csv");
        assertThrows(InputException.class, () -> SERVICE.book(nowhere));
        Path text = Files.writeString(folder.resolve("text.xlsx"), "no workbook");
        UnusableException noBook = assertThrows(UnusableException.class, () -> SERVICE.book(text));
        assertTrue(noBook.getMessage().startsWith(text + ": "), noBook.getMessage());
        assertEquals(
                noBook.getMessage().indexOf("text.xlsx"), noBook.getMessage().lastIndexOf("text.xlsx"), "named once");
        assertFalse(noBook.problems().get(0).right().isEmpty(), noBook.getMessage());
    }

    private static TwinfeedService made(BiConsumer<Survey, Findings> answers) {
        return new TwinfeedService(List.of(new SyntheticCalculator("made-up", List.of(MADE), answers)));
    }

    @Test
    void theCalculatorsOfTheClassPathAreThere() {
        List<String> ids = TwinfeedService.onClassPath().calculators().stream()
                .map(calculator -> calculator.descriptor().id())
                .toList();
        assertTrue(ids.containsAll(List.of("flow", "pressure", "circuit")), ids.toString());
    }

    @Test
    void aTopicIsAnsweredByTheCheckThatNamesIt() {
        assertEquals("flow.winter", SERVICE.check(CheckTopic.WINTER_FLOW).orElseThrow());
        assertEquals("pressure.scald", SERVICE.check(CheckTopic.SCALDING).orElseThrow());
    }

    @Test
    void twoCalculatorsOfOneIdAreAProblem() {
        Calculator one = new SyntheticCalculator("made-up", List.of(), (survey, findings) -> {});
        Calculator other = new SyntheticCalculator("made-up", List.of(MADE), (survey, findings) -> {});
        assertEquals(1, new TwinfeedService(List.of(one, other)).problems().size());
    }

    @Test
    void aMadeJobIsCheckedAndKeepsTheCatalogue() {
        OpenedJob opened = rowan();
        Job job = EcoreUtil.copy(opened.job());
        OpenedJob checked = SERVICE.checked(opened, job);
        assertSame(job, checked.job());
        assertSame(opened.catalogue(), checked.catalogue());
    }

    /** One check left open, and one calculator that breaks, in each of two options. */
    @Test
    void checksWithoutAnAnswerAreCountedOverAllOptions() {
        OpenedJob opened = rowan();
        assertEquals(
                0,
                made((survey, findings) -> findings.on(MADE).compare(1, 0).add())
                        .judge(opened, null, "h95", Locale.UK)
                        .unansweredChecks());
        AssessedJob open = made((survey, findings) -> {}).judge(opened, null, "h95", Locale.UK);
        assertEquals(2, open.unansweredChecks());
        assertTrue(open.unanswered());
        AssessedJob broken = made((survey, findings) -> {
                    throw new IllegalStateException("broken");
                })
                .judge(opened, null, "h95", Locale.UK);
        assertEquals(4, broken.unansweredChecks());
    }

    @Test
    void theFirstOptionMayNeedWorkToo() {
        OpenedJob opened = rowan();
        opened.job().getSurvey().setUnit(null);
        Remedy note = new Remedy("note", "note", Map.of(), List.of(), false, 0, survey -> survey.setNotes("done"));
        AssessedJob judged = made((survey, findings) -> findings.on(MADE)
                        .compare("done".equals(survey.getNotes()) ? 1 : -1, 0)
                        .remedy(note)
                        .add())
                .judge(opened, null, "h95", Locale.UK);
        assertEquals(
                "done", judged.withWork(judged.record().getOptions().get(0)).getNotes());
    }

    @Test
    void aSurveyWithoutADayIsPricedOnTheDayOfTheBook() {
        OpenedJob opened = rowan();
        Remedy cable = remedy("cable-10", 7, 9);
        WorkCost dated = BookCosts.of(PRICES, opened).of(List.of(cable));
        opened.job().getSurvey().setTakenOn(null);
        assertEquals(dated, BookCosts.of(PRICES, opened).of(List.of(cable)));
    }

    /** A house surveyed in August, and new prices from September on: works are compared by those of the quote to come. */
    @Test
    void aSurveyFromBeforeTheBookIsPricedOnTheFirstDayOfTheBook() {
        OpenedJob opened = rowan();
        Remedy cable = remedy("cable-10", 7, 9);
        WorkCost dated = BookCosts.of(PRICES, opened).of(List.of(cable));
        opened.job().getSurvey().setTakenOn(PRICES.getDate().minusDays(1));
        assertEquals(dated, BookCosts.of(PRICES, opened).of(List.of(cable)));
        assertEquals(
                Verdict.SUITS_WITH_WORK,
                last(SERVICE.judge(opened, PRICES, "h105", Locale.UK)).getVerdict());
    }

    /** Text of the CSV list as a workbook. */
    private Path workbook() throws IOException {
        Path file = folder.resolve("prices.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet sheet = book.createSheet("Prices");
            CsvRows.read(BOOK, 10_000, 1, row -> {
                var cells = sheet.createRow(row.number() - 1);
                for (int at = 0; at < row.cells().size(); at++) {
                    cells.createCell(at).setCellValue(row.cells().get(at));
                }
            });
            book.write(out);
        }
        return file;
    }

    @Test
    void aPriceBookIsReadFromEitherKindOfFile() throws IOException {
        PriceBook text = SERVICE.book(BOOK);
        assertEquals(
                new BigDecimal("158.00"),
                text.getItems().stream()
                        .filter(item -> item.getCode().equals("h95"))
                        .findFirst()
                        .orElseThrow()
                        .getPrice());
        assertEquals(text.getItems().size(), SERVICE.book(workbook()).getItems().size());
    }

    @Test
    void aPriceBookThatIsNotThereIsNamedAsSuch() {
        for (String name : List.of("nowhere.csv", "nowhere.xlsx")) {
            Path nowhere = folder.resolve(name);
            InputException refused = assertThrows(InputException.class, () -> SERVICE.book(nowhere));
            assertTrue(refused.getMessage().contains(name + ": there is no such file"), refused.getMessage());
        }
    }

    /** Codes that every job, a kind of work or a repair may need; each calculator's are told under its title. */
    @Test
    void whatABookLacksIsToldByWhatNeedsIt() {
        PriceBook less = EcoreUtil.copy(PRICES);
        less.getItems().removeIf(item -> Set.of("task-isolate", "cable-10", "part-hose")
                .contains(item.getCode()));
        List<BookReport.Lack> lacking = SERVICE.lacking(less);
        assertEquals(new BookReport.Lack(BookReport.Need.JOB, "", List.of("task-isolate")), lacking.get(0));
        assertEquals(
                new BookReport.Lack(BookReport.Need.REPAIR, "", List.of("part-hose")), lacking.get(lacking.size() - 1));
        List<BookReport.Lack> work = lacking.subList(1, lacking.size() - 1);
        assertTrue(work.stream().allMatch(each -> each.need() == BookReport.Need.WORK), work.toString());
        assertEquals(
                1,
                work.stream().filter(each -> each.codes().contains("cable-10")).count(),
                "once, although several calculators need it");
        assertEquals(
                "Circuit",
                work.stream()
                        .filter(each -> each.codes().contains("cable-10"))
                        .findFirst()
                        .orElseThrow()
                        .subject());
    }

    /**
     * Heat that the water takes up: 9.5 kW between 5 and 40 degC, of water of about 4.19 kJ/(kg K), give 9.5 / (35 x 4.19) kg/s
     * = 3.89 kg/min.
     */
    @Test
    void aFormulaAnswersWithItsWorkingInWords() {
        NamedFormula flow = SERVICE.formula("flow").orElseThrow();
        FormulaAnswer answer = flow.answer(Map.of("power", "9.5kW", "intake", "5C", "outlet", "40C"), Locale.UK);
        FormulaAnswer.Result mass = answer.results().get(0);
        assertEquals(3.89 / 60, mass.si(), 0.01 / 60);
        assertEquals("mass flow", mass.title());
        assertEquals("Massenstrom", flow.text(Locale.GERMANY, "result.massFlow"));
        assertEquals("January", flow.text(Locale.UK, "month.1"), "a text that all calculators share");
        assertFalse(answer.refused());
        assertEquals(FormulaAnswer.Note.NONE, answer.trouble());
        assertTrue(answer.steps().stream().anyMatch(step -> "P".equals(step.getSymbol())), answer.steps()::toString);
        answer.steps().forEach(step -> assertFalse(step.getMeaning().isEmpty()));
    }

    @Test
    void aFormulaWithoutAnAnswerSaysWhy() {
        NamedFormula flow = SERVICE.formula("flow").orElseThrow();
        FormulaAnswer answer = flow.answer(Map.of("power", "9.5kW", "intake", "40C", "outlet", "38C"), Locale.UK);
        assertTrue(answer.refused());
        assertEquals(List.of(), answer.results());
        assertEquals(
                new FormulaAnswer.Note(
                        "noHeatingNeeded", "the outlet temperature is not above the intake: there is nothing to heat"),
                answer.trouble());
    }

    @Test
    void whatToMindAboutAnAnswerIsSaidInWords() {
        FormulaAnswer answer = SERVICE.formula("flow")
                .orElseThrow()
                .answer(Map.of("power", "9.5kW", "intake", "5C", "outlet", "60C"), Locale.UK);
        assertEquals(1, answer.warnings().size(), answer.warnings()::toString);
        assertEquals("scaldStrong", answer.warnings().get(0).key());
        assertTrue(answer.warnings().get(0).text().contains("can scald"), answer.warnings()::toString);
    }
}
