// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.book;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.rows.CsvRows;
import twinfeed.model.rows.Row;
import twinfeed.pricing.Rounding;
import twinfeed.pricing.TaxClass;
import twinfeed.pricing.book.ImportReport;
import twinfeed.pricing.book.PriceBookCsv;
import twinfeed.pricing.book.PriceBookRows;
import twinfeed.pricing.book.PriceBookText;
import twinfeed.pricing.book.RowRemark;
import twinfeed.usecase.refusal.Refusals;

/** Checks a price book that is being changed by the rules of its file, and writes it. */
public final class PriceBookFile {
    private PriceBookFile() {}

    /**
     * What is to be said about one place of a book.
     *
     * @param item number of the item, from 0; -1 for the head
     * @param field name of the value, as in the model; empty for the item as a whole
     * @param error whether the book cannot be written as long as it is so
     * @param text what is wrong and what would be right
     */
    public record Remark(int item, String field, boolean error, String text) {}

    /** The tax classes that an item may have, in the order of the choice. */
    public static List<String> taxClasses() {
        return TaxClass.keys();
    }

    /** The ways in which a book may round. */
    public static List<String> roundings() {
        return Rounding.keys();
    }

    /**
     * What is wrong or odd in a book, read as its file would be.
     *
     * @param book the book; each item has a code
     */
    public static List<Remark> check(PriceBook book, Locale locale) {
        List<Row> rows = new ArrayList<>();
        CsvRows.read("", PriceBookText.of(book), PriceBookCsv.MOST_ROWS + 1000, rows::add);
        List<Integer> items = rows.stream()
                .filter(row -> !row.head())
                .skip(1)
                .map(Row::number)
                .toList();
        ImportReport report = PriceBookRows.read("", rows);
        return Stream.concat(
                        report.refused().stream().map(one -> remark(one, items, true, locale)),
                        report.notices().stream().map(one -> remark(one, items, false, locale)))
                .toList();
    }

    private static Remark remark(RowRemark one, List<Integer> items, boolean error, Locale locale) {
        String right = one.right(locale);
        String text = one.wrong(locale) + (right.isEmpty() ? "" : "; " + right);
        return new Remark(items.indexOf(one.row()), attribute(one.column()), error, text);
    }

    /** A column's name as the model writes it: {@code tax-class} is {@code taxClass}. */
    private static String attribute(String column) {
        StringBuilder name = new StringBuilder();
        for (String part : column.split("-")) {
            name.append(name.length() == 0 ? part : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
        }
        return name.toString();
    }

    /**
     * Writes a book; the file appears whole or not at all. Remarks for people, lines that begin with {@code ##}, are kept: they come
     * first.
     *
     * @param file where to, *.csv
     * @param source the file from which the book was read, whose remarks are kept
     * @throws InputException if something in the book is wrong, or the file cannot be written
     */
    public static void save(PriceBook book, Path file, Path source) {
        List<InputProblem> wrong = check(book, Locale.getDefault(Locale.Category.DISPLAY)).stream()
                .filter(Remark::error)
                .map(one -> new InputProblem(
                        file.toString(),
                        0,
                        one.item() < 0
                                ? one.field()
                                : book.getItems().get(one.item()).getCode() + " " + one.field(),
                        "",
                        one.text(),
                        Refusals.right("book.entry")))
                .toList();
        if (!wrong.isEmpty()) {
            throw new InputException(wrong);
        }
        if (!file.toString().endsWith(".csv")) {
            throw new InputException(Refusals.ofFile(file, "book.ending"));
        }
        String text = remarks(source) + PriceBookText.of(book);
        AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String remarks(Path source) {
        if (!Files.isRegularFile(source) || !source.toString().endsWith(".csv")) {
            return "";
        }
        try {
            StringBuilder remarks = new StringBuilder();
            decoded(Files.readAllBytes(source))
                    .lines()
                    .map(line -> line.startsWith("\ufeff") ? line.substring(1) : line)
                    .filter(line -> line.startsWith("##"))
                    .forEach(line -> remarks.append(line).append('\n'));
            return remarks.toString();
        } catch (IOException unreadable) {
            throw Refusals.exception(unreadable, source, "book.remarks");
        }
    }

    private static String decoded(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException older) {
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }
}
