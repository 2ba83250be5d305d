// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import twinfeed.calculator.Finding;
import twinfeed.model.assessment.Outcome;

/**
 * What a finding says where readings are moved a thousand times: no more than that, so that it can be kept by the thousand.
 *
 * @param check key of the check
 * @param passes whether it passes or does not apply
 * @param margin its margin in SI; not a number where it has no figures
 */
public record CheckMargin(String check, boolean passes, double margin) {
    /** What a finding says. */
    public static CheckMargin of(Finding finding) {
        Finding.Figures figures = finding.figures();
        return new CheckMargin(
                finding.check().key(),
                finding.outcome() == Outcome.PASSES || finding.outcome() == Outcome.NOT_APPLICABLE,
                figures == null ? Double.NaN : figures.margin());
    }
}
