// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;

/**
 * A decision that was recorded by mistake and taken back: it stays on record in {@code NAME.quote.correction-1} and so on.
 *
 * @param was what had been recorded: accepted or declined
 * @param decidedOn the day of that decision
 * @param chosen the option that was recorded as accepted; null if it was declined
 * @param on the day of the correction
 * @param reason why it was taken back
 */
public record Correction(QuoteState was, LocalDate decidedOn, @Nullable String chosen, LocalDate on, String reason) {
    private static Path file(Path quote, int number) {
        return quote.resolveSibling(quote.getFileName() + ".correction-" + number);
    }

    /** Those of a quote, the first one first. */
    static List<Correction> of(Path quote) throws IOException {
        List<Correction> all = new ArrayList<>();
        for (int i = 1; Files.exists(file(quote, i)); i++) {
            Path file = file(quote, i);
            try {
                all.add(read(JsonText.read(Files.readAllBytes(file))));
            } catch (IllegalArgumentException | DateTimeException broken) {
                throw new LifeException("brokenCorrection", file.getFileName());
            }
        }
        return List.copyOf(all);
    }

    private static Correction read(@Nullable Object tree) {
        if (tree instanceof Map<?, ?> map
                && map.get("on") instanceof String on
                && map.get("decidedOn") instanceof String decidedOn
                && map.get("reason") instanceof String reason) {
            QuoteState was = QuoteState.get(String.valueOf(map.get("was")));
            if (was != null) {
                String chosen = map.get("chosen") instanceof String name ? name : null;
                return new Correction(was, LocalDate.parse(decidedOn), chosen, LocalDate.parse(on), reason);
            }
        }
        throw new IllegalArgumentException("no correction");
    }

    /** Writes the correction of a decision; it can be created only once. */
    static void write(Path quote, Quote decided, LocalDate on, String reason) throws IOException {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("was", decided.getState().getLiteral());
        tree.put("decidedOn", decided.getDecidedOn().toString());
        if (decided.getChosen() != null) {
            tree.put("chosen", decided.getChosen());
        }
        tree.put("on", on.toString());
        tree.put("reason", reason);
        AtomicFile.create(
                file(quote, of(quote).size() + 1), CanonicalJson.write(tree).getBytes(StandardCharsets.UTF_8));
    }
}
