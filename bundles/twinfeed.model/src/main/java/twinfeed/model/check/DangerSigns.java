// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.Set;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Symptom;

/**
 * Complaints and observations that can be a danger: heat, smell, water at live parts, current to earth, water that scalds. Common
 * practice in the trade: with these nobody waits, and the shower is not used.
 */
public final class DangerSigns {
    private static final Set<String> KEYS = Set.of(
            "isolatorHot",
            "smellAtUnit",
            "terminalsBurnt",
            "boardMarked",
            "insulationLow",
            "circuitInsulationLow",
            "rcdTrips",
            "leakFromCase",
            "waterInCase",
            "switchBodyWeeps",
            "tooHot");

    private DangerSigns() {}

    /** Keys of the observations. */
    public static Set<String> keys() {
        return KEYS;
    }

    /** Whether a symptom was answered with yes. */
    public static boolean reported(Symptom symptom) {
        return !symptom.isSetAnswer() || symptom.getAnswer() == FaultAnswer.YES;
    }

    /** Whether a symptom was answered with yes and can be a danger. */
    public static boolean is(Symptom symptom) {
        return reported(symptom) && KEYS.contains(String.valueOf(symptom.getKey()));
    }
}
