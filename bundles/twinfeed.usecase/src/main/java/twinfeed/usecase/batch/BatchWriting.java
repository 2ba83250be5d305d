// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.Office;
import twinfeed.usecase.Opened;
import twinfeed.usecase.UnusableException;
import twinfeed.workbook.ResultWorkbook;

/** Judges and prices a list of dwellings and writes the results as a workbook. */
public final class BatchWriting {
    private final Office office;
    private final Opened pattern;
    private final PriceBook book;
    private final FirmFile firm;
    private final LocalDate date;
    private final Locale locale;

    /**
     * For dwellings like one job.
     *
     * @param office the use cases
     * @param pattern a job whose survey stands for everything that a row does not say; its candidates are checked in every dwelling
     * @param book prices
     * @param firm who quotes
     * @param date day of the prices
     * @param locale language of the results
     */
    public BatchWriting(Office office, Opened pattern, PriceBook book, FirmFile firm, LocalDate date, Locale locale) {
        this.office = office;
        this.pattern = pattern;
        this.book = book;
        this.firm = firm;
        this.date = date;
        this.locale = locale;
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
        Batch batch = new Batch(office, pattern, book, firm, date, locale);
        int[] counts = new int[2];
        try (ResultWorkbook results = results(list)) {
            BatchTable table = new BatchTable(results, heaters(), locale);
            table.begin(book.getCurrency());
            batch.run(
                    list,
                    dwelling -> {
                        table.add(dwelling);
                        counts[0]++;
                        counts[1] += dwelling.quote() == null ? 0 : 1;
                    },
                    progress);
            table.refused(batch.refused());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
            results.write(bytes);
            AtomicFile.write(out, bytes.toByteArray());
        } catch (IOException refused) {
            throw new UnusableException(out + ": " + refused.getMessage(), refused);
        }
        return new BatchReport(counts[0], counts[1], batch.refused());
    }

    private ResultWorkbook results(Path list) {
        return new ResultWorkbook(
                String.valueOf(list.getFileName()),
                firm.firm().name(),
                Office.VERSION,
                firm.firm().accent(),
                locale,
                date.atStartOfDay().toInstant(ZoneOffset.UTC));
    }

    private List<Heater> heaters() {
        List<String> wished = pattern.job().getSurvey().getCandidates();
        return pattern.catalogue().getHeaters().stream()
                .filter(heater -> wished.isEmpty() || wished.contains(heater.getId()))
                .toList();
    }
}
