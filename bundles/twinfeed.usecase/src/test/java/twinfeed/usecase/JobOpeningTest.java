// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.engine.Climates;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;
import twinfeed.units.TemperatureDifference;

/** What a job may not say, although its form is right: ids that nobody knows, and air temperatures that contradict its climate. */
class JobOpeningTest {
    private OpenedJob opened = open();

    private static OpenedJob open() {
        return new JobOpening(List.of()).open(Demo.FOLDER.resolve("alder-beck.job"), null, null);
    }

    @BeforeEach
    void plain() {
        opened = open();
        Survey survey = opened.job().getSurvey();
        survey.setRules(null);
        survey.setClimate(null);
        survey.setAnnualMeanAir(null);
        survey.setMonthlyAirSpread(null);
        survey.setWinterIntake(null);
    }

    private OpenedJob checked(Consumer<Survey> change) {
        Job job = EcoreUtil.copy(opened.job());
        change.accept(job.getSurvey());
        return new JobOpening(List.of()).checked(opened, job);
    }

    private InputProblem refused(Consumer<Survey> change) {
        List<InputProblem> problems =
                assertThrows(InputException.class, () -> checked(change)).problems();
        assertEquals(1, problems.size(), problems.toString());
        return problems.get(0);
    }

    @Test
    void aSoundJobPasses() {
        assertTrue(checked(survey -> {}).warnings().stream()
                .noneMatch(one -> one.toString().contains("climate")));
    }

    @Test
    void unknownIdsAreRefusedWithThoseThatAreThere() {
        InputProblem rules = refused(survey -> survey.setRules("none-such"));
        assertEquals("survey.rules", rules.element());
        assertTrue(rules.right().contains("bs7671"), rules.right());
        InputProblem climate = refused(survey -> survey.setClimate("none-such"));
        assertEquals("survey.climate", climate.element());
        assertTrue(climate.right().contains(Climates.MODEL), climate.right());
        InputProblem method = refused(survey -> segment(survey).setMethod("none-such"));
        assertTrue(method.element().endsWith("method"), method.element());
    }

    private static CableSegment segment(Survey survey) {
        return survey.getElectricity().getCircuit().getSegments().get(0);
    }

    @Test
    void theModelOfTheIntakeNeedsBothAirTemperatures() {
        Temperature mean = Temperature.valueOf("10 °C");
        TemperatureDifference spread = TemperatureDifference.valueOf("12 K");
        assertEquals(
                "survey.climate",
                refused(survey -> survey.setClimate(Climates.MODEL)).element());
        InputProblem meanAlone = refused(survey -> survey.setAnnualMeanAir(mean));
        assertEquals("survey.annualMeanAir", meanAlone.element());
        assertEquals("10 °C", meanAlone.reading());
        assertTrue(meanAlone.right().contains("monthlyAirSpread"), meanAlone.right());
        InputProblem spreadAlone = refused(survey -> survey.setMonthlyAirSpread(spread));
        assertEquals("survey.monthlyAirSpread", spreadAlone.element());
        assertEquals("12 K", spreadAlone.reading());
        assertTrue(spreadAlone.right().contains("annualMeanAir"), spreadAlone.right());
        checked(survey -> {
            survey.setClimate(Climates.MODEL);
            survey.setAnnualMeanAir(mean);
            survey.setMonthlyAirSpread(spread);
        });
        assertTrue(refused(survey -> {
                    survey.setClimate("uk-mains");
                    survey.setAnnualMeanAir(mean);
                })
                .wrong()
                .contains("has a table"));
    }

    @Test
    void aWinterIntakeAboveTheWarmestMonthIsOdd() {
        assertTrue(checked(survey -> survey.setWinterIntake(Temperature.valueOf("35 °C"))).warnings().stream()
                .anyMatch(one -> one.toString().contains("above the warmest month")));
        // July of "uk-mains" in SAP 10.2, table J1, has 18.4 degC.
        for (String usual : List.of("5 °C", "18.4 °C")) {
            assertFalse(checked(survey -> survey.setWinterIntake(Temperature.valueOf(usual))).warnings().stream()
                    .anyMatch(one -> one.toString().contains("above the warmest month")));
        }
    }

    @Test
    void allProblemsAreNamedAtOnce() {
        InputException refused = assertThrows(
                InputException.class,
                () -> checked(survey -> {
                    survey.setRules("none-such");
                    survey.setClimate("none-such");
                }));
        assertEquals(2, refused.problems().size());
    }

    @Test
    void aPictureThatIsNotThereIsLeftOutWithAWarning(@TempDir Path folder) throws IOException {
        Photo photo = SurveyFactory.eINSTANCE.createPhoto();
        photo.setFile("none-such.jpg");
        opened.job().getSurvey().getPhotos().add(photo);
        opened.job().setCatalogue("heaters.catalogue");
        Files.copy(Demo.FOLDER.resolve(open().job().getCatalogue()), folder.resolve("heaters.catalogue"));
        Path file = folder.resolve("house.job");
        JobFile.save(opened.job(), file, FileFingerprint.NONE);
        assertTrue(new JobOpening(List.of())
                .open(file, null, null).warnings().stream()
                        .anyMatch(one -> one.toString().contains("none-such.jpg")));
        Path other = folder.resolve("other.catalogue");
        assertThrows(InputException.class, () -> new JobOpening(List.of()).open(file, other, null));
    }

    /** Of a job in a file, beside its catalogue. */
    private static List<InputProblem> refusedFile(Path file) {
        return assertThrows(InputException.class, () -> new JobOpening(List.of()).open(file, null, null))
                .problems();
    }

    private static Path jobWith(Path folder, Consumer<Job> change) throws IOException {
        Path file = Demo.copyJob("alder-beck.job", folder);
        Job job = JobFile.load(file);
        change.accept(job);
        Files.delete(file);
        JobFile.save(job, file, FileFingerprint.NONE);
        return file;
    }

    @Test
    void aFileThatNamesUnknownRulesIsRefused(@TempDir Path folder) throws IOException {
        Path file = jobWith(folder, job -> job.getSurvey().setRules("none-such"));
        assertEquals("survey.rules", refusedFile(file).get(0).element());
    }

    @Test
    void aFileWhoseReadingsContradictOneAnotherIsRefused(@TempDir Path folder) throws IOException {
        Path file = jobWith(
                folder, job -> job.getSurvey().getWater().getTest().setRunningPressure(Pressure.valueOf("9 bar")));
        assertTrue(refusedFile(file).get(0).element().endsWith("runningPressure"));
    }

    @Test
    void aCatalogueThatNamesAHeaterTwiceIsRefusedByItsName(@TempDir Path folder) throws IOException {
        Path file = jobWith(folder, job -> {});
        Path catalogue = folder.resolve("heaters.catalogue");
        Files.writeString(catalogue, Files.readString(catalogue).replace("id=\"h75\"", "id=\"h85\""));
        List<InputProblem> problems = refusedFile(file);
        assertEquals(catalogue.toString(), problems.get(0).file());
        assertEquals("heaters[h85].id", problems.get(0).element());
    }

    /** A discount of twice the sum, which no quote can have. */
    private static void impossibleDiscount(Job job) {
        QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
        line.setQuantity(BigDecimal.valueOf(2));
        QuoteSection section = QuoteFactory.eINSTANCE.createQuoteSection();
        section.setKey("discount");
        section.getLines().add(line);
        QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
        option.getSections().add(section);
        Quote draft = QuoteFactory.eINSTANCE.createQuote();
        draft.getOptions().add(option);
        job.setQuote(draft);
    }

    @Test
    void choicesThatNoQuoteCanHaveAreRefused(@TempDir Path folder) throws IOException {
        assertEquals(
                List.of("quote"),
                refusedFile(jobWith(folder, JobOpeningTest::impossibleDiscount)).stream()
                        .map(InputProblem::element)
                        .toList());
        Job job = EcoreUtil.copy(opened.job());
        impossibleDiscount(job);
        InputException made = assertThrows(InputException.class, () -> new JobOpening(List.of()).checked(opened, job));
        assertEquals("quote", made.problems().get(0).element());
    }

    /** The shares of its elements add up to less than its power, which only a look at the whole catalogue shows. */
    @Test
    void aHeaterThatContradictsItselfIsRefusedByTheNameOfItsCatalogue(@TempDir Path folder) throws IOException {
        Path file = jobWith(folder, job -> {});
        Path catalogue = folder.resolve("heaters.catalogue");
        Files.writeString(
                catalogue,
                Files.readString(catalogue)
                        .replaceFirst("<elements power=\"4.0 kW\"/>", "<elements power=\"2.0 kW\"/>"));
        assertEquals("heaters.catalogue", refusedFile(file).get(0).file());
    }

    @Test
    void aMadeJobWhoseReadingsContradictOneAnotherIsRefused() {
        assertTrue(refused(survey -> survey.getWater().getTest().setRunningPressure(Pressure.valueOf("9 bar")))
                .element()
                .endsWith("runningPressure"));
    }
}
