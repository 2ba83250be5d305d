// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.SurveyPackage.Literals;

/** The readings of an electrical feed that were taken with an instrument, or that say in what state a part is. */
final class ElectricalReadings {
    private ElectricalReadings() {}

    static void remove(ElectricalFeed feed) {
        feed.setSupplyVoltage(null);
        feed.setExternalLoop(null);
        feed.setProspectiveFault(null);
        feed.setElectrode(null);
        feed.eUnset(Literals.ELECTRICAL_FEED__SERVICE_FUSE_CONFIRMED);
        feed.eUnset(Literals.ELECTRICAL_FEED__SPARE_WAY);
        feed.eUnset(Literals.ELECTRICAL_FEED__DEVICE_APPROVED);
        Circuit circuit = feed.getCircuit();
        if (circuit == null) {
            return;
        }
        circuit.setMeasuredLoop(null);
        circuit.setMeasuredLine(null);
        circuit.setInsulationResistance(null);
        circuit.setUnitDisconnected(null);
        if (circuit.getRcd() != null) {
            circuit.getRcd().setTripTime(null);
        }
        Isolator isolator = circuit.getIsolator();
        if (isolator != null) {
            isolator.eUnset(Literals.ISOLATOR__CONDITION);
        }
        circuit.getSegments().forEach(piece -> piece.eUnset(Literals.CABLE_SEGMENT__CONFIDENCE));
    }
}
