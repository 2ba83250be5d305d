// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import twinfeed.document.picture.Picture;

/** Puts pictures on a page. */
public final class Pictures {
    private Pictures() {}

    /**
     * Puts a picture at the top left of a cell of the page's present row, as large as fits into a box.
     *
     * @param column first column
     * @param widthPt width of the box, in points
     * @param heightPt height of the box, in points; the row has to be at least as high
     * @param right whether it stands at the right end of the box
     */
    public static void put(
            SheetWriter page, Picture photo, int column, double widthPt, double heightPt, boolean right) {
        double scale = Math.min(widthPt / photo.width(), heightPt / photo.height());
        double wide = photo.width() * scale;
        double high = photo.height() * scale;
        int picture = page.book()
                .under()
                .addPicture(photo.bytes(), photo.jpeg() ? Workbook.PICTURE_TYPE_JPEG : Workbook.PICTURE_TYPE_PNG);
        XSSFDrawing drawing = page.sheet().createDrawingPatriarch();
        double start = right ? widthPt - wide : 0;
        int[] from = page.columnAt(column, start);
        int[] to = page.columnAt(column, start + wide);
        int row = page.rowIndex();
        XSSFClientAnchor anchor =
                drawing.createAnchor(from[1], Units.toEMU(2), to[1], Units.toEMU(2 + high), from[0], row, to[0], row);
        drawing.createPicture(anchor, picture);
    }
}
