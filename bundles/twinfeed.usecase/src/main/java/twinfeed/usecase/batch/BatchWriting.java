// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.function.IntConsumer;
import twinfeed.model.io.AtomicFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.workbook.batch.ResultWorkbook;

/** Judges and prices a list of dwellings and writes the results as a workbook. */
public final class BatchWriting {
    private final TwinfeedService office;
    private final BatchTask task;

    /** With the use cases and what is to be done. */
    public BatchWriting(TwinfeedService office, BatchTask task) {
        this.office = office;
        this.task = task;
    }

    /**
     * Writes the results; the file appears whole or not at all.
     *
     * @param list the dwellings, *.csv or *.xlsx
     * @param out the workbook to write
     * @param progress called after each row with the number of rows so far
     * @throws twinfeed.model.io.InputException or UnusableException if the list as a whole cannot be used, or the file not be written
     */
    public BatchReport write(Path list, Path out, IntConsumer progress) {
        Batch batch = new Batch(office, task);
        int[] counts = new int[3];
        try (ResultWorkbook results = results(list)) {
            BatchTable table = new BatchTable(results, task.heaters(), task.locale());
            table.begin(task.book().getCurrency());
            batch.run(
                    list,
                    dwelling -> {
                        table.add(dwelling);
                        counts[0]++;
                        counts[1] += dwelling.quote() == null ? 0 : 1;
                        counts[2] += dwelling.judged().unanswered() ? 1 : 0;
                    },
                    progress);
            table.refused(batch.refused());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
            results.write(bytes);
            AtomicFile.write(out, bytes.toByteArray());
        } catch (IOException refused) {
            throw new UnusableException(out + ": " + refused.getMessage(), refused);
        }
        return new BatchReport(counts[0], counts[1], counts[2], batch.refused());
    }

    private ResultWorkbook results(Path list) {
        return new ResultWorkbook(
                String.valueOf(list.getFileName()),
                task.firm().firm().name(),
                TwinfeedService.VERSION,
                task.firm().firm().accent(),
                task.locale(),
                task.date().atStartOfDay().toInstant(ZoneOffset.UTC));
    }
}
