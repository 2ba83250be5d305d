// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EAttribute;
import twinfeed.units.Kind;
import twinfeed.units.Quantity;

/**
 * Where a reading can lie and usually lies, as a form prints and checks it.
 *
 * @param least least that can be, SI or a count; minus infinity for none
 * @param most most that can be, SI or a count; infinity for none
 * @param from where it usually begins, with its unit; empty for no end
 * @param to where it usually ends, with its unit; empty for no end
 * @param example a value as somebody may write it
 */
public record ReadingRange(double least, double most, String from, String to, String example) {
    private static final Pattern INNER_CAPITAL = Pattern.compile("(?<=[a-z])(?=[A-Z])");
    private static final Pattern NUMBER = Pattern.compile("^[-+]?[\\d.]+\\s*");

    /** The range of an attribute; empty if it has none. */
    public static Optional<ReadingRange> of(EAttribute attribute) {
        Ranges.Entry entry = Ranges.table().of(attribute);
        return entry == null
                ? Optional.empty()
                : Optional.of(new ReadingRange(
                        entry.possible().least(),
                        entry.possible().most(),
                        entry.usual().from(),
                        entry.usual().to(),
                        entry.example()));
    }

    /** The kind of quantity that an attribute holds; empty if it holds none. */
    public static Optional<Kind> kind(EAttribute attribute) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        return type == null || !Quantity.class.isAssignableFrom(type)
                ? Optional.empty()
                : Optional.of(Kind.valueOf(INNER_CAPITAL
                        .matcher(attribute.getEAttributeType().getName())
                        .replaceAll("_")
                        .toUpperCase(Locale.ROOT)));
    }

    /** The unit in which an attribute is asked: that of its usual range, else the usual one of its kind; empty if it holds no quantity. */
    public static String unit(EAttribute attribute) {
        return kind(attribute)
                .map(kind -> of(attribute)
                        .map(range -> range.to().isEmpty() ? range.from() : range.to())
                        .map(text -> NUMBER.matcher(text).replaceFirst("").strip())
                        .filter(unit -> !unit.isEmpty())
                        .orElse(kind.displayUnit().equals("1") ? "" : kind.displayUnit()))
                .orElse("");
    }

    /** What is usual, with units: {@code 0.1 bar – 16 bar}; empty if nothing is said. */
    public String usual() {
        return from.isEmpty() || to.isEmpty() ? from + to : from + " \u2013 " + to;
    }
}
