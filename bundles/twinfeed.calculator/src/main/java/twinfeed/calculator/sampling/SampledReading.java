// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.units.Quantity;

/**
 * A reading of a private copy of a survey.
 *
 * @param owner the object that holds it
 * @param feature its feature
 * @param path its path, with list elements named
 * @param nominal the reading as taken
 * @param halfWidth half-width of its rectangular distribution, or its standard uncertainty, SI
 * @param normal whether it is normally distributed
 * @param gauge index of the instrument whose bias it shares with other readings, -1 for none
 */
record SampledReading(
        EObject owner,
        EStructuralFeature feature,
        String path,
        Quantity nominal,
        double halfWidth,
        boolean normal,
        int gauge)
        implements SampledInput {
    @Override
    public void place(double position) {
        set(nominal.si() + halfWidth * position);
    }

    @Override
    public boolean isReadBy(CalculatorDescriptor calculator) {
        return calculator.reads(path);
    }

    @Override
    public Spread spread() {
        return normal ? Spread.NORMAL : Spread.RECTANGULAR;
    }

    /** A reading that cannot be negative stays so: lengths and resistances end at 0. */
    private void set(double value) {
        owner.eSet(feature, nominal.withSi(nominal.si() > 0 ? Math.max(value, 0) : value));
    }
}
