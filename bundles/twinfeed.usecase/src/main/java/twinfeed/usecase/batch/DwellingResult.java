// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * All that a list keeps of one dwelling, as plain values: it can lie in a file and come back as it was.
 *
 * @param judged what a screen shows of it
 * @param street street and place by which visits are grouped; empty if its address has no house number
 * @param unanswered whether a calculator left a check unanswered
 * @param offer what the first offer adds to the totals; absent if nothing can be offered
 * @param line what a plain list says of it, in the order of {@link ResultLine#KEYS}
 * @param sheets its rows in each sheet of the workbook
 */
record DwellingResult(
        JudgedDwelling judged,
        String street,
        boolean unanswered,
        @Nullable DwellingOffer offer,
        List<@Nullable Object> line,
        List<List<List<@Nullable Object>>> sheets) {

    /** How urgent it is. */
    Urgency urgency() {
        return Urgency.values()[judged.urgency()];
    }

    /** The result as groups of rows: what is kept beside the sheets, the offer, the line, then the sheets. */
    List<List<List<@Nullable Object>>> groups() {
        List<@Nullable Object> kept = new ArrayList<>(judged.cells());
        kept.addAll(Arrays.asList(street, unanswered ? 1 : 0));
        List<List<List<@Nullable Object>>> groups = new ArrayList<>();
        groups.add(List.of(kept));
        groups.add(offer == null ? List.of() : offer.rows());
        groups.add(List.of(line));
        groups.addAll(sheets);
        return groups;
    }

    /** The result that such groups were made of. */
    static DwellingResult of(List<List<List<@Nullable Object>>> groups) {
        List<@Nullable Object> kept = groups.get(0).get(0);
        int own = kept.size() - 2;
        return new DwellingResult(
                JudgedDwelling.of(kept.subList(0, own)),
                String.valueOf(kept.get(own)),
                Objects.equals(kept.get(own + 1), 1),
                DwellingOffer.of(groups.get(1)),
                groups.get(2).get(0),
                groups.subList(3, groups.size()));
    }
}
