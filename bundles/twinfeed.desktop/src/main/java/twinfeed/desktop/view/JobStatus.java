// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Days;
import twinfeed.desktop.text.Words;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.io.JobFile;
import twinfeed.usecase.quote.IssuedQuote;

/** Where a job stands: saved or changed, its quote, and the lists by which it is checked and priced. */
public final class JobStatus {
    private final JobSession session;
    private final Words words;

    /** Of one open job. */
    public JobStatus(JobSession session, Words words) {
        this.session = session;
        this.words = words;
    }

    /** Short phrases, the most important first. */
    public List<String> phrases() {
        return List.of(saved(), quote(), prices(), heaters());
    }

    private String saved() {
        String name = JobFile.name(session.file());
        return words.format(session.edits().dirty() ? "status.changed" : "status.saved", Map.of("name", name));
    }

    private String quote() {
        @Nullable IssuedQuote issued = session.issued();
        if (issued == null) {
            return words.get("status.draft");
        }
        String state = issued.stateOn(session.services().today()).getLiteral();
        return words.format(
                "status.quote", Map.of("quote", issued.name(), "state", words.get("issued.state." + state)));
    }

    private String prices() {
        JobServices.@Nullable Prices prices = session.services().prices(session.survey());
        return prices == null
                ? words.get("status.prices.none")
                : listed(
                        "status.prices",
                        prices.book().getTitle(),
                        Days.of(prices.book().getDate(), words),
                        String.valueOf(prices.file().getFileName()));
    }

    private String heaters() {
        Catalogue catalogue = session.catalogue();
        return listed("status.heaters", catalogue.getTitle(), Days.of(catalogue.getDate(), words), "");
    }

    private String listed(String key, @Nullable String title, String date, String otherwise) {
        String name = title == null || title.isBlank() ? otherwise : title;
        String dated = date.isEmpty() ? name : words.format("status.dated", Map.of("name", name, "date", date));
        return name.isEmpty() ? words.get(key + ".unnamed") : words.format(key, Map.of("name", dated));
    }
}
