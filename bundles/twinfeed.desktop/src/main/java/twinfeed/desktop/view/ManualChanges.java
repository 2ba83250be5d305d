// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Words;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.quote.QuoteLine;
import twinfeed.usecase.choices.AppliedChoices;
import twinfeed.usecase.choices.OwnLine;
import twinfeed.usecase.choices.QuoteChoices;

/** Which lines of a quote somebody has made or changed by hand. */
public final class ManualChanges {
    private static final String DISCOUNT = "discount";

    private final QuoteChoices choices;
    private final Words words;

    /** By what is decided by hand. */
    public ManualChanges(QuoteChoices choices, Words words) {
        this.choices = choices;
        this.words = words;
    }

    /** What was changed, in a sentence; empty if nothing was. */
    public String summary() {
        List<String> parts = new ArrayList<>();
        if (!choices.heaters().isEmpty()) {
            parts.add(words.get("hand.offered"));
        }
        if (!choices.lines().isEmpty()) {
            parts.add(words.format("hand.lines", Map.of("count", choices.lines().size())));
        }
        if (!choices.quantities().isEmpty()) {
            parts.add(words.format(
                    "hand.quantities", Map.of("count", choices.quantities().size())));
        }
        if (!choices.without().isEmpty()) {
            parts.add(words.format(
                    "hand.without", Map.of("count", choices.without().size())));
        }
        if (choices.discounted()) {
            parts.add(words.get("hand.discount"));
        }
        return parts.isEmpty() ? "" : words.format("hand.changed", Map.of("what", String.join(", ", parts)));
    }

    /** Whether a line was added, its quantity changed, or is the discount. */
    public boolean changed(QuoteLine line) {
        return added(line).isPresent()
                || choices.quantities().containsKey(code(line))
                || (choices.discounted() && DISCOUNT.equals(code(line)));
    }

    /** The line as it was added by hand; empty if it was not. */
    public Optional<OwnLine> added(QuoteLine line) {
        String code = code(line);
        for (int i = 0; i < choices.lines().size(); i++) {
            OwnLine own = choices.lines().get(i);
            if (code.equals(own.code().isEmpty() ? AppliedChoices.OWN + (i + 1) : own.code())) {
                return Optional.of(own);
            }
        }
        return Optional.empty();
    }

    /** The choices without what was changed of a line. */
    public QuoteChoices without(QuoteLine line) {
        Optional<OwnLine> own = added(line);
        if (own.isPresent()) {
            return choices.withLines(choices.lines().stream()
                    .filter(each -> !each.equals(own.get()))
                    .toList());
        }
        return DISCOUNT.equals(code(line)) ? choices.discount(null, null, "") : choices.quantity(code(line), null);
    }

    /** The choices with another quantity of an added line. */
    public QuoteChoices withQuantity(OwnLine own, BigDecimal quantity) {
        return choices.withLines(choices.lines().stream()
                .map(each -> each.equals(own)
                        ? new OwnLine(
                                own.heater(),
                                own.code(),
                                quantity,
                                own.description(),
                                own.unit(),
                                own.price(),
                                own.taxClass())
                        : each)
                .toList());
    }

    private static String code(QuoteLine line) {
        return line.getCode() == null ? "" : line.getCode();
    }

    /** The work of an option that a line belongs to; empty if it belongs to none. */
    public static Optional<String> work(QuoteLine line, @Nullable OptionAssessment option) {
        if (option == null || line.getReason() == null) {
            return Optional.empty();
        }
        List<String> reasons = Arrays.asList(line.getReason().split(", "));
        return option.getRemedies().stream()
                .map(Remedy::getId)
                .filter(reasons::contains)
                .findFirst();
    }

    /** What a work that is not wanted is called, if it stays because no other one does. */
    public static Optional<String> staying(QuoteChoices choices, @Nullable OptionAssessment option) {
        return option == null
                ? Optional.empty()
                : option.getRemedies().stream()
                        .filter(remedy -> choices.without().contains(remedy.getId()))
                        .map(remedy -> remedy.getTitle() == null ? remedy.getId() : remedy.getTitle())
                        .findFirst();
    }
}
