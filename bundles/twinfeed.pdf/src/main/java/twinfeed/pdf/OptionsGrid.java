// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.document.QuoteLetter;
import twinfeed.document.QuoteLetter.Kind;
import twinfeed.document.QuoteLetter.Row;
import twinfeed.document.QuoteLetter.Value;
import twinfeed.model.assessment.Verdict;

/** The options side by side, their heads repeated on every page. */
final class OptionsGrid {
    private static final int LABEL_SHARE = 24;

    /** A row with a text of more letters than these is set smaller, for it is as long as the works that it names. */
    private static final int LONG = 90;

    private final PageBody sheet;
    private final FoWriter fo;
    private final QuoteLetter letter;

    OptionsGrid(PageBody sheet, QuoteLetter letter) {
        this.sheet = sheet;
        this.fo = sheet.fo();
        this.letter = letter;
    }

    void write() {
        List<QuoteLetter.Option> options = letter.options();
        if (options.isEmpty()) {
            fo.block(letter.none(), "font-weight", "bold");
            return;
        }
        fo.in(
                "table",
                () -> {
                    fo.empty("table-column", "column-width", "proportional-column-width(" + LABEL_SHARE + ")");
                    String width = "proportional-column-width(" + (100 - LABEL_SHARE) / options.size() + ")";
                    options.forEach(option -> fo.empty("table-column", "column-width", width));
                    fo.in("table-header", () -> fo.in("table-row", this::heads));
                    fo.in("table-body", () -> letter.rows().forEach(this::row));
                },
                "table-layout",
                "fixed",
                "width",
                "100%",
                "space-before",
                sheet.space(0.6));
    }

    private void heads() {
        cell("", "background-color", sheet.accent());
        for (QuoteLetter.Option option : letter.options()) {
            fo.in(
                    "table-cell",
                    () -> {
                        fo.block(option.number(), "font-weight", "bold");
                        fo.block(option.title(), "font-weight", "bold");
                    },
                    padded(
                            "background-color",
                            sheet.accent(),
                            "color",
                            "#FFFFFF",
                            "text-align",
                            "center",
                            "font-size",
                            sheet.letters(letter.options().size() > 3 ? 0.9 : 1)));
        }
    }

    private void row(Row row) {
        fo.in(
                "table-row",
                () -> {
                    label(row);
                    // One size for all cells of a row: the longest decides.
                    boolean small =
                            row.values().stream().anyMatch(value -> value.text().length() > LONG);
                    row.values().forEach(value -> value(row.kind(), value, small));
                },
                "border-bottom",
                PageBody.rule(),
                "keep-together.within-page",
                row.kind() == Kind.WORK ? "auto" : "always");
    }

    private void label(Row row) {
        boolean total = row.kind() == Kind.TOTAL;
        fo.in(
                "table-cell",
                () -> fo.block(row.label()),
                padded(
                        "fox:header",
                        "true",
                        "color",
                        total ? sheet.accent() : PageBody.muted(),
                        "font-weight",
                        total ? "bold" : "normal",
                        "background-color",
                        total ? sheet.soft() : "transparent"));
    }

    private void value(Kind kind, Value value, boolean small) {
        switch (kind) {
            case WORK -> cell(value.text(), "font-size", sheet.letters(small ? 0.9 : 1));
            case ENQUIRIES -> cell(value.text(), "font-size", sheet.letters(0.9));
            case VERDICT ->
                cell(
                        value.text(),
                        "text-align",
                        "center",
                        "font-weight",
                        "bold",
                        "color",
                        ink(value.verdict()),
                        "background-color",
                        ground(value.verdict()));
            case TOTAL ->
                cell(
                        value.text(),
                        "text-align",
                        "center",
                        "font-weight",
                        "bold",
                        "font-size",
                        sheet.letters(1.4),
                        "background-color",
                        sheet.soft());
            default -> cell(value.text(), "text-align", "center");
        }
    }

    private void cell(String text, String... attributes) {
        fo.in("table-cell", () -> fo.block(text), padded(attributes));
    }

    private String[] padded(String... attributes) {
        return PageBody.joined(attributes, "padding", sheet.space(0.25) + " " + sheet.space(0.45));
    }

    private static String ink(@Nullable Verdict verdict) {
        return switch (verdict) {
            case SUITS, SUITS_WITH_WORK -> "#1E5B2B";
            case DOES_NOT_SUIT -> "#8A1F11";
            case NOT_AS_IT_IS, CANNOT_TELL, NOT_CHECKED -> "#6B4A00";
        };
    }

    private static String ground(@Nullable Verdict verdict) {
        return switch (verdict) {
            case SUITS, SUITS_WITH_WORK -> "#E4F2E6";
            case DOES_NOT_SUIT -> "#FBE4E0";
            case NOT_AS_IT_IS, CANNOT_TELL, NOT_CHECKED -> "#FFF1CF";
        };
    }
}
