// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a quote says of the fault of the unit that is there, in words for the customer.
 *
 * @param reported what was reported to be wrong, a sentence each; empty if nothing was
 * @param fault what most likely has failed, in a sentence; absent if nothing was reported
 * @param repair the repair that stands among the options; absent if none is sound
 * @param leftOut why no repair does; absent if one does or nothing was reported
 */
public record FaultReport(
        List<String> reported, @Nullable String fault, @Nullable Repair repair, @Nullable String leftOut) {
    /** Nothing was reported. */
    public static final FaultReport NONE = new FaultReport(List.of(), null, null, null);

    public FaultReport {
        reported = List.copyOf(reported);
    }

    /**
     * A repair: the unit stays, a part of it is renewed or the work on its supplies is done. The expected amounts weigh it against a new
     * unit and are never charged.
     *
     * @param part key of the part that is renewed; absent if the supplies alone are put right
     * @param work what is done to the part, in a customer's words; empty without a part
     * @param codes price-book codes of the renewal, once each; none without a part
     * @param laterKept expected price without tax of what may have to follow on the unit that stays, 0 or more
     * @param laterNew expected price without tax of later failures of a new unit, 0 or more
     * @param years over how many years
     */
    public record Repair(
            @Nullable String part,
            String work,
            List<String> codes,
            BigDecimal laterKept,
            BigDecimal laterNew,
            int years) {
        /** The item of the visit, which holds travel, safe isolation and the test of the function. */
        public static final String VISIT = "task-repair-visit";

        public Repair {
            codes = List.copyOf(codes);
        }

        /** What the price list has to have for it. */
        List<RequiredItem> needs() {
            return codes.isEmpty() ? List.of() : needs(codes);
        }

        /** What a visit that renews these needs. */
        static List<RequiredItem> needs(List<String> codes) {
            return java.util.stream.Stream.concat(java.util.stream.Stream.of(VISIT), codes.stream())
                    .map(code -> RequiredItem.of(code, 1))
                    .toList();
        }
    }
}
