// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;

/**
 * What was decided about an issued quote, in a file beside it. It can be created only once, so that of two people who decide at
 * the same time the second is told that it was decided.
 */
final class Outcome {
    private Outcome() {}

    private static Path file(Path quote) {
        return quote.resolveSibling(quote.getFileName() + ".outcome");
    }

    /** Writes it; the quote as it was decided by somebody else, or null if this one was the first. */
    static @Nullable Quote write(Path file, Quote decided) throws IOException {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("state", decided.getState().getLiteral());
        tree.put("on", decided.getDecidedOn().toString());
        if (decided.getChosen() != null) {
            tree.put("chosen", decided.getChosen());
        }
        try {
            AtomicFile.create(file(file), CanonicalJson.write(tree).getBytes(StandardCharsets.UTF_8));
            return null;
        } catch (FileAlreadyExistsException present) {
            return apply(file, decided);
        }
    }

    /** Nothing is decided any more. */
    static void remove(Path file) throws IOException {
        Files.delete(file(file));
    }

    /** The quote with what was decided; itself if nothing was. */
    static Quote apply(Path file, Quote issued) throws IOException {
        Path outcome = file(file);
        if (!Files.exists(outcome)) {
            return issued;
        }
        try {
            return apply(issued, JsonText.read(Files.readAllBytes(outcome)));
        } catch (IllegalArgumentException | DateTimeException broken) {
            throw new LifeException("brokenOutcome", outcome.getFileName());
        }
    }

    private static Quote apply(Quote issued, @Nullable Object tree) {
        if (!(tree instanceof Map<?, ?> map) || !(map.get("on") instanceof String on)) {
            throw new IllegalArgumentException("no outcome");
        }
        QuoteState state = QuoteState.get(String.valueOf(map.get("state")));
        if (state == null || state == QuoteState.DRAFT || state == QuoteState.ISSUED) {
            throw new IllegalArgumentException("no outcome");
        }
        Quote decided = EcoreUtil.copy(issued);
        decided.setState(state);
        decided.setDecidedOn(LocalDate.parse(on));
        decided.setChosen(map.get("chosen") instanceof String chosen ? chosen : null);
        return decided;
    }
}
