// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import twinfeed.document.JobSheet;
import twinfeed.pdf.JobSheetPdf;
import twinfeed.workbook.JobSheetWorkbook;

/** Sheets of a job that are written together, each as a workbook, as a PDF or as both; all of them appear, or nothing. */
public final class JobSheetFiles {
    private final OutputFiles files = new OutputFiles();

    /**
     * Adds the files of a sheet.
     *
     * @param out where to
     * @throws UnusableException if another is to be written there
     */
    public JobSheetFiles add(JobSheet sheet, OutputPaths out) {
        files.add(out.workbook(), bytes -> JobSheetWorkbook.write(sheet, bytes))
                .add(out.pdf(), bytes -> JobSheetPdf.write(sheet, bytes));
        return this;
    }

    /**
     * Makes and writes them all.
     *
     * @throws UnusableException if one cannot be made
     * @throws twinfeed.model.io.InputException if one cannot be written
     */
    public void write() {
        files.write();
    }
}
