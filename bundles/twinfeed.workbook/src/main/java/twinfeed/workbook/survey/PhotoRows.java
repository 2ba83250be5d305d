// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.survey;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.document.picture.PhotoReader;
import twinfeed.document.picture.Picture;
import twinfeed.model.survey.Photo;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.text.WorkbookException;
import twinfeed.workbook.writer.Pictures;
import twinfeed.workbook.writer.SheetWriter;

/** The pictures of a survey, with what each proves. */
final class PhotoRows {
    private static final double HEIGHT_PT = 230;

    /** Longest side of a picture, pixels: 160 to the inch where it is half as wide again as high. */
    private static final int LONGEST = 760;

    private final QuoteSheets sheets;
    private final SheetWriter page;

    PhotoRows(QuoteSheets sheets, SheetWriter page) {
        this.sheets = sheets;
        this.page = page;
    }

    /** Writes them; a picture whose file is missing is said to be missing, one that cannot be read is an error. */
    void write(List<Photo> photos) throws IOException {
        if (photos.isEmpty()) {
            return;
        }
        page.gap(4);
        page.row().text(0, SurveySheet.LAST, sheets.words().get("photos"), SheetStyles.BAND);
        for (Photo photo : photos) {
            page.row().text(0, photo.getCaption(), SheetStyles.LINE);
            page.text(1, 2, photo.getSubject(), SheetStyles.LINE);
            page.text(3, SurveySheet.LAST, photo.getFile(), SheetStyles.LINE_MUTED);
            picture(photo);
        }
    }

    private void picture(Photo photo) throws IOException {
        Picture picture = read(photo.getFile());
        page.row();
        if (picture == null) {
            page.text(0, SurveySheet.LAST, sheets.words().get("photos.missing"), SheetStyles.MUTED);
        } else {
            page.span(0, SurveySheet.LAST, SheetStyles.BODY).height(HEIGHT_PT + 6);
            Pictures.put(page, picture, 0, page.width(0, SurveySheet.LAST), HEIGHT_PT, false);
        }
    }

    private @Nullable Picture read(@Nullable String file) throws IOException {
        if (file == null) {
            return null;
        }
        try (InputStream stream = sheets.document().photos().open(file)) {
            if (stream == null) {
                return null;
            }
            byte[] content = stream.readNBytes(PhotoReader.LARGEST_FILE + 1);
            if (content.length > PhotoReader.LARGEST_FILE) {
                throw PhotoReader.tooLarge();
            }
            return PhotoReader.read(content, LONGEST);
        } catch (IOException unreadable) {
            throw new WorkbookException(
                    "photo", Map.of("file", file, "reason", String.valueOf(unreadable.getMessage())), unreadable);
        }
    }
}
