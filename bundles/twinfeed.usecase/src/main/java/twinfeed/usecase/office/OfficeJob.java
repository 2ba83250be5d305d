// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.office;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Completion;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.quote.IssuedQuote;

/**
 * A job of an office, as its file says without being judged.
 *
 * @param file its file
 * @param customer the customer's name; empty if it has none
 * @param site the dwelling's name; empty if it has none
 * @param addressed whether the customer or the dwelling has an address
 * @param takenOn the day of the survey; null if it has none
 * @param doneOn the day on which the work was finished; null if it has none
 */
public record OfficeJob(
        Path file,
        String customer,
        String site,
        boolean addressed,
        @Nullable LocalDate takenOn,
        @Nullable LocalDate doneOn) {

    /** What a job's file says. */
    public static OfficeJob of(Path file, Job job) {
        Survey survey = job.getSurvey();
        Customer customer = survey.getCustomer();
        Site site = survey.getSite();
        Completion completion = job.getCompletion();
        return new OfficeJob(
                file,
                text(customer == null ? null : customer.getName()),
                text(site == null ? null : site.getName()),
                !text(customer == null ? null : customer.getAddress()).isEmpty()
                        || !text(site == null ? null : site.getAddress()).isEmpty(),
                survey.getTakenOn(),
                completion == null ? null : completion.getDoneOn());
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text.strip();
    }

    /** What the job is called: its file's name without the ending. */
    public String name() {
        return JobFile.name(file);
    }

    /** Whether a quote was issued for this customer and dwelling. */
    public boolean matches(IssuedQuote quote) {
        return !customer.isEmpty() && !site.isEmpty() && customer.equals(quote.customer()) && site.equals(quote.site());
    }
}
