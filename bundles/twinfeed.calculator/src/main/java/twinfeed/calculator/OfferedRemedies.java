// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Remedies that are worked out when they are first asked for: most findings pass, and most draws of an uncertainty run only count. */
final class OfferedRemedies extends AbstractList<Remedy> {
    private final List<Supplier<List<Remedy>>> offers;
    private volatile @Nullable List<Remedy> list;

    OfferedRemedies(List<Supplier<List<Remedy>>> offers) {
        this.offers = List.copyOf(offers);
    }

    private List<Remedy> list() {
        List<Remedy> known = list;
        if (known == null) {
            known = offers.stream().flatMap(offer -> offer.get().stream()).toList();
            list = known;
        }
        return known;
    }

    @Override
    public Remedy get(int index) {
        return list().get(index);
    }

    @Override
    public int size() {
        return list().size();
    }
}
