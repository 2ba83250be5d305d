// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.usecase.UnusableException;
import twinfeed.workbook.read.ListSheet;
import twinfeed.workbook.read.SheetRow;
import twinfeed.workbook.text.WorkbookException;

/** Reads a list of dwellings row by row, from CSV by RFC 4180 in UTF-8 or from the first sheet of a workbook. Only one row is held. */
final class DwellingRows {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).build();

    private final Path file;

    DwellingRows(Path file) {
        this.file = file;
    }

    /**
     * Reads it; blank rows are passed over.
     *
     * @param rows takes each row as it comes
     * @throws InputException or UnusableException if the file cannot be read to its end
     */
    void read(Consumer<SheetRow> rows) {
        if (!Files.isRegularFile(file)) {
            throw unusable("there is no such file", "name a list of dwellings, *.csv or *.xlsx");
        }
        try {
            if (ListSheet.isNamed(file)) {
                ListSheet.read(file, rows);
            } else {
                csv(rows);
            }
        } catch (WorkbookException refused) {
            throw new UnusableException(file + ": " + refused.getMessage(), refused);
        } catch (IOException unreadable) {
            throw unusable(
                    "it cannot be read", "check its rights and that it is a workbook, *.xlsx, or text in UTF-8, *.csv");
        }
    }

    private void csv(Consumer<SheetRow> rows) throws IOException {
        int line = 1;
        // A decoder of its own, because the usual reader puts a mark for what it cannot read and goes on.
        try (Reader reader = new BufferedReader(
                        new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8.newDecoder()));
                CSVParser parser = CSVParser.parse(reader, FORMAT)) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                List<String> cells =
                        records.next().stream().map(DwellingRows::plain).toList();
                if (!cells.stream().allMatch(String::isEmpty)) {
                    rows.accept(new SheetRow(line, cells));
                }
                line = (int) parser.getCurrentLineNumber() + 1;
            }
        } catch (UncheckedIOException | IllegalStateException broken) {
            throw broken(broken, line);
        }
    }

    private InputException broken(RuntimeException broken, int line) {
        boolean foreign = broken.getCause() instanceof CharacterCodingException;
        return new InputException(new InputProblem(
                file.toString(),
                line,
                "",
                "",
                foreign ? "it is no UTF-8 text" : "the quotes are broken",
                foreign
                        ? "save it as UTF-8"
                        : "put a cell with commas or quotes in double quotes and double those in it"));
    }

    private InputException unusable(String wrong, String right) {
        return new InputException(InputProblem.ofFile(file.toString(), wrong, right));
    }

    private static String plain(String cell) {
        return cell.replace("\ufeff", "").strip();
    }
}
