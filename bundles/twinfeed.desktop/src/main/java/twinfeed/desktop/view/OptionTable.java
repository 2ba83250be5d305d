// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.text.Words;
import twinfeed.document.Figures;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.Quote;
import twinfeed.pricing.QuoteRequest;
import twinfeed.usecase.choices.AppliedChoices;

/** The options table. */
public final class OptionTable {
    private final Words words;
    private final Figures figures;

    /** In one language. */
    public OptionTable(Words words) {
        this.words = words;
        this.figures = new Figures(words.locale());
    }

    /**
     * A row for each option of a result.
     *
     * @param whole the newest result with works and prices, from which they are taken until those of the other are known
     */
    public List<OptionRow> of(@Nullable JobResult result, @Nullable JobResult whole) {
        return result == null
                ? List.of()
                : all(result).stream()
                        .map(option -> row(option, result, result.complete() ? result : whole))
                        .toList();
    }

    /** The option of a result that is the same as one of another; null if it has none. */
    public static @Nullable OptionAssessment same(@Nullable JobResult result, @Nullable OptionAssessment option) {
        return option == null
                ? null
                : all(result).stream()
                        .filter(each -> key(each).equals(key(option)))
                        .findFirst()
                        .orElse(null);
    }

    /** What tells an option from the others: the same heater can be there and be offered anew. */
    public static String key(OptionAssessment option) {
        return (Boolean.TRUE.equals(option.getPresent()) ? "present:" : "offered:") + option.getHeaterId();
    }

    /** The name under which a quote offers an option. */
    public static String offerKey(OptionAssessment option) {
        return AppliedChoices.name(option);
    }

    /** The option that is chosen, or the first where none is. */
    public static Optional<OptionAssessment> chosen(@Nullable JobResult result, @Nullable String key) {
        List<OptionAssessment> all = all(result);
        return all.stream()
                .filter(option -> key(option).equals(key))
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    private static List<OptionAssessment> all(@Nullable JobResult result) {
        return result == null || result.judged() == null
                ? List.of()
                : result.judged().record().getOptions();
    }

    /** The verdict, or that it is not known yet. */
    public Mark verdict(OptionAssessment option, JobResult result) {
        return result.complete() ? Mark.of(option.getVerdict(), words.locale()) : open();
    }

    /** That the verdict is not known yet. */
    public Mark open() {
        return new Mark("\u2026", words.get("option.open"), Tone.QUIET);
    }

    private OptionRow row(OptionAssessment option, JobResult result, @Nullable JobResult whole) {
        OptionAssessment planned = same(whole, option);
        return new OptionRow(
                key(option),
                title(option),
                verdict(option, result),
                binding(option),
                planned == null
                        ? ""
                        : planned.getRemedies().stream().map(Remedy::getTitle).collect(Collectors.joining("; ")),
                planned == null || whole == null ? "" : price(planned, whole.quote()),
                planned == null || whole == null ? "" : noPrice(planned, whole.quote()));
    }

    private String noPrice(OptionAssessment option, @Nullable Quote quote) {
        return quote == null || QuoteRows.option(quote, option).isPresent() ? "" : words.get("option.notOffered");
    }

    /** The option's title; the unit that is there is named so. */
    public String title(OptionAssessment option) {
        return Boolean.TRUE.equals(option.getPresent())
                ? words.format("option.present", Map.of("title", option.getTitle()))
                : option.getTitle();
    }

    private String binding(OptionAssessment option) {
        return option.getFindings().stream()
                .filter(finding -> finding.getKey().equals(option.getBinding()))
                .findFirst()
                .map(this::withMargin)
                .orElse("");
    }

    private String withMargin(Finding finding) {
        String margin = figures.margin(finding.getMargin(), finding.getLimit(), finding.getUnit());
        return margin.isEmpty() ? finding.getTitle() : finding.getTitle() + " (" + margin + ")";
    }

    /**
     * Why the quote does not offer an option, and what makes it offer it.
     *
     * @param quote the quote that leaves it out
     * @param byHand whether what is offered was chosen by hand
     */
    public String whyNotOffered(OptionAssessment option, Quote quote, boolean byHand) {
        if (Boolean.TRUE.equals(option.getPresent())) {
            return words.get("quote.present");
        }
        if (byHand) {
            return words.get("quote.notOffered.byHand");
        }
        if (Offers.suits(option.getVerdict())) {
            boolean full = quote.getOptions().size() >= QuoteRequest.MOST_OPTIONS;
            return words.format(
                    full ? "quote.notOffered.full" : "quote.notOffered",
                    Map.of("most", String.valueOf(QuoteRequest.MOST_OPTIONS)));
        }
        if (option.getVerdict() == Verdict.CANNOT_TELL) {
            return words.get("quote.notOffered.open");
        }
        String checks =
                option.getUnmended().stream().map(key -> title(option, key)).collect(Collectors.joining(", "));
        return checks.isEmpty()
                ? words.get("quote.notOffered")
                : words.format("quote.unmended", Map.of("checks", checks));
    }

    private static String title(OptionAssessment option, String check) {
        return option.getFindings().stream()
                .filter(finding -> finding.getKey().equals(check))
                .map(Finding::getTitle)
                .findFirst()
                .orElse(check);
    }

    private String price(OptionAssessment option, @Nullable Quote quote) {
        return quote == null
                ? ""
                : QuoteRows.option(quote, option)
                        .map(each -> OptionPrice.of(each, quote, words))
                        .orElse("");
    }
}
