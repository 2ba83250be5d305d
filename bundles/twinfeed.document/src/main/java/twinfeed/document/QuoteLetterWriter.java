// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.document.QuoteLetter.Acceptance;
import twinfeed.document.QuoteLetter.Day;
import twinfeed.document.QuoteLetter.Option;
import twinfeed.document.QuoteLetter.Part;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Supply;
import twinfeed.model.check.FailedSafety;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteState;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;

/** Puts a quote into words. */
public final class QuoteLetterWriter {
    /** No more options than a page of A4 shows side by side. */
    private static final int MOST_OPTIONS = 4;

    private static final Set<QuoteState> ACCEPTABLE = EnumSet.of(QuoteState.ISSUED, QuoteState.ACCEPTED);

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
            if (quote.getOptions().isEmpty()) {
                return words.get("quote.report");
            }
            return words.get(estimate() ? "quote.estimate" : "quote.draft");
        }
        return words.get(
                (estimate() ? "quote.estimateNumber" : "quote.number") + (quote.getRevision() > 1 ? ".revised" : ""),
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
        List<Option> heads = options(offered);
        Part dangers = dangers();
        LeftOutHeaters leftOut =
                new LeftOutHeaters(document.assessment(), quote.getOptions(), quote.getRepairLeftOut(), words);
        return new QuoteLetter(
                reference(),
                state(),
                days(),
                customer(),
                site(),
                dangers,
                finding(),
                toMeasure(offered),
                heads,
                new OptionRows(document.assessment(), offered, words, paper).rows(),
                words.get("quote.noOptions"),
                offered.isEmpty() ? instead(leftOut, dangers != null) : List.of(),
                fixed() ? acceptance() : null,
                new PriceLines(offered, words, paper)
                        .table(IntStream.rangeClosed(1, heads.size())
                                .mapToObj(at -> words.get("option.number", "number", String.valueOf(at)))
                                .toList()),
                smallPrint(offered.isEmpty() ? List.of() : leftOut.lines()));
    }

    private String state() {
        if (quote.getOptions().isEmpty()) {
            return words.get("state.none");
        }
        return words.get(
                estimate() ? "state.estimate" : "state." + quote.getState().getLiteral());
    }

    private List<Part> instead(LeftOutHeaters leftOut, boolean danger) {
        List<Part> parts = new ArrayList<>();
        part(parts, "quote.leftOut", leftOut.lines(), false);
        part(parts, "quote.next", leftOut.nextSteps(danger), false);
        return parts;
    }

    /** Where there is no price, or one that is no longer offered, none holds until a day. */
    private List<Day> days() {
        Day date = new Day(words.get("quote.date"), quote.getDate(), paper.day(quote.getDate()));
        if (quote.getOptions().isEmpty() || withdrawn()) {
            return List.of(date);
        }
        return List.of(
                date,
                new Day(
                        words.get(fixed() ? "quote.validUntil" : "quote.pricesUntil"),
                        quote.getValidUntil(),
                        paper.day(quote.getValidUntil())));
    }

    /** Whether the customer can accept it as it stands, or has: a draft, an estimate and a quote of yesterday cannot be accepted. */
    private boolean fixed() {
        return ACCEPTABLE.contains(quote.getState())
                && !estimate()
                && !quote.getOptions().isEmpty();
    }

    /** Whether its prices are offered no longer: the customer declined it, its time is up, or a newer one has taken its place. */
    private boolean withdrawn() {
        return quote.getState() != QuoteState.DRAFT && !ACCEPTABLE.contains(quote.getState());
    }

    /** Whether all that is offered rests on readings that are missing: then it is an estimate, and nobody signs it. */
    private boolean estimate() {
        return Offers.estimate(quote);
    }

    /** Every safety check that the shower fails as it is, and what was reported or seen that can be a danger. */
    private @Nullable Part dangers() {
        Stream<String> failed =
                FailedSafety.ofPresent(document.assessment()).stream().map(QuoteLetterWriter::danger);
        List<String> dangers = Stream.concat(failed, ReportedDangers.of(document.survey(), words).stream())
                .distinct()
                .toList();
        return dangers.isEmpty() ? null : new Part(words.get("quote.danger"), dangers, true);
    }

    private static String danger(Finding finding) {
        String words = finding.getCustomerText() == null ? finding.getText() : finding.getCustomerText();
        return words == null ? finding.getTitle() : words;
    }

    /** What has to be measured before the options that are estimates have a fixed price. */
    private @Nullable Part toMeasure(List<QuoteOption> offered) {
        List<QuoteOption> open = offered.stream().filter(Offers::estimate).toList();
        if (open.isEmpty()) {
            return null;
        }
        List<String> readings = openReadings(open);
        return new Part(
                estimate()
                        ? words.get("quote.measureFirst")
                        : words.get(
                                "quote.measureFirstOf",
                                "options",
                                open.stream()
                                        .map(option -> String.valueOf(offered.indexOf(option) + 1))
                                        .collect(Collectors.joining(", "))),
                readings.isEmpty() ? List.of(words.get("quote.measureAgain")) : readings,
                true);
    }

    /**
     * Where readings are missing, in the customer's words, and how many. Their names are the trade's; they stand among the assumptions and
     * on the sheet of checks.
     */
    private List<String> openReadings(List<QuoteOption> open) {
        Map<Supply, Set<String>> missing = new EnumMap<>(Supply.class);
        open.stream()
                .flatMap(option -> OfferedFindings.assessed(document.assessment(), option).stream())
                .flatMap(option -> option.getFindings().stream())
                .filter(finding -> finding.getOutcome() == Outcome.CANNOT_TELL)
                .forEach(finding -> missing.computeIfAbsent(
                                finding.isSetSupply() ? finding.getSupply() : Supply.NEITHER, supply -> new HashSet<>())
                        .addAll(finding.getMissing()));
        return missing.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> words.get(
                        "quote.measure." + entry.getKey().name(),
                        "count",
                        entry.getValue().size()))
                .toList();
    }

    private Said customer() {
        Customer customer = document.survey().getCustomer();
        return new Said(
                words.get("quote.for"), customer == null ? "" : block(customer.getName(), customer.getAddress()));
    }

    private Said site() {
        Site site = document.survey().getSite();
        String text = site == null ? "" : block(site.getName(), site.getAddress());
        return new Said(words.get("quote.at"), text.isEmpty() ? words.get("quote.unknownSite") : text);
    }

    private static String block(@Nullable String name, @Nullable String address) {
        String lines = Titles.lines(address);
        return name == null ? lines : lines.isEmpty() ? name : name + "\n" + lines;
    }

    private Said finding() {
        String summary = quote.getSummary();
        if (summary != null) {
            return new Said(words.get("quote.found"), summary);
        }
        return new Said(
                words.get("quote.found"),
                words.get(quote.getOptions().isEmpty() ? "quote.noSummary.report" : "quote.noSummary"));
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
        if (!estimate() && Offers.estimate(quote.getOptions().get(at))) {
            return words.get("option.estimate", "number", String.valueOf(at + 1));
        }
        // The first option is the one that is recommended, if any can be.
        boolean recommended = at == 0
                && quote.getOptions().size() > 1
                && Offers.recommendable(quote.getOptions().get(0));
        return words.get(recommended ? "option.recommended" : "option.number", "number", String.valueOf(at + 1));
    }

    private List<Part> smallPrint(List<String> leftOut) {
        List<Part> parts = new ArrayList<>();
        part(parts, "quote.cautions", quote.getCautions(), true);
        part(parts, "quote.notes", notes(), true);
        part(parts, "quote.leftOut", leftOut, false);
        part(parts, "quote.assumptions", quote.getAssumptions(), false);
        if (!quote.getOptions().isEmpty()) {
            part(parts, "quote.exclusions", quote.getExclusions(), false);
            part(parts, "quote.terms", quote.getTerms(), false);
        }
        if (fixed()) {
            part(parts, "cancel.title", cancellation(), true);
        }
        return parts;
    }

    /**
     * The form with which a consumer cancels, as schedule 3, part B, of the Consumer Contracts (Information, Cancellation and Additional Charges)
     * Regulations 2013 words it (from memory); the German one after annex 2 to article 246a of the EGBGB (from memory).
     */
    private List<String> cancellation() {
        String firm = document.firm().name();
        return List.of(
                words.get("cancel.to", "firm", firm.isEmpty() ? "________" : firm),
                words.get("cancel.notice", "reference", reference()),
                words.get("cancel.fields"));
    }

    /** What was written for the customer, a line each; what was written for colleagues is on no paper of theirs. */
    private List<String> notes() {
        String notes = document.survey().getPublicNotes();
        return notes == null
                ? List.of()
                : notes.lines()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty())
                        .toList();
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
                        .filter(at -> !Offers.estimate(quote.getOptions().get(at)))
                        .mapToObj(this::number)
                        .toList(),
                List.of(words.get("accept.name"), words.get("accept.signature"), words.get("accept.date")));
    }
}
