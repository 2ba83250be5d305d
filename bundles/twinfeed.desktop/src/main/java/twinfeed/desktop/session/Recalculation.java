// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Computes behind the user interface's back. The input is copied before, on the thread that asks; an answer counts only if
 * nobody has asked again since, so that what is shown never belongs to an older state than what was typed.
 *
 * @param <R> the answer
 */
final class Recalculation<R> {
    private final Executor display;
    private final AtomicLong revision = new AtomicLong();

    /**
     * A recalculation.
     *
     * @param display where answers are delivered; also the thread that asks
     */
    Recalculation(Executor display) {
        this.display = display;
    }

    /** The number of the last question. */
    long revision() {
        return revision.get();
    }

    /** What was typed has changed: answers to older questions do not count any more. */
    long next() {
        return revision.incrementAndGet();
    }

    /** Asks for one answer; work that nobody waits for any more when its turn comes is not done. */
    void ask(long asked, Supplier<R> work, Executor where, Consumer<R> answer) {
        where.execute(() -> {
            if (asked == revision.get()) {
                R result = work.get();
                display.execute(() -> {
                    if (asked == revision.get()) {
                        answer.accept(result);
                    }
                });
            }
        });
    }
}
