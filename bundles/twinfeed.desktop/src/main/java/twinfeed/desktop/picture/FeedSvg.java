// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.picture;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.picture.Svg.Anchor;
import twinfeed.desktop.text.Words;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;

/** The two feeds of a house as SVG: what the window shows, as wide as an A4 page. */
public final class FeedSvg {
    private static final double WIDTH = 760;
    private static final double ROW = 26;
    private static final double EDGE = 16;
    private static final double GAP = 24;
    private static final double RADIUS = 5;
    private static final String BLACK = "#000000";

    private final Words words;
    private final Svg svg;

    private FeedSvg(Words words, Svg svg) {
        this.words = words;
        this.svg = svg;
    }

    /**
     * The picture.
     *
     * @param title what stands above it: which house, which heater, which verdict
     */
    public static String of(HouseDrawing picture, String title, Words words) {
        int rows = Math.max(picture.water().size(), picture.power().size());
        Svg svg = new Svg(WIDTH, 2 * EDGE + (rows + 3) * ROW, title + ": " + words.get("pane.feeds"));
        FeedSvg drawing = new FeedSvg(words, svg);
        svg.text(EDGE, EDGE + ROW / 2, Svg.shortened(title, WIDTH - 2 * EDGE), Anchor.START, BLACK, true);
        double half = (WIDTH - 2 * EDGE - GAP) / 2;
        double bottom = EDGE + (rows + 2) * ROW;
        drawing.column("feed.water", picture.water(), Tone.WATER, EDGE, half, bottom);
        drawing.column("feed.power", picture.power(), Tone.POWER, EDGE + half + GAP, half, bottom);
        svg.frame(EDGE, bottom, WIDTH - 2 * EDGE, ROW, Svg.colour(Tone.QUIET), "#F2F2F2");
        drawing.piece(picture.unit(), EDGE + 8, bottom, WIDTH - 2 * EDGE - 16);
        return svg.toString();
    }

    private void column(String head, List<DrawnPiece> pieces, Tone tone, double x, double wide, double bottom) {
        double top = EDGE + 2 * ROW;
        svg.text(x, top - ROW / 2, words.get(head), Anchor.START, Svg.colour(tone), true);
        double line = x + RADIUS + 2;
        svg.line(line, top + ROW / 2, line, bottom, Svg.colour(tone), 2);
        for (int i = 0; i < pieces.size(); i++) {
            svg.disc(line, top + i * ROW + ROW / 2, RADIUS, Svg.colour(tone));
            piece(pieces.get(i), line + 3 * RADIUS, top + i * ROW, wide - 4 * RADIUS);
        }
    }

    private void piece(DrawnPiece piece, double x, double y, double wide) {
        double base = y + ROW / 2 + Svg.LETTERS * 0.36;
        double room = wide;
        @Nullable Mark mark = piece.mark();
        if (mark != null) {
            String answer = (mark.sign() + " " + piece.margin()).strip();
            if (piece.binding()) {
                svg.frame(x - 4, y + 2, wide + 6, ROW - 4, Svg.colour(mark.tone()), "none");
            }
            svg.text(x + wide - 4, base, answer, Anchor.END, Svg.colour(mark.tone()), false);
            room -= Svg.width(answer) + 12;
        }
        String name = Svg.shortened(piece.name(), room);
        svg.text(x, base, name, Anchor.START, BLACK, piece.binding());
        double used = Svg.width(name) * (piece.binding() ? 1.1 : 1) + 10;
        String detail = Svg.shortened(piece.detail(), room - used);
        if (!detail.isEmpty()) {
            svg.text(x + used, base, detail, Anchor.START, Svg.colour(Tone.QUIET), false);
        }
    }
}
