// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;

/** What the check finds, and what it lets pass. */
class JobCheckTest {
    private static final Catalogue CATALOGUE = CatalogueFile.form()
            .read(
                    "c",
                    ("<c:Catalogue xmlns:c=\"urn:twinfeed:1:catalogue\"><heaters id=\"h85\" power=\"8.5 kW\"/>"
                                    + "<heaters id=\"h95\" power=\"9.5 kW\"/><heaters id=\"x1\" power=\"0 kW\"/>"
                                    + "</c:Catalogue>")
                            .getBytes(StandardCharsets.UTF_8));

    @Test
    void emptySurveyIsNoProblem() {
        assertClean("<candidates>h85</candidates>");
    }

    @Test
    void jobWithoutSurvey() {
        assertEquals(
                List.of("error: survey: the job has no survey; enter one"),
                texts(JobCheck.of(JobFile.create(), CATALOGUE)));
    }

    @Test
    void runningPressureNotBelowStatic() {
        String right =
                "; read both again at the same gauge: static with every tap shut, running while the stated flow runs";
        assertProblems(
                "<water><test staticPressure='3.0 bar' runningPressure='3.2 bar' flow='12 L/min'/></water>",
                "error: survey.water.test.runningPressure \"3.2 bar\": the running pressure is not below the static"
                        + " pressure of 3.0 bar" + right);
        assertProblems(
                "<water><test staticPressure='3.0 bar' runningPressure='300 kPa'/></water>",
                "error: survey.water.test.runningPressure \"300 kPa\": the running pressure is not below the static"
                        + " pressure of 3.0 bar" + right);
    }

    /** 10 % is the practice of hydrant flow tests (NFPA 291 and handbooks, second hand). */
    @Test
    void smallDropIsAWarning() {
        assertProblems(
                "<water><test staticPressure='3.0 bar' runningPressure='2.71 bar'/></water>",
                "warning: survey.water.test.runningPressure \"2.71 bar\": the running pressure is less than 10 % below"
                        + " the static pressure of 3.0 bar, which tells little about the supply; test again with more"
                        + " taps open if you can; a stiff supply may stay like this");
        assertClean("<water><test staticPressure='3.0 bar' runningPressure='2.70 bar'/></water>");
        assertClean("<water><test staticPressure='0.7 bar' runningPressure='0.63 bar'/></water>");
        assertClean("<water><test runningPressure='2.9 bar'/></water>");
    }

    @Test
    void whatIsNotThereHasNoSize() {
        String wrong =
                ": the survey says there is none, and yet describes it; say that it is there, or remove its data";
        assertProblems(
                "<electricity hasMainBonding='false' mainBonding='10 mm²'/>",
                "error: survey.electricity.mainBonding \"10 mm²\"" + wrong);
        assertProblems(
                "<electricity><circuit><isolator kind='none' rating='45 A'/></circuit></electricity>",
                "error: survey.electricity.circuit.isolator.kind \"none\"" + wrong);
        assertProblems(
                "<electricity spareWay='false' spareWayBehind='main-switch'/>",
                "error: survey.electricity.spareWayBehind \"main-switch\"" + wrong);
        assertClean("<electricity hasMainBonding='false' spareWay='false'/>");
        assertClean("<electricity hasMainBonding='true' mainBonding='10 mm²'/>");
    }

    @Test
    void zeroThatWasMeasuredIsNoProblem() {
        assertClean("<unit measuredFlow='0 L/min' age='0'/>");
        assertClean("<electricity><circuit insulationResistance='0 ohm'/></electricity>");
        assertClean("<water><segments length='0 m' rise='0 m'/></water>");
    }

    @Test
    void valuesThatCannotBe() {
        assertImpossible(
                "<water><test flow='0 L/min'/></water>",
                "survey.water.test.flow",
                "0 L/min",
                "above 0 L/min and up to 10000 L/min");
        assertImpossible(
                "<water><segments name='rising main' length='-2 m'/></water>",
                "survey.water.segments[rising main].length",
                "-2 m",
                "from 0 m to 10000 m");
        assertImpossible(
                "<water><segments bore='0 mm'/></water>",
                "survey.water.segments[1].bore",
                "0 mm",
                "above 0 mm and up to 1000 mm");
        assertImpossible(
                "<water><segments/><segments><fittings kind='bend' count='0'/></segments></water>",
                "survey.water.segments[2].fittings[1].count",
                "0",
                "from 1 to 10000");
        assertImpossible(
                "<electricity><circuit><segments name='loft' size='0 mm²'/></circuit></electricity>",
                "survey.electricity.circuit.segments[loft].size",
                "0 mm²",
                "above 0 mm² and up to 1000 mm²");
        assertImpossible(
                "<electricity><circuit><segments grouped='0'/></circuit></electricity>",
                "survey.electricity.circuit.segments[1].grouped",
                "0",
                "from 1 to 1000");
        assertImpossible(
                "<electricity><circuit><device rating='-40 A'/></circuit></electricity>",
                "survey.electricity.circuit.device.rating",
                "-40 A",
                "above 0 A and up to 5000 A");
        assertImpossible("<unit age='-1'/>", "survey.unit.age", "-1", "from 0 to 200");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1 °C", "101 °C", "300 °F"})
    void waterIsBetweenIceAndSteam(String temperature) {
        for (String reading : List.of(
                "<water intakeReading='" + temperature + "'/>", "<unit outletReading='" + temperature + "'/>")) {
            List<Problem> problems = check(reading, CATALOGUE);
            assertEquals(1, problems.size(), problems.toString());
            assertEquals("range.impossible", problems.get(0).key());
        }
    }

    /** A pressure typed in the wrong unit, a cable in the wrong place of the point, a fuse of 8 A. */
    @Test
    void unusualValuesAreWarnings() {
        assertProblems(
                "<water><test staticPressure='3.0 kPa'/></water>",
                "warning: survey.water.test.staticPressure \"3.0 kPa\": this is unusual; look at the number and its unit"
                        + " again; usual is from 0.1 bar to 16 bar");
        assertEquals(Severity.WARNING, only("<electricity serviceFuse='8 A'/>").severity());
        assertEquals(
                Severity.WARNING, only("<electricity supplyVoltage='400 V'/>").severity());
        assertEquals(
                Severity.WARNING,
                only("<water><segments length='250 m'/></water>").severity());
    }

    @Test
    void toleranceAsLargeAsTheReading() {
        assertEquals(
                "tolerance.large",
                only("<water><test flow='2 L/min ± 2 L/min'/></water>").key());
        assertClean("<water><test flow='2 L/min ± 1.9 L/min'/></water>");
        assertClean("<water lowestHandset='-0.1 m ± 0.2 m'/>");
    }

    @Test
    void namesOfSegmentsAreUnique() {
        assertProblems(
                "<water><segments name='main'/><segments name='branch'/><drawOffs name='tap'><segments name='main'/>"
                        + "</drawOffs></water>",
                "error: survey.water.drawOffs[tap].segments[main].name \"main\": the name is used twice; give each"
                        + " piece its own name");
        assertEquals(
                "name.twice",
                only("<electricity><circuit><segments name='a'/><segments name='a'/></circuit></electricity>")
                        .key());
        assertEquals(
                "name.twice",
                only("<water><drawOffs name='a'/><drawOffs name='a'/></water>").key());
        assertClean("<water><segments/><segments/></water>");
        assertClean("<water><segments name='a'/></water><electricity><circuit><segments"
                + " name='a'/></circuit></electricity>");
    }

    @Test
    void gaugeAndTeesNameASegment() {
        assertProblems(
                "<water><test gaugeAfter='servce pipe'/><segments name='service pipe'/>"
                        + "<drawOffs name='tap' teeAfter='loft'/></water>",
                "error: survey.water.test.gaugeAfter \"servce pipe\": there is no pipe with this name on the way"
                        + " to the unit; did you mean \"service pipe\"?",
                "error: survey.water.drawOffs[tap].teeAfter \"loft\": there is no pipe with this name on the way"
                        + " to the unit; known are service pipe");
        assertProblems(
                "<water><test gaugeAfter='main'/></water>",
                "error: survey.water.test.gaugeAfter \"main\": there is no pipe with this name on the way to the"
                        + " unit; there is none with a name");
    }

    /** A tee cannot lie in the branch of another draw-off. */
    @Test
    void teesLieOnTheWayToTheUnit() {
        assertEquals(
                "segment.unknown",
                only("<water><drawOffs name='tap' teeAfter='b'><segments name='b'/></drawOffs></water>")
                        .key());
    }

    @Test
    void candidatesAreInTheCatalogue() {
        assertProblems(
                "<candidates>h85</candidates><candidates>h59</candidates><candidates>h85</candidates>",
                "error: survey.candidates \"h59\": the catalogue has no such heater; did you mean \"h85\"?",
                "warning: survey.candidates \"h85\": the heater is named twice; name it once");
        assertTrue(check("<candidates>h59</candidates>", null).isEmpty());
    }

    @Test
    void heaterThatIsSoldNoMoreIsWarnedOf() {
        Heater heater = CATALOGUE.getHeaters().get(0);
        heater.setWithdrawnOn(java.time.LocalDate.of(2026, 5, 1));
        try {
            assertProblems(
                    "<candidates>" + heater.getId() + "</candidates>",
                    "warning: survey.candidates \"" + heater.getId()
                            + "\": this heater has not been sold since 2026-05-01; offer another one, or correct the"
                            + " catalogue");
        } finally {
            heater.setWithdrawnOn(null);
        }
    }

    @Test
    void presentUnitIsInTheCatalogueOrHasItsOwnData() {
        assertEquals(
                "unit.unknown",
                only("<candidates>h85</candidates><unit heaterId='old7'/>").key());
        assertEquals(
                "unit.both",
                only("<candidates>h85</candidates><unit heaterId='h85'><heater power='7 kW'/></unit>")
                        .key());
        assertClean("<candidates>h85</candidates><unit><heater power='7 kW'/></unit>");
        assertClean("<candidates>h85</candidates><unit heaterId='h95'/>");
        assertTrue(check("<unit heaterId='old7'/>", null).isEmpty());
    }

    /** A fault of the catalogue belongs to its file and is reported there, once. */
    @Test
    void catalogueItselfIsNotJudged() {
        assertClean("<candidates>x1</candidates>");
        assertEquals("heaters[x1].power", CatalogueCheck.of(CATALOGUE).get(0).path());
    }

    @Test
    void heatersData() {
        assertHeater("breakPressure='0.3 bar' makePressure='0.3 bar'", "pressure.notBelow", "breakPressure");
        assertHeater("breakPressure='0.4 bar' makePressure='0.3 bar'", "pressure.notBelow", "breakPressure");
        assertHeater(
                "minimumRunningPressure='1 bar' maximumStaticPressure='1 bar'",
                "pressure.notBelow",
                "minimumRunningPressure");
        assertHeater("inletLoss='0.2 bar'", "pair.half", "inletLoss");
        assertHeater("downstreamFlow='8 L/min'", "pair.half", "downstreamFlow");
        assertHeater("id='h 85'", "id.letters", "id");
        assertHeater("voltage='0 V'", "range.impossible", "voltage");
        assertHeater("powerToleranceDown='110 %'", "range.impossible", "powerToleranceDown");
        assertHeater("ingress='splash-proof'", "ingress.form", "ingress");
        assertHeater("stabilisedMinimum='0.3 bar'", "stabilised.not", "stabilisedMinimum");
        assertClean("<unit><heater breakPressure='0.2 bar' makePressure='0.3 bar' stabilised='true' ingress='IPX4'"
                + " stabilisedMinimum='0.3 bar' inletLoss='0.1 bar' inletLossFlow='8 L/min'/></unit>");
    }

    @Test
    void elementsAddUpToThePower() {
        assertProblems(
                "<unit><heater power='9.5 kW'><elements power='5 kW'/><elements power='4 kW'/></heater></unit>",
                "error: survey.unit.heater.elements: the elements add up to 9 kW and the rated power is 9.5 kW; write"
                        + " shares that add up to the rated power within 1 %");
        assertClean("<unit><heater power='10 kW'><elements power='5 kW'/><elements power='4.9 kW'/></heater></unit>");
        assertEquals(
                "elements.sum",
                only("<unit><heater power='10 kW'><elements power='5 kW'/><elements power='4.89 kW'/></heater></unit>")
                        .key());
        assertClean("<unit><heater power='10 kW'><elements power='5 kW'/><elements/></heater></unit>");
        assertClean("<unit><heater power='10 kW'/></unit>");
    }

    @Test
    void electricalReadingsThatContradict() {
        assertEquals(
                "insulated.longer",
                only("<electricity><circuit><segments length='2 m' insulated='3 m'/></circuit></electricity>")
                        .key());
        assertClean("<electricity><circuit><segments length='2 m ± 0.5 m' insulated='2.4 m'/></circuit></electricity>");
        assertEquals(
                "cpc.larger",
                only("<electricity><circuit><segments size='2.5 mm²' cpc='6 mm²'/></circuit></electricity>")
                        .key());
        assertEquals(
                "loop.belowOrigin",
                only("<electricity externalLoop='0.35 ohm'><circuit measuredLoop='0.2 ohm'/></electricity>")
                        .key());
        assertEquals(
                "rcd.noneDescribed",
                only("<electricity><circuit><rcd kind='none' residual='30 mA'/></circuit></electricity>")
                        .key());
        assertClean("<electricity><circuit><rcd kind='none'/></circuit></electricity>");
        assertEquals(
                "load.both",
                only("<electricity><loads current='20 A' power='5 kW'/></electricity>")
                        .key());
    }

    @Test
    void wordsOfTheTrade() {
        assertProblems(
                "<electricity><circuit><rcd type='a'/><isolator kind='pullcord'/></circuit></electricity>",
                "error: survey.electricity.circuit.rcd.type \"a\": this word is not known; did you mean \"A\"?",
                "error: survey.electricity.circuit.isolator.kind \"pullcord\": this word is not known; did you mean"
                        + " \"pull-cord\"?");
        assertEquals("word.unknown", only("<water backflowProtection='valve'/>").key());
        assertClean("<water backflowProtection='air-gap'/>");
    }

    @Test
    void days() {
        assertEquals(
                "date.impossible",
                JobCheck.of(job(" takenOn='0026-10-06'"), CATALOGUE).get(0).key());
        assertEquals(
                "date.impossible", only("<site lastInspection='2926-10-06'/>").key());
        Job job = job(" takenOn='2026-10-06'");
        job.getSurvey().setSite(twinfeed.model.survey.SurveyFactory.eINSTANCE.createSite());
        job.getSurvey().getSite().setLastInspection(java.time.LocalDate.of(2026, 10, 7));
        assertEquals("inspection.later", JobCheck.of(job, CATALOGUE).get(0).key());
        job.getSurvey().getSite().setLastInspection(java.time.LocalDate.of(2026, 10, 6));
        assertTrue(JobCheck.of(job, CATALOGUE).isEmpty());
    }

    @Test
    void request() {
        Job job = job(" targetOutlet='5 °C' winterIntake='5 °C'");
        assertEquals(
                List.of("range.unusual", "outlet.notAbove").stream().sorted().toList(),
                JobCheck.of(job, CATALOGUE).stream().map(Problem::key).sorted().toList());
    }

    @Test
    void photosAndParameters() {
        for (String file : List.of("/home/a.jpg", "C:\\a.jpg", "\\\\host\\a.jpg", "http://host/a.jpg")) {
            assertEquals("photo.absolute", only("<photos file='" + file + "'/>").key());
        }
        assertClean("<photos file='loft/a.jpg'/>");
        assertEquals(
                "parameter.incomplete",
                only("<parameters calculator='flow' key='a'/>").key());
        assertClean("<parameters calculator='flow' key='a' value='1'/>");
    }

    @Test
    void surveyWithoutAJobHasTheSamePaths() {
        Job job = job("");
        job.getSurvey().setUnit(twinfeed.model.survey.SurveyFactory.eINSTANCE.createPresentUnit());
        job.getSurvey().getUnit().setAge(-1);
        List<Problem> inJob = JobCheck.of(job, CATALOGUE);
        var survey = job.getSurvey();
        job.setSurvey(null);
        assertEquals(inJob, JobCheck.of(survey, CATALOGUE));
        assertEquals("survey.unit.age", inJob.get(0).path());
    }

    @Test
    void problemAsARefusalOfItsFile() {
        Problem problem = only("<unit age='-1'/>");
        assertEquals(
                "alder.job, survey.unit.age \"-1\": this value is impossible; write a value from 0 to 200, or leave it out if it"
                        + " was not taken",
                problem.in("alder.job").toString());
        assertTrue(problem.isError());
    }

    private static void assertHeater(String attributes, String key, String feature) {
        Problem problem = only("<unit><heater " + attributes + "/></unit>");
        assertEquals(key, problem.key());
        assertEquals("survey.unit.heater." + feature, problem.path());
    }

    private static void assertImpossible(String inSurvey, String path, String reading, String span) {
        assertProblems(
                inSurvey,
                "error: " + path + " \"" + reading + "\": this value is impossible; write a value " + span
                        + ", or leave it out if it was not taken");
    }

    private static void assertClean(String inSurvey) {
        assertProblems(inSurvey);
    }

    private static void assertProblems(String inSurvey, String... expected) {
        assertEquals(List.of(expected), texts(check(inSurvey, CATALOGUE)));
    }

    private static Problem only(String inSurvey) {
        List<Problem> problems = check(inSurvey, CATALOGUE);
        assertEquals(1, problems.size(), problems.toString());
        return problems.get(0);
    }

    private static List<String> texts(List<Problem> problems) {
        return problems.stream().map(Problem::toString).toList();
    }

    private static List<Problem> check(String inSurvey, @Nullable Catalogue catalogue) {
        boolean named = inSurvey.contains("<candidates>");
        return JobCheck.of(
                read("<survey>" + (named ? "" : "<candidates>h85</candidates>") + inSurvey + "</survey>"), catalogue);
    }

    private static Job job(String attributes) {
        return read("<survey" + attributes + "><candidates>h85</candidates></survey>");
    }

    private static Job read(String inJob) {
        String text = "<job:Job xmlns:job='urn:twinfeed:1:job' version='1'>" + inJob + "</job:Job>";
        return JobFile.form().read("test.job", text.getBytes(StandardCharsets.UTF_8));
    }
}
