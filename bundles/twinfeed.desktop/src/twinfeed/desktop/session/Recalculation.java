// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Computes behind the user interface's back. The input is copied before, on the thread that asks; an answer counts only if
 * nobody has asked again since, so that what is shown never belongs to an older state than what was typed.
 *
 * @param <I> the copied input
 * @param <R> the answer
 */
final class Recalculation<I, R> {
    private final Executor background;
    private final Executor display;
    private final AtomicLong revision = new AtomicLong();
    private long answered;

    /**
     * A recalculation.
     *
     * @param background where to compute, one after the other
     * @param display where answers are delivered; also the thread that asks
     */
    Recalculation(Executor background, Executor display) {
        this.background = background;
        this.display = display;
    }

    /** The number of the last question. */
    long revision() {
        return revision.get();
    }

    /** Whether the last question is answered. */
    boolean current() {
        return answered == revision.get();
    }

    /** Asks. */
    void ask(Supplier<I> input, Function<I, R> work, Consumer<R> answer) {
        long asked = revision.incrementAndGet();
        I copy = input.get();
        background.execute(() -> {
            if (asked == revision.get()) {
                R result = work.apply(copy);
                display.execute(() -> deliver(asked, result, answer));
            }
        });
    }

    private void deliver(long asked, R result, Consumer<R> answer) {
        if (asked == revision.get()) {
            answered = asked;
            answer.accept(result);
        }
    }
}
