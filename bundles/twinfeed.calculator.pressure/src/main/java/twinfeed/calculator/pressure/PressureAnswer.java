// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

/** Answers some of the checks for one heater. */
@FunctionalInterface
interface PressureAnswer {
    /** Adds the findings. */
    void answer(HeaterCase heater);
}
