// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.emf.ecore.EAttribute;
import org.jspecify.annotations.Nullable;

/**
 * The table of ranges, {@code ranges.csv}: what a value can be, and what it usually is. A line is read when its attribute is
 * first asked for, so that a check of a small survey does not pay for the whole table.
 */
final class Ranges {
    private static final int COLUMNS = 7;

    private final Map<String, String[]> lines = new HashMap<>();
    private final Map<EAttribute, Optional<Entry>> entries = new ConcurrentHashMap<>();

    private Ranges() {
        try (InputStream stream = Objects.requireNonNull(Ranges.class.getResourceAsStream("ranges.csv"));
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(this::add);
        } catch (IOException e) {
            throw new UncheckedIOException("ranges.csv", e);
        }
    }

    static Ranges table() {
        return Holder.TABLE;
    }

    /** The ranges of an attribute; null if the table has none. */
    @Nullable
    Entry of(EAttribute attribute) {
        return entries.computeIfAbsent(attribute, this::read).orElse(null);
    }

    /** The attributes in the table, {@code Class.attribute}, sorted. */
    Set<String> names() {
        return new TreeSet<>(lines.keySet());
    }

    private void add(String line) {
        String[] cells = line.split(",", -1);
        if (cells.length != COLUMNS || lines.put(cells[0] + "." + cells[1], cells) != null) {
            throw new IllegalArgumentException("ranges.csv: not " + COLUMNS + " cells, or twice: " + line);
        }
    }

    private Optional<Entry> read(EAttribute attribute) {
        String[] cells = lines.get(attribute.getEContainingClass().getName() + "." + attribute.getName());
        if (cells == null) {
            return Optional.empty();
        }
        Range possible = Range.of(attribute.getEAttributeType(), cells[2], cells[3]);
        Range usual = Range.of(attribute.getEAttributeType(), cells[4], cells[5]);
        return Optional.of(new Entry(possible, usual, cells[6]));
    }

    /**
     * One line of the table.
     *
     * @param possible outside is an error
     * @param usual outside is a warning
     * @param example a value as somebody may write it
     */
    record Entry(Range possible, Range usual, String example) {}

    /** Read at the first check only. */
    private static final class Holder {
        static final Ranges TABLE = new Ranges();
    }
}
