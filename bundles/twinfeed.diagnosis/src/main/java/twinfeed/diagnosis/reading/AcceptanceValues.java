// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.reading;

import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Heat;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.usual.UsualValues;

/**
 * What a sound unit gives in this house, for the readings after the repair.
 *
 * @param parallel resistance of all elements together
 * @param leastW least power at the supply voltage, W, the cable's drop not counted
 * @param mostW most power at the supply voltage, W
 * @param voltageV the supply voltage, V
 * @param flowM3PerS flow at the target temperature with the water as cold as it is, m3/s at the outlet; 0 where nothing is heated
 * @param outletC target temperature, degC
 * @param intakeC intake, degC: as measured, or else the winter design value
 */
public record AcceptanceValues(
        ResistanceBand parallel,
        double leastW,
        double mostW,
        double voltageV,
        double flowM3PerS,
        double outletC,
        double intakeC) {
    private static final double NOMINAL_V = 230;
    private static final double USUAL_INTAKE_C = 5;

    /** For a heater whose power and voltage are known. */
    public static AcceptanceValues of(Survey survey, Heater heater, FaultData data) {
        double ratedW = heater.getPower().si();
        double ratedV = heater.getVoltage().si();
        double voltageV =
                survey.getElectricity() == null || survey.getElectricity().getSupplyVoltage() == null
                        ? NOMINAL_V
                        : survey.getElectricity().getSupplyVoltage().si();
        double powerW = Heat.powerAtVoltage(ratedW, ratedV, voltageV);
        double outletC = UsualValues.targetOutletC(survey);
        double intakeC = intake(survey);
        ResistanceBand parallel = ElementAssessment.sound(Heat.elementResistance(ratedW, ratedV), heater, data);
        return new AcceptanceValues(
                parallel,
                powerW * (1 - UsualValues.powerDown(heater)),
                powerW * (1 + UsualValues.powerUp(heater)),
                voltageV,
                flow(powerW, intakeC, outletC),
                outletC,
                intakeC);
    }

    private static double intake(Survey survey) {
        @Nullable WaterFeed water = survey.getWater();
        if (water != null && water.getIntakeReading() != null) {
            return water.getIntakeReading().si();
        }
        return survey.getWinterIntake() == null
                ? USUAL_INTAKE_C
                : survey.getWinterIntake().si();
    }

    private static double flow(double powerW, double intakeC, double outletC) {
        if (outletC <= intakeC) {
            return 0;
        }
        Solution mass = Heat.massFlowForOutlet(powerW, intakeC, outletC);
        return mass.isPresent() ? Heat.volumeFlowAtOutlet(mass.value(), outletC) : 0;
    }
}
