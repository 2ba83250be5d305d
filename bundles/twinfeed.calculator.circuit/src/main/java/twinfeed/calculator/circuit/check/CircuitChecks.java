// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.check;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.FindingClass;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/** The questions that this calculator answers, in the order of the answers. */
public final class CircuitChecks {
    public static final Check DESIGN_CURRENT = Check.of(
            "circuit.designCurrent",
            FindingClass.COMPLIANCE,
            LimitType.AT_MOST,
            Kind.CURRENT,
            ReadingPaths.POWER,
            ReadingPaths.RATED_VOLTAGE,
            ReadingPaths.DEVICE_RATING);
    /** A cable that its device does not keep from overheating can set a house on fire: that is no mere rule. */
    public static final Check CAPACITY = Check.of(
            "circuit.capacity",
            FindingClass.SAFETY,
            LimitType.AT_LEAST,
            Kind.CURRENT,
            ReadingPaths.DEVICE_KIND,
            ReadingPaths.DEVICE_RATING,
            ReadingPaths.SIZE,
            ReadingPaths.METHOD);

    public static final Check HIDDEN_METHOD = Check.of(
            "circuit.hiddenMethod",
            FindingClass.ADVICE,
            LimitType.AT_LEAST,
            Kind.CURRENT,
            ReadingPaths.DEVICE_KIND,
            ReadingPaths.DEVICE_RATING,
            ReadingPaths.SIZE,
            ReadingPaths.METHOD);
    public static final Check OLD_CABLE = Check.inWords("circuit.oldCable", FindingClass.COMPLIANCE);

    public static final Check LOFT_AMBIENT =
            Check.of("circuit.loftAmbient", FindingClass.ADVICE, LimitType.REPORT, Kind.CURRENT);

    public static final Check VOLTAGE_DROP = Check.of(
                    "circuit.voltageDrop",
                    FindingClass.COMPLIANCE,
                    LimitType.AT_MOST,
                    Kind.VOLTAGE,
                    ReadingPaths.POWER,
                    ReadingPaths.RATED_VOLTAGE,
                    ReadingPaths.SIZE,
                    ReadingPaths.LENGTH)
            .about(CheckTopic.VOLTAGE_DROP);
    public static final Check TERMINAL_VOLTAGE = Check.of(
                    "circuit.terminalVoltage",
                    FindingClass.PERFORMANCE,
                    LimitType.REPORT,
                    Kind.VOLTAGE,
                    ReadingPaths.POWER,
                    ReadingPaths.RATED_VOLTAGE,
                    ReadingPaths.SIZE,
                    ReadingPaths.LENGTH,
                    ReadingPaths.METHOD)
            .about(CheckTopic.TERMINAL_VOLTAGE);
    public static final Check DELIVERED_POWER = Check.of(
            "circuit.deliveredPower",
            FindingClass.PERFORMANCE,
            LimitType.REPORT,
            Kind.POWER,
            ReadingPaths.POWER,
            ReadingPaths.RATED_VOLTAGE,
            ReadingPaths.SIZE,
            ReadingPaths.LENGTH,
            ReadingPaths.METHOD);
    public static final Check HIGH_VOLTAGE_CURRENT = Check.of(
            "circuit.highVoltageCurrent",
            FindingClass.ADVICE,
            LimitType.AT_MOST,
            Kind.CURRENT,
            ReadingPaths.POWER,
            ReadingPaths.RATED_VOLTAGE,
            ReadingPaths.DEVICE_RATING);
    public static final Check LOOP = Check.of(
                    "circuit.loopImpedance",
                    FindingClass.SAFETY,
                    LimitType.AT_MOST,
                    Kind.RESISTANCE,
                    ReadingPaths.EARTHING,
                    ReadingPaths.DEVICE_KIND,
                    ReadingPaths.DEVICE_RATING)
            .about(CheckTopic.LOOP_IMPEDANCE);
    public static final Check LOOP_BY_BREAKER = Check.of(
                    "circuit.loopByBreaker", FindingClass.ADVICE, LimitType.AT_MOST, Kind.RESISTANCE)
            .about(CheckTopic.LOOP_IMPEDANCE);

    public static final Check EXTERNAL_LOOP =
            Check.of("circuit.externalLoop", FindingClass.ADVICE, LimitType.AT_MOST, Kind.RESISTANCE);

    /** Far above what is usual a fault of the supply is likelier than a long line: with a lost neutral all that is earthed can become live. */
    public static final Check SUPPLY_EARTH = Check.of(
                    "circuit.supplyEarth", FindingClass.SAFETY, LimitType.AT_MOST, Kind.RESISTANCE)
            .about(CheckTopic.EXTERNAL_LOOP);

    public static final Check EARTH_PATH = Check.of(
                    "circuit.earthPath", FindingClass.SAFETY, LimitType.AT_MOST, Kind.RESISTANCE)
            .about(CheckTopic.EARTH_PATH);

    public static final Check ELECTRODE = Check.of(
                    "circuit.electrode", FindingClass.SAFETY, LimitType.AT_MOST, Kind.VOLTAGE, ReadingPaths.EARTHING)
            .about(CheckTopic.ELECTRODE);
    public static final Check ELECTRODE_STABILITY = Check.of(
            "circuit.electrodeStability",
            FindingClass.ADVICE,
            LimitType.AT_MOST,
            Kind.RESISTANCE,
            ReadingPaths.EARTHING);
    public static final Check RCD = Check.of(
            "circuit.rcd",
            FindingClass.SAFETY,
            LimitType.AT_MOST,
            DisplayUnit.MILLIAMPERE,
            ReadingPaths.RCD_KIND,
            ReadingPaths.RCD_RESIDUAL);
    public static final Check RCD_TYPE =
            Check.inWords("circuit.rcdType", FindingClass.COMPLIANCE, ReadingPaths.RCD_KIND, ReadingPaths.RCD_TYPE);
    public static final Check RCD_TRIP = Check.of(
                    "circuit.rcdTripTime",
                    FindingClass.SAFETY,
                    LimitType.AT_MOST,
                    DisplayUnit.MILLISECOND,
                    ReadingPaths.RCD_KIND)
            .about(CheckTopic.RESIDUAL_TRIP_TIME);
    public static final Check RCD_RATING = Check.of(
            "circuit.rcdRating",
            FindingClass.COMPLIANCE,
            LimitType.AT_MOST,
            Kind.CURRENT,
            ReadingPaths.RCD_KIND,
            ReadingPaths.POWER,
            ReadingPaths.RATED_VOLTAGE);
    public static final Check RCD_SCOPE = Check.inWords("circuit.rcdScope", FindingClass.ADVICE, ReadingPaths.RCD_KIND);
    public static final Check LEAKAGE = Check.of(
            "circuit.standingLeakage",
            FindingClass.ADVICE,
            LimitType.AT_MOST,
            DisplayUnit.MILLIAMPERE,
            ReadingPaths.POWER,
            ReadingPaths.RCD_KIND);
    public static final Check ADIABATIC = Check.of(
            "circuit.protectiveConductor",
            FindingClass.COMPLIANCE,
            LimitType.AT_MOST,
            Kind.AREA,
            ReadingPaths.EARTHING,
            ReadingPaths.DEVICE_KIND,
            ReadingPaths.DEVICE_RATING,
            ReadingPaths.SIZE);
    public static final Check FAULT_LEVEL = Check.of(
                    "circuit.faultLevel",
                    FindingClass.SAFETY,
                    LimitType.AT_MOST,
                    DisplayUnit.KILOAMPERE,
                    ReadingPaths.FAULT,
                    ReadingPaths.DEVICE_BREAKING)
            .about(CheckTopic.FAULT_LEVEL);
    public static final Check ISOLATOR_RATING = Check.of(
                    "circuit.isolatorRating",
                    FindingClass.COMPLIANCE,
                    LimitType.AT_MOST,
                    Kind.CURRENT,
                    ReadingPaths.POWER,
                    ReadingPaths.RATED_VOLTAGE,
                    ReadingPaths.DEVICE_RATING,
                    ReadingPaths.ISOLATOR_RATING)
            .about(CheckTopic.ISOLATOR_RATING);
    public static final Check ISOLATOR_CONDITION =
            Check.inWords("circuit.isolatorCondition", FindingClass.SAFETY, ReadingPaths.ISOLATOR_CONDITION);
    /** A worn isolator is no danger today, but it is renewed with the unit and not left to fail under the new one. */
    public static final Check ISOLATOR_WEAR = Check.inWords("circuit.isolatorWear", FindingClass.COMPLIANCE);

    public static final Check INSTRUCTED_DEVICE = Check.of(
            "circuit.instructedDevice",
            FindingClass.INSTRUCTIONS,
            LimitType.AT_MOST,
            Kind.CURRENT,
            ReadingPaths.DEVICE_RATING);
    public static final Check TERMINALS =
            Check.of("circuit.terminals", FindingClass.INSTRUCTIONS, LimitType.AT_MOST, Kind.AREA, ReadingPaths.SIZE);
    public static final Check SMALLEST_CONDUCTOR = Check.of(
            "circuit.smallestConductor", FindingClass.INSTRUCTIONS, LimitType.AT_LEAST, Kind.AREA, ReadingPaths.SIZE);

    public static final Check RECALL = Check.inWords("circuit.recall", FindingClass.SAFETY);

    public static final Check GUARANTEE = Check.inWords("circuit.guarantee", FindingClass.ADVICE);

    public static final Check LARGE_CONDUCTOR =
            Check.of("circuit.largeConductor", FindingClass.ADVICE, LimitType.REPORT, Kind.AREA, ReadingPaths.SIZE);
    public static final Check TAILS = Check.of(
            "circuit.tails",
            FindingClass.COMPLIANCE,
            LimitType.AT_MOST,
            Kind.AREA,
            ReadingPaths.SERVICE_FUSE,
            ReadingPaths.TAILS);
    public static final Check EARTHING_CONDUCTOR = Check.of(
            "circuit.earthingConductor",
            FindingClass.COMPLIANCE,
            LimitType.AT_MOST,
            Kind.AREA,
            ReadingPaths.EARTHING,
            ReadingPaths.EARTHING_CONDUCTOR);
    /** Pipes that nothing joins to the earth can become live; pipes that a wire joins which is thinner than it should be do not. */
    public static final Check MAIN_BONDING =
            Check.inWords("circuit.mainBonding", FindingClass.SAFETY, ReadingPaths.BONDING);

    public static final Check BONDING_SIZE = Check.of(
            "circuit.bondingSize",
            FindingClass.COMPLIANCE,
            LimitType.AT_MOST,
            Kind.AREA,
            ReadingPaths.EARTHING,
            ReadingPaths.BONDING);
    public static final Check INSULATION = Check.of(
                    "circuit.insulationResistance", FindingClass.SAFETY, LimitType.AT_LEAST, DisplayUnit.MEGOHM)
            .about(CheckTopic.INSULATION);
    public static final Check SUPPLY_HIGH =
            Check.of("circuit.supplyNotHigh", FindingClass.ADVICE, LimitType.AT_MOST, Kind.VOLTAGE);
    public static final Check SUPPLY_LOW =
            Check.of("circuit.supplyNotLow", FindingClass.ADVICE, LimitType.AT_LEAST, Kind.VOLTAGE);
    public static final Check SPARE_WAY = Check.inWords("circuit.spareWay", FindingClass.COMPLIANCE);
    public static final Check APPROVED =
            Check.inWords("circuit.deviceApproved", FindingClass.COMPLIANCE, ReadingPaths.APPROVED);
    public static final Check ZONES =
            Check.inWords("circuit.zones", FindingClass.COMPLIANCE, ReadingPaths.OUTSIDE_ZONES);
    public static final Check INGRESS = Check.inWords("circuit.waterProtection", FindingClass.COMPLIANCE);
    public static final Check SUPPLEMENTARY = Check.inWords("circuit.supplementaryBonding", FindingClass.COMPLIANCE);
    public static final Check LONGEST_RUN = Check.of(
            "circuit.longestRun",
            FindingClass.ADVICE,
            LimitType.REPORT,
            Kind.LENGTH,
            ReadingPaths.POWER,
            ReadingPaths.RATED_VOLTAGE,
            ReadingPaths.SIZE);
    public static final Check HIGHEST_POWER = Check.of(
            "circuit.highestPower",
            FindingClass.ADVICE,
            LimitType.REPORT,
            Kind.POWER,
            ReadingPaths.RATED_VOLTAGE,
            ReadingPaths.DEVICE_RATING,
            ReadingPaths.SIZE,
            ReadingPaths.LENGTH,
            ReadingPaths.METHOD);

    public static final List<Check> ALL = List.of(
            DESIGN_CURRENT,
            OLD_CABLE,
            CAPACITY,
            HIDDEN_METHOD,
            LOFT_AMBIENT,
            VOLTAGE_DROP,
            TERMINAL_VOLTAGE,
            DELIVERED_POWER,
            HIGH_VOLTAGE_CURRENT,
            LOOP,
            LOOP_BY_BREAKER,
            EXTERNAL_LOOP,
            SUPPLY_EARTH,
            EARTH_PATH,
            ELECTRODE,
            ELECTRODE_STABILITY,
            RCD,
            RCD_TYPE,
            RCD_TRIP,
            RCD_RATING,
            RCD_SCOPE,
            LEAKAGE,
            ADIABATIC,
            FAULT_LEVEL,
            ISOLATOR_RATING,
            ISOLATOR_CONDITION,
            ISOLATOR_WEAR,
            INSTRUCTED_DEVICE,
            SMALLEST_CONDUCTOR,
            TERMINALS,
            LARGE_CONDUCTOR,
            RECALL,
            GUARANTEE,
            TAILS,
            EARTHING_CONDUCTOR,
            MAIN_BONDING,
            BONDING_SIZE,
            INSULATION,
            SUPPLY_HIGH,
            SUPPLY_LOW,
            SPARE_WAY,
            APPROVED,
            ZONES,
            INGRESS,
            SUPPLEMENTARY,
            LONGEST_RUN,
            HIGHEST_POWER);

    private CircuitChecks() {}
}
