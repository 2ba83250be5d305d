// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;

/**
 * What one state of the readings after the work says.
 *
 * @param revision that state, as {@link CompletionWork} counts them
 * @param sheet every reading with its band, judged; null if nothing can be judged
 * @param reasons why the unit is unsafe; empty if nothing says so
 * @param trouble why there is no sheet, in words; empty if there is one
 */
public record CompletionResult(long revision, @Nullable CompletionSheet sheet, List<Reason> reasons, String trouble) {
    public CompletionResult {
        reasons = List.copyOf(reasons);
    }

    static CompletionResult none(long revision, String trouble) {
        return new CompletionResult(revision, null, List.of(), trouble);
    }
}
