// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.completion;

import java.time.LocalDate;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.check.FieldException;
import twinfeed.model.check.FieldPath;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.job.Completion;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobFactory;

/** Enters the readings taken when the work is finished into a job, with the person and the day. */
public final class CompletionLog {
    private final Job job;
    private final String file;

    /**
     * For a job.
     *
     * @param job the job, which is changed
     * @param file what to call it in messages
     */
    public CompletionLog(Job job, String file) {
        this.job = job;
        this.file = file;
    }

    /**
     * Enters readings; what was entered before stays where nothing new is given for it, and {@code -} takes a reading away.
     *
     * @param by who tested; not blank
     * @param on the day
     * @param values texts by name of the field, for example {@code loop} with {@code 0.42 ohm}
     * @throws InputException if nobody is named, a field is unknown or a text is no value for it; nothing is entered then
     */
    public void enter(String by, LocalDate on, Map<String, String> values) {
        if (by.isBlank()) {
            throw wrong(
                    "by",
                    "",
                    CompletionAssessment.TEXTS.toReader("log.nobody.wrong"),
                    CompletionAssessment.TEXTS.toReader("log.nobody.right"));
        }
        Completion entered = job.getCompletion() == null
                ? JobFactory.eINSTANCE.createCompletion()
                : EcoreUtil.copy(job.getCompletion());
        entered.setBy(by.strip());
        entered.setDoneOn(on);
        values.forEach((key, text) -> {
            try {
                FieldPath.of(key).set(entered, text);
            } catch (FieldException refused) {
                throw wrong(key, text, refused.wrong(), refused.right());
            }
        });
        job.setCompletion(entered);
    }

    private InputException wrong(String element, String reading, String reason, String right) {
        return new InputException(new InputProblem(file, 0, "completion." + element, reading, reason, right));
    }
}
