// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;

/** What an option gives, in one sentence. */
final class OptionText {
    private final Locale locale;
    private final boolean renewed;

    /** In one language; renewed tells whether a part of the unit that stays is renewed. */
    OptionText(Locale locale, boolean renewed) {
        this.locale = locale;
        this.renewed = renewed;
    }

    String of(OptionAssessment option) {
        String subject = OptionChoice.present(option) ? renewed ? "repair" : "present" : "heater";
        String stays = OptionChoice.present(option) ? "present" : "heater";
        return switch (option.getVerdict()) {
            case SUITS -> text("suits." + subject);
            case SUITS_WITH_WORK -> text("suitsWithWork." + subject, works(option));
            case DOES_NOT_SUIT -> text("doesNotSuit." + stays, reason(option, Outcome.FAILS));
            case NOT_AS_IT_IS -> text("notAsItIs." + stays, reason(option, Outcome.FAILS));
            case NOT_CHECKED -> text("notChecked." + stays);
            case CANNOT_TELL -> text("cannotTell." + stays, reason(option, Outcome.CANNOT_TELL));
        };
    }

    private static String works(OptionAssessment option) {
        return option.getRemedies().stream().map(OptionText::work).collect(Collectors.joining("; "));
    }

    private static String work(Remedy remedy) {
        return Stream.of(remedy.getCustomerTitle(), remedy.getTitle())
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(remedy.getId());
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
                .map(finding -> Stream.of(finding.getCustomerText(), finding.getText())
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(finding.getKey()))
                .collect(Collectors.joining(" "));
    }

    private String text(String key, Object... arguments) {
        return QuoteException.MESSAGES.inOrder(locale, "option.text." + key, arguments);
    }
}
