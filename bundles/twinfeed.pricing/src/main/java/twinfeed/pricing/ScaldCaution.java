// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.pricing.texts.FigureText;

/**
 * How hot the water gets that reaches a person when a tap opens during a shower, with each heater offered. The check is advice where the
 * users can step aside, and decides nothing then; whoever is to stand under the water is told of it all the same.
 */
final class ScaldCaution {
    private ScaldCaution() {}

    /** The temperatures by heater and the one from which water can scald, or empty where none gets so hot. */
    static Optional<Map<String, String>> of(List<OptionAssessment> options, Locale locale) {
        FigureText figures = new FigureText(locale);
        List<String> told = new ArrayList<>();
        String limit = "";
        for (OptionAssessment option : options) {
            Finding finding = finding(option).orElse(null);
            if (finding != null) {
                limit = degrees(finding.getLimit(), figures);
                told.add(QuoteException.MESSAGES.inOrder(
                        locale,
                        Boolean.TRUE.equals(option.getPresent()) ? "caution.scaldOfPresent" : "caution.scaldOf",
                        degrees(finding.getValue(), figures),
                        Objects.requireNonNullElse(option.getTitle(), OptionChoice.name(option))));
            }
        }
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(Map.of("heaters", String.join("; ", told), "limit", limit));
    }

    /** As it is once everything offered is done. */
    private static Optional<Finding> finding(OptionAssessment option) {
        List<Finding> offered = option.getAfterWork().isEmpty() ? option.getFindings() : option.getAfterWork();
        return offered.stream()
                .filter(finding -> finding.getTopic() == CheckTopic.SCALDING && finding.getOutcome() == Outcome.FAILS)
                .filter(finding -> finding.getValue() != null && finding.getLimit() != null)
                .findFirst();
    }

    private static String degrees(Double celsius, FigureText figures) {
        return figures.number(BigDecimal.valueOf(celsius).setScale(0, RoundingMode.HALF_UP));
    }
}
