// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.pricing.book.ImportReport;
import twinfeed.pricing.book.PriceBookCsv;
import twinfeed.pricing.book.PriceBookException;
import twinfeed.pricing.book.PriceBookRows;
import twinfeed.usecase.refusal.Refusals;
import twinfeed.workbook.read.ListSheet;
import twinfeed.workbook.read.PriceBookSheet;
import twinfeed.workbook.text.WorkbookException;

/** Reads a price book from a CSV file or from the first sheet of a workbook. */
final class BookOpening {
    /**
     * The book.
     *
     * @throws InputException if the file cannot be used, with everything that is wrong in it
     */
    PriceBook open(Path file) {
        try {
            return report(file).bookOrThrow();
        } catch (PriceBookException refused) {
            throw new UnusableException(
                    refused.report().refusals(Locale.getDefault(Locale.Category.DISPLAY)),
                    refused.report().refused().stream()
                            .map(one -> new InputProblem(
                                    file.toString(),
                                    one.row(),
                                    one.column(),
                                    "",
                                    one.wrong(Locale.getDefault(Locale.Category.DISPLAY)),
                                    one.right(Locale.getDefault(Locale.Category.DISPLAY))))
                            .toList(),
                    refused);
        }
    }

    /**
     * What is in the file, row by row; nothing of it is taken where a row is refused.
     *
     * @throws InputException if it cannot be read as rows at all
     */
    ImportReport report(Path file) {
        InputBytes.check(file);
        try {
            return ListSheet.isNamed(file) ? sheet(file) : PriceBookCsv.read(file);
        } catch (WorkbookException refused) {
            throw ListProblem.of(file, refused);
        } catch (IOException unreadable) {
            throw Refusals.exception(unreadable, file, "book.unreadable");
        }
    }

    private static ImportReport sheet(Path file) throws IOException {
        return PriceBookRows.read(String.valueOf(file.getFileName()), PriceBookSheet.read(file));
    }
}
