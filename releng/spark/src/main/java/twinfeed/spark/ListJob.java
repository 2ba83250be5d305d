// SPDX-License-Identifier: EPL-2.0
package twinfeed.spark;

import java.io.Serializable;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import twinfeed.model.rows.Row;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.batch.BatchTask;
import twinfeed.usecase.batch.RowJudge;

/**
 * What is to be done with a list, as it goes to each machine: names of files and values. Every machine reads the files itself, so template,
 * catalogue, price book and the firm's files must lie under the same names on all of them.
 *
 * @param template the job that stands for everything that a row does not say
 * @param book prices
 * @param day day of the prices, YYYY-MM-DD
 * @param today the day on which the list is judged, YYYY-MM-DD: the same on every machine, for a row surveyed later is rejected
 * @param language language of the sentences, a tag such as en-GB
 * @param list what messages call the list
 * @param head the first row of the list
 */
record ListJob(String template, String book, String day, String today, String language, String list, SerialRow head)
        implements Serializable {
    private static final long serialVersionUID = 1;

    /** What judges the rows of this list; takes as long as reading template, catalogue and prices. */
    RowJudge judge() {
        TwinfeedService service = TwinfeedService.onClassPath();
        Path prices = Path.of(book);
        BatchTask task = new BatchTask(
                service.open(Path.of(template), null),
                service.book(prices),
                FirmFile.beside(prices),
                LocalDate.parse(day),
                Locale.forLanguageTag(language),
                LocalDate.parse(today));
        return new RowJudge(service, task, list, head.row());
    }

    /** A row that can be sent from machine to machine. */
    record SerialRow(int number, String[] cells) implements Serializable {
        private static final long serialVersionUID = 1;

        static SerialRow of(Row row) {
            return new SerialRow(row.number(), row.cells().toArray(String[]::new));
        }

        Row row() {
            return new Row(number, java.util.List.of(cells));
        }
    }
}
