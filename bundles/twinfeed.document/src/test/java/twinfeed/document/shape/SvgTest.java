// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.document.shape.Shape.Box;
import twinfeed.document.shape.Shape.Disc;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.Shape.Line;
import twinfeed.document.shape.Shape.Point;

/** Every shape as the element and with the attributes that the SVG 1.1 recommendation of the W3C has for it. */
class SvgTest {
    private static String body(java.util.function.Consumer<Svg> drawn) {
        Svg svg = new Svg(100, 50.25, "Test", text -> text.startsWith("水") ? "Some CJK" : "");
        drawn.accept(svg);
        String all = svg.element();
        String ground = "fill=\"#FFFFFF\"/>\n";
        return all.substring(all.indexOf(ground) + ground.length(), all.indexOf("</svg>"));
    }

    @Test
    void theFrameOfTheFile() {
        String all = new Svg(100, 50.25, "Pipes & <taps>").toString();
        assertTrue(all.startsWith(
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\""));
        assertTrue(all.contains("width=\"100\" height=\"50.3\" viewBox=\"0 0 100 50.3\""), all);
        assertTrue(all.contains("<title>Pipes &amp; &lt;taps&gt;</title>"), all);
        assertTrue(all.endsWith("</svg>\n"), all);
    }

    @Test
    void linesAndCurves() {
        assertEquals(
                "<line x1=\"1\" y1=\"2.5\" x2=\"3\" y2=\"4\" stroke=\"#123456\" stroke-width=\"1.5\"/>\n",
                body(svg -> svg.line(1, 2.5, 3, 4, "#123456", 1.5)));
        assertEquals(
                "<polyline fill=\"none\" stroke-width=\"2\" stroke=\"#123456\" stroke-dasharray=\"4 2\" points=\"1,2 3,4\"/>\n",
                body(svg -> svg.curve(new double[] {1, 2, 3, 4}, "#123456", "4 2")));
        assertEquals(
                "<polyline fill=\"none\" stroke-width=\"2\" stroke=\"#123456\" points=\"1,2 3,4\"/>\n",
                body(svg -> svg.curve(new double[] {1, 2, 3, 4}, "#123456", "")));
        assertEquals(
                "<polygon fill=\"#123456\" points=\"1,2 3,4 5,6\"/>\n",
                body(svg -> svg.shape(new double[] {1, 2, 3, 4, 5, 6}, "#123456")));
        assertEquals(
                "<polyline points=\"0,0 5,5\" fill=\"none\" stroke=\"#1f5f8b\" stroke-width=\"2\" stroke-dasharray=\"4 3\"/>\n",
                body(svg ->
                        svg.draw(new Line(List.of(new Point(0, 0), new Point(5, 5)), Ink.of(Tone.WATER), 2, true))));
    }

    /** Half of a tone lies in the middle between it and white; none of it is white. */
    @Test
    void boxesAndDiscs() {
        assertEquals(
                "<rect x=\"1\" y=\"2\" width=\"3\" height=\"4\" rx=\"0.5\" fill=\"#ffffff\" stroke=\"#8d8f91\" stroke-width=\"1\"/>\n",
                body(svg -> svg.draw(new Box(1, 2, 3, 4, 0.5, new Ink(Tone.INK, 0.5), 1, Ink.GROUND))));
        assertEquals(
                "<rect x=\"1\" y=\"2\" width=\"3\" height=\"4\" fill=\"none\"/>\n",
                body(svg -> svg.draw(new Box(1, 2, 3, 4, 0, null, 1, null))));
        assertEquals(
                "<circle cx=\"1\" cy=\"2\" r=\"3\" fill=\"#17693a\" stroke=\"#a1261f\" stroke-width=\"1\"/>\n",
                body(svg -> svg.draw(new Disc(1, 2, 3, Ink.of(Tone.BAD), 1, Ink.of(Tone.GOOD)))));
        assertEquals(
                "<circle cx=\"1\" cy=\"2\" r=\"3\" fill=\"#17693a\"/>\n",
                body(svg -> svg.draw(new Disc(1, 2, 3, null, 1, Ink.of(Tone.GOOD)))));
        assertEquals(
                "<circle cx=\"1\" cy=\"2\" r=\"3\" fill=\"#123456\"/>\n", body(svg -> svg.disc(1, 2, 3, "#123456")));
        assertEquals("#7a5200", Svg.colour(Tone.DOUBT));
    }

    /** XML 1.0 has no control characters but tab and line feed; what it reserves is escaped. */
    @Test
    void texts() {
        assertEquals(
                "<text x=\"1\" y=\"2\" fill=\"#1b1f23\">a &lt;b&gt; &amp; &quot;c&quot;\t\nd</text>\n",
                body(svg -> svg.text(1, 2, "a <b> & \"c\"\t\n\u0007d", Anchor.START, Tone.INK, false)));
        assertEquals(
                "<text x=\"1\" y=\"2\" text-anchor=\"middle\" fill=\"#1f5f8b\" font-size=\"12\" font-weight=\"bold\">tap</text>\n",
                body(svg -> svg.draw(new Label(1, 2, "tap", Anchor.MIDDLE, TextSize.SMALL, Tone.WATER, true))));
        assertEquals(
                "<text x=\"1\" y=\"2\" text-anchor=\"end\" fill=\"#1f5f8b\" font-family=\"Some CJK\">水管</text>\n",
                body(svg -> svg.text(1, 2, "水管", Anchor.END, Tone.WATER, false)));
        assertEquals(
                "pipe",
                new Label(1, 2, "tap", Anchor.END, TextSize.SMALL, Tone.WATER, true)
                        .with("pipe")
                        .text());
        assertEquals(
                "<g transform=\"translate(7 8)\">\n<circle cx=\"1\" cy=\"2\" r=\"3\" fill=\"#17693a\"/>\n</g>\n",
                body(svg -> svg.draw(List.of(new Disc(1, 2, 3, null, 1, Ink.of(Tone.GOOD))), 7, 8)));
    }

    /** A letter is taken as 0.56 of 14 pixels wide: 7.84; in 40 pixels there is room for five of them. */
    @Test
    void aTextIsShortenedToItsRoom() {
        assertEquals(39.2, Svg.width("riser"), 1e-9);
        assertEquals("riser", Svg.shortened("riser", 40));
        assertEquals("serv…", Svg.shortened("service pipe", 40));
        assertEquals("a…", Svg.shortened("a service", 24));
        assertEquals("s…", Svg.shortened("service pipe", 16));
        assertEquals("", Svg.shortened("service pipe", 15));
    }

    /** Adobe's metrics of Helvetica: H 722, e 556, l 222, o 556 thousandths of the letter size; bold 8 % more at most. */
    @Test
    void theWidthsOfLetters() {
        assertEquals(22.78, LetterWidths.of("Hello", 10, false), 1e-9);
        assertEquals(22.78 * 1.08, LetterWidths.of("Hello", 10, true), 1e-9);
        assertEquals(0, LetterWidths.of("", 10, false));
        assertEquals(2.78 + 5.84, LetterWidths.of(" ~", 10, false), 1e-9);
        assertEquals(2.78, LetterWidths.of("·", 10, false), 1e-9);
        assertEquals(4.0, LetterWidths.of("²", 10, false), 1e-9);
        assertEquals(5.84, LetterWidths.of("ü", 10, false), 1e-9);
        assertEquals(6.5, LetterWidths.of("Ω", 10, false), 1e-9);
        assertEquals(6.5, LetterWidths.of("✓", 10, false), 1e-9);
        assertEquals(6.5, LetterWidths.of("\u2000", 10, false), 1e-9);
        assertEquals(6.5, LetterWidths.of("\u27FF", 10, false), 1e-9);
        assertEquals(10, LetterWidths.of("\u1100", 10, false), 1e-9);
        assertEquals(20, LetterWidths.of("水管", 10, false), 1e-9);
        assertEquals(22.78 * 1.1, LetterWidths.at(10, 1.1).of("Hello", TextSize.NORMAL, false), 1e-9);
        assertEquals(22.78 * 0.86, LetterWidths.at(10, 1).of("Hello", TextSize.SMALL, false), 1e-9);
        assertEquals(0.5, Anchor.MIDDLE.share());
    }

    @Test
    void aToneHasAColourForEitherGround() {
        assertEquals(0x1F5F8B, Tone.WATER.rgb(false));
        assertEquals(0x7CC0EE, Tone.WATER.rgb(true));
    }
}
