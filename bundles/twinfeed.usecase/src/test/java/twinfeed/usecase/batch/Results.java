// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Verdict;

/** Results of dwellings, as judging them would give. */
final class Results {
    private Results() {}

    static JudgedDwelling judged(int row, Urgency urgency, int age, int complaints, @Nullable Verdict present) {
        return new JudgedDwelling(
                row,
                "Rowan Lane " + row,
                urgency.ordinal(),
                urgency.key(),
                age,
                complaints,
                present,
                "",
                "Heater 9.5 kW",
                "",
                new BigDecimal("382.20"),
                "GBP",
                "");
    }

    static DwellingOffer offer(Verdict verdict, String net, Map<String, BigDecimal> works) {
        BigDecimal price = new BigDecimal(net);
        BigDecimal tax = price.multiply(new BigDecimal("0.2")).setScale(2);
        return new DwellingOffer(
                verdict, price, tax, price.add(tax), false, works, Map.of("Unit", new BigDecimal("158.00")));
    }

    static DwellingResult of(JudgedDwelling judged, String street, @Nullable DwellingOffer offer) {
        List<@Nullable Object> line =
                Arrays.asList(judged.row(), judged.name(), "judged", LocalDate.of(2025, 2, 11), null, Verdict.SUITS);
        return new DwellingResult(judged, street, false, offer, line, List.of(List.of(line), List.of()));
    }

    static DwellingResult of(int row, Urgency urgency, int age, int complaints, String street) {
        return of(judged(row, urgency, age, complaints, Verdict.SUITS), street, null);
    }
}
