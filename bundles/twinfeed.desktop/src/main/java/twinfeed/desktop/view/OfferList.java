// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.ArrayList;
import java.util.List;

/** The heaters that a quote may offer, in the order in which it offers those that are ticked. */
public final class OfferList {
    /** Most options side by side on a quote. */
    public static final int MOST = 4;

    /**
     * One heater.
     *
     * @param key its id
     * @param title what it is called, with its verdict
     * @param offered whether the quote offers it
     */
    public record Entry(String key, String title, boolean offered) {}

    private final List<Entry> entries = new ArrayList<>();

    /**
     * All that were assessed.
     *
     * @param all every heater; those that are offered are ticked
     * @param offered ids of those offered, in order: they stand first
     */
    public OfferList(List<Entry> all, List<String> offered) {
        for (String key : offered) {
            all.stream()
                    .filter(each -> each.key().equals(key))
                    .findFirst()
                    .ifPresent(each -> entries.add(new Entry(key, each.title(), true)));
        }
        all.stream()
                .filter(each -> !offered.contains(each.key()))
                .forEach(each -> entries.add(new Entry(each.key(), each.title(), false)));
    }

    /** All of them in order. */
    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** Ticks one, or takes its tick away. */
    public void offer(int index, boolean offered) {
        Entry entry = entries.get(index);
        entries.set(index, new Entry(entry.key(), entry.title(), offered));
    }

    /** Moves one up or down; at the ends nothing happens. The answer is where it is then. */
    public int move(int index, int by) {
        int to = index + by;
        if (to < 0 || to >= entries.size()) {
            return index;
        }
        entries.add(to, entries.remove(index));
        return to;
    }

    /** Ids of those ticked, in order. */
    public List<String> offered() {
        return entries.stream().filter(Entry::offered).map(Entry::key).toList();
    }

    /** Whether a quote can offer as many. */
    public boolean possible() {
        return !offered().isEmpty() && offered().size() <= MOST;
    }
}
