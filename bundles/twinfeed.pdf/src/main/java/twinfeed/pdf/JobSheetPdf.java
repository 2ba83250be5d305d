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

    /** The same for a form, which asks more than a job sheet and of which most is room to write. */
    private static final List<Double> FORM_SIZES = List.of(8.6, 7.9, 7.2, 6.6);

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

    /**
     * Writes a form to be filled in by pen, in letters as small as it takes to fit both sides of a paper. The same form gives the same bytes.
     *
     * @param form what to write
     * @param out where to; it is flushed and left open, and nothing is written to it before the PDF is complete
     * @throws IOException if the stream cannot be written
     */
    public static void writeForm(JobSheet form, OutputStream out) throws IOException {
        out.write(set(form, FORM_SIZES, JobPage.NARROW_PEN_HEIGHT).pdf());
        out.flush();
    }

    static Typesetter.Set set(JobSheet job) throws IOException {
        return set(job, SIZES, JobPage.PEN_HEIGHT);
    }

    private static Typesetter.Set set(JobSheet job, List<Double> sizes, String penHeight) throws IOException {
        DocumentTexts words = new DocumentTexts(job.locale());
        Picture logo = job.firm().picture();
        DocumentInfo about = new DocumentInfo(
                job.heading(), job.firm().name(), "Twinfeed " + job.programVersion(), job.locale(), job.time());
        return Pages.fitting(BOTH_SIDES, sizes, size -> {
            FoWriter fo = Typesetter.get().document();
            PageBody sheet = new PageBody(fo, new Palette(job.firm().accent()), size);
            sheet.write(job.foot(), words, job.locale(), () -> {
                if (!job.firm().name().isEmpty() || logo != null) {
                    new Letterhead(sheet, job.firm(), logo).write();
                }
                new JobPage(sheet, job, penHeight).write();
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
