// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The dwellings of a list in the order in which they want attention: danger first, then by age of the unit, oldest first, then by how much is
 * complained of, then as the list has them. Their rows lie in a file; in memory each takes about 40 bytes.
 */
final class DwellingOrder implements AutoCloseable {
    private static final int OLDEST = (1 << 9) - 2;
    private static final int MOST_COMPLAINTS = (1 << 4) - 1;

    private final RowStore store = new RowStore();
    private final NameTable streets = new NameTable();
    private long[] keys = new long[1 << 8];
    private int[] streetOf = new int[1 << 8];
    private int streetCount;

    /** Takes what the sheets say of one dwelling. */
    interface Taker {
        /** Takes it. */
        void take(List<List<List<@Nullable Object>>> rows) throws IOException;
    }

    /** Takes what the sheets say of one dwelling of a visit. */
    interface VisitTaker {
        /**
         * Takes it.
         *
         * @param visit number of the visit, from 1
         */
        void take(int visit, List<List<List<@Nullable Object>>> rows) throws IOException;
    }

    /** Empty. */
    DwellingOrder() throws IOException {}

    /**
     * Adds a dwelling.
     *
     * @throws UncheckedIOException if there is no room for the temporary file
     */
    void add(DwellingResult dwelling) {
        int at = store.size();
        if (at == keys.length) {
            keys = Arrays.copyOf(keys, at * 2);
            streetOf = Arrays.copyOf(streetOf, at * 2);
        }
        int years = dwelling.judged().age();
        long urgency = dwelling.urgency().ordinal();
        long youth = years < 0 ? OLDEST + 1 : OLDEST - Math.min(years, OLDEST);
        long calm = MOST_COMPLAINTS - Math.min(dwelling.judged().complaints(), MOST_COMPLAINTS);
        keys[at] = urgency << 44 | youth << 35 | calm << 31 | at;
        String street = dwelling.street();
        if (!street.isEmpty()) {
            int before = streets.putIfAbsent(street, streetCount + 1);
            streetOf[at] = before == 0 ? ++streetCount : before;
        }
        try {
            store.add(dwelling.sheets());
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    private int[] order() {
        long[] sorted = Arrays.copyOf(keys, store.size());
        Arrays.sort(sorted);
        int[] order = new int[sorted.length];
        for (int i = 0; i < sorted.length; i++) {
            order[i] = (int) (sorted[i] & Integer.MAX_VALUE);
        }
        return order;
    }

    /** Hands on what the sheets say of each dwelling, the most urgent first. */
    void mostUrgentFirst(Taker taker) throws IOException {
        for (int entry : order()) {
            taker.take(store.get(entry));
        }
    }

    /** The same street by street; the street of the most urgent dwelling comes first, those without one come last. */
    void visits(VisitTaker taker) throws IOException {
        int[] order = order();
        int[] visitOf = new int[streetCount + 1];
        int visits = 0;
        for (int entry : order) {
            if (streetOf[entry] != 0 && visitOf[streetOf[entry]] == 0) {
                visitOf[streetOf[entry]] = ++visits;
            }
        }
        visitOf[0] = visits + 1;
        long[] sorted = new long[order.length];
        for (int place = 0; place < order.length; place++) {
            sorted[place] = (long) visitOf[streetOf[order[place]]] << 31 | place;
        }
        Arrays.sort(sorted);
        for (long each : sorted) {
            taker.take((int) (each >> 31), store.get(order[(int) (each & Integer.MAX_VALUE)]));
        }
    }

    @Override
    public void close() throws IOException {
        store.close();
    }
}
