// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.check;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.circuit.survey.ShowerCase;

/** Answers the checks about one subject. */
public interface CheckGroup {
    /** The checks. */
    List<Check> checks();

    /** The quantities that it gives to other calculators. */
    default List<SharedQuantity> provides() {
        return List.of();
    }

    /** Adds one finding for each check of the subject. */
    void check(ShowerCase shower, Findings findings);
}
