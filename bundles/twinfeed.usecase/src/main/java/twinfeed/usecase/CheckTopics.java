// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.Supply;

/** Which topic and which supply the findings of a record are about, as their calculators declare it. */
public final class CheckTopics {
    private record Subject(CheckTopic topic, Supply supply, List<String> needs) {}

    private final Map<String, Subject> byKey = new HashMap<>();

    /** As these calculators declare. */
    public CheckTopics(List<Calculator> calculators) {
        for (Calculator calculator : calculators) {
            CalculatorDescriptor declared = calculator.descriptor();
            for (Check check : declared.checks()) {
                byKey.putIfAbsent(check.key(), new Subject(check.topic(), declared.supply(), check.needs()));
            }
        }
    }

    /** Marks the findings of a record that was written before findings named their topic; others stay as they are. */
    public void complete(Assessment record) {
        findings(record)
                .filter(finding -> !finding.isSetTopic() && !finding.isSetSupply())
                .forEach(finding -> {
                    Subject subject = byKey.get(finding.getKey());
                    if (subject != null) {
                        mark(finding, subject.topic(), subject.supply());
                    }
                });
    }

    /**
     * Says again of the findings of a record that was read from a file which readings they ask for and which piece of the supplies governs, both
     * of which files leave out: the readings are declared, and the piece stands first in the condition.
     *
     * @param pieces names of pipes and cables
     */
    public void place(Assessment record, Set<String> pieces) {
        findings(record).filter(finding -> finding.getNeeds().isEmpty()).forEach(finding -> {
            Subject declared = byKey.get(finding.getKey());
            if (declared != null) {
                finding.getNeeds().addAll(declared.needs());
            }
            String condition = finding.getCondition();
            if (condition != null && finding.getSubject() == null) {
                pieces.stream()
                        .filter(piece -> condition.equals(piece) || condition.startsWith(piece + ", "))
                        .max(Comparator.comparingInt(String::length))
                        .ifPresent(finding::setSubject);
            }
        });
    }

    private static Stream<Finding> findings(Assessment record) {
        return record.getOptions().stream()
                .flatMap(option -> Stream.concat(option.getFindings().stream(), option.getAfterWork().stream()));
    }

    static void mark(Finding finding, CheckTopic topic, Supply supply) {
        if (topic != CheckTopic.OTHER) {
            finding.setTopic(topic);
        }
        if (supply != Supply.NEITHER) {
            finding.setSupply(supply);
        }
    }
}
