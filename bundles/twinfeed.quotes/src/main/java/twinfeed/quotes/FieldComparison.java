// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import twinfeed.model.quote.QuotePackage.Literals;
import twinfeed.quotes.QuoteComparison.Difference;
import twinfeed.quotes.QuoteComparison.Kind;

/** Compares single values of two objects in one place of a quote. */
record FieldComparison(String option, String section, String code) {
    /** Number, revision and state differ by their nature and are not compared. */
    static final List<EAttribute> HEAD = List.of(
            Literals.QUOTE__DATE,
            Literals.QUOTE__VALID_UNTIL,
            Literals.QUOTE__CURRENCY,
            Literals.QUOTE__ROUNDING,
            Literals.QUOTE__SUMMARY,
            Literals.QUOTE__BOOK_TITLE,
            Literals.QUOTE__BOOK_DATE);

    static final List<EAttribute> OPTION = List.of(
            Literals.QUOTE_OPTION__TITLE,
            Literals.QUOTE_OPTION__VERDICT,
            Literals.QUOTE_OPTION__TEXT,
            Literals.QUOTE_OPTION__LEAD_DAYS,
            Literals.QUOTE_OPTION__NET,
            Literals.QUOTE_OPTION__TAX,
            Literals.QUOTE_OPTION__TOTAL);

    static final List<EAttribute> LINE = List.of(
            Literals.QUOTE_LINE__DESCRIPTION,
            Literals.QUOTE_LINE__QUANTITY,
            Literals.QUOTE_LINE__UNIT_PRICE,
            Literals.QUOTE_LINE__NET,
            Literals.QUOTE_LINE__TAX_RATE,
            Literals.QUOTE_LINE__TAX,
            Literals.QUOTE_LINE__SOURCE,
            Literals.QUOTE_LINE__NOTE);

    List<Difference> of(EObject before, EObject after, List<EAttribute> fields) {
        List<Difference> found = new ArrayList<>();
        for (EAttribute field : fields) {
            String old = text(before, field);
            String now = text(after, field);
            if (!old.equals(now)) {
                found.add(new Difference(Kind.CHANGED, option, section, code, field.getName(), old, now));
            }
        }
        return found;
    }

    private static String text(EObject object, EAttribute field) {
        Object value = object.eIsSet(field) ? object.eGet(field) : null;
        return value instanceof BigDecimal number ? number.toPlainString() : Objects.toString(value, "");
    }
}
