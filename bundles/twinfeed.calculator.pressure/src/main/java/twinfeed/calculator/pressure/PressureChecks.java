// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingClass;
import twinfeed.calculator.Sense;

/** The questions that the pressure calculator answers. */
final class PressureChecks {
    private static final String STATIC = "survey.water.test.staticPressure";
    private static final String RUNNING = "survey.water.test.runningPressure";
    private static final String FLOW = "survey.water.test.flow";
    private static final String PIPES = "survey.water.segments";
    private static final String BAR = "bar";
    private static final String L_PER_MIN = "L/min";

    /** Running pressure at the inlet at the flow that the instructions name. */
    static final Check RUNNING_PRESSURE = Check.of(
            "pressure.running",
            FindingClass.INSTRUCTIONS,
            Sense.AT_LEAST,
            BAR,
            STATIC,
            RUNNING,
            FLOW,
            PIPES,
            "heater.minimumRunningPressure",
            "heater.runningPressureFlow");

    /** Pressure at the switch in its worst condition. */
    static final Check SWITCH = Check.of(
            "pressure.switch",
            FindingClass.INSTRUCTIONS,
            Sense.AT_LEAST,
            BAR,
            STATIC,
            RUNNING,
            FLOW,
            PIPES,
            "heater.makePressure");

    /** Flow through the unit in its worst condition against the flow that brings the heat on. */
    static final Check ACTIVATION = Check.of(
            "pressure.activation",
            FindingClass.INSTRUCTIONS,
            Sense.AT_LEAST,
            L_PER_MIN,
            STATIC,
            RUNNING,
            FLOW,
            PIPES,
            "heater.activationFlow");

    /** All, in the order of their findings. */
    static final List<Check> ALL = List.of(RUNNING_PRESSURE, SWITCH, ACTIVATION);

    private PressureChecks() {}
}
