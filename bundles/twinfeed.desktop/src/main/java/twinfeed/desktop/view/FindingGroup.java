// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.desktop.look.Mark;
import twinfeed.desktop.text.Words;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;

/**
 * Findings of one calculator.
 *
 * @param title the calculator's title
 * @param findings its findings, in order
 */
public record FindingGroup(String title, List<Finding> findings) {
    private static final List<Outcome> WORST_FIRST = List.of(
            Outcome.FAILS,
            Outcome.NOT_CHECKED,
            Outcome.CANNOT_TELL,
            Outcome.TOO_CLOSE,
            Outcome.PASSES,
            Outcome.NOT_APPLICABLE);

    public FindingGroup {
        findings = List.copyOf(findings);
    }

    /** The findings of an option by calculator, in the order in which the calculators ran. */
    public static List<FindingGroup> of(@Nullable OptionAssessment option, List<Calculator> calculators, Words words) {
        Map<String, List<Finding>> byCalculator = new LinkedHashMap<>();
        if (option != null) {
            for (Finding finding : option.getFindings()) {
                byCalculator
                        .computeIfAbsent(finding.getCalculator(), id -> new ArrayList<>())
                        .add(finding);
            }
        }
        return byCalculator.entrySet().stream()
                .map(entry -> new FindingGroup(title(entry.getKey(), calculators, words), entry.getValue()))
                .toList();
    }

    private static String title(String id, List<Calculator> calculators, Words words) {
        return calculators.stream()
                .map(Calculator::statement)
                .filter(statement -> statement.id().equals(id))
                .map(statement -> statement.texts().get(words.locale(), "title"))
                .findFirst()
                .orElse(id);
    }

    /** The calculator and the keys of the checks that it answered. */
    public List<String> checks() {
        List<String> keys = new ArrayList<>();
        keys.add(title);
        findings.forEach(finding -> keys.add(finding.getKey()));
        return keys;
    }

    /** The worst outcome among the findings. */
    public Mark worst(Words words) {
        return WORST_FIRST.stream()
                .filter(outcome -> findings.stream().anyMatch(finding -> finding.getOutcome() == outcome))
                .findFirst()
                .map(outcome -> Mark.of(outcome, words.locale()))
                .orElseThrow();
    }

    /** How many findings there are of each outcome, the worst first, by their signs. */
    public String tally(Words words) {
        List<String> parts = new ArrayList<>();
        for (Outcome outcome : WORST_FIRST) {
            long count = findings.stream()
                    .filter(finding -> finding.getOutcome() == outcome)
                    .count();
            if (count > 0) {
                parts.add(Mark.of(outcome, words.locale()).sign() + count);
            }
        }
        return String.join("  ", parts);
    }
}
