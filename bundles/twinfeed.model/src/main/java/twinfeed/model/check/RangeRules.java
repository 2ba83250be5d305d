// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import twinfeed.units.Quantity;

/** Whether each value of an object lies where it can, and where it usually does. */
final class RangeRules {
    /** Days beyond these are slips of the pen, for example a year of two digits. */
    private static final LocalDate FIRST_DAY = LocalDate.of(1950, 1, 1);

    private static final LocalDate LAST_DAY = LocalDate.of(2199, 12, 31);

    private RangeRules() {}

    static void check(EObject object, Problems problems) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (!attribute.isMany() && object.eIsSet(attribute)) {
                checkValue(object, attribute, object.eGet(attribute), problems);
            }
        }
    }

    private static void checkValue(EObject object, EAttribute attribute, Object value, Problems problems) {
        if (value instanceof LocalDate day && (day.isBefore(FIRST_DAY) || day.isAfter(LAST_DAY))) {
            problems.error(object, attribute, "date.impossible", FIRST_DAY.toString(), LAST_DAY.toString());
        }
        Ranges.Entry entry = Ranges.table().of(attribute);
        Optional<Double> number = Range.number(value);
        if (entry == null || number.isEmpty()) {
            return;
        }
        if (!entry.possible().contains(number.get())) {
            problems.error(
                    object, attribute, "range.impossible", entry.possible().words());
        } else if (!entry.usual().contains(number.get())) {
            problems.warning(object, attribute, "range.unusual", entry.usual().words());
        }
        checkTolerance(object, attribute, entry, value, problems);
    }

    /** A tolerance as large as the value itself says that nothing was measured, where the value cannot be 0 or less. */
    private static void checkTolerance(
            EObject object, EAttribute attribute, Ranges.Entry entry, Object value, Problems problems) {
        if (entry.possible().open()
                && value instanceof Quantity quantity
                && quantity.si() > 0
                && quantity.halfWidthSi() >= quantity.si()) {
            problems.warning(object, attribute, "tolerance.large");
        }
    }
}
