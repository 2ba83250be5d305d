// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import java.util.List;
import java.util.Optional;
import twinfeed.diagnosis.inference.SupplyState;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;

/** What the calculators of the two supplies found for the unit that is there, as far as it can explain a fault. */
final class SupplyFindings {
    /** Checks whose failure takes the pressure from the switch, the one that says that it keeps it first. */
    private static final List<CheckTopic> MARGIN = List.of(
            CheckTopic.SWITCH_ON, CheckTopic.ACTIVATION, CheckTopic.SWITCH_DROP_OUT, CheckTopic.RUNNING_PRESSURE);

    private final OptionAssessment present;

    SupplyFindings(OptionAssessment present) {
        this.present = present;
    }

    SupplyState feeds() {
        return new SupplyState(margin(), outcome(CheckTopic.VOLTAGE_DROP));
    }

    private Optional<Boolean> margin() {
        if (MARGIN.stream().anyMatch(this::fails)) {
            return Optional.of(true);
        }
        boolean known = passes(CheckTopic.SWITCH_ON) || passes(CheckTopic.ACTIVATION);
        return known && closeText().isEmpty() ? Optional.of(false) : Optional.empty();
    }

    /** The margin's check that is too close to call, in words. */
    Optional<String> closeText() {
        return MARGIN.stream()
                .map(this::find)
                .flatMap(Optional::stream)
                .filter(finding -> finding.getOutcome() == Outcome.TOO_CLOSE)
                .map(Finding::getText)
                .findFirst();
    }

    private Optional<Boolean> outcome(CheckTopic topic) {
        return fails(topic) ? Optional.of(true) : passes(topic) ? Optional.of(false) : Optional.empty();
    }

    boolean fails(CheckTopic topic) {
        return find(topic)
                .filter(finding -> finding.getOutcome() == Outcome.FAILS)
                .isPresent();
    }

    boolean passes(CheckTopic topic) {
        return find(topic)
                .filter(finding -> finding.getOutcome() == Outcome.PASSES)
                .isPresent();
    }

    Optional<Finding> find(CheckTopic topic) {
        return present.getFindings().stream()
                .filter(finding -> finding.getTopic() == topic)
                .findFirst();
    }

    /** The first failing one among some, in words. */
    Optional<String> failing(List<CheckTopic> topics) {
        return topics.stream()
                .filter(this::fails)
                .findFirst()
                .flatMap(this::find)
                .map(Finding::getText);
    }

    /** The failing ones among the checks of the water feed's margin, in words. */
    Optional<String> marginText() {
        return failing(MARGIN);
    }
}
