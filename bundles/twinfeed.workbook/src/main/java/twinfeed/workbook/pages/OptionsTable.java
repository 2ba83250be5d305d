// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/** The options side by side. */
final class OptionsTable {
    private static final int LABEL = 4;
    private static final int MOST = 4;

    private final Sheets sheets;
    private final Page page;
    private final Words words;
    private final List<QuoteOption> options;
    private final List<ItemsPage.Totals> totals;
    private final Answers answers;
    private final int span;

    OptionsTable(Sheets sheets, Page page, List<ItemsPage.Totals> totals) {
        this.sheets = sheets;
        this.page = page;
        this.words = sheets.words();
        List<QuoteOption> all = sheets.quote().getOptions();
        this.options = all.subList(0, Math.min(MOST, all.size()));
        this.totals = totals;
        this.answers = new Answers(words);
        this.span = (QuotePage.COLUMNS - LABEL) / Math.max(1, options.size());
    }

    void write() {
        if (options.isEmpty()) {
            page.row().text(0, QuotePage.LAST, words.get("quote.noOptions"), Looking.BOLD);
            return;
        }
        Look head = Looking.HEAD.side(Look.Side.CENTRE);
        page.row().text(0, LABEL - 1, "", head);
        each((at, option) -> page.text(first(at), last(at), title(at, option), head));
        gives();
        flow();
        row("quote.included", OptionsTable::included, Looking.LINE.ink(Look.Ink.SMALL));
        amounts();
        enquiries();
        payments();
        waiting();
        page.gap(6);
    }

    private String title(int at, QuoteOption option) {
        return words.get("option.number", "number", String.valueOf(at + 1)) + "\n" + option.getTitle();
    }

    private void gives() {
        row("quote.gives", QuoteOption::getText, Looking.LINE);
        label("quote.verdict");
        each((at, option) -> page.text(
                first(at),
                last(at),
                answers.verdict(option.getVerdict()),
                Answers.look(option.getVerdict(), Looking.LINE.side(Look.Side.CENTRE))));
    }

    private void flow() {
        Optional<Finding> now = present().flatMap(Role.WINTER_FLOW::of).filter(finding -> finding.getValue() != null);
        if (now.isPresent()) {
            String unit = String.valueOf(now.get().getUnit());
            label(words.get("quote.flowNow", "unit", unit), true);
            each((at, option) -> flow(at, now.get()));
        }
        if (options.stream().anyMatch(option -> offered(option).isPresent())) {
            String unit = String.valueOf(offered(options.stream()
                            .filter(option -> offered(option).isPresent())
                            .findFirst()
                            .orElseThrow())
                    .orElseThrow()
                    .getUnit());
            label(words.get("quote.flowOffered", "unit", unit), true);
            each((at, option) -> flow(at, offered(option).orElse(null)));
        }
    }

    private void flow(int at, @Nullable Finding finding) {
        Look look = Looking.LINE.format("0.0").side(Look.Side.CENTRE);
        page.span(first(at), last(at), look).number(first(at), finding == null ? null : finding.getValue(), look);
    }

    private Optional<OptionAssessment> present() {
        return sheets.document().assessment().getOptions().stream()
                .filter(Titles::present)
                .findFirst();
    }

    private Optional<Finding> offered(QuoteOption option) {
        return Offered.assessed(sheets.document().assessment(), option)
                .flatMap(Role.WINTER_FLOW::of)
                .filter(finding -> finding.getValue() != null);
    }

    private static String included(QuoteOption option) {
        return option.getSections().stream().map(QuoteSection::getTitle).collect(Collectors.joining(", "));
    }

    private void amounts() {
        amount("quote.net", QuoteOption::getNet, ItemsPage.Totals::net, Looking.LINE);
        amount("quote.tax", QuoteOption::getTax, ItemsPage.Totals::tax, Looking.LINE);
        amount(
                "quote.total",
                QuoteOption::getTotal,
                ItemsPage.Totals::total,
                Looking.SUM.ink(Look.Ink.FIGURE).paper(Look.Paper.SOFT));
    }

    private void payments() {
        int most = options.stream()
                .mapToInt(option -> option.getPayments().size())
                .max()
                .orElse(0);
        if (most < 2) {
            return;
        }
        for (int stage = 0; stage < most; stage++) {
            int at = stage;
            String title = options.stream()
                    .filter(option -> option.getPayments().size() > at)
                    .map(option -> option.getPayments().get(at).getTitle())
                    .findFirst()
                    .orElseThrow();
            label(title, true);
            each((column, option) -> payment(column, option, at));
        }
    }

    private void payment(int column, QuoteOption option, int stage) {
        Look look = Looking.LINE.format(sheets.formats().money()).side(Look.Side.CENTRE);
        page.span(first(column), last(column), look);
        if (option.getPayments().size() > stage) {
            BigDecimal amount = option.getPayments().get(stage).getAmount();
            page.formula(first(column), totals.get(column).payments().get(stage), amount, look);
        }
    }

    private void waiting() {
        if (options.stream().anyMatch(option -> option.getLeadDays() != null && option.getLeadDays() > 0)) {
            label("quote.leadDays");
            Look look = Looking.LINE.format("0").side(Look.Side.CENTRE);
            each((at, option) -> page.span(first(at), last(at), look).number(first(at), option.getLeadDays(), look));
        }
    }

    private void amount(
            String key, Function<QuoteOption, BigDecimal> value, Function<ItemsPage.Totals, String> cell, Look base) {
        label(words.get(key), false, base);
        Look look = base.format(sheets.formats().money()).side(Look.Side.CENTRE);
        each((at, option) -> {
            page.span(first(at), last(at), look);
            page.formula(first(at), cell.apply(totals.get(at)), value.apply(option), look);
        });
    }

    private void enquiries() {
        if (options.stream().anyMatch(option -> !option.getEnquiries().isEmpty())) {
            row(
                    "quote.enquiries",
                    option -> String.join(", ", option.getEnquiries()),
                    Looking.LINE.ink(Look.Ink.SMALL));
        }
    }

    private void row(String key, Function<QuoteOption, @Nullable String> text, Look look) {
        label(key);
        each((at, option) -> page.text(first(at), last(at), text.apply(option), look));
    }

    private void label(String key) {
        label(words.get(key), true);
    }

    private void label(String text, boolean muted) {
        label(text, muted, Looking.LINE);
    }

    private void label(String text, boolean muted, Look look) {
        page.row().text(0, LABEL - 1, text, muted ? look.ink(Look.Ink.MUTED) : look);
    }

    private void each(BiConsumer<Integer, QuoteOption> action) {
        for (int at = 0; at < options.size(); at++) {
            action.accept(at, options.get(at));
        }
    }

    private int first(int at) {
        return LABEL + at * span;
    }

    private int last(int at) {
        return first(at) + span - 1;
    }
}
