// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.List;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobPackage;
import twinfeed.usecase.choices.ChoicesInJob;
import twinfeed.usecase.choices.QuoteChoices;

/** What is changed of the quote by hand: each change is one edit of the job that can be undone, and stays when prices are worked out anew. */
public final class QuoteEdits {
    private final Job job;
    private final SurveyEdits edits;

    QuoteEdits(Job job, SurveyEdits edits) {
        this.job = job;
        this.edits = edits;
    }

    /** What is decided by hand now. */
    public QuoteChoices choices() {
        return ChoicesInJob.of(job);
    }

    /** From now on this is decided by hand, and nothing else. */
    public void change(QuoteChoices next) {
        if (!next.equals(choices())) {
            edits.set(job, List.of(JobPackage.Literals.JOB__QUOTE), ChoicesInJob.draft(next));
        }
    }
}
