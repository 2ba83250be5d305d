// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;

/**
 * What the workbook asks of an assessment by name. Everything else is shown as it comes, whatever calculators there are; where none
 * answers one of these, the place stays out.
 */
enum Role {
    /** Flow at the wished outlet temperature in winter. */
    WINTER_FLOW("flow.winter");

    private final List<String> checks;

    Role(String... checks) {
        this.checks = Arrays.asList(checks);
    }

    /** The finding that plays the role. */
    Optional<Finding> of(OptionAssessment option) {
        return checks.stream()
                .flatMap(key -> option.getFindings().stream().filter(finding -> key.equals(finding.getKey())))
                .findFirst();
    }
}
