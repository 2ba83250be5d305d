// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.FindingClass;
import twinfeed.units.Kind;

/** The questions that the flow calculator answers. */
final class FlowChecks {
    private static final String POWER = "heater.power";
    private static final String VOLTAGE = "heater.voltage";

    /** Flow at the target temperature with the winter design intake, volume at the outlet. */
    static final Check WINTER = Check.of(
                    "flow.winter", FindingClass.PERFORMANCE, LimitType.AT_LEAST, Kind.FLOW, POWER, VOLTAGE)
            .about(CheckTopic.WINTER_FLOW);

    /** The same, volume at the inlet, against the flow at which the heat comes on. */
    static final Check ACTIVATION =
            Check.of("flow.activation", FindingClass.INSTRUCTIONS, LimitType.AT_LEAST, Kind.FLOW, POWER, VOLTAGE);

    /** Flow of the coldest month, with the curve over the year. */
    static final Check BY_MONTH = Check.of(
                    "flow.byMonth", FindingClass.PERFORMANCE, LimitType.REPORT, Kind.FLOW, POWER, VOLTAGE)
            .about(CheckTopic.MONTHLY_FLOW);

    /** Winter flow more than the present unit gives. */
    static final Check COMPARISON = Check.of(
            "flow.comparison",
            FindingClass.PERFORMANCE,
            LimitType.REPORT,
            Kind.FLOW,
            POWER,
            VOLTAGE,
            "survey.unit.heater.power");

    /** Winter flow at the rated power, whatever the circuit gives. */
    static final Check AT_RATING =
            Check.of("flow.atRating", FindingClass.ADVICE, LimitType.REPORT, Kind.FLOW, POWER, VOLTAGE);

    /** Flow on the low setting in the warmest month. */
    static final Check LOW_POWER =
            Check.of("flow.lowPower", FindingClass.PERFORMANCE, LimitType.REPORT, Kind.FLOW, POWER, VOLTAGE);

    /** Outlet temperature at the winter flow with one element burnt out. */
    static final Check ONE_ELEMENT =
            Check.of("flow.oneElement", FindingClass.ADVICE, LimitType.REPORT, Kind.TEMPERATURE, POWER, VOLTAGE);

    /** Warmest intake against the heater's limit. */
    static final Check INTAKE = Check.of("flow.intake", FindingClass.INSTRUCTIONS, LimitType.AT_MOST, Kind.TEMPERATURE);

    /** The target temperature against the temperature from which people are warned. */
    static final Check OUTLET = Check.of("flow.outlet", FindingClass.ADVICE, LimitType.AT_MOST, Kind.TEMPERATURE);

    /** All, in the order of their findings. */
    static final List<Check> ALL =
            List.of(WINTER, ACTIVATION, BY_MONTH, COMPARISON, AT_RATING, LOW_POWER, ONE_ELEMENT, INTAKE, OUTLET);

    private FlowChecks() {}
}
