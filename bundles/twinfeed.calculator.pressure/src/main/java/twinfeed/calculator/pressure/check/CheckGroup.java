// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.SharedQuantity;

/** Answers some of the checks for one heater. */
public interface CheckGroup {
    /** The checks. */
    List<Check> checks();

    /** The quantities that it gives to other calculators. */
    default List<SharedQuantity> provides() {
        return List.of();
    }

    /** Adds the findings. */
    void answer(HeaterCase heater);
}
