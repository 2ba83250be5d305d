// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How a line is taxed. Rates stand in the price book, with the dates on which they hold. */
public enum TaxClass {
    /** The standard rate. */
    STANDARD("standard", true),
    /** The reduced rate. */
    REDUCED("reduced", true),
    /** Taxed at 0. */
    ZERO("zero", false),
    /** Outside the scope of the tax. */
    OUTSIDE("outside", false),
    /** Not charged: the customer accounts for the tax to the tax authority. */
    CUSTOMER_ACCOUNTS("customer-accounts", true);

    private final String key;
    private final boolean rated;

    TaxClass(String key, boolean rated) {
        this.key = key;
        this.rated = rated;
    }

    /** Its key in price books and quotes. */
    public String key() {
        return key;
    }

    /** Whether the price book must give a rate for it. */
    public boolean rated() {
        return rated;
    }

    /** The class of a key. */
    public static Optional<TaxClass> of(String key) {
        return Arrays.stream(values()).filter(one -> one.key.equals(key)).findFirst();
    }

    /** All keys in order. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(TaxClass::key).toList();
    }
}
