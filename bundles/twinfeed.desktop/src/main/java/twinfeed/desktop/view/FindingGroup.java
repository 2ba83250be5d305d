// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.desktop.text.Words;
import twinfeed.document.drawing.Mark;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;

/**
 * Findings of one calculator.
 *
 * @param title the calculator's title
 * @param findings its findings, at least one, failures first
 */
public record FindingGroup(String title, List<Finding> findings) {
    public FindingGroup {
        findings = List.copyOf(findings);
    }

    /** The findings of an option by calculator: failures first, in each group and among the groups. */
    public static List<FindingGroup> of(
            @Nullable OptionAssessment option, FindingFilter filter, List<Calculator> calculators, Words words) {
        Map<String, List<Finding>> byCalculator = new LinkedHashMap<>();
        if (option != null) {
            List<Finding> seen = option.getFindings().stream()
                    .filter(filter::accepts)
                    .sorted(Comparator.comparingInt(FindingFilter::rank))
                    .toList();
            for (Finding finding : seen) {
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
                .map(Calculator::descriptor)
                .filter(statement -> statement.id().equals(id))
                .map(statement -> statement.texts().get(words.locale(), "title"))
                .findFirst()
                .orElse(id);
    }

    /** A finding with all the work of its option done; null if there is no work, or it is not known. */
    public static @Nullable Finding afterWork(OptionAssessment option, Finding finding) {
        return option.getAfterWork().stream()
                .filter(each -> each.getKey().equals(finding.getKey()))
                .findFirst()
                .orElse(null);
    }

    /** The calculator and the keys of the checks that it answered. */
    public List<String> checks() {
        List<String> keys = new ArrayList<>();
        keys.add(title);
        findings.forEach(finding -> keys.add(finding.getKey()));
        return keys;
    }

    /** The mark of the finding that is to be read first. */
    public Mark worst(Words words) {
        return Mark.of(
                findings.stream()
                        .min(Comparator.comparingInt(FindingFilter::rank))
                        .orElseThrow(),
                words.locale());
    }

    /** How many findings there are with each mark, those to be read first in front. */
    public String tally(Words words) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        findings.stream()
                .sorted(Comparator.comparingInt(FindingFilter::rank))
                .forEach(
                        finding -> counts.merge(Mark.of(finding, words.locale()).sign(), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> entry.getKey() + entry.getValue())
                .collect(Collectors.joining(" "));
    }
}
