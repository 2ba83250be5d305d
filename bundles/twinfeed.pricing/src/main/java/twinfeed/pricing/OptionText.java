// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;

/** What an option gives, in one sentence. */
final class OptionText {
    private final Locale locale;

    OptionText(Locale locale) {
        this.locale = locale;
    }

    String of(OptionAssessment option) {
        String subject = OptionChoice.present(option) ? "present" : "heater";
        return switch (option.getVerdict()) {
            case SUITS -> text("suits." + subject);
            case SUITS_WITH_WORK -> text("suitsWithWork." + subject, works(option));
            case DOES_NOT_SUIT -> text("doesNotSuit." + subject, reason(option, Outcome.FAILS));
            case NOT_AS_IT_IS -> text("notAsItIs." + subject, reason(option, Outcome.FAILS));
            case NOT_CHECKED -> text("notChecked." + subject);
            case CANNOT_TELL -> text("cannotTell." + subject, reason(option, Outcome.CANNOT_TELL));
        };
    }

    private static String works(OptionAssessment option) {
        return option.getRemedies().stream()
                .map(remedy -> Objects.requireNonNullElse(remedy.getTitle(), remedy.getId()))
                .collect(Collectors.joining("; "));
    }

    /** The finding that decides, or else all of the outcome. */
    private static String reason(OptionAssessment option, Outcome outcome) {
        List<Finding> binding = option.getFindings().stream()
                .filter(finding -> Objects.equals(finding.getKey(), option.getBinding()))
                .toList();
        List<Finding> told = binding.isEmpty()
                ? option.getFindings().stream()
                        .filter(finding -> finding.getOutcome() == outcome)
                        .toList()
                : binding;
        return told.stream()
                .map(finding -> Objects.requireNonNullElse(finding.getText(), finding.getKey()))
                .collect(Collectors.joining(" "));
    }

    private String text(String key, Object... arguments) {
        return QuoteException.MESSAGES.get(locale, "option.text." + key, arguments);
    }
}
