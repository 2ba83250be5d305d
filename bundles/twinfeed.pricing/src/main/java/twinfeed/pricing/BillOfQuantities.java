// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Everything that one job needs, by code in the order in which it was first asked for. */
final class BillOfQuantities {
    private final PriceList prices;
    private final Map<String, BillItem> byCode = new LinkedHashMap<>();
    private final Map<String, Set<String>> missing = new LinkedHashMap<>();

    BillOfQuantities(PriceList prices) {
        this.prices = prices;
    }

    void unit(String code, String reason) {
        add(RequiredItem.of(code, 1), Section.UNIT, reason, "");
    }

    void add(RequiredItem need, String reason) {
        add(need, reason, "");
    }

    void add(RequiredItem need, String reason, String note) {
        add(need, WorkRules.section(need.code()), reason, note);
    }

    private void add(RequiredItem need, Section section, String reason, String note) {
        PricedItem item = prices.find(need.code()).orElse(null);
        if (item == null) {
            missing.computeIfAbsent(need.code(), code -> new LinkedHashSet<>()).add(reason);
        } else {
            byCode.computeIfAbsent(need.code(), code -> new BillItem(item, section))
                    .add(need.quantity(), reason, note);
        }
    }

    /** Leaves out what other work of the job makes needless. */
    private void dropNeedless() {
        Set<String> codes = Set.copyOf(byCode.keySet());
        byCode.keySet().removeIf(code -> WorkRules.needless(code, codes));
    }

    /** Adds what the work brings with it, as far as the book has it. */
    void addCompanions(String reason) {
        for (BillItem item : List.copyOf(byCode.values())) {
            WorkRules.companions(item.item().code(), item.quantity()).stream()
                    .filter(need -> prices.find(need.code()).isPresent())
                    .forEach(need -> bring(need, reason));
        }
    }

    /** What the work names itself counts towards what it brings; only what is lacking is added. */
    private void bring(RequiredItem need, String reason) {
        BillItem named = byCode.get(need.code());
        BigDecimal lacking = named == null ? need.quantity() : need.quantity().subtract(named.quantity());
        if (lacking.signum() > 0) {
            add(new RequiredItem(need.code(), lacking), reason);
        }
    }

    /** Adds what such a job brings with it and always needs, and leaves out what is needless. */
    void complete(boolean replacement, String reason) {
        dropNeedless();
        addCompanions(reason);
        addStandard(replacement, reason);
        dropNeedless();
    }

    /** Adds what such a job always needs. */
    void addStandard(boolean replacement, String reason) {
        Set<String> codes = new LinkedHashSet<>(byCode.keySet());
        codes.addAll(missing.keySet());
        WorkRules.standard(replacement, codes).forEach(need -> add(need, reason));
    }

    Collection<BillItem> all() {
        return byCode.values();
    }

    /** Whether something is asked for. */
    boolean has(String code) {
        return byCode.containsKey(code);
    }

    /** Codes that the book lacks, with who asks for each. */
    Map<String, Set<String>> missing() {
        return missing;
    }
}
