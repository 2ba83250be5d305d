// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;

/** What is not certain about an option, in words: the reason for a contingency. */
final class Doubts {
    private final Survey survey;
    private final Locale locale;

    Doubts(Survey survey, Locale locale) {
        this.survey = survey;
        this.locale = locale;
    }

    /** Checks too close to call or unanswered, and cable routes that were not seen. */
    List<String> of(OptionAssessment option) {
        List<String> doubts = new ArrayList<>(routes());
        for (Finding finding : option.getFindings()) {
            if (finding.getOutcome() == Outcome.TOO_CLOSE) {
                doubts.add(text("doubt.tooClose", title(finding)));
            } else if (finding.getOutcome() == Outcome.CANNOT_TELL
                    && !finding.getMissing().isEmpty()) {
                doubts.add(text("doubt.missing", String.join(", ", finding.getMissing()), title(finding)));
            }
        }
        return List.copyOf(new LinkedHashSet<>(doubts));
    }

    /** Whether a contingency is called for. */
    boolean any(OptionAssessment option) {
        return !routes().isEmpty()
                || option.getFindings().stream().anyMatch(finding -> finding.getOutcome() == Outcome.TOO_CLOSE);
    }

    private List<String> routes() {
        if (survey.getElectricity() == null || survey.getElectricity().getCircuit() == null) {
            return List.of();
        }
        return survey.getElectricity().getCircuit().getSegments().stream()
                .filter(segment -> !seen(segment))
                .map(this::route)
                .toList();
    }

    private static boolean seen(CableSegment segment) {
        return segment.isSetConfidence() && segment.getConfidence() == Confidence.SEEN;
    }

    private String route(CableSegment segment) {
        boolean concealed = segment.isSetConfidence() && segment.getConfidence() == Confidence.CONCEALED;
        String name = Objects.requireNonNullElse(segment.getName(), "");
        String method = Objects.requireNonNullElse(segment.getMethod(), "-");
        return text(concealed ? "doubt.concealed" : "doubt.assumed", name, method);
    }

    private static String title(Finding finding) {
        return Objects.requireNonNullElse(finding.getTitle(), finding.getKey());
    }

    private String text(String key, String... arguments) {
        return QuoteException.MESSAGES.get(locale, key, (Object[]) arguments);
    }
}
