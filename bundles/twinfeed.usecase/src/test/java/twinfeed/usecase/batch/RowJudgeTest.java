// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.rows.Row;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.choices.ChoicesInJob;
import twinfeed.usecase.choices.QuoteChoices;

/** One row of a list, with a house of the demonstration as the template. */
final class RowJudgeTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();
    private static final Row HEAD = new Row(
            1,
            List.of(
                    "dwelling",
                    "symptoms",
                    "unit.age",
                    "site.address",
                    "site.lastInspection",
                    "water.test.runningPressure",
                    "electricity.circuit.segments[1].length",
                    "unit.heaterId",
                    "candidates"));
    private static final RowJudge JUDGE = new RowJudge(SERVICE, task(), "list.csv", HEAD);

    private static BatchTask task() {
        Path book = Demo.FOLDER.resolve("prices.csv");
        return new BatchTask(
                SERVICE.open(Demo.FOLDER.resolve("rowan-brook.job"), null),
                SERVICE.book(book),
                FirmFile.beside(book),
                DemoBatch.DAY,
                Locale.UK);
    }

    private static Row row(String... cells) {
        return new Row(7, List.of(cells));
    }

    private static DwellingResult judged(String... cells) {
        return Objects.requireNonNull(JUDGE.take(row(cells), 0).result());
    }

    private static @Nullable Object line(DwellingResult dwelling, String key) {
        return dwelling.line().get(ResultLine.KEYS.indexOf(key));
    }

    private static List<List<@Nullable Object>> sheet(DwellingResult dwelling, DwellingSheets.Sheet sheet) {
        return dwelling.sheets().get(sheet.ordinal());
    }

    @Test
    void aDwellingThatSuitsIsOfferedTheStrongerUnit() {
        DwellingResult dwelling = judged("Sedge Row 1", "", "9", "1 Sedge Row; Westermere", "2025-02-11");
        assertEquals("Sedge Row, Westermere", dwelling.street());
        assertFalse(dwelling.unanswered());
        assertEquals(Urgency.SOUND, dwelling.urgency());
        JudgedDwelling told = dwelling.judged();
        assertEquals(
                List.of(7, "Sedge Row 1", 9, 0, "", "Heater 9.5 kW, two-element", "", "GBP", ""),
                List.of(
                        told.row(),
                        told.name(),
                        told.age(),
                        told.complaints(),
                        told.advice(),
                        told.offer(),
                        told.works(),
                        String.valueOf(told.currency()),
                        told.why()));
        assertEquals(Verdict.SUITS, told.present());
        assertEquals(
                Arrays.asList(
                        7,
                        "Sedge Row 1",
                        "judged",
                        "sound",
                        "",
                        9,
                        LocalDate.of(2025, 2, 11),
                        0,
                        "suits",
                        "",
                        "Heater 9.5 kW, two-element",
                        "suits",
                        "",
                        told.total() == null ? null : line(dwelling, "net"),
                        line(dwelling, "tax"),
                        told.total(),
                        "GBP",
                        "",
                        line(dwelling, "readThere"),
                        3,
                        4,
                        0,
                        ""),
                dwelling.line());
        DwellingOffer offer = Objects.requireNonNull(dwelling.offer());
        assertEquals(told.total(), offer.total());
        assertEquals(line(dwelling, "net"), offer.net());
        assertEquals(line(dwelling, "tax"), offer.tax());
        assertEquals(0, offer.net().add(offer.tax()).compareTo(offer.total()));
        assertEquals(
                0,
                offer.others().values().stream()
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .compareTo(offer.net()),
                "the headings add up");
        assertFalse(offer.onRequest());
    }

    @Test
    void everySheetHasItsRows() {
        DwellingResult dwelling = judged("Sedge Row 1", "", "9", "1 Sedge Row; Westermere", "2025-02-11");
        assertEquals(
                List.of(Arrays.asList(
                        7,
                        "Sedge Row 1",
                        "5 nothing urgent",
                        "",
                        9,
                        LocalDate.of(2025, 2, 11),
                        "",
                        Verdict.SUITS,
                        Verdict.SUITS,
                        dwelling.judged().total(),
                        3,
                        4,
                        0)),
                sheet(dwelling, DwellingSheets.Sheet.DWELLINGS));
        String read = "Two-point test: Running pressure; Cable: Length (1); Present unit: Heater of the catalogue;"
                + " Heater to be checked";
        assertEquals(
                List.of(List.of("Sedge Row, Westermere", "Sedge Row 1", "5 nothing urgent", "", read)),
                sheet(dwelling, DwellingSheets.Sheet.VISITS));
        assertEquals(read, line(dwelling, "readThere"));
        assertEquals(List.of(), sheet(dwelling, DwellingSheets.Sheet.REPAIRS));
        assertEquals(
                List.of(Arrays.asList(
                        7,
                        "Sedge Row 1",
                        "Heater 9.5 kW, two-element",
                        Verdict.SUITS,
                        "",
                        line(dwelling, "net"),
                        line(dwelling, "tax"),
                        line(dwelling, "total"),
                        "",
                        "It suits this house as it is.")),
                sheet(dwelling, DwellingSheets.Sheet.OFFERS));
        List<List<@Nullable Object>> heaters = sheet(dwelling, DwellingSheets.Sheet.HEATERS);
        assertEquals(
                List.of("Heater 8.5 kW, two-element", "Heater 9.5 kW, two-element"),
                heaters.stream().map(each -> each.get(2)).toList());
        assertTrue(String.valueOf(heaters.get(0).get(4)).contains("RCD"), heaters.toString());
        assertEquals("", heaters.get(0).get(5));
        List<List<@Nullable Object>> readings = sheet(dwelling, DwellingSheets.Sheet.READINGS);
        assertEquals(List.of(7, "Sedge Row 1", "Present unit: Age, years", "9", "own"), readings.get(0));
        assertEquals(
                List.of(7, "Sedge Row 1", "Cable: Length (1)", "6.5 m \u00b1 0.2 m", "from the template"),
                readings.get(4));
    }

    @Test
    void aSignOfDangerComesWithWhatToDo() {
        DwellingResult dwelling = judged("Sedge Row 2", "rcdTrips");
        assertEquals(Urgency.SIGN, dwelling.urgency());
        assertEquals(-1, dwelling.judged().age(), "the template's age is no age of its own");
        assertEquals(1, dwelling.judged().complaints());
        assertTrue(
                dwelling.judged().advice().startsWith("repair first: "),
                dwelling.judged().advice());
        assertEquals(1, sheet(dwelling, DwellingSheets.Sheet.REPAIRS).size());
        assertEquals(
                dwelling.judged().advice(),
                sheet(dwelling, DwellingSheets.Sheet.VISITS).get(0).get(3));
        assertEquals("Sedge Row", dwelling.street(), "of its name, where it has no address");
        assertNull(line(dwelling, "lastInspection"), "that of the template's house is not taken over");
    }

    @Test
    void workThatIsNeededIsNamedAndAddsUpByItself() {
        DwellingResult dwelling = judged("Sedge Row 7", "", "", "Flat 2", "", "", "", "-", "h105");
        String work = "RCBO of 50 A in place of the present breaker or fuse";
        assertEquals(work, dwelling.judged().works());
        assertEquals("suits-with-work", line(dwelling, "offerVerdict"));
        DwellingOffer offer = Objects.requireNonNull(dwelling.offer());
        assertEquals(Map.of(work, new BigDecimal("56.00")), offer.works());
        assertEquals(
                0,
                offer.others().values().stream()
                        .reduce(new BigDecimal("56.00"), BigDecimal::add)
                        .compareTo(offer.net()));
        assertNull(dwelling.judged().present(), "nobody knows what is there");
        assertEquals("", dwelling.street());
        assertFalse(String.valueOf(
                        sheet(dwelling, DwellingSheets.Sheet.VISITS).get(0).get(0))
                .isEmpty());
        assertEquals(work, sheet(dwelling, DwellingSheets.Sheet.HEATERS).get(0).get(5));
    }

    @Test
    void whatIsMissingIsToBeReadThere() {
        DwellingResult dwelling = judged("Sedge Row 3", "", "9", "", "", "-");
        assertEquals(Urgency.OPEN, dwelling.urgency());
        assertEquals("cannot-tell", line(dwelling, "presentVerdict"));
        String read = String.valueOf(line(dwelling, "readThere"));
        assertTrue(read.contains("Two-point test: Running pressure"), read);
        assertEquals(read.indexOf("unning pressure"), read.lastIndexOf("unning pressure"), "once: " + read);
        assertFalse(read.contains("Age"), "the list says it");
    }

    @Test
    void aRowThatCannotBeUsedSaysWhy() {
        Refused wrong = Objects.requireNonNull(
                JUDGE.take(row("Sedge Row 4", "", "old", "", "", "high"), 0).refused());
        assertEquals(7, wrong.row());
        assertEquals("Sedge Row 4", wrong.dwelling());
        assertEquals(2, wrong.reason().lines().count(), wrong.reason());
        assertTrue(wrong.reason().startsWith("unit.age \"old\": "), wrong.reason());
        Refused again = Objects.requireNonNull(JUDGE.take(row("Sedge Row 1"), 2).refused());
        assertTrue(again.reason().contains("2"), again.reason());
        Refused symptom = Objects.requireNonNull(
                JUDGE.take(row("Sedge Row 5", "rcdTrip"), 0).refused());
        assertTrue(symptom.reason().contains("rcdTrips"), symptom.reason());
    }

    @Test
    void aPlainLineIsThatOfTheList() {
        assertEquals(String.join(",", ResultLine.KEYS), RowJudge.csvHead());
        String line = JUDGE.csv(row("Sedge Row 4", "", "old"), 0);
        assertTrue(line.startsWith("7,Sedge Row 4,rejected,"), line);
        assertFalse(line.contains("\n"), line);
        assertEquals("sedge row 4", JUDGE.key(row(" Sedge  ROW 4")));
    }

    @Test
    void aHouseKeepsNothingThatIsTheTemplatesAlone() {
        Survey survey = JUDGE.survey(row("Sedge Row 6", "kettling"));
        assertEquals("Sedge Row 6", survey.getSite().getName());
        assertNull(survey.getSite().getReference());
        assertNull(survey.getSite().getAddress());
        assertNull(survey.getSite().getNote());
        assertNull(survey.getNotes());
        assertEquals(1, survey.getSymptoms().size());
        assertEquals("40 \u00b0C", String.valueOf(survey.getTargetOutlet()), "what all share stays");
        assertEquals(7, JUDGE.fields().size());
    }

    @Test
    void whatAListHasNoColumnForIsToBeReadThereToo() {
        BatchTask task = task();
        task.pattern().job().getSurvey().getWater().getTest().setRunningPressure(null);
        RowJudge judge = new RowJudge(
                SERVICE,
                task,
                "list.csv",
                new Row(1, List.of("dwelling", "symptoms", "electricity.circuit.segments[1].length", "takenOn")));
        DwellingResult dwelling = Objects.requireNonNull(
                judge.take(row("Sedge Row 8", "kettling", "", "2026-11-20"), 0).result());
        assertEquals("Cable: Length (1); running pressure", line(dwelling, "readThere"));
        assertEquals(-1, dwelling.judged().age());
        assertEquals(8, line(dwelling, "age"), "of the template");
    }

    @Test
    void whatWasDecidedOfTheTemplatesQuoteIsDecidedForThatHouseAlone() {
        BatchTask task = task();
        task.pattern()
                .job()
                .setQuote(ChoicesInJob.draft(QuoteChoices.NONE
                        .offering(List.of("h85"), "")
                        .discount(new BigDecimal("0.5"), null, "a friend")));
        RowJudge judge = new RowJudge(SERVICE, task, "list.csv", new Row(1, List.of("dwelling")));
        DwellingResult dwelling =
                Objects.requireNonNull(judge.take(row("Sedge Row 1"), 0).result());
        assertEquals("Heater 9.5 kW, two-element", dwelling.judged().offer());
        assertEquals(judged("Sedge Row 1").judged().total(), dwelling.judged().total());
    }

    @Test
    void worksAreThoseOfTheHeaterThatIsOffered() {
        DwellingResult dwelling = judged("Sedge Row 9", "", "", "", "", "", "", "", "h105; h95");
        assertEquals("Heater 9.5 kW, two-element", dwelling.judged().offer());
        assertEquals("", dwelling.judged().works());
        assertEquals(Map.of(), Objects.requireNonNull(dwelling.offer()).works());
    }

    /** Nothing that was found, written or photographed in the template's house is true of another one. */
    @Test
    void whatIsOneHousesOwnIsTakenOutOfTheTemplate() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        Site site = SurveyFactory.eINSTANCE.createSite();
        site.setName("Rowan Brook");
        site.setReference("NQ-1");
        site.setAddress("1 Rowan Brook");
        site.setNote("Dog.");
        site.setLastInspection(DemoBatch.DAY);
        site.setKind("flat");
        survey.setSite(site);
        PresentUnit unit = SurveyFactory.eINSTANCE.createPresentUnit();
        unit.setGuaranteeUntil(DemoBatch.DAY);
        unit.setNote("Scratched.");
        unit.setHeaterId("h75");
        survey.setUnit(unit);
        survey.getSymptoms().add(SurveyFactory.eINSTANCE.createSymptom());
        survey.setFaultFinding(SurveyFactory.eINSTANCE.createFaultFinding());
        survey.setNotes("Invented.");
        survey.setTakenBy("A. Fitter");
        survey.getPhotos().add(SurveyFactory.eINSTANCE.createPhoto());
        RowJudge.withoutOwn(survey);
        Survey left = SurveyFactory.eINSTANCE.createSurvey();
        left.setSite(SurveyFactory.eINSTANCE.createSite());
        left.getSite().setKind("flat");
        left.setUnit(SurveyFactory.eINSTANCE.createPresentUnit());
        left.getUnit().setHeaterId("h75");
        assertTrue(EcoreUtil.equals(left, survey), survey.toString());
        Survey bare = SurveyFactory.eINSTANCE.createSurvey();
        RowJudge.withoutOwn(bare);
        assertTrue(EcoreUtil.equals(SurveyFactory.eINSTANCE.createSurvey(), bare));
    }

    @Test
    void aRowIsJudgedTheSameWhateverCameBeforeIt() {
        RowJudge after = new RowJudge(SERVICE, task(), "list.csv", HEAD);
        List<Row> rows = IntStream.rangeClosed(2, 6)
                .mapToObj(number -> new Row(
                        number,
                        List.of(
                                "Sedge Row " + number,
                                number == 4 ? "isolatorHot" : "",
                                "9",
                                number + " Sedge Row; Westermere")))
                .toList();
        for (Row row : rows) {
            RowJudge alone = new RowJudge(SERVICE, task(), "list.csv", HEAD);
            assertEquals(alone.take(row, 0), after.take(row, 0));
        }
    }
}
