// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.document.QuoteLetter.Part;
import twinfeed.document.QuoteLetter.PriceLine;
import twinfeed.document.QuoteLetter.Row;

/** A letter as plain text, everything in it in the order of the page. */
final class LetterText {
    private final StringBuilder text = new StringBuilder();

    static String of(QuoteLetter letter) {
        LetterText all = new LetterText();
        all.write(letter);
        return all.text.toString();
    }

    private void line(String line) {
        text.append(line.replace("\n", "\n    ").replace('\u00a0', ' ')).append('\n');
    }

    private void write(QuoteLetter letter) {
        line("=== " + letter.reference() + " ===");
        line(letter.state());
        letter.days().forEach(day -> line(day.label() + ": " + day.text()));
        line(letter.customer().label() + ": " + letter.customer().text());
        line(letter.site().label() + ": " + letter.site().text());
        part(letter.dangers());
        line("");
        line(letter.finding().label() + ": " + letter.finding().text());
        part(letter.toMeasure());
        line("");
        if (letter.options().isEmpty()) {
            line(letter.none());
        }
        letter.options().forEach(option -> line(option.number() + ": " + option.title()));
        letter.rows().forEach(this::row);
        letter.instead().forEach(this::part);
        if (letter.prices() != null) {
            line("");
            line(letter.prices().title() + " " + letter.prices().heads());
            letter.prices().lines().forEach(this::price);
        }
        if (letter.acceptance() != null) {
            line("");
            line(letter.acceptance().title() + ": " + letter.acceptance().choice());
            letter.acceptance().options().forEach(option -> line("[ ] " + option));
            line(String.join(" ____ ", letter.acceptance().fields()));
        }
        letter.smallPrint().forEach(this::part);
    }

    private void row(Row row) {
        line(row.label() + (row.stage() > 0 ? " (stage " + row.stage() + ")" : ""));
        row.values().forEach(value -> line("  | " + value.text()));
    }

    private void price(PriceLine price) {
        switch (price.role()) {
            case SECTION -> line("  " + price.what());
            case LINE -> line("    " + price.what() + " " + price.amounts());
            case SUM -> line("  = " + price.what() + " " + price.amounts());
            case TOTAL -> line("  == " + price.what() + " " + price.amounts());
        }
    }

    private void part(@Nullable Part part) {
        if (part != null) {
            line("");
            line(part.title() + (part.whole() ? " (never cut)" : ""));
            List<String> entries = part.entries();
            entries.forEach(entry -> line("- " + entry));
        }
    }
}
