// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.help;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.view.OptionTable;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.usecase.AssessedJob;

/**
 * How a check was answered in a job, for its page: with a working if any option of the job has one, those that are looked at
 * first.
 *
 * @param option name of the heater; empty if the check was not answered anywhere
 * @param finding the finding with its texts
 */
record Explained(String option, @Nullable Finding finding) {
    static final Explained NOTHING = new Explained("", null);

    /** The best example in a result. */
    static Explained of(String check, @Nullable JobResult result, @Nullable String chosen) {
        AssessedJob judged = result == null ? null : result.judged();
        if (judged == null) {
            return NOTHING;
        }
        List<OptionAssessment> options = new ArrayList<>(judged.record().getOptions());
        OptionTable.chosen(result, chosen).ifPresent(first -> {
            options.remove(first);
            options.add(0, first);
        });
        List<Explained> all =
                options.stream().flatMap(option -> in(option, check)).toList();
        return all.stream()
                .filter(each ->
                        each.finding() != null && !each.finding().getSteps().isEmpty())
                .findFirst()
                .or(() -> all.stream().findFirst())
                .orElse(NOTHING);
    }

    private static Stream<Explained> in(OptionAssessment option, String check) {
        return option.getFindings().stream()
                .filter(finding -> finding.getKey().equals(check))
                .map(finding -> new Explained(option.getTitle(), finding));
    }
}
