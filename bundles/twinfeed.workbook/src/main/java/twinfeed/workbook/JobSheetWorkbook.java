// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.IOException;
import java.io.OutputStream;
import org.apache.poi.ss.util.WorkbookUtil;
import twinfeed.document.DocumentTexts;
import twinfeed.document.JobSheet;
import twinfeed.document.Palette;
import twinfeed.workbook.jobsheet.JobSheetWriter;
import twinfeed.workbook.writer.SheetWriter;
import twinfeed.workbook.writer.WorkbookWriter;

/**
 * Writes a job sheet as a workbook of its own: it belongs to the technician, with chances and expected prices that are no quote, while the
 * quote's workbook goes to the customer.
 */
public final class JobSheetWorkbook {
    private JobSheetWorkbook() {}

    /**
     * Writes a job sheet. The same sheet gives the same bytes.
     *
     * @param job what to write
     * @param out where to; it is flushed and left open, and nothing is written to it before the book is complete
     * @throws IOException if the firm's logo cannot be read, or the stream cannot be written
     */
    public static void write(JobSheet job, OutputStream out) throws IOException {
        DocumentTexts words = new DocumentTexts(job.locale());
        try (WorkbookWriter book = new WorkbookWriter(new Palette(job.firm().accent()), job.locale(), true)) {
            SheetWriter page = book.page(WorkbookUtil.createSafeSheetName(job.title(), ' '));
            page.setup().footer(job.foot(), words.get("foot.page"));
            new JobSheetWriter(page, job).write();
            book.describe(job.heading(), "", job.firm().name(), "Twinfeed " + job.programVersion(), job.time());
            book.write(out);
        }
    }
}
