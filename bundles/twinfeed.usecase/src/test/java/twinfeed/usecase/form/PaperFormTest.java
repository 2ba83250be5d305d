// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Column;
import twinfeed.document.JobSheet.Section;
import twinfeed.model.check.ReadingRange;
import twinfeed.model.form.FormPart;
import twinfeed.model.form.SurveyForm;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobFactory;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.model.survey.WaterFeed;
import twinfeed.pdf.JobSheetPdf;
import twinfeed.workbook.form.FormLanguage;

class PaperFormTest {
    /** The letters of the form; it takes smaller ones where a page would not do. */
    private static final float FORM_POINTS = 7.2f;

    /** Width of the text on A4, and the room beside the letters of a cell. */
    private static final double TABLE_MM = 180;

    private static final double PADDING_MM = 2.4;

    private static final double MM_PER_POINT = 25.4 / 72;

    private static final LocalDate DAY = LocalDate.of(2026, 10, 6);

    /** No word of a head is wider than its column in the typeface of the PDF, so that none is cut. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyWordOfAHeadFitsItsColumn(String language) throws Exception {
        Font font;
        try (InputStream typeface =
                Objects.requireNonNull(JobSheetPdf.class.getResourceAsStream("fonts/LiberationSans-Bold.ttf"))) {
            font = Font.createFont(Font.TRUETYPE_FONT, typeface).deriveFont(FORM_POINTS);
        }
        FontRenderContext context = new FontRenderContext(null, true, true);
        JobSheet form = new PaperForm(new FormLanguage(Locale.forLanguageTag(language), attribute -> List.of()))
                .blank(LocalDate.of(2026, 10, 6));
        int columns = 0;
        for (Section section : form.sections()) {
            List<Column> heads =
                    section.table() == null ? List.of() : section.table().columns();
            double shares = heads.stream().mapToDouble(Column::share).sum();
            for (Column head : heads) {
                double room = TABLE_MM * head.share() / shares - PADDING_MM;
                for (String word : head.head().split("\\s+|(?<=\u00ad)")) {
                    double width = font.getStringBounds(word.replace('\u00ad', '-'), context)
                                    .getWidth()
                            * MM_PER_POINT;
                    assertTrue(width <= room, word + ": " + width + " mm in " + room + " mm");
                    columns++;
                }
            }
        }
        assertTrue(columns > 40, "columns: " + columns);
    }

    private static PaperForm english() {
        return new PaperForm(new FormLanguage(Locale.UK, attribute -> List.of()));
    }

    private static JobSheet blank() {
        return english().blank(DAY);
    }

    private static Section section(JobSheet form, String title) {
        return form.sections().stream()
                .filter(each -> each.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError(title + " in "
                        + form.sections().stream().map(Section::title).toList()));
    }

    private static JobSheet.Table table(JobSheet form, String title) {
        return Objects.requireNonNull(section(form, title).table());
    }

    /** The readings of a page, down the left column and then down the right one. */
    private static List<String> readings(JobSheet form, String title) {
        List<List<String>> rows = table(form, title).rows();
        return Stream.concat(rows.stream().map(row -> row.get(0)), rows.stream().map(row -> row.get(4)))
                .filter(label -> !label.isEmpty())
                .toList();
    }

    @Test
    void theBlankFormGoesThroughTheHouseInOrder() {
        assertEquals(
                List.of(
                        "Visit and house",
                        "Present unit",
                        "Symptom",
                        "Water",
                        "Water supply \u203a Pipe",
                        "Water supply \u203a Tap",
                        "Electricity",
                        "Electricity supply \u203a Shower circuit \u203a Cable",
                        "Electricity supply \u203a Other load",
                        "What is wanted"),
                blank().sections().stream().map(Section::title).toList());
        assertEquals("", blank().reference());
    }

    /** The file of heaters is the office's business. */
    @Test
    void theFirstPageOfTheBlankFormAsksForNoFile() {
        assertTrue(
                readings(blank(), "Visit and house").stream()
                        .noneMatch(label -> label.toLowerCase(Locale.UK).contains("catalogue")),
                () -> readings(blank(), "Visit and house").toString());
    }

    @Test
    void readingsAreNamedWithTheirThingAndUnit() {
        List<String> water = readings(blank(), "Water");
        assertTrue(water.contains("Test: Running pressure, bar"), water.toString());
        assertTrue(water.contains("Hardness, as calcium carbonate, mg/L"), water.toString());
        assertTrue(water.contains("Stop valve fully open"), water.toString());
        List<String> house = readings(blank(), "Visit and house");
        assertEquals(List.of("Taken by", "Taken on"), house.subList(0, 2), "who and when come first");
        assertTrue(house.contains("Customer: Name") && house.contains("House: Name"), house.toString());
    }

    @Test
    void noReadingIsAskedTwiceAndNoneOfTheOffice() {
        List<String> all = List.of("Visit and house", "Present unit", "Water", "Electricity", "What is wanted").stream()
                .flatMap(title -> readings(blank(), title).stream())
                .toList();
        assertEquals(all.stream().distinct().toList(), all);
        FormLanguage language = new FormLanguage(Locale.UK, attribute -> List.of());
        for (var office : List.of(Literals.SURVEY__RULES, Literals.SURVEY__CLIMATE, Literals.CUSTOMER__EMAIL)) {
            String label = language.label(office);
            assertTrue(all.stream().noneMatch(each -> each.contains(label)), label);
        }
    }

    /** Names and addresses, and notes for the customer, are longer than readings. */
    @Test
    void whatIsWrittenInWordsHasMoreRoom() {
        List<Column> house = table(blank(), "Visit and house").columns();
        assertTrue(house.get(1).share() > 2 * house.get(5).share());
        List<Column> wanted = table(blank(), "What is wanted").columns();
        assertTrue(wanted.get(5).share() > 2 * wanted.get(1).share());
        List<Column> water = table(blank(), "Water").columns();
        assertEquals(water.get(1).share(), water.get(5).share());
        for (List<Column> columns : List.of(house, wanted, water)) {
            assertEquals(
                    columns.subList(0, 4).stream().mapToInt(Column::share).sum(),
                    columns.subList(4, 8).stream().mapToInt(Column::share).sum(),
                    "both halves of the page");
        }
    }

    @Test
    void tablesHaveRowsForWhatAHouseUsuallyHas() {
        assertEquals(4, table(blank(), "Water supply \u203a Pipe").rows().size());
        assertEquals(2, table(blank(), "Water supply \u203a Tap").rows().size());
        assertEquals(
                3, table(blank(), "Electricity supply \u203a Other load").rows().size());
        List<String> heads = table(blank(), "Water supply \u203a Pipe").columns().stream()
                .map(Column::head)
                .toList();
        assertEquals(
                List.of(
                        "Name",
                        "Material",
                        "Nominal size",
                        "Bore, mm",
                        "Length, m",
                        "Rise to its far end, m",
                        "Fittings"),
                heads);
        table(blank(), "Water supply \u203a Pipe")
                .rows()
                .forEach(row -> assertEquals(heads.size(), row.size(), "cells to write in"));
    }

    private static Job job() {
        Job job = JobFactory.eINSTANCE.createJob();
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        survey.setTakenBy("A. Fitter");
        job.setSurvey(survey);
        return job;
    }

    @Test
    void whatChecksWaitForComesFirstAndOnce() {
        Job job = job();
        WaterFeed feed = SurveyFactory.eINSTANCE.createWaterFeed();
        feed.setTest(SurveyFactory.eINSTANCE.createWaterTest());
        job.getSurvey().setWater(feed);
        Set<String> needed = new LinkedHashSet<>(List.of(
                "survey.water.test.runningPressure",
                "survey.water.segments[loft].length",
                "survey.water.hardness",
                "survey.water.nothing",
                "catalogue"));
        JobSheet form = english().missing(job, needed, "Rowan Brook", DAY);
        assertEquals("Rowan Brook", form.reference());
        Section first = form.sections().get(0);
        assertEquals("Checks wait for these", first.title());
        assertEquals(
                List.of(
                        "Two-point test: Running pressure, bar",
                        "Pipe: Length, m (loft)",
                        "Water supply: Hardness, as calcium carbonate, mg/L"),
                readings(form, first.title()));
        List<Column> columns = table(form, first.title()).columns();
        assertEquals(columns.get(1).share(), columns.get(5).share());
        List<String> water = readings(form, "Water");
        assertTrue(
                water.stream().noneMatch(each -> each.contains("Running") || each.contains("Hardness")),
                water.toString());
        assertTrue(water.contains("Test: Static pressure, bar"), water.toString());
    }

    @Test
    void onlyWhatIsNotThereIsAsked() {
        JobSheet form = english().missing(job(), Set.of(), "", DAY);
        List<String> house = readings(form, "Visit and house");
        assertTrue(house.contains("Taken on") && !house.contains("Taken by"), house.toString());
        assertTrue(
                readings(form, "Water").contains("Hardness, as calcium carbonate, mg/L"),
                "nobody has looked at the water yet");
        assertTrue(
                readings(form, "Electricity").stream().noneMatch(each -> each.startsWith("RCD:")),
                "there may be no device of that kind");
        List<String> wanted = readings(form, "What is wanted");
        assertTrue(wanted.stream().noneMatch(each -> each.contains("Heater to be checked")), wanted.toString());
        assertTrue(form.sections().stream().noneMatch(each -> each.title().contains("Pipe")), "no blank tables");
        Job begun = job();
        ElectricalFeed electricity = SurveyFactory.eINSTANCE.createElectricalFeed();
        Circuit circuit = SurveyFactory.eINSTANCE.createCircuit();
        circuit.setRcd(SurveyFactory.eINSTANCE.createResidualDevice());
        electricity.setCircuit(circuit);
        begun.getSurvey().setElectricity(electricity);
        List<String> all = readings(english().missing(begun, Set.of(), "", DAY), "Electricity");
        assertTrue(all.contains("RCD: Rated residual current, mA"), all.toString());
        assertTrue(all.stream().noneMatch(each -> each.startsWith("Isolator:")), all.toString());
    }

    /** The values of the units in which they are asked for; which ones does not matter here. */
    private static Job complete() {
        Job job = JobFactory.eINSTANCE.createJob();
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        List<FormPart> parts = SurveyForm.pages().stream()
                .flatMap(page -> page.parts().stream())
                .filter(part -> part.path().stream().noneMatch(EReference::isMany))
                .toList();
        for (FormPart part : parts) {
            EObject owner = job;
            for (EReference step : part.path()) {
                if (owner.eGet(step) == null) {
                    owner.eSet(step, EcoreUtil.create(step.getEReferenceType()));
                }
                owner = (EObject) Objects.requireNonNull(owner.eGet(step));
            }
            for (EAttribute attribute : part.attributes()) {
                if (!attribute.isMany()) {
                    owner.eSet(attribute, value(attribute));
                }
            }
        }
        return job;
    }

    private static Object value(EAttribute attribute) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        String text = type == LocalDate.class
                ? "2026-10-06"
                : type == Boolean.class || type == boolean.class
                        ? "true"
                        : attribute.getEAttributeType() instanceof EEnum list
                                ? list.getELiterals().get(0).getLiteral()
                                : ("1 " + ReadingRange.unit(attribute)).strip();
        return EcoreUtil.createFromString(attribute.getEAttributeType(), text);
    }

    @Test
    void whereNothingIsMissingThatIsSaid() {
        JobSheet form = english().missing(complete(), Set.of(), "Rowan Brook", DAY);
        assertEquals(List.of(), form.sections().stream().map(Section::title).toList());
        assertEquals(
                "The job lacks nothing that is asked on paper.",
                form.facts().get(0).text());
        Job open = complete();
        open.getSurvey().getWater().setHardness(null);
        JobSheet one = english().missing(open, Set.of(), "Rowan Brook", DAY);
        assertEquals(List.of("Hardness, as calcium carbonate, mg/L"), readings(one, "Water"));
        assertTrue(one.facts().get(0).text().startsWith("Only what the job lacks."));
    }
}
