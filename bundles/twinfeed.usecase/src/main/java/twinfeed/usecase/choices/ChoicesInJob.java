// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.choices;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.model.job.Job;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;

/**
 * How the estimator's choices stand in a job: as the draft of its quote. Its options are the heaters offered, in order, an option without
 * a name bears what counts for all of them; its summary is the reason of the recommendation, its exclusions are the works that are not
 * to be proposed.
 */
public final class ChoicesInJob {
    private static final String LINES = "lines";
    private static final String QUANTITIES = "quantities";
    private static final String DISCOUNT = "discount";

    private ChoicesInJob() {}

    /** What a job holds. */
    public static QuoteChoices of(Job job) {
        Quote draft = job.getQuote();
        if (draft == null) {
            return QuoteChoices.NONE;
        }
        List<String> heaters = new ArrayList<>();
        List<OwnLine> lines = new ArrayList<>();
        Map<String, BigDecimal> quantities = new LinkedHashMap<>();
        QuoteChoices discount = QuoteChoices.NONE;
        for (QuoteOption option : draft.getOptions()) {
            String heater = text(option.getName());
            if (!heater.isEmpty()) {
                heaters.add(heater);
            }
            for (QuoteSection section : option.getSections()) {
                for (QuoteLine line : section.getLines()) {
                    switch (text(section.getKey())) {
                        case LINES -> lines.add(line(heater, line));
                        case QUANTITIES -> quantities.put(text(line.getCode()), quantity(line));
                        case DISCOUNT ->
                            discount = discount.discount(
                                    line.getQuantity(), line.getUnitPrice(), text(line.getDescription()));
                        default -> {
                            // What a later version writes means nothing here.
                        }
                    }
                }
            }
        }
        return new QuoteChoices(
                heaters,
                text(draft.getSummary()),
                lines,
                quantities,
                draft.getExclusions(),
                discount.discountShare(),
                discount.discountAmount(),
                discount.discountReason());
    }

    private static OwnLine line(String heater, QuoteLine line) {
        return new OwnLine(
                line.getNote() == null ? heater : line.getNote(),
                text(line.getCode()),
                quantity(line),
                text(line.getDescription()),
                text(line.getUnit()),
                line.getUnitPrice(),
                text(line.getTaxClass()));
    }

    private static BigDecimal quantity(QuoteLine line) {
        return Objects.requireNonNullElse(line.getQuantity(), BigDecimal.ONE);
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    /** The draft that stands for choices in a job; null if nothing is decided by hand. */
    public static @Nullable Quote draft(QuoteChoices choices) {
        if (!choices.any()) {
            return null;
        }
        QuoteFactory make = QuoteFactory.eINSTANCE;
        Quote draft = make.createQuote();
        draft.setSummary(choices.reason().isEmpty() ? null : choices.reason());
        draft.getExclusions().addAll(choices.without());
        for (String heater : choices.heaters()) {
            QuoteOption option = make.createQuoteOption();
            option.setName(heater);
            draft.getOptions().add(option);
        }
        QuoteOption all = make.createQuoteOption();
        section(all, LINES, choices.lines().stream().map(ChoicesInJob::written).toList());
        section(
                all,
                QUANTITIES,
                choices.quantities().entrySet().stream()
                        .map(entry -> changed(entry.getKey(), entry.getValue()))
                        .toList());
        if (choices.discounted()) {
            QuoteLine line = make.createQuoteLine();
            line.setQuantity(choices.discountShare());
            line.setUnitPrice(choices.discountAmount());
            line.setDescription(choices.discountReason());
            section(all, DISCOUNT, List.of(line));
        }
        if (!all.getSections().isEmpty()) {
            draft.getOptions().add(all);
        }
        return draft;
    }

    private static void section(QuoteOption option, String key, List<QuoteLine> lines) {
        if (!lines.isEmpty()) {
            QuoteSection section = QuoteFactory.eINSTANCE.createQuoteSection();
            section.setKey(key);
            section.getLines().addAll(lines);
            option.getSections().add(section);
        }
    }

    /** The option that a line counts for stands in its note. */
    private static QuoteLine written(OwnLine own) {
        QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
        line.setNote(own.heater().isEmpty() ? null : own.heater());
        line.setCode(own.code().isEmpty() ? null : own.code());
        line.setQuantity(own.quantity());
        line.setDescription(own.description().isEmpty() ? null : own.description());
        line.setUnit(own.unit().isEmpty() ? null : own.unit());
        line.setUnitPrice(own.price());
        line.setTaxClass(own.taxClass().isEmpty() ? null : own.taxClass());
        return line;
    }

    private static QuoteLine changed(String code, BigDecimal quantity) {
        QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
        line.setCode(code);
        line.setQuantity(quantity);
        return line;
    }
}
