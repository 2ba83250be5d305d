// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.List;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.model.survey.CableSegment;

/**
 * The reference method of a cable segment that nobody saw over its whole length: each plausible method is as likely as another.
 *
 * @param segment the segment, of a private copy
 * @param path its path
 * @param plausible the method as stated and those that it may be instead
 */
record SampledMethod(CableSegment segment, String path, List<String> plausible) implements SampledInput {
    @Override
    public int gauge() {
        return -1;
    }

    @Override
    public void place(double position) {
        segment.setMethod(plausible.get((int) position));
    }

    @Override
    public boolean isReadBy(CalculatorDescriptor calculator) {
        return calculator.reads(path);
    }

    @Override
    public Spread spread() {
        return Spread.among(plausible.size());
    }
}
