// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.text.Words;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.units.Length;
import twinfeed.usecase.TwinfeedService;

/** The readings of an invented house, as a person reads them below an issued quote. */
final class SurveyTextTest {
    @TempDir
    Path folder;

    private final TwinfeedService service = DemoFiles.service();
    private Survey survey;

    @BeforeEach
    void open() throws Exception {
        DemoFiles.copyInto(folder);
        survey = service.open(folder.resolve("alder-beck.job"), null).job().getSurvey();
    }

    private List<SurveyText.Line> lines(Locale locale) {
        return SurveyText.of(survey, service.calculators(), new Words(locale));
    }

    /** The answers below one heading. */
    private Map<String, String> page(Locale locale, String heading) {
        Map<String, String> readings = new LinkedHashMap<>();
        boolean here = false;
        for (SurveyText.Line line : lines(locale)) {
            if (line.heading()) {
                here = line.what().equals(heading);
            } else if (here) {
                readings.put(line.what(), line.answer());
            }
        }
        return readings;
    }

    @Test
    void readingsStandUnderTheTitlesOfTheirPages() {
        List<String> headings = new ArrayList<>();
        for (SurveyText.Line line : lines(Locale.UK)) {
            if (line.heading()) {
                headings.add(line.what());
                assertEquals("", line.answer());
            } else {
                assertFalse(line.answer().isEmpty(), line.what());
                assertFalse(line.what().contains("&"), line.what());
            }
        }
        assertEquals(
                List.of(
                        "Customer and site",
                        "Unit and symptoms",
                        "Fault-finding",
                        "Water and its test",
                        "Pipes and taps",
                        "Electrical supply",
                        "Shower circuit",
                        "Other loads",
                        "What is asked for, and heaters"),
                headings);
    }

    @Test
    void pageWithoutReadingsIsLeftOut() {
        survey.setElectricity(null);
        assertTrue(page(Locale.UK, "Electrical supply").isEmpty());
        assertTrue(lines(Locale.UK).stream().noneMatch(line -> line.what().equals("Shower circuit")));
        survey = SurveyFactory.eINSTANCE.createSurvey();
        assertEquals(List.of(), lines(Locale.UK));
    }

    @Test
    void answersAreInWordsAndNotInTheCodesOfTheFile() {
        assertEquals("1 Osier Quay, Netherquill", first("Address"));
        Map<String, String> water = page(Locale.UK, "Water and its test");
        assertEquals("the main", water.get("Water from"));
        assertEquals("no", water.get("Shared service pipe"));
        assertEquals("yes", water.get("At a busy hour"));
        assertEquals("double check valve", water.get("Backflow protection"));
        Map<String, String> circuit = page(Locale.UK, "Shower circuit");
        assertTrue(lines(Locale.UK).contains(new SurveyText.Line(false, "Kind", "circuit-breaker, type B")));
        assertEquals("C \u2013 clipped direct or buried in masonry", circuit.get("board to loft: Reference method"));
        assertEquals("54000 A²s", circuit.get("Let-through"));
        assertEquals(
                "h85, h95, h95s, h105",
                page(Locale.UK, "What is asked for, and heaters").get("Candidates"));
        survey.setRules("bs7671-2018-a2");
        assertEquals(
                "BS 7671:2018+A2:2022 tables",
                page(Locale.UK, "Electrical supply").get("Rule set"));
    }

    private String first(String what) {
        return lines(Locale.UK).stream()
                .filter(line -> line.what().equals(what))
                .findFirst()
                .orElseThrow()
                .answer();
    }

    @Test
    void readingOfAPieceBearsThePiecesName() {
        PipeSegment unnamed = SurveyFactory.eINSTANCE.createPipeSegment();
        unnamed.setLength(Length.valueOf("2 m"));
        survey.getWater().getDrawOffs().get(0).getSegments().add(unnamed);
        Map<String, String> pipes = page(Locale.UK, "Pipes and taps");
        assertEquals("13.6 mm", pipes.get("rising main: Bore"));
        assertEquals("5", pipes.get("rising main: elbow, soldered: Count"));
        assertEquals("2.5 m", pipes.get("kitchen tap: kitchen branch: Length"));
        assertEquals("2 m", pipes.get("kitchen tap: Pipes of the branch 2: Length"));
    }

    @Test
    void faultQuestionStandsWithItsAnswer() {
        String cold = "Does it go cold when another tap is opened?: ";
        Map<String, String> faults = page(Locale.UK, "Fault-finding");
        assertEquals("yes", faults.get(cold + "Answer"), "a symptom that is noted without an answer was seen");
        assertEquals("It goes cold as soon as somebody opens the kitchen tap.", faults.get(cold + "What was said"));
        Symptom drips = SurveyFactory.eINSTANCE.createSymptom();
        drips.setKey("leakFromCase");
        drips.setAnswer(FaultAnswer.NO);
        survey.getSymptoms().add(drips);
        assertEquals("no", page(Locale.UK, "Fault-finding").get("Does water come out of the case?: Answer"));
    }

    @Test
    void numbersAndWordsAreInTheReadersLanguage() {
        List<SurveyText.Line> german = lines(Locale.GERMANY);
        assertTrue(german.stream().anyMatch(line -> line.answer().equals("3,0 bar ± 0,05 bar")));
        assertTrue(german.stream().noneMatch(line -> line.answer().equals("yes")));
    }
}
