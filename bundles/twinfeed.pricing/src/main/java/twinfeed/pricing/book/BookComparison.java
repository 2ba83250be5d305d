// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.pricing.Shares;
import twinfeed.units.Ratio;

/**
 * What differs between two price books.
 *
 * @param added codes that only the new one has, in its order
 * @param changed what differs in items that both have, in the new one's order, and in the head (with an empty code)
 * @param removed codes that only the old one has, in its order
 */
public record BookComparison(List<String> added, List<Change> changed, List<String> removed) {
    /**
     * One value that differs; blank stands for none.
     *
     * @param code the item's code; empty for the head of the book
     * @param field name of the value as in the model
     * @param before value in the old book
     * @param after value in the new book
     */
    public record Change(String code, String field, String before, String after) {}

    public BookComparison {
        added = List.copyOf(added);
        changed = List.copyOf(changed);
        removed = List.copyOf(removed);
    }

    /** Compares two books by the codes of their items. */
    public static BookComparison compare(PriceBook before, PriceBook after) {
        Map<String, PriceItem> old = byCode(before);
        Map<String, PriceItem> now = byCode(after);
        List<Change> changed = new ArrayList<>();
        differences("", before, after, changed);
        difference("", "taxRates", all(before.getTaxRates()), all(after.getTaxRates()), changed);
        difference("", "payments", all(before.getPayments()), all(after.getPayments()), changed);
        now.forEach((code, item) -> {
            PriceItem earlier = old.get(code);
            if (earlier != null) {
                differences(code, earlier, item, changed);
            }
        });
        return new BookComparison(without(now, old), changed, without(old, now));
    }

    /** Whether the two books say the same. */
    public boolean same() {
        return added.isEmpty() && changed.isEmpty() && removed.isEmpty();
    }

    private static Map<String, PriceItem> byCode(PriceBook book) {
        Map<String, PriceItem> items = new LinkedHashMap<>();
        book.getItems().forEach(item -> items.put(item.getCode(), item));
        return items;
    }

    private static List<String> without(Map<String, PriceItem> some, Map<String, PriceItem> others) {
        return some.keySet().stream().filter(code -> !others.containsKey(code)).toList();
    }

    private static void differences(String code, EObject before, EObject after, List<Change> changed) {
        for (EAttribute attribute : before.eClass().getEAllAttributes()) {
            if (!sameNumber(before.eGet(attribute), after.eGet(attribute))) {
                difference(code, attribute.getName(), text(before, attribute), text(after, attribute), changed);
            }
        }
    }

    /** 126 in a sheet is 126.00 in a text, and 5 % is 0.05. */
    private static boolean sameNumber(@Nullable Object before, @Nullable Object after) {
        if (before instanceof Ratio one && after instanceof Ratio other) {
            return Shares.exact(one).compareTo(Shares.exact(other)) == 0;
        }
        return before instanceof BigDecimal one && after instanceof BigDecimal other && one.compareTo(other) == 0;
    }

    private static void difference(String code, String field, String before, String after, List<Change> changed) {
        if (!before.equals(after)) {
            changed.add(new Change(code, field, before, after));
        }
    }

    private static String all(List<? extends EObject> objects) {
        return objects.stream()
                .map(object -> object.eClass().getEAllAttributes().stream()
                        .map(attribute -> text(object, attribute))
                        .collect(Collectors.joining(" ")))
                .collect(Collectors.joining("; "));
    }

    private static String text(EObject object, EAttribute attribute) {
        Object value = object.eGet(attribute);
        if (value instanceof List<?> several) {
            return several.stream().map(Objects::toString).collect(Collectors.joining("; "));
        }
        return value == null ? "" : EcoreUtil.convertToString(attribute.getEAttributeType(), value);
    }
}
