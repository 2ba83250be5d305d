// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.check.Offers;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.texts.StandingTexts;

/** What is not certain about an option, in words: the reason for a contingency. */
final class ContingencyReasons {
    private final Survey survey;
    private final StandingTexts texts;

    ContingencyReasons(Survey survey, StandingTexts texts) {
        this.survey = survey;
        this.texts = texts;
    }

    /** Checks too close to call or unanswered, and cable routes that were not seen. */
    List<String> of(OptionAssessment option) {
        List<String> doubts = new ArrayList<>(routes());
        for (Finding finding : option.getFindings()) {
            if (finding.getOutcome() == Outcome.TOO_CLOSE) {
                doubts.add(text("assumption.tooClose", Map.of("check", title(finding))));
            } else if (finding.getOutcome() == Outcome.CANNOT_TELL
                    && !finding.getMissing().isEmpty()) {
                doubts.add(text(
                        "assumption.missing",
                        Map.of("readings", String.join(", ", finding.getMissing()), "check", title(finding))));
            }
        }
        return List.copyOf(new LinkedHashSet<>(doubts));
    }

    /** Whether a contingency is called for. */
    boolean any(OptionAssessment option) {
        return !routes().isEmpty()
                || Offers.open(option.getVerdict())
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
        return text(concealed ? "assumption.concealed" : "assumption.assumed", Map.of("cable", name, "method", method));
    }

    private static String title(Finding finding) {
        return Objects.requireNonNullElse(finding.getTitle(), finding.getKey());
    }

    /** No assumption can be left out, so that there always is a text. */
    private String text(String key, Map<String, String> values) {
        return texts.get(key, values).orElseThrow();
    }
}
