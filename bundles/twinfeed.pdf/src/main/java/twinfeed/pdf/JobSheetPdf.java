// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import twinfeed.document.DocumentTexts;
import twinfeed.document.JobSheet;
import twinfeed.document.Palette;
import twinfeed.document.picture.Picture;

/** Writes a job sheet as PDF, to be filled in by pen. */
public final class JobSheetPdf {
    /** Sizes of running text in points that are tried until the sheet fits both sides of a paper. */
    private static final List<Double> SIZES = List.of(8.6, 7.9);

    private static final int BOTH_SIDES = 2;

    private JobSheetPdf() {}

    /**
     * Writes a job sheet. The same sheet gives the same bytes.
     *
     * @param job what to write
     * @param out where to; it is flushed and left open, and nothing is written to it before the PDF is complete
     * @throws IOException if the firm's logo cannot be read, or the stream cannot be written
     */
    public static void write(JobSheet job, OutputStream out) throws IOException {
        out.write(set(job).pdf());
        out.flush();
    }

    static Typesetter.Set set(JobSheet job) throws IOException {
        DocumentTexts words = new DocumentTexts(job.locale());
        Picture logo = job.firm().picture();
        DocumentInfo about = new DocumentInfo(
                job.title() + " " + job.reference(),
                job.firm().name(),
                "Twinfeed " + job.programVersion(),
                job.locale(),
                job.time());
        return Pages.fitting(BOTH_SIDES, SIZES, size -> {
            FoWriter fo = Typesetter.get().document();
            PageBody sheet = new PageBody(fo, new Palette(job.firm().accent()), size);
            sheet.write(job.foot(), words, job.locale(), () -> {
                if (!job.firm().name().isEmpty() || logo != null) {
                    new Letterhead(sheet, job.firm(), logo).write();
                }
                new JobPage(sheet, job).write();
            });
            return Typesetter.get().set(fo, about);
        });
    }

    /** Fields of equal width. */
    static List<PageBody.Place> equal(List<FoWriter.Content> contents) {
        String width = 100 / contents.size() + "%";
        return contents.stream()
                .map(content -> new PageBody.Place(width, content))
                .toList();
    }
}
