// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Supply;
import twinfeed.model.quote.QuoteOption;

/** The heaters that were checked and are not offered, and the repair where none is, each with its reason; those with the same reason share a line. */
final class LeftOutHeaters {
    private final DocumentTexts words;
    private final List<OptionAssessment> leftOut;
    private final @Nullable String noRepair;

    LeftOutHeaters(Assessment assessment, List<QuoteOption> offered, @Nullable String noRepair, DocumentTexts words) {
        this.words = words;
        this.noRepair = noRepair;
        Set<OptionAssessment> shown = offered.stream()
                .flatMap(option -> OfferedFindings.assessed(assessment, option).stream())
                .collect(Collectors.toSet());
        leftOut = assessment.getOptions().stream()
                .filter(option -> !Titles.present(option) && !shown.contains(option))
                .toList();
    }

    /** A line for each reason; why nothing is repaired first. */
    List<String> lines() {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        if (noRepair != null) {
            byReason.put(noRepair, new ArrayList<>(List.of(words.get("leftOut.repair"))));
        }
        for (OptionAssessment option : leftOut) {
            byReason.computeIfAbsent(reason(option), reason -> new ArrayList<>())
                    .add(Titles.option(words, option));
        }
        return byReason.entrySet().stream()
                .map(entry -> words.get(
                        "leftOut.line",
                        Map.of("heaters", String.join("; ", entry.getValue()), "reason", entry.getKey())))
                .toList();
    }

    /** What the customer can do where nothing suits, by what stands in the way. */
    List<String> nextSteps(boolean danger) {
        Set<String> next = new LinkedHashSet<>();
        if (danger) {
            next.add(words.get("next.danger"));
        }
        Set<Supply> supplies = leftOut.stream()
                .flatMap(option -> obstacles(option).stream())
                .map(Finding::getSupply)
                .collect(Collectors.toSet());
        if (supplies.contains(Supply.WATER)) {
            next.add(words.get("next.water"));
        }
        if (supplies.contains(Supply.ELECTRICITY)) {
            next.add(words.get("next.electricity"));
        }
        next.add(words.get("next.other"));
        return List.copyOf(next);
    }

    private String reason(OptionAssessment option) {
        return switch (option.getVerdict()) {
            case SUITS, SUITS_WITH_WORK -> words.get("leftOut.suits");
            case DOES_NOT_SUIT -> unsuitable(option);
            case NOT_AS_IT_IS -> unsuitable(option) + " " + words.get("leftOut.work");
            case CANNOT_TELL, NOT_CHECKED -> open(option);
        };
    }

    private String unsuitable(OptionAssessment option) {
        String reasons =
                obstacles(option).stream().map(LeftOutHeaters::text).distinct().collect(Collectors.joining(" "));
        return reasons.isEmpty() ? words.get("leftOut.unsuitable") : reasons;
    }

    /** The failed checks that no work puts right, or else the one that decides. */
    private static List<Finding> obstacles(OptionAssessment option) {
        List<Finding> failed = option.getFindings().stream()
                .filter(finding -> finding.getOutcome() == Outcome.FAILS)
                .toList();
        List<Finding> unmended = failed.stream()
                .filter(finding -> option.getUnmended().contains(finding.getKey()))
                .toList();
        return unmended.isEmpty()
                ? failed.stream()
                        .filter(finding ->
                                finding.getKey() != null && finding.getKey().equals(option.getBinding()))
                        .toList()
                : unmended;
    }

    private String open(OptionAssessment option) {
        String missing = option.getFindings().stream()
                .filter(finding -> finding.getOutcome() == Outcome.CANNOT_TELL)
                .flatMap(finding -> finding.getMissing().stream())
                .distinct()
                .collect(Collectors.joining("; "));
        return missing.isEmpty() ? words.get("leftOut.open") : words.get("leftOut.missing", "readings", missing);
    }

    private static String text(Finding finding) {
        return Stream.of(finding.getCustomerText(), finding.getText(), finding.getTitle())
                .filter(java.util.Objects::nonNull)
                .findFirst()
                .orElse(String.valueOf(finding.getKey()));
    }
}
