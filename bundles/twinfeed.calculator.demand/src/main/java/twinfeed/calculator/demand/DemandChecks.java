// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.FindingClass;
import twinfeed.units.Kind;

/** The questions that this calculator answers, in the order of the answers. */
final class DemandChecks {
    static final String LOADS = "survey.electricity.loads";
    static final String SERVICE_FUSE = "survey.electricity.serviceFuse";
    static final String CONFIRMED = "survey.electricity.serviceFuseConfirmed";
    static final String MAIN_SWITCH = "survey.electricity.mainSwitch";
    private static final String KIND = LOADS + ".kind";

    static final Check FUSE = Check.of(
            "demand.serviceFuse", FindingClass.COMPLIANCE, LimitType.AT_MOST, Kind.CURRENT, SERVICE_FUSE, LOADS, KIND);
    static final Check SWITCH = Check.of(
            "demand.mainSwitch", FindingClass.COMPLIANCE, LimitType.AT_MOST, Kind.CURRENT, MAIN_SWITCH, LOADS, KIND);
    static final Check SWITCH_PROTECTION = Check.of(
            "demand.mainSwitchProtection",
            FindingClass.ADVICE,
            LimitType.AT_MOST,
            Kind.CURRENT,
            SERVICE_FUSE,
            MAIN_SWITCH);
    static final Check AS_IT_IS =
            Check.of("demand.asItIs", FindingClass.ADVICE, LimitType.AT_MOST, Kind.CURRENT, SERVICE_FUSE, LOADS, KIND);

    static final Check SECOND_SHOWER = Check.of(
            "demand.secondShower", FindingClass.ADVICE, LimitType.AT_MOST, Kind.CURRENT, SERVICE_FUSE, LOADS, KIND);
    static final Check OPERATOR = Check.inWords("demand.operator", FindingClass.ADVICE, SERVICE_FUSE, CONFIRMED);

    static final List<Check> ALL = List.of(FUSE, SWITCH, AS_IT_IS, SECOND_SHOWER, SWITCH_PROTECTION, OPERATOR);

    private DemandChecks() {}
}
