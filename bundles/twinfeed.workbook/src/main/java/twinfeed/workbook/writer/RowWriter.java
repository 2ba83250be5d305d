// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.util.CellReference;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a sheet as the file has them (ECMA-376 part 1, 18.3.1.80), written as they come. POI's ordinary model keeps a bean for
 * each cell, and its streaming one asks the platform for its fonts before the first sheet; both cost more at a cold start than all
 * rows together.
 */
final class RowWriter implements AutoCloseable {
    /** Buffer of the writer; larger than most sheets' rows. */
    private static final int BUFFER = 16_384;

    /** Empty cells that are written rather than skipped. */
    private static final int FEW = 3;

    private final @Nullable ByteArrayOutputStream memory;
    private final @Nullable Path file;
    private final @Nullable SharedStrings strings;
    private final Writer out;
    private @Nullable SharedFormulas formulas;
    private int rowNumber;
    private int next;
    private double plain = -1;

    private RowWriter(
            @Nullable ByteArrayOutputStream memory,
            @Nullable Path file,
            @Nullable SharedStrings strings,
            OutputStream stream) {
        this.memory = memory;
        this.file = file;
        this.strings = strings;
        this.out = new java.io.BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), BUFFER);
    }

    /** Rows kept in memory, their texts in the book's table. */
    static RowWriter inMemory(SharedStrings strings) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(BUFFER);
        return new RowWriter(bytes, null, strings, bytes);
    }

    /** Rows kept in a temporary file with their texts, so that there may be any number of them. */
    static RowWriter inFile() throws IOException {
        Path file = Files.createTempFile("twinfeed-rows", ".xml");
        return new RowWriter(null, file, null, Files.newOutputStream(file));
    }

    /** From now on a formula that follows from an earlier one by moving it is written as such; only of rows kept in memory. */
    void shareFormulas() {
        formulas = memory == null ? null : new SharedFormulas();
    }

    /** The rows, complete and to be read once more. */
    InputStream open() throws IOException {
        out.flush();
        if (memory != null) {
            byte[] bytes = memory.toByteArray();
            return new ByteArrayInputStream(formulas == null ? bytes : formulas.complete(bytes));
        }
        if (file == null) {
            throw new IllegalStateException("rows without a place");
        }
        return new BufferedInputStream(Files.newInputStream(file), BUFFER);
    }

    @Override
    public void close() throws IOException {
        out.close();
        if (file != null) {
            Files.deleteIfExists(file);
        }
    }

    /** Rows of this height in points are the sheet's usual ones and say nothing of it. */
    void plain(double points) {
        plain = points;
    }

    /** Begins a row; rows come in order, and so do the cells of a row. */
    void begin(int rowIndex, double points) {
        // A row without a number follows the one before, as a cell without one does (ECMA-376 part 1, 18.3.1.73).
        boolean follows = rowIndex == rowNumber;
        rowNumber = rowIndex + 1;
        next = 0;
        put("<row", follows ? "" : " r=\"" + rowNumber + "\"");
        put(points == plain ? ">" : " ht=\"" + number(points) + "\" customHeight=\"1\">");
    }

    /** Ends the row. */
    void end() {
        put("</row>");
    }

    /** A cell that has a style and no value. */
    void blank(int column, int style) {
        open(column, style, "");
        put("/>");
    }

    /** A number. */
    void number(int column, int style, double value) {
        open(column, style, "");
        put("><v>", number(value), "</v></c>");
    }

    /** A text. */
    void text(int column, int style, String text) {
        if (strings != null) {
            open(column, style, " t=\"s\"");
            put("><v>", Integer.toString(strings.index(text)), "</v></c>");
            return;
        }
        open(column, style, " t=\"inlineStr\"");
        put(text.isEmpty() || text.strip().length() == text.length() ? "><is><t>" : "><is><t xml:space=\"preserve\">");
        put(XmlText.of(text), "</t></is></c>");
    }

    /** A formula with a number that it gives. */
    void formula(int column, int style, String formula, double value) {
        open(column, style, "");
        put(">");
        formula(column, formula);
        put("<v>", number(rounded(value)), "</v></c>");
    }

    /** A formula with a text that it gives. */
    void formula(int column, int style, String formula, String text) {
        open(column, style, " t=\"str\"");
        put(">");
        formula(column, formula);
        put("<v>", XmlText.of(text), "</v></c>");
    }

    private void formula(int column, String formula) {
        if (formulas == null || memory == null) {
            put("<f>", XmlText.of(formula), "</f>");
            return;
        }
        MovedFormula moved = SharedFormulas.at(rowNumber, column, formula);
        String known = formulas.known(moved);
        if (known != null) {
            put(known);
            return;
        }
        put("<f");
        flush();
        formulas.first(moved, memory.size());
        put(">", XmlText.of(moved.anchored()), "</f>");
    }

    private void flush() {
        try {
            out.flush();
        } catch (IOException unwritable) {
            throw new UncheckedIOException("rows of a sheet", unwritable);
        }
    }

    private void open(int column, int style, String type) {
        // A cell that follows the last one needs no reference (18.3.1.4), which makes large sheets a third smaller; so
        // do a few empty cells.
        if (column >= next && column - next <= FEW) {
            put("<c/>".repeat(column - next));
            put("<c s=\"", Integer.toString(style), "\"", type);
        } else {
            put("<c r=\"", CellReference.convertNumToColString(column), Integer.toString(rowNumber));
            put("\" s=\"", Integer.toString(style), "\"", type);
        }
        next = column + 1;
    }

    /** Ten digits of what a formula gives: nobody reads more, and each digit costs its place. */
    private static double rounded(double value) {
        return value == 0 || Double.isNaN(value) || Double.isInfinite(value)
                ? value
                : new BigDecimal(value).round(new MathContext(10)).doubleValue();
    }

    private static String number(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private void put(String... parts) {
        try {
            for (String part : parts) {
                out.write(part);
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException("rows of a sheet", unwritable);
        }
    }
}
