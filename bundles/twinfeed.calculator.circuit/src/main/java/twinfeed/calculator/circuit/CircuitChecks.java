// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingClass;
import twinfeed.calculator.Sense;

/** The questions that this calculator answers, in the order of the answers. */
final class CircuitChecks {
    static final Check DESIGN_CURRENT = Check.of(
            "circuit.designCurrent",
            FindingClass.COMPLIANCE,
            Sense.AT_MOST,
            "A",
            Paths.POWER,
            Paths.RATED_VOLTAGE,
            Paths.DEVICE_RATING);
    static final Check CAPACITY = Check.of(
            "circuit.capacity",
            FindingClass.COMPLIANCE,
            Sense.AT_LEAST,
            "A",
            Paths.DEVICE_KIND,
            Paths.DEVICE_RATING,
            Paths.SIZE,
            Paths.METHOD);
    static final Check HIDDEN_METHOD = Check.of(
            "circuit.hiddenMethod",
            FindingClass.ADVICE,
            Sense.AT_LEAST,
            "A",
            Paths.DEVICE_KIND,
            Paths.DEVICE_RATING,
            Paths.SIZE,
            Paths.METHOD);
    static final Check VOLTAGE_DROP = Check.of(
            "circuit.voltageDrop",
            FindingClass.COMPLIANCE,
            Sense.AT_MOST,
            "V",
            Paths.POWER,
            Paths.RATED_VOLTAGE,
            Paths.SIZE,
            Paths.LENGTH);
    static final Check TERMINAL_VOLTAGE = Check.of(
            "circuit.terminalVoltage",
            FindingClass.PERFORMANCE,
            Sense.REPORT,
            "V",
            Paths.POWER,
            Paths.RATED_VOLTAGE,
            Paths.SIZE,
            Paths.LENGTH,
            Paths.METHOD);
    static final Check DELIVERED_POWER = Check.of(
            "circuit.deliveredPower",
            FindingClass.PERFORMANCE,
            Sense.REPORT,
            "kW",
            Paths.POWER,
            Paths.RATED_VOLTAGE,
            Paths.SIZE,
            Paths.LENGTH,
            Paths.METHOD);
    static final Check HIGH_VOLTAGE_CURRENT = Check.of(
            "circuit.highVoltageCurrent",
            FindingClass.ADVICE,
            Sense.AT_MOST,
            "A",
            Paths.POWER,
            Paths.RATED_VOLTAGE,
            Paths.DEVICE_RATING);
    static final Check LOOP = Check.of(
            "circuit.loopImpedance",
            FindingClass.SAFETY,
            Sense.AT_MOST,
            "ohm",
            Paths.EARTHING,
            Paths.DEVICE_KIND,
            Paths.DEVICE_RATING);
    static final Check ELECTRODE =
            Check.of("circuit.electrode", FindingClass.SAFETY, Sense.AT_MOST, "V", Paths.EARTHING);
    static final Check ELECTRODE_STABILITY =
            Check.of("circuit.electrodeStability", FindingClass.ADVICE, Sense.AT_MOST, "ohm", Paths.EARTHING);
    static final Check RCD =
            Check.of("circuit.rcd", FindingClass.SAFETY, Sense.AT_MOST, "mA", Paths.RCD_KIND, Paths.RCD_RESIDUAL);
    static final Check RCD_TYPE =
            Check.of("circuit.rcdType", FindingClass.COMPLIANCE, Sense.REPORT, "", Paths.RCD_KIND, Paths.RCD_TYPE);
    static final Check RCD_TRIP =
            Check.of("circuit.rcdTripTime", FindingClass.SAFETY, Sense.AT_MOST, "ms", Paths.RCD_KIND);
    static final Check RCD_RATING = Check.of(
            "circuit.rcdRating",
            FindingClass.COMPLIANCE,
            Sense.AT_MOST,
            "A",
            Paths.RCD_KIND,
            Paths.POWER,
            Paths.RATED_VOLTAGE);
    static final Check RCD_SCOPE = Check.of("circuit.rcdScope", FindingClass.ADVICE, Sense.REPORT, "", Paths.RCD_KIND);
    static final Check LEAKAGE =
            Check.of("circuit.standingLeakage", FindingClass.ADVICE, Sense.AT_MOST, "mA", Paths.POWER, Paths.RCD_KIND);
    static final Check ADIABATIC = Check.of(
            "circuit.protectiveConductor",
            FindingClass.COMPLIANCE,
            Sense.AT_MOST,
            "mm²",
            Paths.EARTHING,
            Paths.DEVICE_KIND,
            Paths.DEVICE_RATING,
            Paths.SIZE);
    static final Check FAULT_LEVEL = Check.of(
            "circuit.faultLevel", FindingClass.SAFETY, Sense.AT_MOST, "kA", Paths.FAULT, Paths.DEVICE_BREAKING);
    static final Check ISOLATOR_RATING = Check.of(
            "circuit.isolatorRating",
            FindingClass.COMPLIANCE,
            Sense.AT_MOST,
            "A",
            Paths.POWER,
            Paths.RATED_VOLTAGE,
            Paths.DEVICE_RATING,
            Paths.ISOLATOR_RATING);
    static final Check ISOLATOR_CONDITION =
            Check.of("circuit.isolatorCondition", FindingClass.SAFETY, Sense.REPORT, "", Paths.ISOLATOR_CONDITION);
    static final Check INSTRUCTED_DEVICE =
            Check.of("circuit.instructedDevice", FindingClass.INSTRUCTIONS, Sense.AT_MOST, "A", Paths.DEVICE_RATING);
    static final Check TERMINALS =
            Check.of("circuit.terminals", FindingClass.INSTRUCTIONS, Sense.AT_MOST, "mm²", Paths.SIZE);
    static final Check LARGE_CONDUCTOR =
            Check.of("circuit.largeConductor", FindingClass.ADVICE, Sense.REPORT, "mm²", Paths.SIZE);
    static final Check TAILS =
            Check.of("circuit.tails", FindingClass.COMPLIANCE, Sense.AT_MOST, "mm²", Paths.SERVICE_FUSE, Paths.TAILS);
    static final Check EARTHING_CONDUCTOR = Check.of(
            "circuit.earthingConductor",
            FindingClass.COMPLIANCE,
            Sense.AT_MOST,
            "mm²",
            Paths.EARTHING,
            Paths.EARTHING_CONDUCTOR);
    static final Check MAIN_BONDING =
            Check.of("circuit.mainBonding", FindingClass.SAFETY, Sense.AT_MOST, "mm²", Paths.EARTHING, Paths.BONDING);
    static final Check INSULATION =
            Check.of("circuit.insulationResistance", FindingClass.SAFETY, Sense.AT_LEAST, "Mohm");
    static final Check SUPPLY_HIGH = Check.of("circuit.supplyNotHigh", FindingClass.ADVICE, Sense.AT_MOST, "V");
    static final Check SUPPLY_LOW = Check.of("circuit.supplyNotLow", FindingClass.ADVICE, Sense.AT_LEAST, "V");
    static final Check SPARE_WAY = Check.of("circuit.spareWay", FindingClass.COMPLIANCE, Sense.REPORT, "");
    static final Check APPROVED =
            Check.of("circuit.deviceApproved", FindingClass.COMPLIANCE, Sense.REPORT, "", Paths.APPROVED);
    static final Check ZONES =
            Check.of("circuit.zones", FindingClass.COMPLIANCE, Sense.REPORT, "", Paths.OUTSIDE_ZONES);
    static final Check INGRESS = Check.of("circuit.waterProtection", FindingClass.COMPLIANCE, Sense.REPORT, "");
    static final Check SUPPLEMENTARY =
            Check.of("circuit.supplementaryBonding", FindingClass.COMPLIANCE, Sense.REPORT, "");
    static final Check LONGEST_RUN = Check.of(
            "circuit.longestRun", FindingClass.ADVICE, Sense.REPORT, "m", Paths.POWER, Paths.RATED_VOLTAGE, Paths.SIZE);
    static final Check HIGHEST_POWER = Check.of(
            "circuit.highestPower",
            FindingClass.ADVICE,
            Sense.REPORT,
            "kW",
            Paths.RATED_VOLTAGE,
            Paths.DEVICE_RATING,
            Paths.SIZE,
            Paths.LENGTH,
            Paths.METHOD);

    static final List<Check> ALL = List.of(
            DESIGN_CURRENT,
            CAPACITY,
            HIDDEN_METHOD,
            VOLTAGE_DROP,
            TERMINAL_VOLTAGE,
            DELIVERED_POWER,
            HIGH_VOLTAGE_CURRENT,
            LOOP,
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
            INSTRUCTED_DEVICE,
            TERMINALS,
            LARGE_CONDUCTOR,
            TAILS,
            EARTHING_CONDUCTOR,
            MAIN_BONDING,
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
