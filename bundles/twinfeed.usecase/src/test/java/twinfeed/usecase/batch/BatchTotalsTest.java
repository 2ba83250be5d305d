// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Verdict;

/** Dwellings are counted, and what is charged there adds up; sums worked by hand. */
final class BatchTotalsTest {
    private final BatchTotals totals = new BatchTotals(Locale.UK);

    private void add(DwellingResult dwelling) {
        totals.add(dwelling);
    }

    private List<String> rows(String key) {
        String group = DwellingSheets.TEXTS.get(Locale.UK, key);
        return totals.rows().stream()
                .filter(row -> group.equals(row.get(0)))
                .map(row -> row.subList(1, row.size()).stream()
                        .map(cell -> cell == null ? "" : cell.toString())
                        .collect(Collectors.joining("|")))
                .toList();
    }

    private static String text(String key) {
        return DwellingSheets.TEXTS.get(Locale.UK, key);
    }

    @Test
    void everyUrgencyIsCountedEvenWhereThereIsNone() {
        add(Results.of(2, Urgency.SAFETY, 3, 0, ""));
        add(Results.of(3, Urgency.SAFETY, 3, 2, ""));
        add(Results.of(4, Urgency.SOUND, 3, 1, ""));
        assertEquals(
                List.of("safety|2", "sign|0", "unsuited|0", "open|0", "sound|1").stream()
                        .map(each -> text("urgency." + each.split("\\|")[0]) + "|" + each.split("\\|")[1] + "|||")
                        .toList(),
                rows("totals.urgency"));
        assertEquals(2, totals.repairs());
        assertEquals(List.of(text("totals.complaints.what") + "|2|||"), rows("totals.complaints"));
    }

    @Test
    void unitsThatAreThereAreCountedByVerdict() {
        add(sound(2, null));
        assertEquals(List.of("suits|1|||"), rows("totals.present"));
        add(sound(3, null));
        add(Results.of(Results.judged(4, Urgency.OPEN, -1, 0, null), "", null));
        assertEquals(List.of("suits|2|||", text("totals.unknown") + "|1|||"), rows("totals.present"));
    }

    private static DwellingResult sound(int row, @Nullable DwellingOffer offer) {
        return Results.of(Results.judged(row, Urgency.SOUND, 3, 0, Verdict.SUITS), "", offer);
    }

    @Test
    void whatIsOfferedAddsUp() {
        assertEquals(List.of(), rows("totals.offer"));
        add(sound(
                2,
                Results.offer(
                        Verdict.SUITS,
                        "100.00",
                        Map.of("Pump", new BigDecimal("10.00"), "Cable", new BigDecimal("30.00")))));
        add(sound(3, Results.offer(Verdict.SUITS, "50.00", Map.of("Pump", new BigDecimal("30.00")))));
        assertEquals(List.of("suits|2|150.00|30.00|180.00"), rows("totals.offer"));
        assertEquals(List.of("Pump|2|40.00||", "Cable|1|30.00||"), rows("totals.work"), "dearest first");
        assertEquals(List.of("Unit|2|316.00||"), rows("totals.other"));
        assertEquals(List.of(text("totals.all.what") + "|2|150.00|30.00|180.00"), rows("totals.all"));
        add(Results.of(4, Urgency.OPEN, 3, 0, ""));
        DwellingOffer asked = new DwellingOffer(
                Verdict.SUITS, BigDecimal.ONE, BigDecimal.ZERO, BigDecimal.ONE, true, Map.of(), Map.of());
        add(sound(5, asked));
        assertEquals(
                List.of(
                        "suits|3|151.00|30.00|181.00",
                        text("totals.nothing") + "|1|||",
                        text("totals.enquiries") + "|1|||"),
                rows("totals.offer"));
    }

    @Test
    void whatIsOnlyAnEstimateIsAddedUpApart() {
        add(sound(2, Results.offer(Verdict.SUITS_WITH_WORK, "100.00", Map.of())));
        assertEquals(List.of(), rows("totals.parts"), "there is none");
        add(sound(3, Results.offer(Verdict.CANNOT_TELL, "50.00", Map.of())));
        add(sound(4, Results.offer(Verdict.NOT_AS_IT_IS, "30.00", Map.of())));
        assertEquals(List.of(text("totals.all.what") + "|3|180.00|36.00|216.00"), rows("totals.all"));
        assertEquals(
                List.of(
                        text("totals.suiting") + "|1|100.00|20.00|120.00",
                        text("totals.estimates") + "|2|80.00|16.00|96.00"),
                rows("totals.parts"));
    }

    @Test
    void worksOfOnePriceAreInTheOrderOfTheirNames() {
        add(sound(
                2,
                Results.offer(
                        Verdict.SUITS,
                        "100.00",
                        Map.of("Pump", new BigDecimal("10.00"), "Cable", new BigDecimal("10.00")))));
        assertTrue(rows("totals.work").get(0).startsWith("Cable"));
    }

    @Test
    void anOfferComesBackFromItsRowsAsItWas() {
        DwellingOffer offer =
                Results.offer(Verdict.SUITS, "100.00", Map.of("Pump", BigDecimal.ONE, "Cable", BigDecimal.TEN));
        assertEquals(offer, DwellingOffer.of(offer.rows()));
        DwellingOffer asked = new DwellingOffer(
                Verdict.SUITS, BigDecimal.ONE, BigDecimal.ZERO, BigDecimal.ONE, true, Map.of(), Map.of());
        assertEquals(asked, DwellingOffer.of(asked.rows()));
    }
}
