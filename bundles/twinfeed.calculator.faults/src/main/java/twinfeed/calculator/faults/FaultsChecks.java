// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.FindingClass;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/** The questions that the faults calculator answers; all of them about the unit that is there. */
final class FaultsChecks {
    /** The likeliest cause of what was reported. */
    static final Check LIKELY = Check.of("faults.likely", FindingClass.ADVICE, LimitType.REPORT, DisplayUnit.PERCENT)
            .about(CheckTopic.LIKELY_FAULT);

    /** Power that the elements give by their resistances. */
    static final Check ELEMENTS = Check.of(
                    "faults.elements",
                    FindingClass.ADVICE,
                    LimitType.AT_LEAST,
                    Kind.POWER,
                    "heater.power",
                    "heater.voltage")
            .about(CheckTopic.OPEN_ELEMENT);

    /** How far the coil's resistance lies beside its rating. */
    static final Check COIL = Check.of(
            "faults.coil", FindingClass.ADVICE, LimitType.AT_MOST, DisplayUnit.PERCENT, "heater.coilResistance");

    /** Whether readings under the cover have a complete isolation record. */
    static final Check ISOLATION = Check.inWords("faults.isolation", FindingClass.SAFETY);

    /** All, in the order of their findings. */
    static final List<Check> ALL = List.of(LIKELY, ELEMENTS, COIL, ISOLATION);

    private FaultsChecks() {}
}
