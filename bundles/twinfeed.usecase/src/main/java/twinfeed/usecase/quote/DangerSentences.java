// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import twinfeed.document.DocumentTexts;
import twinfeed.document.ReportedDangers;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.check.FailedSafety;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.AssessedJob;

/** What the quote says first: the checks of safety that the shower fails as it is, and what was reported or seen that can be a danger. */
public final class DangerSentences {
    private DangerSentences() {}

    /** A sentence for each check of safety that the unit that is there fails; empty where it fails none. */
    public static List<String> failed(Assessment assessment) {
        return FailedSafety.ofPresent(assessment).stream()
                .map(finding -> finding.getTitle() + ": " + finding.getText())
                .distinct()
                .toList();
    }

    /** All of it. */
    public static List<String> all(AssessedJob judged, Locale locale) {
        return Stream.concat(
                        failed(judged.record()).stream(),
                        of(judged.opened().job().getSurvey(), locale).stream())
                .toList();
    }

    /** What was reported: a sentence for each, in a language; empty where nothing of the kind was reported. */
    public static List<String> of(Survey survey, Locale locale) {
        return ReportedDangers.of(survey, new DocumentTexts(locale));
    }
}
