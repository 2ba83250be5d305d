// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.io.InputException;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;
import twinfeed.usecase.Demo;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;

/** Forms are written and read back without any calculator. */
class SurveyFormsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 1);
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final TwinfeedService service = new TwinfeedService(List.of());
    private final SurveyForms forms = new SurveyForms(service);

    @TempDir
    private Path folder = Path.of("");

    private String refused(Path form, Path out, @Nullable String catalogue) {
        return String.valueOf(assertThrows(InputException.class, () -> forms.read(form, out, catalogue, TODAY))
                .getMessage());
    }

    @Test
    void aFormOfAJobIsReadBackIntoTheSameReadings() throws IOException {
        var job = service.open(Demo.FOLDER.resolve("alder-beck.job"), null);
        Path form = folder.resolve("form.xlsx");
        forms.write(job, Locale.ENGLISH, form);
        Path catalogue = Demo.FOLDER.resolve(job.job().getCatalogue());
        Files.copy(catalogue, folder.resolve(job.job().getCatalogue()));
        Path out = folder.resolve("again.job");
        forms.read(form, out, null, TODAY);
        assertTrue(Files.size(out) > 1000);
        String taken = refused(form, out, null);
        assertTrue(taken.contains("a form never replaces one"), taken);
    }

    @Test
    void aFormThatNamesNoCatalogueIsRefusedUnlessOneIsNamed() {
        Path form = folder.resolve("blank.xlsx");
        forms.write(null, Locale.ENGLISH, form);
        Path out = folder.resolve("new.job");
        String none = refused(form, out, null);
        assertTrue(none.contains("names no heater catalogue"), none);
        assertFalse(Files.exists(out));
        Path missing = folder.resolve("none.xlsx");
        assertThrows(InputException.class, () -> forms.read(missing, out, null, TODAY));
    }

    @Test
    void whatIsNoWorkbookIsRefused() throws IOException {
        Path form = Files.writeString(folder.resolve("text.xlsx"), "this is no workbook");
        assertThrows(UnusableException.class, () -> forms.read(form, folder.resolve("new.job"), null, TODAY));
        String aFolder = refused(folder, folder.resolve("new.job"), null);
        assertTrue(aFolder.contains("is a folder"), aFolder);
    }

    @Test
    void paperAsksForAllOrForWhatIsMissing() throws IOException {
        Path blank = folder.resolve("blank.pdf");
        forms.print(null, Locale.ENGLISH, DAY, blank);
        Path missing = folder.resolve("missing.pdf");
        forms.print(service.open(Demo.FOLDER.resolve("birch-syke.job"), null), Locale.GERMAN, DAY, missing);
        for (Path page : List.of(blank, missing)) {
            assertTrue(new String(Files.readAllBytes(page), 0, 5, java.nio.charset.StandardCharsets.ISO_8859_1)
                    .startsWith("%PDF-"));
        }
    }

    private Path form(OpenedJob job) throws IOException {
        Path catalogue = Demo.FOLDER.resolve("heaters.catalogue");
        Path beside = folder.resolve("heaters.catalogue");
        if (!Files.exists(beside)) {
            Files.copy(catalogue, beside);
        }
        Path form = folder.resolve("form.xlsx");
        forms.write(job, Locale.ENGLISH, form);
        return form;
    }

    private OpenedJob demonstration() {
        return service.open(Demo.FOLDER.resolve("alder-beck.job"), null);
    }

    @Test
    void theCatalogueThatIsNamedBesideTheFormIsThatOfTheJob() throws IOException {
        OpenedJob job = demonstration();
        job.job().setCatalogue(null);
        Path out = folder.resolve("new.job");
        forms.read(form(job), out, "heaters.catalogue", TODAY);
        assertEquals("heaters.catalogue", service.open(out, null).job().getCatalogue());
    }

    @Test
    void aFormKeepsItsOwnCatalogue() throws IOException {
        Path out = folder.resolve("new.job");
        forms.read(form(demonstration()), out, "others.catalogue", TODAY);
        assertEquals("heaters.catalogue", service.open(out, null).job().getCatalogue());
    }

    @Test
    void aHeaterThatTheCatalogueDoesNotHaveIsRefusedAtItsCell() throws IOException {
        OpenedJob job = demonstration();
        job.job().getSurvey().getUnit().setHeaterId("h999");
        Path out = folder.resolve("new.job");
        Path form = form(job);
        String refused = refused(form, out, null);
        assertTrue(refused.matches("(?s).*[A-Z]\\d+, survey\\.unit\\.heaterId.*"), refused);
        assertFalse(Files.exists(out));
        Files.delete(folder.resolve("heaters.catalogue"));
        forms.read(form, out, null, TODAY);
        assertTrue(Files.exists(out), "without its catalogue nobody knows");
    }

    @Test
    void aWordThatNoRuleSetHasIsRefusedAtItsCell() throws IOException {
        OpenedJob job = demonstration();
        job.job().getSurvey().setClimate("of-the-moon");
        Path out = folder.resolve("new.job");
        String refused = refused(form(job), out, null);
        assertTrue(refused.matches("(?s).*[A-Z]\\d+, survey\\.climate.*"), refused);
        assertTrue(refused.contains("of-the-moon"), refused);
        assertFalse(Files.exists(out));
    }

    @Test
    void whatIsOddIsSaidOnceAndDoesNotStopTheForm() throws IOException {
        OpenedJob job = demonstration();
        job.job().getSurvey().getElectricity().getCircuit().setMeasuredLoop(Resistance.valueOf("0.01 ohm"));
        Path out = folder.resolve("new.job");
        List<String> warnings = forms.read(form(job), out, null, TODAY);
        assertTrue(Files.exists(out));
        // It is below the loop at the origin, and unusual by itself.
        assertEquals(2, warnings.size(), warnings.toString());
        assertTrue(
                warnings.stream()
                        .allMatch(each -> each.contains("sheet Electricity, cell ")
                                && each.contains("survey.electricity.circuit.measuredLoop")),
                warnings.toString());
    }

    @Test
    void aSurveyThatIsStillToComeIsNamedWithItsCell() throws IOException {
        OpenedJob job = demonstration();
        job.job().getSurvey().setTakenOn(TODAY.plusYears(5));
        List<String> warnings = forms.read(form(job), folder.resolve("new.job"), null, TODAY);
        assertEquals(1, warnings.size(), warnings.toString());
        assertTrue(
                warnings.get(0)
                        .matches(
                                ".*sheet Visit and house, cell [A-Z]\\d+, survey\\.takenOn \"2031-11-25\": this day is still.*"),
                warnings.toString());
    }

    /** 30 degC are warmer than any month of the climate, which the rules know and the form does not. */
    @Test
    void whatIsOddByTheRulesIsSaidToo() throws IOException {
        OpenedJob job = demonstration();
        job.job().getSurvey().setWinterIntake(Temperature.valueOf("30 °C"));
        List<String> warnings = forms.read(form(job), folder.resolve("new.job"), null, TODAY);
        assertTrue(
                warnings.stream()
                        .anyMatch(each -> each.contains("survey.winterIntake") && each.contains("warmest month")),
                warnings.toString());
    }

    @Test
    void paperNamesTheHouseAndWhatItsChecksWaitFor() throws IOException {
        SurveyForms all = new SurveyForms(TwinfeedService.onClassPath());
        OpenedJob job = demonstration();
        job.job().getSurvey().getWater().getTest().setRunningPressure(null);
        Path paper = folder.resolve("missing.pdf");
        all.print(job, Locale.ENGLISH, DAY, paper);
        String text = text(paper);
        assertTrue(text.contains(job.job().getSurvey().getSite().getName()), text);
        assertTrue(text.contains("Checks wait for these"), text);
        assertTrue(text.contains("Running pressure, bar"), text);
        job.job().getSurvey().getSite().setName(null);
        all.print(job, Locale.ENGLISH, DAY, paper);
        assertTrue(text(paper).contains("alder-beck"), "a house without a name goes by its file");
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
