// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.util.List;
import java.util.Locale;
import twinfeed.document.DocumentTexts;
import twinfeed.document.ReportedDangers;
import twinfeed.model.survey.Survey;

/** What was reported or seen that can be a danger, as the quote says it. */
public final class DangerSentences {
    private DangerSentences() {}

    /** A sentence for each, in a language; empty where nothing of the kind was reported. */
    public static List<String> of(Survey survey, Locale locale) {
        return ReportedDangers.of(survey, new DocumentTexts(locale));
    }
}
