// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.completion;

import org.jspecify.annotations.Nullable;
import twinfeed.model.job.Completion;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.units.Duration;
import twinfeed.units.Resistance;

/** The house as it was finished: what was measured then takes the place of what was surveyed, so that the same checks judge it. */
public final class CompletionHouse {
    private static final Resistance HARMLESS = Resistance.ofSi(0.001);

    private CompletionHouse() {}

    /**
     * Puts the readings into a survey.
     *
     * @param completion the readings; not changed
     * @param house the house with the work done; changed
     */
    public static void enter(Completion completion, Survey house) {
        ElectricalFeed feed = house.getElectricity();
        if (feed == null) {
            return;
        }
        if (completion.getExternalLoop() != null) {
            if (feed.isSetEarthing() && feed.getEarthing() == Earthing.TT) {
                feed.setElectrode(completion.getExternalLoop());
            } else {
                feed.setExternalLoop(completion.getExternalLoop());
            }
        }
        if (completion.getProspectiveFault() != null) {
            feed.setProspectiveFault(completion.getProspectiveFault());
        }
        Circuit circuit = feed.getCircuit();
        if (circuit != null) {
            circuit(completion, circuit);
        }
    }

    /** Readings of the old cable say nothing of the new one: what was not measured again is taken away. */
    private static void circuit(Completion completion, Circuit circuit) {
        circuit.setMeasuredLoop(completion.getLoop());
        circuit.setMeasuredLine(completion.getLine());
        circuit.setInsulationResistance(completion.getInsulation());
        circuit.setUnitDisconnected(null);
        ResidualDevice device = circuit.getRcd();
        if (device != null) {
            device.setTripTime(completion.getResidualTime());
        }
    }

    /**
     * Puts harmless values where nothing was measured yet, so that the checks name the limits that a reading will be held against: those of
     * a loop that is computed hot, and of a reading that is taken cold, are not the same.
     *
     * @param house a copy of the finished house, for its limits alone; changed
     */
    public static void enterForLimits(Survey house) {
        ElectricalFeed feed = house.getElectricity();
        if (feed == null) {
            return;
        }
        Circuit circuit = feed.getCircuit();
        if (feed.isSetEarthing() && feed.getEarthing() == Earthing.TT) {
            feed.setElectrode(feed.getElectrode() == null ? HARMLESS : feed.getElectrode());
        } else if (feed.getExternalLoop() == null) {
            feed.setExternalLoop(HARMLESS);
        }
        if (circuit != null) {
            circuit.setMeasuredLoop(circuit.getMeasuredLoop() == null ? HARMLESS : circuit.getMeasuredLoop());
            if (circuit.getRcd() != null && circuit.getRcd().getTripTime() == null) {
                circuit.getRcd().setTripTime(Duration.ofSi(0.001));
            }
        }
    }

    /** Whether a residual-current device protects the shower's circuit, as far as the survey tells. */
    static boolean residual(Survey house) {
        @Nullable ElectricalFeed feed = house.getElectricity();
        if (feed == null || feed.getCircuit() == null) {
            return false;
        }
        ResidualDevice device = feed.getCircuit().getRcd();
        return device != null && device.isSetKind() && device.getKind() != RcdKind.NONE;
    }
}
