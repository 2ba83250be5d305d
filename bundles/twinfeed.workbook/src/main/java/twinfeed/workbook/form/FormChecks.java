// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.eclipse.emf.ecore.EAttribute;
import org.jspecify.annotations.Nullable;
import twinfeed.model.check.ReadingRange;
import twinfeed.model.text.ModelDocs;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.workbook.writer.SheetWriter;

/** What the spreadsheet program itself checks while a form is filled in: lists of words, numbers in their range, days. */
final class FormChecks {
    private static final int LONGEST_TITLE = 32;
    private static final int LONGEST_TEXT = 250;
    private static final String FIRST_DAY = "18264";
    private static final String LAST_DAY = "109573";

    private final FormLanguage language;
    private final FormLists lists;

    FormChecks(FormLanguage language, FormLists lists) {
        this.language = language;
        this.lists = lists;
    }

    /** Checks cells of one reading. */
    void reading(SheetWriter page, int firstRow, int lastRow, int column, EAttribute attribute, String unit) {
        List<String> words =
                language.words(attribute).stream().map(FormWords.Word::text).toList();
        DataValidationHelper helper = page.sheet().getDataValidationHelper();
        if (!words.isEmpty() && !attribute.isMany()) {
            add(
                    page,
                    firstRow,
                    lastRow,
                    column,
                    helper.createFormulaListConstraint(lists.range(words)),
                    attribute,
                    unit);
            return;
        }
        DataValidationConstraint number = number(helper, attribute, unit);
        if (number != null) {
            add(page, firstRow, lastRow, column, number, attribute, unit);
        } else if (attribute.getEAttributeType().getInstanceClass() == java.time.LocalDate.class) {
            add(
                    page,
                    firstRow,
                    lastRow,
                    column,
                    helper.createDateConstraint(OperatorType.BETWEEN, FIRST_DAY, LAST_DAY, "yyyy-mm-dd"),
                    attribute,
                    unit);
        }
    }

    /** Checks the cell that says why there is no reading. */
    void absent(SheetWriter page, int row, List<String> words) {
        DataValidationHelper helper = page.sheet().getDataValidationHelper();
        DataValidation check = helper.createValidation(
                helper.createFormulaListConstraint(lists.range(words)),
                new CellRangeAddressList(row, row, FormCells.ABSENT, FormCells.ABSENT));
        check.setShowErrorBox(true);
        check.createErrorBox(language.text("check.title"), language.text("check.list"));
        page.sheet().addValidationData(check);
    }

    private static @Nullable DataValidationConstraint number(
            DataValidationHelper helper, EAttribute attribute, String unit) {
        ReadingRange range = ReadingRange.of(attribute).orElse(null);
        if (range == null) {
            return null;
        }
        boolean whole = attribute.getEAttributeType().getInstanceClass() == Integer.class;
        Kind kind = ReadingRange.kind(attribute).orElse(null);
        String least = bound(kind, range.least(), unit);
        String most = bound(kind, range.most(), unit);
        int operator = least.isEmpty()
                ? OperatorType.LESS_OR_EQUAL
                : most.isEmpty() ? OperatorType.GREATER_OR_EQUAL : OperatorType.BETWEEN;
        if (least.isEmpty() && most.isEmpty()) {
            return null;
        }
        String first = least.isEmpty() ? most : least;
        String second = operator == OperatorType.BETWEEN ? most : null;
        return whole
                ? helper.createIntegerConstraint(operator, first, second)
                : helper.createDecimalConstraint(operator, first, second);
    }

    private static String bound(@Nullable Kind kind, double si, String unit) {
        if (Double.isInfinite(si)) {
            return "";
        }
        double number = kind == null || unit.isEmpty() ? si : Quantities.toUnit(kind, si, unit);
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** A warning and no refusal: a number may be written with another unit, and only the reader of the form decides. */
    private void add(
            SheetWriter page,
            int firstRow,
            int lastRow,
            int column,
            DataValidationConstraint constraint,
            EAttribute attribute,
            String unit) {
        DataValidationHelper helper = page.sheet().getDataValidationHelper();
        DataValidation check =
                helper.createValidation(constraint, new CellRangeAddressList(firstRow, lastRow, column, column));
        boolean list = constraint.getValidationType() == DataValidationConstraint.ValidationType.LIST;
        check.setErrorStyle(list ? DataValidation.ErrorStyle.STOP : DataValidation.ErrorStyle.WARNING);
        check.setShowErrorBox(true);
        check.createErrorBox(language.text("check.title"), error(list, attribute, unit));
        String meaning = ModelDocs.printed(attribute, language.locale());
        if (!meaning.isEmpty()) {
            check.setShowPromptBox(true);
            check.createPromptBox(cut(language.label(attribute), LONGEST_TITLE), cut(meaning, LONGEST_TEXT));
        }
        page.sheet().addValidationData(check);
    }

    private String error(boolean list, EAttribute attribute, String unit) {
        if (list) {
            return language.text("check.list");
        }
        String usual = ReadingRange.of(attribute).map(ReadingRange::usual).orElse("");
        if (attribute.getEAttributeType().getInstanceClass() == java.time.LocalDate.class) {
            return language.text("check.day");
        }
        return unit.isEmpty()
                ? language.text("check.number", Map.of("usual", usual))
                : language.text("check.quantity", Map.of("unit", unit, "usual", usual));
    }

    private static String cut(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest - 1) + "\u2026";
    }
}
