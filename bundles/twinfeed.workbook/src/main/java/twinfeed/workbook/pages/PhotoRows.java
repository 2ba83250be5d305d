// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.util.List;
import twinfeed.model.survey.Photo;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/** The pictures of a survey, with what each proves. */
final class PhotoRows {
    private final Sheets sheets;
    private final Page page;

    PhotoRows(Sheets sheets, Page page) {
        this.sheets = sheets;
        this.page = page;
    }

    void write(List<Photo> photos) {
        if (photos.isEmpty()) {
            return;
        }
        page.gap(4);
        page.row().text(0, 4, sheets.words().get("photos"), Looking.BAND);
        for (Photo photo : photos) {
            page.row().text(0, photo.getCaption(), Looking.LINE);
            page.text(1, 2, photo.getSubject(), Looking.LINE);
            page.text(3, 4, photo.getFile(), Looking.LINE.ink(Look.Ink.MUTED));
        }
    }
}
