// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import twinfeed.desktop.session.Desk;
import twinfeed.model.quote.QuoteState;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.IssuedQuote;

/** Which issued quotes can be revised: the latest revision of each number that was not accepted, those of the same customer first. */
public final class Revisions {
    private final Desk desk;
    private final String customer;

    /** For the survey of which a quote is to be issued. */
    public Revisions(Desk desk, Survey survey) {
        this.desk = desk;
        String name = survey.getCustomer() == null ? null : survey.getCustomer().getName();
        this.customer = name == null ? "" : name;
    }

    /** Those in an office's folder; a file that cannot be read is none of them. */
    public List<IssuedQuote> in(Path office) {
        Map<String, IssuedQuote> latest = new LinkedHashMap<>();
        for (IssuedQuote each : IssuedQuoteList.read(desk, office).quotes()) {
            latest.put(each.quote().getNumber(), each);
        }
        List<IssuedQuote> open = new ArrayList<>(latest.values());
        open.removeIf(each -> !each.unchanged() || each.quote().getState() == QuoteState.ACCEPTED);
        open.sort(Comparator.comparing(each -> !each.customer().equals(customer)));
        return open;
    }
}
