// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.pricebook.PricebookFactory;
import twinfeed.model.rows.Row;

/**
 * Reads a price book from rows of text, whatever file they come from: a CSV file or a sheet of a workbook. Numbers come with a
 * decimal point, dates as YYYY-MM-DD.
 *
 * <p>First the head, rows whose first cell begins with {@code #}: {@code # key: value}, further values in the cells that follow.
 * Keys: {@code title}, {@code currency} (ISO 4217), {@code date}, {@code labour-rate} (an hour, without tax), {@code valid-days}
 * are required; {@code note}, {@code labour-cost}, {@code labour-tax-class}, {@code minimum-minutes}, {@code energy-price} (a
 * kilowatt-hour, with tax), {@code contingency},
 * {@code rounding}, {@code markup} may be left out; {@code tax-rate: class, rate, from, until, label}, {@code payment: when,
 * share}, {@code term}, {@code exclusion} and {@code translation: language, text, the text in that language} may be repeated. A row that begins with {@code ##}, or that is no key with a colon,
 * is a remark for people. Then one row with the names of the columns ({@link BookColumn}), then one row for each item.
 *
 * <p>An item with neither price nor cost is labour alone if it has minutes; without minutes its price is on enquiry.
 */
public final class PriceBookRows {
    private final String name;
    private final List<RowRemark> refused = new ArrayList<>();
    private final CellReader cells;
    private final PriceBook book = PricebookFactory.eINSTANCE.createPriceBook();
    private final BookHead head;
    private final Map<String, Integer> codes = new LinkedHashMap<>();
    private final List<Integer> itemRows = new ArrayList<>();
    private @Nullable List<BookColumn> columns;

    private PriceBookRows(String name) {
        this.name = name;
        cells = new CellReader(name, refused);
        head = new BookHead(cells, book);
    }

    /**
     * Reads a book.
     *
     * @param name name of the file for messages
     * @param rows its rows in order; blank ones are passed over
     */
    public static ImportReport read(String name, Iterable<Row> rows) {
        PriceBookRows reading = new PriceBookRows(name);
        for (Row row : rows) {
            if (!reading.take(row)) {
                break;
            }
        }
        return reading.report();
    }

    /** Takes a row; false if nothing after it can be understood. */
    private boolean take(Row row) {
        List<BookColumn> known = columns;
        if (row.blank()) {
            return true;
        }
        if (row.head()) {
            head.take(row);
            return true;
        }
        if (known == null) {
            return header(row);
        }
        item(row, known);
        return true;
    }

    private boolean header(Row row) {
        List<BookColumn> found = new ArrayList<>();
        for (String cell : row.cells()) {
            BookColumn column = BookColumn.of(cell).orElse(null);
            if (column == null && !cell.isEmpty()) {
                cells.refuse(row.number(), cell, "unknownColumn", columnNames());
            } else if (column != null && found.contains(column)) {
                cells.refuse(row.number(), cell, "columnTwice");
            }
            found.add(column);
        }
        for (BookColumn column : BookColumn.values()) {
            if (column.required() && !found.contains(column)) {
                cells.refuse(row.number(), column.key(), "columnMissing", column.key(), columnNames());
            }
        }
        columns = found;
        return found.contains(BookColumn.CODE);
    }

    private static String columnNames() {
        return java.util.Arrays.stream(BookColumn.values()).map(BookColumn::key).collect(Collectors.joining(", "));
    }

    private void item(Row row, List<BookColumn> known) {
        Map<BookColumn, String> texts = new EnumMap<>(BookColumn.class);
        for (int i = 0; i < row.cells().size(); i++) {
            String cell = row.cells().get(i);
            BookColumn column = i < known.size() ? known.get(i) : null;
            if (column != null) {
                texts.put(column, cell);
            } else if (!cell.isEmpty()) {
                cells.refuse(row.number(), "", "extraCell", cell);
            }
        }
        PriceItem item = new ItemRow(cells, row.number(), texts).read();
        Integer first = codes.putIfAbsent(item.getCode().toLowerCase(Locale.ROOT), row.number());
        if (first != null && !item.getCode().isEmpty()) {
            cells.refuse(row.number(), BookColumn.CODE.key(), "codeTwice", item.getCode(), first.toString());
        }
        book.getItems().add(item);
        itemRows.add(row.number());
    }

    private ImportReport report() {
        if (columns == null && refused.isEmpty()) {
            cells.refuse(0, "", "noHeader", columnNames());
        }
        head.finish();
        Set<Integer> faulty = refused.stream().map(RowRemark::row).collect(Collectors.toSet());
        BookRules rules = new BookRules(name, book, itemRows, faulty);
        if (columns != null && columns.contains(BookColumn.CODE)) {
            refused.addAll(rules.refusals());
        }
        Set<Integer> refusedRows = refused.stream().map(RowRemark::row).collect(Collectors.toSet());
        List<String> added = IntStream.range(0, itemRows.size())
                .filter(i -> !refusedRows.contains(itemRows.get(i)))
                .mapToObj(i -> book.getItems().get(i).getCode())
                .toList();
        return new ImportReport(name, refused.isEmpty() ? book : null, added, refused, rules.notices());
    }
}
