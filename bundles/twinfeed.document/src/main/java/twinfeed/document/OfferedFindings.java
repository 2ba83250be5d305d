// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.util.List;
import java.util.Optional;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.QuoteOption;

/** What holds for a heater as it is offered: with its work done, where it needs any. */
public final class OfferedFindings {
    private OfferedFindings() {}

    /** The answers that hold once everything offered is done. */
    public static List<Finding> findings(OptionAssessment option) {
        return option.getAfterWork().isEmpty() ? option.getFindings() : option.getAfterWork();
    }

    /** The answer to a topic, if any calculator gave one. */
    public static Optional<Finding> about(OptionAssessment option, CheckTopic topic) {
        return findings(option).stream()
                .filter(finding -> finding.getTopic() == topic)
                .findFirst();
    }

    /** Whether the answers are those from before the work, because nobody gave those from after it. */
    public static boolean unknownAfterWork(OptionAssessment option) {
        return !option.getRemedies().isEmpty() && option.getAfterWork().isEmpty();
    }

    /** The assessment of an option of the quote: like for like may quote the heater that is there. */
    public static Optional<OptionAssessment> assessed(Assessment assessment, QuoteOption option) {
        if (Offers.stays(option)) {
            return assessment.getOptions().stream().filter(Titles::present).findFirst();
        }
        Optional<OptionAssessment> candidate = assessment.getOptions().stream()
                .filter(each -> !Titles.present(each))
                .filter(each -> each.getHeaterId() != null && each.getHeaterId().equals(option.getHeaterId()))
                .findFirst();
        return candidate.or(() -> assessment.getOptions().stream()
                .filter(each -> each.getHeaterId() != null && each.getHeaterId().equals(option.getHeaterId()))
                .findFirst());
    }
}
