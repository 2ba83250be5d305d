// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Work is done side by side, and its results come in the order in which it was given. */
final class OrderedWorkTest {
    @Test
    void resultsComeInTheOrderOfTheWork() {
        List<Integer> results = new ArrayList<>();
        CountDownLatch later = new CountDownLatch(1);
        try (OrderedWork<Integer> work = new OrderedWork<>(results::add)) {
            work.give(() -> {
                await(later);
                return 0;
            });
            work.give(() -> {
                later.countDown();
                return 1;
            });
            for (int piece = 2; piece < 200; piece++) {
                int number = piece;
                work.give(() -> number);
            }
            assertTrue(results.size() > 100, "few pieces wait at a time: " + results.size());
            work.finish();
        }
        assertEquals(IntStream.range(0, 200).boxed().toList(), results);
    }

    private static void await(CountDownLatch latch) {
        try {
            // With one processor nobody does the later work meanwhile.
            if (Runtime.getRuntime().availableProcessors() > 1) {
                latch.await();
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void whatFailsIsToldToWhoGaveTheWork() {
        IllegalArgumentException wrong = new IllegalArgumentException("wrong");
        try (OrderedWork<Integer> work = new OrderedWork<>(result -> {})) {
            work.give(() -> {
                throw wrong;
            });
            assertSame(wrong, assertThrows(IllegalArgumentException.class, work::finish));
            work.give(() -> {
                throw new StackOverflowError("too deep");
            });
            assertInstanceOf(
                    StackOverflowError.class,
                    assertThrows(IllegalStateException.class, work::finish).getCause());
        }
    }

    @Test
    void aThreadThatIsStoppedStopsWaiting() {
        CompletableFuture<Integer> open = new CompletableFuture<>();
        try (OrderedWork<Integer> work = new OrderedWork<>(result -> {})) {
            work.give(open::join);
            Thread.currentThread().interrupt();
            assertThrows(IllegalStateException.class, work::finish);
            assertTrue(Thread.interrupted(), "and stays stopped");
        } finally {
            open.complete(1);
        }
    }
}
