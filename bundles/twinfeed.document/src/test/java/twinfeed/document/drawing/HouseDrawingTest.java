// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.ExpectedText;
import twinfeed.document.DocumentException;
import twinfeed.document.Firm;
import twinfeed.document.QuoteDocument;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.work.WorkDone;

/** The pieces of an invented house, each with its readings and the finding that bears hardest on it; the texts were read line by line. */
class HouseDrawingTest {
    private final DrawnHouse house = new DrawnHouse();

    private static void same(String name, HouseDrawing drawing) throws IOException {
        ExpectedText.same(HouseDrawingTest.class, name + ".txt", DrawnHouse.text(drawing));
    }

    @Test
    void theHouseAsItIs() throws IOException {
        same("as-it-is_en", HouseDrawing.asItIs(house.survey, house.option, Locale.ENGLISH));
        same("as-it-is_de", HouseDrawing.asItIs(house.survey, house.option, Locale.GERMAN));
        house.option.setPresent(true);
        assertEquals(
                "",
                HouseDrawing.asItIs(house.survey, house.option, Locale.ENGLISH)
                        .unit()
                        .renewed());
    }

    @Test
    void theHouseWithTheWorkDone() throws IOException {
        Survey changed = house.changed();
        HouseDrawing drawing = HouseDrawing.withWork(house.survey, changed, house.option, Locale.ENGLISH);
        same("with-work_en", drawing);
        assertTrue(HouseDrawing.hasWork(house.option));
        WorkDone done = WorkDone.of(house.survey, changed);
        assertEquals(
                DrawnHouse.text(drawing),
                DrawnHouse.text(HouseDrawing.withWork(house.survey, done, house.option, Locale.ENGLISH)));
    }

    /** The pump stands behind the last tap of the main: what lies ahead of it stays as it is. */
    @Test
    void aPumpForTheShowerAlone() throws IOException {
        same("pumped_en", HouseDrawing.withWork(house.survey, house.pumped(), house.option, Locale.ENGLISH));
        Survey changed = house.pumped();
        changed.getWater().getTest().setGaugeAfter(null);
        assertEquals(
                "Tank with pump (new)",
                HouseDrawing.withWork(house.survey, changed, house.option, Locale.ENGLISH)
                        .water()
                        .get(0)
                        .title());
        changed.getWater().setTest(null);
        assertEquals(
                "not recorded",
                HouseDrawing.withWork(house.survey, changed, house.option, Locale.ENGLISH)
                        .water()
                        .get(0)
                        .detail());
    }

    /** What nobody recorded is drawn all the same, and said. */
    @Test
    void nothingIsKnown() throws IOException {
        Survey bare = SurveyFactory.eINSTANCE.createSurvey();
        same("bare_en", HouseDrawing.unassessed(bare, Locale.ENGLISH));
        bare.setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        bare.setElectricity(SurveyFactory.eINSTANCE.createElectricalFeed());
        bare.getElectricity().setCircuit(SurveyFactory.eINSTANCE.createCircuit());
        bare.getElectricity().getCircuit().getSegments().add(SurveyFactory.eINSTANCE.createCableSegment());
        bare.getWater().getSegments().add(SurveyFactory.eINSTANCE.createPipeSegment());
        bare.getWater().getDrawOffs().add(SurveyFactory.eINSTANCE.createDrawOff());
        same("unnamed_en", HouseDrawing.unassessed(bare, Locale.ENGLISH));
        assertEquals(Set.of(), HouseDrawing.names(bare));
        assertEquals(
                Set.of("service pipe", "riser", "shower branch", "hall", "loft, under insulation", "drop"),
                HouseDrawing.names(house.survey));
        assertFalse(HouseDrawing.hasWork(null));
        assertFalse(HouseDrawing.hasWork(house.option));
    }

    private QuoteDocument document(Assessment assessment, Survey survey) throws DocumentException {
        Quote quote = QuoteFactory.eINSTANCE.createQuote();
        quote.setDate(LocalDate.of(2026, 11, 25));
        QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
        option.setHeaterId("h95");
        quote.getOptions().add(option);
        return QuoteDocument.of(survey, assessment, quote, Firm.of("Invented", "", ""), "0", Locale.ENGLISH);
    }

    private static List<String> titles(QuoteDocument document) {
        return QuoteDrawing.of(document).stream().map(QuoteDrawing::title).toList();
    }

    /** As it is, and with the work where there is any; where nothing can be offered, as it was surveyed. */
    @Test
    void theDrawingsOfAQuote() throws DocumentException {
        Assessment assessment = AssessmentFactory.eINSTANCE.createAssessment();
        assertEquals(List.of("The house as it is"), titles(document(assessment, house.survey)));
        assessment.getOptions().add(house.option);
        QuoteDocument document = document(assessment, house.survey);
        assertEquals(List.of("The house as it is, checked for Heater 9.5 kW"), titles(document));
        QuoteDocument withWork = document.withWork(WorkDone.of(house.survey, house.changed()));
        assertEquals(
                List.of("The house as it is, checked for Heater 9.5 kW", "The house with the work done, Heater 9.5 kW"),
                titles(withWork));
        assertEquals(
                "drop (new)",
                QuoteDrawing.of(withWork).get(1).drawing().power().get(5).title());
        document.quote().getOptions().clear();
        assertEquals(List.of("The house as it is, checked for Heater 9.5 kW"), titles(document));
        house.option.setTitle(null);
        assertEquals(List.of("The house as it is, checked for "), titles(document));
        Survey bare = SurveyFactory.eINSTANCE.createSurvey();
        assertEquals(List.of(), titles(document(assessment, bare)));
        bare.setElectricity(house.survey.getElectricity());
        assertEquals(1, titles(document(assessment, bare)).size());
    }
}
