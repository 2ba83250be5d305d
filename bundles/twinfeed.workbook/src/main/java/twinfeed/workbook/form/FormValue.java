// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.jspecify.annotations.Nullable;
import twinfeed.model.check.ReadingRange;
import twinfeed.units.Quantities;
import twinfeed.units.Quantity;
import twinfeed.units.UnitException;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.sheet.TypedReading;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** Puts the value of a reading into its cell, so that it reads back as it was: number, decimals, unit and tolerance. */
final class FormValue {
    static final CellStyle PLAIN = SheetStyles.BODY.border(CellStyle.Border.BOX);
    static final CellStyle INPUT = PLAIN.fill(CellStyle.Fill.INPUT);

    /** What is typed into such a cell stays text: neither {@code 07:40} nor {@code 15} becomes a number. */
    private static final CellStyle TEXT = INPUT.format("@").align(CellStyle.Alignment.LEFT);

    private static final CellStyle DAY = INPUT.format("yyyy-mm-dd").align(CellStyle.Alignment.LEFT);

    private final SheetWriter page;
    private final FormLanguage language;

    FormValue(SheetWriter page, FormLanguage language) {
        this.page = page;
        this.language = language;
    }

    /** The unit of a reading's row: the one that it was taken in, else the usual one. */
    static String unit(EAttribute attribute, @Nullable Object value) {
        return value instanceof Quantity quantity && faithful(quantity, TypedReading.of(quantity))
                ? TypedReading.of(quantity).unit()
                : ReadingRange.unit(attribute);
    }

    private static boolean faithful(Quantity quantity, TypedReading typed) {
        try {
            return Quantities.parse(quantity.kind(), text(typed)).equals(quantity);
        } catch (UnitException other) {
            return false;
        }
    }

    private static String text(TypedReading typed) {
        String head = typed.value().toPlainString() + (typed.unit().isEmpty() ? "" : " " + typed.unit());
        String spread = typed.spread();
        return spread == null ? head : head + (typed.standard() ? spread.replace("\u00b1", " u") : " " + spread);
    }

    /**
     * Puts it.
     *
     * @param tolerance the column of the tolerance; the value's own column if there is none, and then a reading with a tolerance is written as a text
     * @param unit the unit that the label names
     */
    void put(int column, int tolerance, EAttribute attribute, String unit, @Nullable Object value) {
        boolean apart = tolerance != column;
        if (apart) {
            boolean quantity = ReadingRange.kind(attribute).isPresent();
            page.blank(tolerance, quantity ? INPUT : PLAIN.fill(CellStyle.Fill.GREY));
        }
        if (value == null) {
            page.blank(column, empty(attribute));
        } else if (value instanceof Quantity quantity) {
            quantity(column, tolerance, unit, quantity);
        } else if (value instanceof LocalDate day) {
            page.date(column, day, DAY);
        } else if (value instanceof Integer count) {
            page.number(column, count, INPUT.format("0"));
        } else {
            page.text(column, words(attribute, value), TEXT);
        }
    }

    private CellStyle empty(EAttribute attribute) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == LocalDate.class) {
            return DAY;
        }
        return type == String.class ? TEXT : INPUT;
    }

    private void quantity(int column, int tolerance, String unit, Quantity quantity) {
        TypedReading typed = TypedReading.of(quantity);
        String spread = typed.spread();
        boolean alone = tolerance == column && spread != null;
        if (alone || !typed.unit().equals(unit) || !faithful(quantity, typed)) {
            page.text(column, quantity.toString(), TEXT);
            return;
        }
        page.number(column, typed.value(), INPUT.format(format(typed.value())));
        if (spread == null) {
            return;
        }
        String plain = spread.replace("\u00b1", "").strip();
        String number = unit.isEmpty() || !plain.endsWith(" " + unit)
                ? plain
                : plain.substring(0, plain.length() - unit.length()).strip();
        if (!typed.standard() && number.matches("\\d+(\\.\\d+)?")) {
            BigDecimal half = new BigDecimal(number);
            page.number(tolerance, half, INPUT.format(format(half)));
        } else {
            page.text(tolerance, typed.standard() ? "u " + plain : plain, TEXT.align(CellStyle.Alignment.RIGHT));
        }
    }

    /** As many decimals as were taken, and more where more are typed. */
    private static String format(BigDecimal value) {
        return value.scale() <= 0 ? "General" : "0." + "0".repeat(value.scale()) + "###";
    }

    private String words(EAttribute attribute, Object value) {
        List<?> all = value instanceof List<?> list ? list : List.of(value);
        List<FormWords.Word> known = attribute.isMany() ? List.of() : language.words(attribute);
        return all.stream()
                .map(one -> one instanceof Enumerator literal ? literal.getLiteral() : one.toString())
                .map(one -> known.stream()
                        .filter(word -> word.value().equals(one))
                        .map(FormWords.Word::text)
                        .findFirst()
                        .orElse(one))
                .collect(Collectors.joining("; "));
    }
}
