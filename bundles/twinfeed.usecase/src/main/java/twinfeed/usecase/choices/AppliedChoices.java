// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.choices;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.pricebook.PricebookFactory;
import twinfeed.model.quote.Quote;
import twinfeed.pricing.Discount;
import twinfeed.pricing.QuoteRequest;
import twinfeed.pricing.RequiredItem;

/** Makes a quote as the estimator wants it. Neither the assessment nor the price book that it is given is changed. */
public final class AppliedChoices {
    /** Beginning of the codes that lines in words of one's own have on a quote. */
    public static final String OWN = "own-";

    private final QuoteChoices choices;
    private final Assessment assessment;
    private final PriceBook book;

    /** For what was assessed and the prices in force. */
    public AppliedChoices(QuoteChoices choices, Assessment assessment, PriceBook book) {
        this.choices = choices;
        this.assessment = assessment;
        this.book = book;
    }

    /** The price book, with an item for each line in words of one's own. */
    public PriceBook book() {
        if (choices.lines().stream().allMatch(line -> !line.code().isEmpty())) {
            return book;
        }
        PriceBook more = EcoreUtil.copy(book);
        for (int i = 0; i < choices.lines().size(); i++) {
            OwnLine line = choices.lines().get(i);
            if (line.code().isEmpty()) {
                PriceItem item = PricebookFactory.eINSTANCE.createPriceItem();
                item.setCode(code(line, i));
                item.setDescription(line.description());
                item.setUnit(line.unit());
                item.setPrice(line.price());
                item.setTaxClass(line.taxClass());
                more.getItems().add(item);
            }
        }
        return more;
    }

    private static String code(OwnLine line, int number) {
        return line.code().isEmpty() ? OWN + (number + 1) : line.code();
    }

    /** The assessment, with the quantities that the estimator wants. */
    public Assessment assessment() {
        if (choices.quantities().isEmpty()) {
            return assessment;
        }
        Assessment changed = EcoreUtil.copy(assessment);
        changed.getOptions().forEach(option -> option.getRemedies().stream()
                .flatMap(remedy -> remedy.getItems().stream())
                .filter(item -> choices.quantities().containsKey(item.getCode()))
                .forEach(item -> item.setQuantity(choices.quantities().get(item.getCode()))));
        return changed;
    }

    /**
     * A request with the choices in it. Heaters that are not assessed any more are left out.
     *
     * @param request made of {@link #assessment()} and {@link #book()}
     * @param named heaters that somebody asks for by name: they take the place of those chosen
     */
    public QuoteRequest apply(QuoteRequest request, List<String> named) {
        List<String> offered = named.isEmpty()
                ? choices.heaters().stream().filter(this::assessed).toList()
                : named;
        QuoteRequest made = request.choosing(offered).discounted(discount());
        for (OptionAssessment option : assessment.getOptions()) {
            String name = name(option);
            List<RequiredItem> more = new ArrayList<>();
            for (int i = 0; i < choices.lines().size(); i++) {
                OwnLine line = choices.lines().get(i);
                if (line.counts(name)) {
                    more.add(new RequiredItem(code(line, i), line.quantity()));
                }
            }
            made = more.isEmpty() ? made : made.adding(name, more);
        }
        return made;
    }

    private boolean assessed(String heater) {
        return assessment.getOptions().stream().anyMatch(option -> name(option).equals(heater));
    }

    /** The name under which an option is chosen. */
    public static String name(OptionAssessment option) {
        return Boolean.TRUE.equals(option.getPresent())
                ? QuoteRequest.PRESENT
                : Objects.requireNonNullElse(option.getHeaterId(), "");
    }

    private @Nullable Discount discount() {
        if (choices.discountShare() != null) {
            return Discount.ofShare(choices.discountShare(), choices.discountReason());
        }
        return choices.discountAmount() == null
                ? null
                : Discount.of(
                        Money.of(CurrencyUnit.of(book.getCurrency()), choices.discountAmount()),
                        choices.discountReason());
    }

    /** Says why the first option is recommended, where the estimator says it. */
    public void explain(Quote quote) {
        if (!choices.reason().isEmpty()
                && quote.getOptions().size() > 1
                && !choices.heaters().isEmpty()) {
            quote.setSummary((Objects.requireNonNullElse(quote.getSummary(), "") + " " + choices.reason()).strip());
        }
    }
}
