// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

/** Answers some of the checks for one heater. */
@FunctionalInterface
public interface CheckGroup {
    /** Adds the findings. */
    void answer(HeaterCase heater);
}
