// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import twinfeed.document.QuoteLetter.Acceptance;
import twinfeed.document.QuoteLetter.Day;
import twinfeed.document.QuoteLetter.Option;
import twinfeed.document.QuoteLetter.Part;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;

/** Puts a quote into words. */
public final class QuoteLetterWriter {
    /** No more options than a page of A4 shows side by side. */
    private static final int MOST_OPTIONS = 4;

    private final QuoteDocument document;
    private final Quote quote;
    private final DocumentTexts words;
    private final PrintFormat paper;

    /**
     * Of a document.
     *
     * @param words texts of the paper that it is printed on
     */
    public QuoteLetterWriter(QuoteDocument document, DocumentTexts words) {
        this.document = document;
        this.quote = document.quote();
        this.words = words;
        this.paper = new PrintFormat(words, quote.getCurrency());
    }

    /** What the quote is called: its number and revision, or a draft. */
    public String reference() {
        if (quote.getNumber() == null) {
            return words.get("quote.draft");
        }
        return words.get(
                quote.getRevision() > 1 ? "quote.revised" : "quote.number",
                Map.of("number", quote.getNumber(), "revision", String.valueOf(quote.getRevision())));
    }

    /** What stands at the foot of every page: the firm and the reference. */
    public String foot() {
        String firm = document.firm().name();
        return firm.isEmpty() ? reference() : firm + " · " + reference();
    }

    /** The whole of it. */
    public QuoteLetter write() {
        List<QuoteOption> offered = quote.getOptions()
                .subList(0, Math.min(MOST_OPTIONS, quote.getOptions().size()));
        return new QuoteLetter(
                reference(),
                words.get("state." + quote.getState().getLiteral()),
                days(),
                customer(),
                site(),
                finding(),
                options(offered),
                new OptionRows(document.assessment(), offered, words, paper).rows(),
                words.get("quote.noOptions"),
                smallPrint(),
                acceptance());
    }

    private List<Day> days() {
        return List.of(
                new Day(words.get("quote.date"), quote.getDate(), paper.day(quote.getDate())),
                new Day(words.get("quote.validUntil"), quote.getValidUntil(), paper.day(quote.getValidUntil())));
    }

    private Said customer() {
        Customer customer = document.survey().getCustomer();
        return new Said(
                words.get("quote.for"), customer == null ? "" : block(customer.getName(), customer.getAddress()));
    }

    private Said site() {
        Site site = document.survey().getSite();
        return new Said(words.get("quote.at"), site == null ? "" : block(site.getName(), site.getAddress()));
    }

    private static String block(@Nullable String name, @Nullable String address) {
        String lines = Titles.lines(address);
        return name == null ? lines : lines.isEmpty() ? name : name + "\n" + lines;
    }

    private Said finding() {
        String summary = quote.getSummary();
        return new Said(words.get("quote.found"), summary == null ? words.get("quote.noSummary") : summary);
    }

    private List<Option> options(List<QuoteOption> offered) {
        return IntStream.range(0, offered.size())
                .mapToObj(at -> new Option(number(at), title(offered.get(at))))
                .toList();
    }

    private static String title(QuoteOption option) {
        return option.getTitle() == null ? String.valueOf(option.getHeaterId()) : option.getTitle();
    }

    private String number(int at) {
        return words.get("option.number", "number", String.valueOf(at + 1));
    }

    private List<Part> smallPrint() {
        List<Part> parts = new ArrayList<>();
        part(parts, "quote.cautions", quote.getCautions(), true);
        part(parts, "quote.assumptions", quote.getAssumptions(), false);
        part(parts, "quote.exclusions", quote.getExclusions(), false);
        part(parts, "quote.terms", quote.getTerms(), false);
        return parts;
    }

    private void part(List<Part> parts, String key, List<String> entries, boolean whole) {
        if (!entries.isEmpty()) {
            parts.add(new Part(words.get(key), entries, whole));
        }
    }

    private Acceptance acceptance() {
        return new Acceptance(
                words.get("accept.title"),
                words.get("accept.choice"),
                IntStream.range(0, quote.getOptions().size())
                        .mapToObj(this::number)
                        .toList(),
                List.of(words.get("accept.name"), words.get("accept.signature"), words.get("accept.date")));
    }
}
