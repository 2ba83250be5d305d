// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Keeps what calculators answered while readings were moved, for somebody who judges one house again and again with a reading edited in between:
 * only those calculators are run again that read what was edited, directly or through what others provide. The answers are the
 * same with it and without.
 *
 * <p>Where it is full it forgets the inputs that were not asked for the longest, with all their answers. Thread-safe.
 */
public final class AnswerCache {
    /** Answers kept at most, of 1.5 kilobytes each: those of a house with a long search for works, before an edit and after it. */
    private static final int MAX_ANSWERS = 6_000;

    private final int most;
    private final Map<CalculatorInputs, Answers> kept = new LinkedHashMap<>(16, 0.75F, true);
    private int count;

    /** An empty one of the usual size. */
    public AnswerCache() {
        this(MAX_ANSWERS);
    }

    AnswerCache(int most) {
        this.most = most;
    }

    /** How many answers are kept. */
    synchronized int size() {
        return count;
    }

    /** The answers for some inputs, as far as there are any; new ones are kept there. */
    public synchronized Answers of(CalculatorInputs inputs) {
        return kept.computeIfAbsent(inputs, fresh -> new Answers());
    }

    private void forget(Answers latest) {
        Iterator<Answers> oldest = kept.values().iterator();
        while (count > most && oldest.hasNext()) {
            Answers next = oldest.next();
            if (next != latest) {
                count -= next.byReadings.size();
                next.byReadings.clear();
                next.forgotten = true;
                oldest.remove();
            }
        }
    }

    /** The answers of one calculator for the same inputs. */
    public final class Answers {
        private final Map<MovedReadings, CalculatorAnswer> byReadings = new HashMap<>();
        private boolean forgotten;

        private Answers() {}

        /** The answer where readings stand; null where it is not known. */
        public @Nullable CalculatorAnswer get(MovedReadings readings) {
            synchronized (AnswerCache.this) {
                return byReadings.get(readings);
            }
        }

        /** Keeps an answer. */
        public void put(MovedReadings readings, CalculatorAnswer answer) {
            synchronized (AnswerCache.this) {
                if (!forgotten && byReadings.putIfAbsent(readings, answer) == null) {
                    count++;
                    forget(this);
                }
            }
        }
    }
}
