// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.QuoteOption;

/**
 * What came of one dwelling of a list, for a screen.
 *
 * @param row its row in the list, from 1
 * @param name what it is called
 * @param urgency how urgent it is, from 0 for a safety check that fails now
 * @param urgencyText the same in words
 * @param age age of the unit in years as the list says it; -1 where it does not
 * @param complaints how many things are complained of
 * @param present whether the unit that is there suits; null where there is none
 * @param advice repair or a new unit, where something is complained of; empty else
 * @param offer the first heater that can be offered; empty if none can
 * @param works the work that goes with it
 * @param total what that comes to with tax; null without an offer
 * @param currency the currency of that
 * @param why why nothing can be offered; empty if something can
 */
public record JudgedDwelling(
        int row,
        String name,
        int urgency,
        String urgencyText,
        int age,
        int complaints,
        @Nullable Verdict present,
        String advice,
        String offer,
        String works,
        @Nullable BigDecimal total,
        @Nullable String currency,
        String why) {
    /** The order in which dwellings want attention, as the workbook has it: danger, then age, then complaints, then as the list has them. */
    public static final Comparator<JudgedDwelling> MOST_URGENT_FIRST = Comparator.comparingInt(JudgedDwelling::urgency)
            .thenComparing(Comparator.comparingInt(JudgedDwelling::age).reversed())
            .thenComparing(Comparator.comparingInt(JudgedDwelling::complaints).reversed())
            .thenComparingInt(JudgedDwelling::row);

    static JudgedDwelling of(Dwelling dwelling, int age, Locale locale) {
        Urgency urgency = Urgency.of(
                dwelling.judged().record(), dwelling.judged().opened().job().getSurvey());
        @Nullable OptionAssessment present = Urgency.present(dwelling.judged().record());
        @Nullable QuoteOption first = DwellingSheets.first(dwelling);
        return new JudgedDwelling(
                dwelling.row(),
                dwelling.name(),
                urgency.ordinal(),
                DwellingSheets.TEXTS.get(locale, "urgency." + urgency.key()),
                age,
                RepairRow.count(dwelling),
                present == null ? null : present.getVerdict(),
                new RepairRow(locale).advice(dwelling),
                first == null ? "" : String.valueOf(first.getTitle()),
                first == null ? "" : DwellingSheets.works(dwelling, first),
                first == null ? null : first.getTotal(),
                dwelling.quote() == null ? null : dwelling.quote().getCurrency(),
                dwelling.why());
    }

    /** Its values, for a file. */
    List<@Nullable Object> cells() {
        return Arrays.asList(
                row, name, urgency, urgencyText, age, complaints, present, advice, offer, works, total, currency, why);
    }

    /** The dwelling of such values. */
    static JudgedDwelling of(List<@Nullable Object> cells) {
        return new JudgedDwelling(
                number(cells.get(0)),
                String.valueOf(cells.get(1)),
                number(cells.get(2)),
                String.valueOf(cells.get(3)),
                number(cells.get(4)),
                number(cells.get(5)),
                (Verdict) cells.get(6),
                String.valueOf(cells.get(7)),
                String.valueOf(cells.get(8)),
                String.valueOf(cells.get(9)),
                (BigDecimal) cells.get(10),
                (String) cells.get(11),
                String.valueOf(cells.get(12)));
    }

    private static int number(@Nullable Object cell) {
        return (Integer) Objects.requireNonNull(cell);
    }
}
