// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.ExpectedText;
import twinfeed.document.drawing.DrawnHouse;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.shape.LetterWidths;
import twinfeed.document.shape.Svg;
import twinfeed.document.shape.TextWidth;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** Whole drawings of invented houses as SVG files, which were looked at in a viewer: wide, narrow, with work done, of an empty survey. */
class HouseLayoutTest {
    private static final TextWidth WIDTHS = LetterWidths.at(Svg.LETTERS, 1.05);

    private final DrawnHouse house = new DrawnHouse();

    private static HousePicture same(String name, HouseDrawing drawing, double width, Locale locale, String title)
            throws IOException {
        HousePicture picture = new HouseLayout(width, Svg.LETTERS, WIDTHS, locale).of(drawing, title);
        Svg svg = new Svg(picture.width(), picture.height(), name);
        svg.draw(picture.shapes(), 0, 0);
        ExpectedText.same(HouseLayoutTest.class, name + ".svg", svg.toString());
        return picture;
    }

    @Test
    void aWideDrawingOfTheHouseAsItIs() throws IOException {
        HouseDrawing drawing = HouseDrawing.asItIs(house.survey, house.option, Locale.ENGLISH);
        HousePicture picture = same("wide_en", drawing, 1000, Locale.ENGLISH, "The house as it is, Heater 9.5 kW");
        for (DrawnPiece piece : drawing.pieces()) {
            assertTrue(picture.targets().stream().anyMatch(target -> target.piece() == piece), piece.name());
        }
        assertEquals("1", picture.names().get(drawing.water().get(0)));
        assertEquals("A", picture.names().get(drawing.power().get(0)));
        assertFalse(picture.names().containsKey(drawing.unit()));
    }

    @Test
    void aNarrowDrawingWithTheWorkDone() throws IOException {
        Survey changed = house.changed();
        HouseDrawing drawing = HouseDrawing.withWork(house.survey, changed, house.option, Locale.GERMAN);
        same("narrow_de", drawing, 420, Locale.GERMAN, "Das Haus nach den Arbeiten an der Leitung durch den Dachboden");
    }

    @Test
    void aPumpForTheShowerAlone() throws IOException {
        HouseDrawing drawing = HouseDrawing.withWork(house.survey, house.pumped(), house.option, Locale.ENGLISH);
        same("pumped_en", drawing, 700, Locale.ENGLISH, "");
    }

    @Test
    void aHouseOfWhichNothingIsKnown() throws IOException {
        HouseDrawing bare = HouseDrawing.unassessed(SurveyFactory.eINSTANCE.createSurvey(), Locale.ENGLISH);
        same("bare_en", bare, 600, Locale.ENGLISH, "");
    }

    /** The section alone is the same picture without title and rows, for paper that has the rows as text. */
    @Test
    void theSectionAlone() throws IOException {
        house.survey.getElectricity().getCircuit().getSegments().get(1).setLoft(false);
        house.survey.getWater().getSegments().forEach(pipe -> pipe.setRise(null));
        house.survey.getWater().getDrawOffs().get(0).setHeight(null);
        HouseDrawing drawing = HouseDrawing.asItIs(house.survey, house.option, Locale.ENGLISH);
        HousePicture picture = new HouseLayout(640, Svg.LETTERS, WIDTHS, Locale.ENGLISH).section(drawing);
        Svg svg = new Svg(picture.width(), picture.height(), "section");
        svg.draw(picture.shapes(), 0, 0);
        ExpectedText.same(HouseLayoutTest.class, "section_en.svg", svg.toString());
    }

    /** Whoever points at a plate, a row or the unit gets the piece that is seen there; beside the drawing nothing. */
    @Test
    void whatIsSeenAtAPoint() {
        HouseDrawing drawing = HouseDrawing.asItIs(house.survey, house.option, Locale.ENGLISH);
        HousePicture picture = new HouseLayout(1000, Svg.LETTERS, WIDTHS, Locale.ENGLISH).of(drawing);
        for (DrawnPiece piece : drawing.pieces()) {
            long places = picture.targets().stream()
                    .filter(target -> target.piece() == piece)
                    .peek(target -> assertEquals(
                            piece,
                            picture.at(
                                            target.area().x() + target.area().width() / 2,
                                            target.area().y() + target.area().height() / 2)
                                    .orElseThrow()))
                    .count();
            boolean row = piece == drawing.unit() || places == 2;
            assertTrue(row, piece.name() + " is seen in the section and in its row: " + places);
        }
        assertTrue(picture.at(-1, -1).isEmpty());
    }

    /** Where the gauge was at the main, its pressure stands at the start of the pipes. */
    @Test
    void thePressureAtTheMain() throws IOException {
        house.option.getFindings().get(0).getSeries().forEach(curve -> curve.getY()
                .add(0, 3.3));
        HouseDrawing drawing = HouseDrawing.asItIs(house.survey, house.option, Locale.ENGLISH);
        assertEquals("3.30 / 3.30 bar", drawing.water().get(0).reading());
        same("main-reading_en", drawing, 1000, Locale.ENGLISH, "");
    }

    /** What is said of taps stands at the last pipe where there are none. */
    @Test
    void withoutTapsTheirFindingStandsAtTheLastPipe() {
        house.survey.getWater().getDrawOffs().clear();
        HouseDrawing drawing = HouseDrawing.asItIs(house.survey, house.option, Locale.ENGLISH);
        assertEquals("A tap is opened", drawing.water().get(3).answer().check());
        assertEquals("+0.010 bar", drawing.water().get(3).margin());
        assertEquals("", drawing.water().get(2).margin());
    }

    /** After Z the letters of the cable begin anew, with a number. */
    @Test
    void moreThanTwentySixPiecesOfCable() {
        for (int i = 0; i < 24; i++) {
            house.survey.getElectricity().getCircuit().getSegments().add(SurveyFactory.eINSTANCE.createCableSegment());
        }
        HouseDrawing drawing = HouseDrawing.unassessed(house.survey, Locale.ENGLISH);
        HousePicture picture = new HouseLayout(1700, Svg.LETTERS, WIDTHS, Locale.ENGLISH).of(drawing, "");
        assertEquals("Z", picture.names().get(drawing.power().get(25)));
        assertEquals("A1", picture.names().get(drawing.power().get(26)));
    }
}
