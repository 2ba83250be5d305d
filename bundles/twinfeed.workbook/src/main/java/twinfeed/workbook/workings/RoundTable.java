// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.Origin;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.SheetWriter;

/** The rounds of a search as a table: a line in a row, its first round where values stand, the others in the columns after the text. */
final class RoundTable {
    private static final int FIRST = 2;
    private static final int NEXT = 6;

    private record Round(int column, twinfeed.model.assessment.Step step, String formula) {}

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final Map<String, List<Round>> lines = new LinkedHashMap<>();
    private final Map<String, Integer> places = new LinkedHashMap<>();

    RoundTable(QuoteSheets sheets, SheetWriter page) {
        this.sheets = sheets;
        this.page = page;
    }

    /** Whether a line belongs to a round of a search. */
    static boolean has(twinfeed.model.assessment.Step step) {
        return step.getExpression() != null
                && step.getOrigin() != null
                && step.getOrigin().startsWith(Origin.ROUND);
    }

    /** Adds a line of a round; returns the address at which it will stand. */
    String add(twinfeed.model.assessment.Step step, String formula) {
        int round = Integer.parseInt(step.getOrigin().substring(Origin.ROUND.length()));
        int column = round == 1 ? FIRST : NEXT + round - 2;
        String line = step.getSymbol().replaceFirst(round + "$", "");
        int place = places.computeIfAbsent(line, key -> places.size() + 1);
        lines.computeIfAbsent(line, key -> new ArrayList<>()).add(new Round(column, step, formula));
        return page.addressBelow(column, place);
    }

    /** Writes what was added. */
    void write() {
        for (List<Round> rounds : lines.values()) {
            twinfeed.model.assessment.Step first = rounds.get(0).step();
            page.row().text(0, first.getSymbol(), SheetStyles.LINE);
            page.text(1, first.getMeaning(), SheetStyles.LINE);
            text(3, first.getUnit());
            text(4, LineText.of(first.getExpression(), sheets.words()));
            text(5, first.getSource());
            for (Round round : rounds) {
                double value =
                        round.step().getValue() == null ? 0 : round.step().getValue();
                page.formula(round.column(), round.formula(), value, SheetStyles.LINE.format(NumberFormats.of(value)));
            }
        }
        lines.clear();
        places.clear();
    }

    private void text(int column, @Nullable String text) {
        if (text != null && !text.isEmpty()) {
            page.text(column, text, SheetStyles.LINE_MUTED);
        }
    }
}
