// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.model.rows.Row;

/** Rows of a sheet: blank ones lie between, and the names of the columns say how all others are read. */
class PriceBookRowsTest {
    private static final String COLUMNS = "code, description, unit, cost, price, markup, margin, tax-class, supplier,"
            + " date, minutes, whole-length, waste, lead-days, holds-until";

    private final List<Row> rows = new ArrayList<>();

    PriceBookRowsTest() {
        row("# title:", "From a sheet");
        row("# currency:", "GBP");
        row("# date:", "2026-09-01");
        row("# labour-rate:", "50");
        row("# valid-days:", "30");
        row("# tax-rate:", "standard", "0.2", "2011-01-04");
    }

    private void row(String... cells) {
        rows.add(new Row(rows.size() + 1, List.of(cells)));
    }

    private ImportReport report() {
        return PriceBookRows.read("prices.xlsx", rows);
    }

    private RowRemark only() {
        List<RowRemark> refused = report().refused();
        assertEquals(1, refused.size(), refused::toString);
        return refused.get(0);
    }

    @Test
    void blankRowsArePassedOver() {
        row("", "");
        row("code", "description", "unit", "price", "tax-class");
        row();
        row("a", "A", "each", "1.50", "standard");
        row("", "", "");
        row("b", "B", "each", "2.50", "standard");
        assertEquals(List.of("a", "b"), report().added());
        assertTrue(report().book().isPresent());
    }

    /** Without a code no item can be told from another: what their rows lack besides is not told. */
    @Test
    void withoutACodeColumnNoItemIsRead() {
        row("description", "unit", "price", "tax-class");
        row("A", "each", "-1", "standard");
        RowRemark refused = only();
        assertEquals("columnMissing", refused.key());
        assertEquals("code", refused.column());
        assertEquals(List.of(), report().added());
    }

    @Test
    void whoNamesAColumnWronglyIsToldThoseThereAre() {
        row("code", "description", "unit", "price", "tax-class", "colour");
        row("a", "A", "each", "1.50", "standard");
        assertEquals("the columns are: " + COLUMNS, only().right(Locale.ENGLISH));
    }

    @Test
    void whoNamesNoColumnIsToldThoseThereAre() {
        assertEquals("write a row with names out of: " + COLUMNS, only().right(Locale.ENGLISH));
    }

    @Test
    void aFaultOfTheWholeFileNamesNoRow() {
        rows.remove(0);
        row("code", "description", "unit", "price", "tax-class");
        row("a", "A", "each", "1.50", "standard");
        RowRemark refused = only();
        assertEquals("headMissing", refused.key());
        String message = refused.message(Locale.ENGLISH);
        assertTrue(message.startsWith("prices.xlsx, title: "), message);
        assertFalse(message.contains("row 0"), message);
    }
}
