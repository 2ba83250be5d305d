// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.util.List;
import org.apache.poi.ss.util.WorkbookUtil;
import twinfeed.calculator.safety.SafeIsolation;
import twinfeed.document.Palette;
import twinfeed.model.form.FormPage;
import twinfeed.model.form.SurveyForm;
import twinfeed.model.job.Job;
import twinfeed.workbook.writer.WorkbookWriter;

/** Writes the survey of a job as a workbook with checked cells; {@link SurveyFormReader} reads it back. */
public final class SurveyFormWorkbook {
    private SurveyFormWorkbook() {}

    /**
     * Writes a form. The same job gives the same bytes.
     *
     * @param job what is known already; a new job for a blank form
     * @param language its language
     * @param accent its colour, 0xRRGGBB
     * @param programVersion version of the program
     * @param out where to; it is flushed and left open
     * @throws IOException if the stream cannot be written
     */
    public static void write(Job job, FormLanguage language, int accent, String programVersion, OutputStream out)
            throws IOException {
        try (WorkbookWriter book = new WorkbookWriter(new Palette(accent), language.locale(), true)) {
            FormLists lists = new FormLists();
            FormChecks checks = new FormChecks(language, lists);
            String sign = FormCells.MARK + " " + FormCells.VERSION + " "
                    + language.locale().getLanguage();
            for (FormPage page : SurveyForm.pages()) {
                String name = WorkbookUtil.createSafeSheetName(language.text("page." + page.key()), ' ');
                new FormSheetWriter(book.page(name), language, checks, job)
                        .write(page, sign.strip(), notes(page.key(), language));
            }
            lists.write(book);
            book.describe(language.text("title"), "", "", "Twinfeed " + programVersion, Instant.EPOCH);
            book.write(out);
        }
    }

    private static List<String> notes(String page, FormLanguage language) {
        return switch (page) {
            case "visit" ->
                List.of(language.text("note.fill"), language.text("note.absent"), language.text("note.tables"));
            case "faults" -> List.of(SafeIsolation.brief(language.locale()));
            default -> List.of();
        };
    }
}
