// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
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

    /** Checks that are too close to call, all in one sentence; readings that are missing, each once; and cable routes that were not seen. */
    List<String> of(OptionAssessment option) {
        List<String> doubts = new ArrayList<>(routes());
        Set<String> readings = new LinkedHashSet<>();
        Set<String> checks = new LinkedHashSet<>();
        Set<String> close = new LinkedHashSet<>();
        for (Finding finding : option.getFindings()) {
            if (finding.getOutcome() == Outcome.TOO_CLOSE) {
                close.add(title(finding));
            } else if (finding.getOutcome() == Outcome.CANNOT_TELL
                    && !finding.getMissing().isEmpty()) {
                readings.addAll(finding.getMissing());
                checks.add(title(finding));
            }
        }
        if (!close.isEmpty()) {
            doubts.add(text("assumption.tooClose", Map.of("check", String.join(", ", close))));
        }
        if (!readings.isEmpty()) {
            doubts.add(text(
                    "assumption.missing",
                    Map.of("readings", String.join(", ", readings), "check", String.join(", ", checks))));
        }
        return List.copyOf(new LinkedHashSet<>(doubts));
    }

    /** Whether a contingency is called for: where a doubt may bring work that nobody has priced. */
    boolean any(OptionAssessment option) {
        return unseen().findAny().isPresent()
                || Offers.open(option.getVerdict())
                || option.getFindings().stream().anyMatch(ContingencyReasons::mayBringWork);
    }

    /** A doubt about comfort or about advice brings none, however it turns out: a little more or less warm water costs nothing to fit. */
    private static boolean mayBringWork(Finding finding) {
        return finding.getOutcome() == Outcome.TOO_CLOSE
                && finding.getKind() != FindingClass.PERFORMANCE
                && finding.getKind() != FindingClass.ADVICE;
    }

    /** Routes whose method was taken; one that nobody stated is a missing reading. */
    private List<String> routes() {
        return unseen().filter(segment -> segment.getMethod() != null)
                .map(this::route)
                .toList();
    }

    private Stream<CableSegment> unseen() {
        return survey.getElectricity() == null || survey.getElectricity().getCircuit() == null
                ? Stream.empty()
                : survey.getElectricity().getCircuit().getSegments().stream().filter(segment -> !seen(segment));
    }

    private static boolean seen(CableSegment segment) {
        return segment.isSetConfidence() && segment.getConfidence() == Confidence.SEEN;
    }

    private String route(CableSegment segment) {
        boolean concealed = segment.isSetConfidence() && segment.getConfidence() == Confidence.CONCEALED;
        String name = Objects.requireNonNullElse(segment.getName(), "");
        return text(
                concealed ? "assumption.concealed" : "assumption.assumed",
                Map.of("cable", name, "method", segment.getMethod()));
    }

    private static String title(Finding finding) {
        return Objects.requireNonNullElse(finding.getTitle(), finding.getKey());
    }

    /** No assumption can be left out, so that there always is a text. */
    private String text(String key, Map<String, String> values) {
        return texts.get(key, values).orElseThrow();
    }
}
