// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.function.Function;

/**
 * A quantity of one kind, whose changed copies are of that kind too.
 *
 * @param <Q> the class of the kind
 */
public abstract class QuantityOfKind<Q extends QuantityOfKind<Q>> extends Quantity {
    private final Function<Reading, Q> make;

    QuantityOfKind(Reading reading, Function<Reading, Q> make) {
        super(reading);
        this.make = make;
    }

    @Override
    public final Q withSi(double si) {
        return make.apply(reading().withSi(si));
    }

    @Override
    public final Q withHalfWidthSi(double halfWidthSi) {
        return make.apply(rectangular(halfWidthSi));
    }

    @Override
    public final Q withStandardUncertaintySi(double uncertaintySi) {
        return make.apply(normal(uncertaintySi));
    }
}
