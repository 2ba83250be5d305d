// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Mark;
import twinfeed.desktop.look.Tone;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.text.Figures;
import twinfeed.desktop.text.Words;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;

/** The options table. */
public final class OptionRows {
    private final Words words;
    private final Figures figures;

    /** In one language. */
    public OptionRows(Words words) {
        this.words = words;
        this.figures = new Figures(words.locale());
    }

    /** A row for each option of a result. */
    public List<OptionRow> of(@Nullable JobResult result) {
        if (result == null || result.judged() == null) {
            return List.of();
        }
        return result.judged().record().getOptions().stream()
                .map(option -> row(option, result))
                .toList();
    }

    /** The option that is chosen, or the first where none is. */
    public static Optional<OptionAssessment> chosen(@Nullable JobResult result, @Nullable String heaterId) {
        if (result == null || result.judged() == null) {
            return Optional.empty();
        }
        List<OptionAssessment> all = result.judged().record().getOptions();
        return all.stream()
                .filter(option -> option.getHeaterId().equals(heaterId))
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    /** The verdict, or that it is not known yet. */
    public Mark verdict(OptionAssessment option, JobResult result) {
        return result.complete()
                ? Mark.of(option.getVerdict(), words.locale())
                : new Mark("\u2026", words.get("option.open"), Tone.QUIET);
    }

    private OptionRow row(OptionAssessment option, JobResult result) {
        return new OptionRow(
                option.getHeaterId(),
                title(option),
                verdict(option, result),
                binding(option),
                option.getRemedies().stream().map(Remedy::getTitle).collect(Collectors.joining("; ")),
                price(option, result.quote()));
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
        return margin.isEmpty() || margin.equals("+") ? finding.getTitle() : finding.getTitle() + " (" + margin + ")";
    }

    private String price(OptionAssessment option, @Nullable Quote quote) {
        return quote == null
                ? ""
                : quote.getOptions().stream()
                        .filter(each -> option.getHeaterId().equals(each.getHeaterId()))
                        .findFirst()
                        .map(each -> total(each, quote))
                        .orElse("");
    }

    private String total(QuoteOption option, Quote quote) {
        String total = figures.money(option.getTotal(), quote.getCurrency());
        return option.getEnquiries().isEmpty() ? total : words.format("option.plusEnquiry", Map.of("total", total));
    }
}
