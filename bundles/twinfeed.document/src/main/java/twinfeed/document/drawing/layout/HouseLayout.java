// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.Locale;
import twinfeed.document.DocumentTexts;
import twinfeed.document.drawing.DrawingTexts;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.TextSize;
import twinfeed.document.shape.TextWidth;
import twinfeed.document.shape.Tone;

/**
 * Lays out the drawing of a house for what it is drawn on.
 *
 * @param width width that there is
 * @param letters size of running text
 * @param widths widths of texts
 * @param locale language
 */
public record HouseLayout(double width, double letters, TextWidth widths, Locale locale) {
    /** The section and the rows. */
    public HousePicture of(HouseDrawing drawing) {
        return of(drawing, "");
    }

    /**
     * The section and the rows below a title.
     *
     * @param title what stands above: which house, which heater, which state; may be empty
     */
    public HousePicture of(HouseDrawing drawing, String title) {
        DrawingSheet sheet = new DrawingSheet(width, letters, widths);
        DocumentTexts words = DrawingTexts.in(locale);
        Chips chips = new Chips(sheet, drawing, words);
        double top = title(sheet, title);
        double below = new SectionLayout(sheet, drawing, chips).draw(top);
        double rows = new RowsLayout(sheet, drawing, chips, words).draw(below);
        return sheet.finished(caption(sheet, drawing, words, rows + sheet.em(0.3)), chips.names());
    }

    /** The section alone, for media that have the rows as text of their own. */
    public HousePicture section(HouseDrawing drawing) {
        DrawingSheet sheet = new DrawingSheet(width, letters, widths);
        Chips chips = new Chips(sheet, drawing, DrawingTexts.in(locale));
        return sheet.finished(new SectionLayout(sheet, drawing, chips).draw(0), chips.names());
    }

    private double title(DrawingSheet sheet, String title) {
        if (title.isEmpty()) {
            return 0;
        }
        String text = sheet.shortened(title, width, TextSize.NORMAL, true);
        sheet.write(new Label(0, sheet.em(0.9), text, Anchor.START, TextSize.NORMAL, Tone.INK, true));
        return sheet.em(1.6);
    }

    private double caption(DrawingSheet sheet, HouseDrawing drawing, DocumentTexts words, double top) {
        String text = words.get(drawing.measured() ? "caption.measured" : "caption");
        return sheet.paragraph(0, top, width, text, Tone.QUIET) + sheet.em(0.2);
    }
}
