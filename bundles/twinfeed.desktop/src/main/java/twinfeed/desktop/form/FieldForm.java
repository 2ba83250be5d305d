// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.time.LocalDate;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import twinfeed.units.Quantity;

/** How a question is asked. */
public enum FieldForm {
    /** A line of text. */
    LINE,
    /** Several lines of text. */
    LINES,
    /** A quantity with its unit and, where there is one, its tolerance. */
    QUANTITY,
    /** A whole number. */
    WHOLE,
    /** A day. */
    DAY,
    /** One of a few answers, or none. */
    CHOICE,
    /** A text that is one of those that the rule set, the catalogue or the survey itself knows. */
    KNOWN;

    /** The form that the type of an attribute calls for. */
    public static FieldForm of(EAttribute attribute) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (attribute.getEAttributeType() instanceof EEnum || type == Boolean.class) {
            return CHOICE;
        }
        if (type == Integer.class) {
            return WHOLE;
        }
        if (type == LocalDate.class) {
            return DAY;
        }
        return type != null && Quantity.class.isAssignableFrom(type) ? QUANTITY : LINE;
    }
}
