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
 * <p>Where it is full it evicts the least recently used inputs, with all their answers. Thread-safe.
 */
public final class AnswerCache {
    /** Answers kept at most, of 1.5 kilobytes each with their keys: those of a house with a long search for works, before an edit and after it. */
    private static final int MAX_ANSWERS = 6_000;

    private final int maxAnswers;
    private final Map<CalculatorInputs, Answers> kept = new LinkedHashMap<>(16, 0.75F, true);
    private int count;

    /** An empty one of the usual size. */
    public AnswerCache() {
        this(MAX_ANSWERS);
    }

    AnswerCache(int maxAnswers) {
        this.maxAnswers = maxAnswers;
    }

    /** How many answers are kept. */
    synchronized int size() {
        return count;
    }

    /** The answers for some inputs, as far as there are any; new ones are kept there. */
    public synchronized Answers answersFor(CalculatorInputs inputs) {
        return kept.computeIfAbsent(inputs, fresh -> new Answers());
    }

    private void evict(Answers latest) {
        Iterator<Answers> oldest = kept.values().iterator();
        while (count > maxAnswers && oldest.hasNext()) {
            Answers next = oldest.next();
            if (next != latest) {
                count -= next.byReadings.size();
                next.byReadings.clear();
                next.evicted = true;
                oldest.remove();
            }
        }
    }

    /** The answers of one calculator for the same inputs. */
    public final class Answers {
        private final Map<ReadingPositions, CalculatorAnswer> byReadings = new HashMap<>();
        private boolean evicted;

        private Answers() {}

        /** The answer where readings stand; null where it is not known. */
        public @Nullable CalculatorAnswer get(ReadingPositions readings) {
            synchronized (AnswerCache.this) {
                return byReadings.get(readings);
            }
        }

        /** Keeps an answer. */
        public void put(ReadingPositions readings, CalculatorAnswer answer) {
            synchronized (AnswerCache.this) {
                if (!evicted && byReadings.putIfAbsent(readings, answer) == null) {
                    count++;
                    evict(this);
                }
            }
        }
    }
}
