// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Area;
import twinfeed.units.Kind;
import twinfeed.units.Length;
import twinfeed.units.Quantities;

/** The parts of a survey copy that remedies change, made where the survey has none yet. */
public final class CircuitChanges {
    private CircuitChanges() {}

    static ElectricalFeed feed(Survey survey) {
        if (survey.getElectricity() == null) {
            survey.setElectricity(SurveyFactory.eINSTANCE.createElectricalFeed());
        }
        return survey.getElectricity();
    }

    static Circuit circuit(Survey survey) {
        ElectricalFeed feed = feed(survey);
        if (feed.getCircuit() == null) {
            feed.setCircuit(SurveyFactory.eINSTANCE.createCircuit());
        }
        return feed.getCircuit();
    }

    static ProtectiveDevice device(Survey survey) {
        Circuit circuit = circuit(survey);
        if (circuit.getDevice() == null) {
            circuit.setDevice(SurveyFactory.eINSTANCE.createProtectiveDevice());
        }
        return circuit.getDevice();
    }

    static Isolator isolator(Survey survey) {
        Circuit circuit = circuit(survey);
        if (circuit.getIsolator() == null) {
            circuit.setIsolator(SurveyFactory.eINSTANCE.createIsolator());
        }
        return circuit.getIsolator();
    }

    /** Readings on a cable or device that is no longer there say nothing about its successor. */
    static void forgetReadings(Circuit circuit) {
        circuit.setMeasuredLoop(null);
        circuit.setMeasuredLine(null);
        circuit.setInsulationResistance(null);
    }

    static Length length(double m) {
        return (Length) Quantities.parse(
                Kind.LENGTH,
                BigDecimal.valueOf(m).setScale(2, RoundingMode.HALF_UP).toPlainString() + " m");
    }

    static Area area(double mm2) {
        return (Area) Quantities.parse(Kind.AREA, CodeNumbers.number(mm2) + " mm²");
    }
}
