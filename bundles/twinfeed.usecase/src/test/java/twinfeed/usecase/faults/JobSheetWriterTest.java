// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.diagnosis.visit.FaultSheet.Answer;
import twinfeed.diagnosis.visit.FaultSheet.Cause;
import twinfeed.diagnosis.visit.FaultSheet.Expected;
import twinfeed.diagnosis.visit.FaultSheet.Next;
import twinfeed.diagnosis.visit.FaultSheet.Reading;
import twinfeed.diagnosis.visit.FaultSheet.Tick;
import twinfeed.document.DocumentTexts;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Section;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** The sheet says what was found, whatever that is, and leaves a gap where nobody knows. */
class JobSheetWriterTest {
    private static final DocumentTexts WORDS = new DocumentTexts(Locale.ENGLISH);

    private final Survey survey = SurveyFactory.eINSTANCE.createSurvey();

    private JobSheet sheet(
            String conclusion,
            @Nullable Next next,
            List<Cause> causes,
            List<Reading> readings,
            @Nullable RepairAdvice repair) {
        FaultSheet found = new FaultSheet(
                "Heater 9.5 kW",
                conclusion,
                "What was found.",
                causes,
                0,
                next,
                List.of(new Answer("hot", "Is it hot?", "yes", "said", "")),
                readings,
                List.of(),
                conclusion.equals("part") ? "Isolate first." : "",
                List.of(),
                List.of(),
                List.of(),
                repair,
                List.of(),
                0,
                "Engineering judgement",
                List.of("Electricity can kill."));
        return new JobSheetWriter(found, survey, Locale.ENGLISH)
                .write("A job", Firm.of("Invented", "", ""), "1", LocalDate.of(2026, 9, 1));
    }

    private static Section section(JobSheet sheet, String key) {
        return sheet.sections().stream()
                .filter(each -> each.title().equals(WORDS.get(key)))
                .findFirst()
                .orElseThrow();
    }

    private static List<List<String>> rows(Section section) {
        return Objects.requireNonNull(section.table()).rows();
    }

    private static boolean has(JobSheet sheet, String key) {
        return sheet.sections().stream().anyMatch(each -> each.title().equals(WORDS.get(key)));
    }

    @Test
    void withoutANextStepItSaysWhy() {
        for (String conclusion : List.of("part", "supply", "nothing-reported", "open")) {
            String key =
                    switch (conclusion) {
                        case "part" -> "job.next.part";
                        case "supply" -> "job.next.supply";
                        case "nothing-reported" -> "job.next.nothing";
                        default -> "job.next.none";
                    };
            JobSheet sheet = sheet(conclusion, null, List.of(), List.of(), null);
            assertEquals(List.of(WORDS.get(key)), section(sheet, "job.next").sentences());
            assertEquals(conclusion.equals("part"), has(sheet, "job.stop"));
            assertTrue(!has(sheet, "job.repair"));
        }
    }

    @Test
    void theNextStepNamesItsIsolationWhereItNeedsOne() {
        Next cold = new Next("ohm", "What is the resistance?", "cover", "with the meter", 4, 0.5, List.of("Isolate."));
        Next warm = new Next("hot", "Is it hot?", "told", "ask", 1, 0.5, List.of());
        assertEquals(
                3,
                section(sheet("open", cold, List.of(), List.of(), null), "job.next")
                        .sentences()
                        .size());
        assertEquals(
                2,
                section(sheet("open", warm, List.of(), List.of(), null), "job.next")
                        .sentences()
                        .size());
    }

    @Test
    void causesAreNeverCertainAndRemoteOnesAreLeftOut() {
        List<Cause> causes = List.of(
                new Cause("a", "Coil", 0.1, 0.9999, "why", List.of()),
                new Cause("b", "Seal", 0.1, 0.001, "why", List.of()));
        Section told = section(sheet("part", null, causes, List.of(), null), "job.causes");
        assertEquals(1, rows(told).size());
        assertEquals("99 %", rows(told).get(0).get(0));
        assertTrue(!has(sheet("nothing-reported", null, causes, List.of(), null), "job.causes"));
    }

    @Test
    void readingsAreSoundOrNotOrNobodyKnows() {
        List<Reading> readings = List.of(
                new Reading("Coil", "4 kohm", "3 to 5 kohm", true),
                new Reading("Coil", "9 kohm", "3 to 5 kohm", false),
                new Reading("Coil", "9 kohm", "", null));
        assertEquals(
                List.of(WORDS.get("job.sound.yes"), WORDS.get("job.sound.no"), WORDS.get("job.sound.unknown")),
                rows(section(sheet("part", null, List.of(), readings, null), "job.readings")).stream()
                        .map(row -> row.get(3))
                        .toList());
    }

    private static RepairAdvice advice(@Nullable Integer age, @Nullable BigDecimal price, List<String> missing) {
        BigDecimal amount = new BigDecimal("100.00");
        return new RepairAdvice(
                "GBP",
                List.of(),
                amount,
                amount,
                amount,
                5,
                List.of(),
                age,
                price,
                "Repair it.",
                List.of("An assumption."),
                missing);
    }

    @Test
    void theAdviceOnRepairLeavesOutWhatItCannotTell() {
        JobSheet bare = sheet("part", null, List.of(), List.of(), advice(null, null, List.of()));
        JobSheet full =
                sheet("part", null, List.of(), List.of(), advice(9, new BigDecimal("150.00"), List.of("part-hose")));
        int least = section(bare, "job.repair").sentences().size();
        assertEquals(least + 3, section(full, "job.repair").sentences().size());
        assertTrue(section(full, "job.repair").sentences().stream().anyMatch(each -> each.contains("part-hose")));
        assertTrue(section(full, "job.source").sentences().get(0).contains("An assumption."));
    }

    @Test
    void customerAndDwellingAreNamedAsFarAsTheyAreKnown() {
        assertEquals(WORDS.get("job.nobody"), fact("job.customer"));
        Customer customer = SurveyFactory.eINSTANCE.createCustomer();
        customer.setAddress("1 Invented Row");
        survey.setCustomer(customer);
        Site site = SurveyFactory.eINSTANCE.createSite();
        site.setName("Flat 2");
        survey.setSite(site);
        assertEquals("1 Invented Row", fact("job.customer"));
        assertEquals("Flat 2", fact("job.site"));
        site.setAddress("2 Invented Row");
        assertEquals("Flat 2\n2 Invented Row", fact("job.site"));
    }

    private String fact(String key) {
        return sheet("open", null, List.of(), List.of(), null).facts().stream()
                .filter(each -> each.label().equals(WORDS.get(key)))
                .findFirst()
                .orElseThrow()
                .text();
    }

    private JobSheet whole() {
        FaultSheet found = new FaultSheet(
                "Heater 9.5 kW",
                "part",
                "The coil has failed.",
                List.of(new Cause("coil", "Coil", 0.1, 0.01, "why", List.of())),
                0,
                null,
                List.of(new Answer("hot", "Is it hot?", "yes", "said", "by the tenant")),
                List.of(new Reading("Coil", "4 kohm", "3 to 5 kohm", true)),
                List.of(
                        new Tick("showerOff", "Switch it off", "A. Fitter", "09:10", true),
                        new Tick("noticeUp", "Put up a notice", "", "", false)),
                "Isolate first.",
                List.of("The pressure is low."),
                List.of("Asked: is it hot?"),
                List.of(new Expected("Flow", "5 to 6 L/min")),
                advice(null, null, List.of()),
                List.of("An unknown observation."),
                0,
                "Engineering judgement",
                List.of("Electricity can kill."));
        return new JobSheetWriter(found, survey, Locale.ENGLISH)
                .write("A job", Firm.of("Invented", "", ""), "1", LocalDate.of(2026, 9, 1));
    }

    @Test
    void itIsReadInTheOrderOfTheWork() {
        assertEquals(
                List.of(
                                "job.stop",
                                "job.cautions",
                                "job.next",
                                "job.isolation",
                                "job.causes",
                                "job.links",
                                "job.readings",
                                "job.answers",
                                "job.steps",
                                "job.expected",
                                "job.repair",
                                "job.done",
                                "job.notices",
                                "job.source")
                        .stream()
                        .map(WORDS::get)
                        .toList(),
                whole().sections().stream().map(Section::title).toList());
    }

    @Test
    void everySectionSaysWhatWasFound() {
        JobSheet sheet = whole();
        assertEquals(List.of("Isolate first."), section(sheet, "job.stop").sentences());
        assertEquals(
                List.of("Electricity can kill."), section(sheet, "job.cautions").sentences());
        assertEquals(
                List.of("The pressure is low."), section(sheet, "job.links").sentences());
        assertEquals(List.of("Asked: is it hot?"), section(sheet, "job.steps").sentences());
        assertEquals(
                List.of("An unknown observation."),
                section(sheet, "job.notices").sentences());
        assertEquals(
                List.of(
                        List.of(JobSheet.DONE, "Switch it off", "A. Fitter", "09:10"),
                        List.of("", "Put up a notice", "", "")),
                rows(section(sheet, "job.isolation")));
        assertEquals(
                List.of(List.of(
                        "Is it hot?", WORDS.get("job.answer.yes"), WORDS.get("job.origin.said"), "by the tenant")),
                rows(section(sheet, "job.answers")));
        assertEquals(List.of(List.of("Flow", "5 to 6 L/min", "")), rows(section(sheet, "job.expected")));
        assertEquals(
                List.of(List.of("1 %", "Coil", "why", "")), rows(section(sheet, "job.causes")), "one in a hundred");
        assertEquals("The coil has failed.", sheet.conclusion().text());
    }

    @Test
    void columnsHaveHeadsButThoseToTick() {
        List<String> heads = Objects.requireNonNull(
                        section(whole(), "job.isolation").table())
                .columns()
                .stream()
                .map(JobSheet.Column::head)
                .toList();
        assertEquals("", heads.get(0));
        assertEquals(WORDS.get("job.isolation.step"), heads.get(1));
    }

    @Test
    void repairAndNewUnitsStandBesideOneAnother() {
        RepairAdvice advice = new RepairAdvice(
                "GBP",
                List.of(new RepairAdvice.Line("Coil", new BigDecimal("80.00"))),
                new BigDecimal("80.00"),
                new BigDecimal("40.00"),
                new BigDecimal("120.00"),
                5,
                List.of(
                        new RepairAdvice.Replacement(
                                "h95",
                                "Heater 9.5 kW",
                                new BigDecimal("318.50"),
                                new BigDecimal("10.00"),
                                new BigDecimal("328.50"),
                                false),
                        new RepairAdvice.Replacement(
                                "h85",
                                "Heater 8.5 kW",
                                new BigDecimal("299.50"),
                                new BigDecimal("10.00"),
                                new BigDecimal("309.50"),
                                true)),
                null,
                null,
                "Repair it.",
                List.of(),
                List.of());
        List<List<String>> rows = rows(section(sheet("part", null, List.of(), List.of(), advice), "job.repair"));
        assertEquals(List.of("Coil", "\u00a380.00", "", ""), rows.get(0));
        assertEquals(List.of(WORDS.get("job.repair.sum"), "\u00a380.00", "\u00a340.00", "\u00a3120.00"), rows.get(1));
        assertEquals(List.of("Heater 9.5 kW", "\u00a3318.50", "\u00a310.00", "\u00a3328.50"), rows.get(2));
        assertEquals("Heater 8.5 kW (price of a part still open)", rows.get(3).get(0));
        assertEquals(4, rows.size());
    }
}
