// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The rows that could not be used: the first of them at hand, all of them in a temporary file, so that a list of a million wrong rows fits too. */
final class RejectedRows implements AutoCloseable {
    /** As many as anybody reads on a screen. */
    static final int MOST_AT_HAND = 1000;

    private final RowStore store = new RowStore();
    private final List<Refused> first = new ArrayList<>();

    /** None yet. */
    RejectedRows() throws IOException {}

    /** Takes what is written of each row. */
    interface Taker {
        /** Takes it. */
        void take(Refused one) throws IOException;
    }

    /**
     * Adds one.
     *
     * @throws UncheckedIOException if there is no room for the temporary file
     */
    void add(Refused one) {
        if (first.size() < MOST_AT_HAND) {
            first.add(one);
        }
        List<@Nullable Object> row = List.of(one.row(), one.dwelling(), one.reason());
        try {
            store.add(List.of(List.of(row)));
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    /** How many there are. */
    int count() {
        return store.size();
    }

    /** The first of them, at most {@link #MOST_AT_HAND}. */
    List<Refused> first() {
        return List.copyOf(first);
    }

    /** Hands on all of them, in their order. */
    void each(Taker taker) throws IOException {
        for (int at = 0; at < store.size(); at++) {
            List<@Nullable Object> row = store.get(at).get(0).get(0);
            taker.take(new Refused((Integer) Objects.requireNonNull(row.get(0)), text(row.get(1)), text(row.get(2))));
        }
    }

    private static String text(@Nullable Object cell) {
        return cell == null ? "" : cell.toString();
    }

    @Override
    public void close() throws IOException {
        store.close();
    }
}
