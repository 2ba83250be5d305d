// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.picture;

import java.util.Locale;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.layout.HouseLayout;
import twinfeed.document.drawing.layout.HousePicture;
import twinfeed.document.shape.LetterWidths;
import twinfeed.document.shape.Svg;

/** The drawing of a house as SVG: what the window shows, as wide as an A4 page. */
public final class HouseSvg {
    private static final double WIDTH = 760;
    private static final double EDGE = 16;

    /** A viewer may have a wider typeface than the one whose widths are known. */
    private static final double SAFETY = 1.12;

    private HouseSvg() {}

    /**
     * The picture.
     *
     * @param title what stands above it: which house, which heater, which verdict
     */
    public static String of(HouseDrawing drawing, String title, Locale locale) {
        HouseLayout layout =
                new HouseLayout(WIDTH - 2 * EDGE, Svg.LETTERS, LetterWidths.at(Svg.LETTERS, SAFETY), locale);
        HousePicture picture = layout.of(drawing, title);
        return new Svg(WIDTH, picture.height() + 2 * EDGE, title)
                .draw(picture.shapes(), EDGE, EDGE)
                .toString();
    }
}
