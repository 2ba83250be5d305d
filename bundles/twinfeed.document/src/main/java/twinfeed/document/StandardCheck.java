// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.util.Optional;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;

/**
 * What documents ask of an assessment by name. Everything else is shown as it comes, whatever calculators there are; where none
 * answers one of these, the place stays out.
 */
public enum StandardCheck {
    /** Flow at the wished outlet temperature in winter. */
    WINTER_FLOW("flow.winter"),
    /** Flow by month. */
    MONTHLY_FLOW("flow.byMonth"),
    /** Running pressure at the inlet. */
    RUNNING_PRESSURE("pressure.running"),
    /** Loop impedance at the unit. */
    LOOP_IMPEDANCE("circuit.loopImpedance"),
    /** Resistance of insulation. */
    INSULATION("circuit.insulationResistance"),
    /** Trip time of the residual-current device. */
    TRIP_TIME("circuit.rcdTripTime"),
    /** Voltage at the unit under load. */
    TERMINAL_VOLTAGE("circuit.terminalVoltage"),
    /** Power that the unit really gets. */
    DELIVERED_POWER("circuit.deliveredPower");

    private final String key;

    StandardCheck(String key) {
        this.key = key;
    }

    /** Key of its check. */
    public String key() {
        return key;
    }

    /** The finding that plays the role. */
    public Optional<Finding> of(OptionAssessment option) {
        return OfferedFindings.findings(option).stream()
                .filter(finding -> key.equals(finding.getKey()))
                .findFirst();
    }
}
