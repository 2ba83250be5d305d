// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.QuoteOption;

/** One dwelling in one line, for programs that read on: keys and states are the same in every language, sentences are the reader's. */
final class ResultLine {
    /** What each value is, in the order of a line. */
    static final List<String> KEYS = List.of(
            "row",
            "dwelling",
            "state",
            "urgency",
            "dangers",
            "age",
            "lastInspection",
            "complaints",
            "presentVerdict",
            "repairAdvice",
            "heater",
            "offerVerdict",
            "work",
            "net",
            "tax",
            "total",
            "currency",
            "priceOnRequest",
            "readThere",
            "ownReadings",
            "templateReadings",
            "missingReadings",
            "reason");

    private ResultLine() {}

    /** Of a dwelling that was judged. */
    static List<@Nullable Object> of(Dwelling dwelling, JudgedDwelling judged, String dangers, String readThere) {
        QuoteOption first = DwellingSheets.first(dwelling);
        List<@Nullable Object> line = new ArrayList<>(Arrays.asList(
                judged.row(),
                judged.name(),
                "judged",
                Urgency.values()[judged.urgency()].key(),
                dangers,
                DwellingSheets.ageOfUnit(dwelling),
                DwellingSheets.lastInspection(dwelling),
                judged.complaints(),
                key(judged.present()),
                judged.advice(),
                judged.offer(),
                first == null ? null : key(first.getVerdict()),
                judged.works(),
                first == null ? null : first.getNet(),
                first == null ? null : first.getTax(),
                judged.total(),
                judged.currency(),
                first == null ? "" : String.join("; ", first.getEnquiries()),
                readThere));
        line.addAll(DwellingSheets.origins(dwelling));
        line.add(judged.why());
        return line;
    }

    /** Of a row that could not be used. */
    static List<@Nullable Object> of(Refused refused) {
        List<@Nullable Object> line = new ArrayList<>(Collections.nCopies(KEYS.size(), null));
        line.set(0, refused.row());
        line.set(1, refused.dwelling());
        line.set(2, "rejected");
        line.set(KEYS.size() - 1, refused.reason());
        return line;
    }

    private static @Nullable String key(@Nullable Verdict verdict) {
        return verdict == null ? null : verdict.getLiteral();
    }
}
