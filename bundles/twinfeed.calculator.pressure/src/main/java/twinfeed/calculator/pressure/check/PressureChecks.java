// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import java.util.stream.Stream;
import twinfeed.calculator.Check;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.FindingClass;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/** The questions that the pressure calculator answers. */
public final class PressureChecks {
    private static final String STATIC = "survey.water.test.staticPressure";
    private static final List<String> FEED =
            List.of(STATIC, "survey.water.test.runningPressure", "survey.water.test.flow", "survey.water.segments");
    private static final String MINIMUM = "heater.minimumRunningPressure";
    private static final String AT_FLOW = "heater.runningPressureFlow";

    /** Whether the two-point test shows enough drop to draw a curve through it. */
    static final Check TEST = Check.of(
            "pressure.test",
            FindingClass.ADVICE,
            LimitType.AT_LEAST,
            DisplayUnit.PERCENT,
            STATIC,
            "survey.water.test.runningPressure",
            "survey.water.test.flow");

    /** Whether the instructions allow where the water comes from. */
    static final Check SOURCE = Check.inWords("pressure.source", FindingClass.INSTRUCTIONS);

    /** Static pressure of what is called a header tank against the most that one has. */
    static final Check TANK_HEAD =
            Check.of("pressure.tankHead", FindingClass.ADVICE, LimitType.AT_MOST, Kind.PRESSURE, STATIC);

    /** Static pressure at the unit against the highest that its instructions allow. */
    static final Check STATIC_PRESSURE = Check.of(
            "pressure.static",
            FindingClass.INSTRUCTIONS,
            LimitType.AT_MOST,
            Kind.PRESSURE,
            STATIC,
            "heater.maximumStaticPressure");

    /** Running pressure at the inlet at the flow that the instructions name. */
    static final Check RUNNING = fed(
                    "pressure.running", FindingClass.INSTRUCTIONS, LimitType.AT_LEAST, Kind.PRESSURE, MINIMUM, AT_FLOW)
            .about(CheckTopic.RUNNING_PRESSURE);

    /** The same when the supply is weaker than in the test. */
    static final Check PEAK =
            fed("pressure.peak", FindingClass.ADVICE, LimitType.AT_LEAST, Kind.PRESSURE, MINIMUM, AT_FLOW);

    /** Pressure at the switch in its worst condition. */
    static final Check SWITCH = fed(
                    "pressure.switch",
                    FindingClass.INSTRUCTIONS,
                    LimitType.AT_LEAST,
                    Kind.PRESSURE,
                    "heater.makePressure")
            .about(CheckTopic.SWITCH_ON);

    /** Flow through the unit in its worst condition against the flow that brings the heat on. */
    static final Check ACTIVATION = fed(
                    "pressure.activation",
                    FindingClass.INSTRUCTIONS,
                    LimitType.AT_LEAST,
                    Kind.FLOW,
                    "heater.activationFlow")
            .about(CheckTopic.ACTIVATION);

    /** Pressure at the inlet in its worst condition against what the unit behind it needs. */
    static final Check THROTTLE = fed(
            "pressure.throttle",
            FindingClass.PERFORMANCE,
            LimitType.AT_LEAST,
            Kind.PRESSURE,
            "heater.downstreamPressure",
            "heater.downstreamFlow",
            "heater.throttleMinimum");

    /** Largest flow through the unit with all taps shut. */
    static final Check AVAILABLE =
            fed("pressure.available", FindingClass.PERFORMANCE, LimitType.REPORT, Kind.FLOW, MINIMUM, AT_FLOW);

    /** The draw-off at which the heat goes off, against the first tap's flow. */
    static final Check DROP_OUT = fed(
                    "pressure.dropOut",
                    FindingClass.PERFORMANCE,
                    LimitType.AT_LEAST,
                    Kind.FLOW,
                    "survey.water.drawOffs")
            .about(CheckTopic.SWITCH_DROP_OUT);

    /** Hottest outlet while a tap opens and the throttle stays where it is. */
    static final Check TAP_OPENS = fed("pressure.tapOpens", FindingClass.SAFETY, LimitType.AT_MOST, Kind.TEMPERATURE)
            .about(CheckTopic.TAP_OPENING);

    /** Hottest water that reaches a person while a tap opens, before a cut-out acts, against the temperature from which it scalds. */
    static final Check SCALD = fed("pressure.scald", FindingClass.ADVICE, LimitType.AT_MOST, Kind.TEMPERATURE)
            .about(CheckTopic.SCALDING);

    /** Outlet at full power in the warmest month with the flow that can be had. */
    static final Check SUMMER = fed(
                    "pressure.summer", FindingClass.PERFORMANCE, LimitType.AT_MOST, Kind.TEMPERATURE, MINIMUM, AT_FLOW)
            .about(CheckTopic.SUMMER_OUTLET);

    /** The same on the lowest setting: hotter than this no setting helps. */
    static final Check SUMMER_LOW = fed(
                    "pressure.summerLow", FindingClass.SAFETY, LimitType.AT_MOST, Kind.TEMPERATURE, MINIMUM, AT_FLOW)
            .about(CheckTopic.SUMMER_OUTLET_LOW_POWER);

    /** Velocity in the pipe that comes nearest to its limit. */
    static final Check VELOCITY = fed("pressure.velocity", FindingClass.ADVICE, LimitType.AT_MOST, Kind.VELOCITY);

    /** The largest share of the pressure that is lost on the way. */
    static final Check LOSS = fed("pressure.loss", FindingClass.ADVICE, LimitType.REPORT, DisplayUnit.PERCENT, AT_FLOW);

    /** Static pressure against the least that a water company owes. */
    static final Check STANDARD =
            Check.of("pressure.standard", FindingClass.ADVICE, LimitType.AT_LEAST, Kind.PRESSURE, STATIC);

    /** Whether the service pipe is shared or of a metal that should go. */
    static final Check SERVICE_PIPE =
            Check.inWords("pressure.servicePipe", FindingClass.ADVICE, "survey.water.sharedServicePipe");

    /** Whether the hose is kept from sucking dirty water back. */
    static final Check BACKFLOW = Check.inWords(
            "pressure.backflow",
            FindingClass.COMPLIANCE,
            "survey.water.backflowProtection",
            "survey.water.handsetReachesWc");

    /** Hardness against the limit of the instructions. */
    static final Check HARDNESS = Check.of(
            "pressure.hardness",
            FindingClass.INSTRUCTIONS,
            LimitType.AT_MOST,
            Kind.CONCENTRATION,
            "survey.water.hardness");

    /** Hardness from which descaling is worth while. */
    static final Check SCALE = Check.of(
            "pressure.scale", FindingClass.ADVICE, LimitType.AT_MOST, Kind.CONCENTRATION, "survey.water.hardness");

    /** All, in the order of their findings. */
    public static final List<Check> ALL = List.of(
            SOURCE,
            TANK_HEAD,
            TEST,
            STATIC_PRESSURE,
            RUNNING,
            PEAK,
            SWITCH,
            ACTIVATION,
            THROTTLE,
            DROP_OUT,
            TAP_OPENS,
            SCALD,
            AVAILABLE,
            SUMMER,
            SUMMER_LOW,
            VELOCITY,
            LOSS,
            STANDARD,
            SERVICE_PIPE,
            BACKFLOW,
            HARDNESS,
            SCALE);

    private PressureChecks() {}

    private static Check fed(String key, FindingClass kind, LimitType limitType, Kind quantity, String... more) {
        return fed(key, kind, limitType, DisplayUnit.of(quantity), more);
    }

    private static Check fed(String key, FindingClass kind, LimitType limitType, DisplayUnit unit, String... more) {
        return Check.of(
                key,
                kind,
                limitType,
                unit,
                Stream.concat(FEED.stream(), Stream.of(more)).toArray(String[]::new));
    }
}
