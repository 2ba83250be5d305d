// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;

/** Work on lists with a job and the prices of the demonstration. */
final class DemoBatch {
    static final LocalDate DAY = LocalDate.of(2026, 11, 29);

    private DemoBatch() {}

    /** With a job as the template, by its name without ending. */
    static BatchWriting like(String job, LocalDate day) {
        TwinfeedService service = TwinfeedService.onClassPath();
        Path book = Demo.FOLDER.resolve("prices.csv");
        return new BatchWriting(
                service,
                new BatchTask(
                        service.open(Demo.FOLDER.resolve(job + ".job"), null),
                        service.book(book),
                        FirmFile.beside(book),
                        day,
                        Locale.UK));
    }
}
