// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.util.List;
import twinfeed.model.check.DangerSigns;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.Symptom;

/** What was reported or seen that can be a danger, in the customer's words: no check finds it, and nobody waits for one. */
public final class ReportedDangers {
    private ReportedDangers() {}

    /** A sentence for each sign of danger that was answered with yes. */
    public static List<String> of(Survey survey, DocumentTexts words) {
        return survey.getSymptoms().stream()
                .filter(DangerSigns::is)
                .map(symptom -> sentence(symptom, words))
                .distinct()
                .toList();
    }

    /** The sentence for one sign of danger. */
    public static String sentence(Symptom sign, DocumentTexts words) {
        return words.get("sign." + sign.getKey());
    }
}
