// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.document.QuoteLetter.Kind;
import twinfeed.document.QuoteLetter.Row;
import twinfeed.document.QuoteLetter.Value;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.Payment;
import twinfeed.model.quote.QuoteOption;

/**
 * What a quote says of its options, row by row, in the order in which a customer asks: what it costs, what there is to gain, what is
 * done for it, and what has to be paid besides.
 */
final class OptionRows {
    private final Assessment assessment;
    private final List<QuoteOption> options;
    private final DocumentTexts words;
    private final PrintFormat paper;
    private final List<Row> rows = new ArrayList<>();

    OptionRows(Assessment assessment, List<QuoteOption> options, DocumentTexts words, PrintFormat paper) {
        this.assessment = assessment;
        this.options = options;
        this.words = words;
        this.paper = paper;
    }

    List<Row> rows() {
        if (options.isEmpty()) {
            return List.of();
        }
        add(Kind.TOTAL, words.get("quote.total"), option -> amount(option.getTotal()));
        add(Kind.NET, words.get("quote.net"), option -> amount(option.getNet()));
        taxes();
        flows();
        if (!options.stream().allMatch(OptionRows::suits)) {
            add(Kind.VERDICT, words.get("quote.verdict"), this::verdict);
        }
        add(Kind.WORK, words.get("quote.work"), this::work);
        if (options.stream().anyMatch(option -> !option.getEnquiries().isEmpty())) {
            add(Kind.ENQUIRIES, words.get("quote.enquiries"), option -> Value.of(lines(option.getEnquiries())));
        }
        showers();
        payments();
        if (options.stream().anyMatch(option -> option.getLeadDays() != null && option.getLeadDays() > 0)) {
            add(Kind.WAITING, words.get("quote.leadDays"), OptionRows::waiting);
        }
        return rows;
    }

    private void add(Kind kind, String label, Function<QuoteOption, Value> value) {
        add(kind, 0, label, value);
    }

    private void add(Kind kind, int stage, String label, Function<QuoteOption, Value> value) {
        rows.add(new Row(kind, stage, label, options.stream().map(value).toList()));
    }

    private static boolean suits(QuoteOption option) {
        return Offers.suits(option.getVerdict());
    }

    private Value verdict(QuoteOption option) {
        Verdict verdict = option.getVerdict();
        return new Value(words.get("verdict." + verdict.getLiteral()), null, verdict);
    }

    /**
     * A line for each work; what somebody else has to do is none of ours. Where it is not known that the heater suits, the reason stands
     * ahead of them.
     */
    private Value work(QuoteOption option) {
        Optional<OptionAssessment> assessed = OfferedFindings.assessed(assessment, option);
        if (assessed.isEmpty()) {
            return Value.of(option.getText());
        }
        List<String> works = new ArrayList<>();
        works.add(words.get(unit(assessed.get())));
        if (option.getRepairWork() != null) {
            works.add(option.getRepairWork());
        }
        assessed.get().getRemedies().stream()
                .filter(remedy -> !Boolean.TRUE.equals(remedy.getEnquiry()))
                .map(OptionRows::title)
                .forEach(works::add);
        boolean reason = !suits(option) && option.getText() != null;
        return Value.of(reason ? option.getText() + "\n" + lines(works) : lines(works));
    }

    /** What becomes of the unit: it stays, or a new one is fitted, of the same power or another. */
    private String unit(OptionAssessment assessed) {
        if (Titles.present(assessed)) {
            return "work.present";
        }
        boolean like = assessment.getOptions().stream()
                .anyMatch(option -> Titles.present(option) && Offers.sameRating(option, assessed));
        return like ? "work.replace.like" : "work.replace";
    }

    private static String title(Remedy remedy) {
        String title = remedy.getCustomerTitle() == null ? remedy.getTitle() : remedy.getCustomerTitle();
        return Objects.requireNonNullElse(title, remedy.getId());
    }

    private static String lines(List<String> entries) {
        return entries.stream().map(entry -> "• " + entry).collect(Collectors.joining("\n"));
    }

    private void flows() {
        Optional<Finding> now = assessment.getOptions().stream()
                .filter(Titles::present)
                .findFirst()
                .flatMap(one -> OfferedFindings.about(one, CheckTopic.WINTER_FLOW))
                .filter(finding -> finding.getValue() != null);
        Stream<Finding> offered = options.stream().flatMap(option -> offered(option).stream());
        offered.findFirst().ifPresent(first -> {
            String unit = String.valueOf(first.getUnit());
            // Where a part has failed, what runs now is not what the sound unit gave: nothing is compared with it.
            boolean failed = options.stream().anyMatch(option -> option.getPart() != null);
            String label = words.get(
                    now.isEmpty() ? "quote.flow" : failed ? "quote.flowSound" : "quote.flowBeside",
                    java.util.Map.of(
                            "unit",
                            Objects.requireNonNullElse(words.find("unit." + unit), unit),
                            "now",
                            now.map(finding -> words.tenths(finding.getValue())).orElse("")));
            add(
                    Kind.FLOW,
                    label,
                    option -> flow(
                            offered(option).orElse(null),
                            failed ? null : now.map(Finding::getValue).orElse(null)));
        });
    }

    private Value flow(@Nullable Finding finding, @Nullable Double now) {
        if (finding == null) {
            return Value.of(null);
        }
        String figure = words.tenths(finding.getValue());
        String text = FlowWords.key(finding.getValue(), now)
                .map(key -> words.get("flow.figure", java.util.Map.of("figure", figure, "words", words.get(key))))
                .orElse(figure);
        return new Value(text, finding.getValue(), null);
    }

    private void showers() {
        if (options.stream().anyMatch(option -> option.getShowerCost() != null)) {
            add(Kind.SHOWER, words.get("quote.shower"), option -> amount(option.getShowerCost()));
        }
    }

    private Optional<Finding> offered(QuoteOption option) {
        return OfferedFindings.assessed(assessment, option)
                .flatMap(one -> OfferedFindings.about(one, CheckTopic.WINTER_FLOW))
                .filter(finding -> finding.getValue() != null);
    }

    /**
     * The tax, with its rates in the label, where every reader of the row sees them; beside the amount only where an option has others
     * than the rest.
     */
    private void taxes() {
        List<List<String>> rates = options.stream().map(this::rates).toList();
        List<String> all = rates.stream().flatMap(List::stream).distinct().toList();
        String label = all.isEmpty()
                ? words.get("quote.tax")
                : words.get("quote.taxAt", "rates", String.join(words.get("quote.taxAt.and"), all));
        add(Kind.TAX, label, option -> tax(option, all));
    }

    private List<String> rates(QuoteOption option) {
        return option.getTaxes().stream()
                .filter(sum -> sum.getRate() != null
                        && sum.getNet() != null
                        && sum.getNet().signum() != 0)
                .map(sum -> words.percent(sum.getRate()))
                .distinct()
                .toList();
    }

    private Value tax(QuoteOption option, List<String> all) {
        List<String> rates = rates(option);
        String text = paper.amount(option.getTax());
        boolean said = rates.isEmpty() || text.isEmpty() || rates.size() == all.size();
        return new Value(said ? text : text + " (" + String.join(" + ", rates) + ")", option.getTax(), null);
    }

    private Value amount(@Nullable BigDecimal amount) {
        return new Value(paper.amount(amount), amount, null);
    }

    /** One stage is the total once more: nothing is said of it. */
    private void payments() {
        int most = options.stream()
                .mapToInt(option -> option.getPayments().size())
                .max()
                .orElse(0);
        for (int at = 0; most > 1 && at < most; at++) {
            int stage = at;
            String title = options.stream()
                    .flatMap(option -> payment(option, stage).stream())
                    .map(Payment::getTitle)
                    .findFirst()
                    .orElse("");
            add(Kind.PAYMENT, stage, words.get("quote.payment", "title", title), option -> payment(option, stage)
                    .map(payment -> amount(payment.getAmount()))
                    .orElse(Value.of(null)));
        }
    }

    private static Optional<Payment> payment(QuoteOption option, int stage) {
        return stage < option.getPayments().size()
                ? Optional.of(option.getPayments().get(stage))
                : Optional.empty();
    }

    private static Value waiting(QuoteOption option) {
        Integer days = option.getLeadDays();
        return new Value(days == null ? "" : days.toString(), days, null);
    }
}
