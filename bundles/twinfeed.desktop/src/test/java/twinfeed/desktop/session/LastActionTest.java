// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

final class LastActionTest {
    @Test
    void firstLineIsSaidUntilSomethingElseIsDone() {
        LastAction last = new LastAction();
        AtomicInteger told = new AtomicInteger();
        Runnable away = last.changed().listen(told::incrementAndGet);
        assertEquals("", last.text());
        last.forget();
        assertEquals(0, told.get(), "there was nothing to forget");
        last.say("Saved.\nIn a folder of the office.");
        assertEquals("Saved.", last.text());
        assertEquals(1, told.get());
        last.forget();
        assertEquals("", last.text());
        assertEquals(2, told.get());
        last.say("");
        assertEquals("", last.text());
        away.run();
        last.say("Printed.");
        assertEquals(3, told.get(), "who no longer listens is not told");
    }
}
