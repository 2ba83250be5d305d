// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobSession;
import twinfeed.model.quote.QuoteState;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.quote.IssuedQuote;

/** Which issued quotes can be revised: the latest revision of each number that was not accepted, those of the same customer first. */
public final class Revisions {
    private final JobServices services;
    private final String customer;
    private final String site;
    private final String number;

    /** For the job of which a quote is to be issued. */
    public Revisions(JobSession job) {
        Survey survey = job.survey();
        IssuedQuote last = job.issued();
        this.services = job.services();
        this.customer =
                text(survey.getCustomer() == null ? null : survey.getCustomer().getName());
        this.site = text(survey.getSite() == null ? null : survey.getSite().getName());
        this.number = last == null ? "" : text(last.quote().getNumber());
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    /** Which of these the job most likely revises: the one it was issued as, else that of the same customer and site; null if none. */
    public @Nullable IssuedQuote proposed(List<IssuedQuote> open) {
        return open.stream()
                .filter(each -> !number.isEmpty() && number.equals(each.quote().getNumber()))
                .findFirst()
                .or(() -> open.stream().filter(this::sameSite).findFirst())
                .orElse(null);
    }

    /** The quote that was issued last for this customer and site, wherever it stands; null if none was, or the folder cannot be read. */
    public @Nullable IssuedQuote latest(Path office) {
        IssuedQuote latest = null;
        for (IssuedQuote each : IssuedQuoteList.read(services, office).quotes()) {
            if (sameSite(each)) {
                latest = each;
            }
        }
        return latest;
    }

    private boolean sameSite(IssuedQuote quote) {
        return !customer.isEmpty()
                && !site.isEmpty()
                && quote.customer().equals(customer)
                && quote.site().equals(site);
    }

    /** Those in an office's folder; a file that cannot be read is none of them. */
    public List<IssuedQuote> in(Path office) {
        Map<String, IssuedQuote> latest = new LinkedHashMap<>();
        for (IssuedQuote each : IssuedQuoteList.read(services, office).quotes()) {
            latest.put(each.quote().getNumber(), each);
        }
        List<IssuedQuote> open = new ArrayList<>(latest.values());
        open.removeIf(each -> !each.unchanged() || each.quote().getState() == QuoteState.ACCEPTED);
        open.sort(Comparator.comparing(each -> !each.customer().equals(customer)));
        return open;
    }
}
