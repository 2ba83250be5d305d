// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.drawing;

import java.util.List;
import java.util.Set;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.QuoteDrawing;
import twinfeed.document.drawing.layout.HouseLayout;
import twinfeed.document.drawing.layout.HousePicture;
import twinfeed.document.shape.LetterWidths;
import twinfeed.document.shape.TextWidth;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;
import twinfeed.workbook.writer.VectorDrawing;

/** The house in section, as it is and with the work done, each with a row for each piece below it. */
public final class HouseSheet {
    private static final int LAST = 5;
    private static final double LETTERS = 8.5;

    /** A program may have wider letters than the ones whose widths are known. */
    private static final TextWidth WIDTHS = LetterWidths.at(LETTERS, 1.05);

    private final QuoteSheets sheets;
    private final SheetWriter page;

    /** The sheet's writer. */
    public HouseSheet(QuoteSheets sheets, SheetWriter page) {
        this.sheets = sheets;
        this.page = page;
    }

    /** Writes it. */
    public void write() {
        page.columns(5, 30, 23, 21, 10, 17);
        sheets.head(page, "drawing", LAST);
        List<QuoteDrawing> all = QuoteDrawing.of(sheets.document());
        if (all.isEmpty()) {
            page.row().text(0, LAST, sheets.words().get("drawing.none"), SheetStyles.MUTED);
            return;
        }
        VectorDrawing drawings = new VectorDrawing(LETTERS);
        double width = page.width(0, LAST);
        for (QuoteDrawing each : all) {
            page.gap(6);
            page.row().text(0, LAST, each.title(), SheetStyles.BAND);
            page.gap(4);
            HousePicture picture =
                    new HouseLayout(width, LETTERS, WIDTHS, sheets.document().locale()).section(each.drawing());
            page.gap(picture.height() + 2);
            drawings.add(0, page.rowIndex(), width, picture.height(), picture.shapes(), each.title());
            rows(each.drawing(), picture);
        }
        page.setup().onePage().printOnly(page.rowIndex(), LAST);
        drawings.put(page);
    }

    private void rows(HouseDrawing drawing, HousePicture picture) {
        sheets.tableHead(page, "drawing", LAST + 1, Set.of(3, 5));
        for (DrawnPiece piece : drawing.pieces()) {
            row(piece, picture.names().getOrDefault(piece, ""));
        }
    }

    private void row(DrawnPiece piece, String name) {
        CellStyle line = SheetStyles.LINE;
        CellStyle right = line.align(CellStyle.Alignment.RIGHT);
        String decides = piece.binding() ? sheets.words().get("drawing.decides") : "";
        page.row()
                .text(0, name, line.align(CellStyle.Alignment.CENTRE))
                .text(1, piece.title(), line)
                .text(2, piece.detail(), SheetStyles.LINE_MUTED)
                .text(3, piece.reading(), right)
                .text(4, decides, line)
                .text(5, piece.verdict(), right);
    }
}
