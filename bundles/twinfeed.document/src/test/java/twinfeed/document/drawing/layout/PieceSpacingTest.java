// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.DrawnPiece.Field;
import twinfeed.document.drawing.PieceExtent;
import twinfeed.document.drawing.PieceKind;
import twinfeed.document.shape.TextSize;
import twinfeed.model.survey.SurveyFactory;

/** How pieces share the way, how high they lie, and how texts keep clear of one another. */
class PieceSpacingTest {
    private static DrawnPiece piece(@Nullable Double length, @Nullable Double rise, int tee) {
        return new DrawnPiece(
                PieceKind.PIPE,
                "",
                "",
                "",
                new PieceExtent(length, rise, 0, false, tee),
                new Field(SurveyFactory.eINSTANCE.createSurvey(), ""),
                null,
                "");
    }

    private static double[] over(Double... lengths) {
        return PieceSpacing.over(
                Stream.of(lengths).map(each -> piece(each, null, 0)).toList(), 10, 110);
    }

    /** 55 % alike, 45 % by length: 1 m and 3 m over 100 are 27.5 + 11.25 and 27.5 + 33.75. */
    @Test
    void piecesShareTheWay() {
        assertArrayEquals(new double[] {10, 48.75, 110}, over(1.0, 3.0), 1e-9);
        assertArrayEquals(new double[] {10, 60, 110}, over(null, 2.0), 1e-9);
        assertArrayEquals(new double[] {10, 60, 110}, over(null, null), 1e-9);
        assertArrayEquals(new double[] {10, 37.5, 65}, over(0.0, 0.0), 1e-9);
        assertArrayEquals(new double[] {10, 37.5, 110}, over(-1.0, 5.0), 1e-9);
        assertArrayEquals(new double[] {10}, PieceSpacing.over(List.of(), 10, 110), 1e-9);
    }

    /** A pipe that rises 2.5 m, one level; a tap 1 m above its tee, one whose height nobody measured. */
    @Test
    void heightsAboveTheStart() {
        Heights heights = Heights.of(
                List.of(piece(1.0, 2.5, 0), piece(1.0, null, 0)), List.of(piece(null, -3.0, 0), piece(null, null, 1)));
        assertArrayEquals(new double[] {0, 2.5, 2.5}, heights.nodes(), 1e-9);
        assertArrayEquals(new double[] {-3, 2.5}, heights.taps(), 1e-9);
        assertEquals(List.of(-3.0, 0.0, 2.5), heights.surveyed());
        assertEquals(-3, heights.lowest());
        assertEquals(2.5, heights.highest());
        assertEquals(2.5, heights.unit());
        assertEquals(
                List.of(), Heights.of(List.of(piece(1.0, null, 0)), List.of()).surveyed());
    }

    @Test
    void areasThatShareMoreThanAnEdge() {
        Area area = new Area(10, 10, 20, 10);
        assertTrue(area.contains(10, 10) && area.contains(30, 20));
        assertFalse(
                area.contains(9.9, 15) || area.contains(30.1, 15) || area.contains(20, 9.9) || area.contains(20, 20.1));
        assertTrue(area.overlaps(new Area(29, 19, 5, 5)) && area.overlaps(new Area(5, 5, 6, 6)));
        assertFalse(area.overlaps(new Area(30, 10, 5, 5)) || area.overlaps(new Area(5, 10, 5, 5)));
        assertFalse(area.overlaps(new Area(10, 20, 5, 5)) || area.overlaps(new Area(10, 5, 5, 5)));
    }

    /** Letters of 1 each, so that lengths can be counted. */
    private final DrawingSheet sheet = new DrawingSheet(20, 1, (text, size, bold) -> text.length());

    @Test
    void aTextIsCutToItsRoom() {
        assertEquals("service", sheet.shortened("service", 7, TextSize.SMALL, false));
        assertEquals("servi…", sheet.shortened("service", 6, TextSize.SMALL, false));
        assertEquals("ser…", sheet.shortened("service", 4, TextSize.SMALL, false));
        assertEquals("", sheet.shortened("service", 3, TextSize.SMALL, false));
        assertEquals("the…", sheet.shortened("the riser", 5, TextSize.SMALL, false));
        assertEquals("abc…", sheet.shortened("abc\uD83D\uDEBFdef", 5, TextSize.SMALL, false));
        assertEquals(List.of("the", "riser"), sheet.lines("the riser", 6, false));
        assertEquals(List.of("the riser"), sheet.lines("the riser", 9, false));
        assertEquals(List.of("the riser", "of the h…"), sheet.lines("the riser of the house", 9, false));
        assertEquals(List.of("servic…"), sheet.lines("servicepipe", 7, false));
    }
}
