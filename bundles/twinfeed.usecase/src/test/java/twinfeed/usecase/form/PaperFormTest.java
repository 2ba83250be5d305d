// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.form;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Column;
import twinfeed.document.JobSheet.Section;
import twinfeed.pdf.JobSheetPdf;
import twinfeed.workbook.form.FormLanguage;

class PaperFormTest {
    /** The letters of the form; it takes smaller ones where a page would not do. */
    private static final float FORM_POINTS = 7.2f;

    /** Width of the text on A4, and the room beside the letters of a cell. */
    private static final double TABLE_MM = 180;

    private static final double PADDING_MM = 2.4;

    private static final double MM_PER_POINT = 25.4 / 72;

    /** No word of a head is wider than its column in the typeface of the PDF, so that none is cut. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyWordOfAHeadFitsItsColumn(String language) throws Exception {
        Font font;
        try (InputStream typeface =
                Objects.requireNonNull(JobSheetPdf.class.getResourceAsStream("fonts/LiberationSans-Bold.ttf"))) {
            font = Font.createFont(Font.TRUETYPE_FONT, typeface).deriveFont(FORM_POINTS);
        }
        FontRenderContext context = new FontRenderContext(null, true, true);
        JobSheet form = new PaperForm(new FormLanguage(Locale.forLanguageTag(language), attribute -> List.of()))
                .blank(LocalDate.of(2026, 10, 6));
        int columns = 0;
        for (Section section : form.sections()) {
            List<Column> heads =
                    section.table() == null ? List.of() : section.table().columns();
            double shares = heads.stream().mapToDouble(Column::share).sum();
            for (Column head : heads) {
                double room = TABLE_MM * head.share() / shares - PADDING_MM;
                for (String word : head.head().split("\\s+|(?<=\u00ad)")) {
                    double width = font.getStringBounds(word.replace('\u00ad', '-'), context)
                                    .getWidth()
                            * MM_PER_POINT;
                    assertTrue(width <= room, word + ": " + width + " mm in " + room + " mm");
                    columns++;
                }
            }
        }
        assertTrue(columns > 40, "columns: " + columns);
    }
}
