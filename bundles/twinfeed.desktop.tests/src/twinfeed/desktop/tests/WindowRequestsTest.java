// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.LinkedTransferQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.window.WindowRequests;

/** What a second start of the program asks the window for. */
final class WindowRequestsTest extends DemoWindow {
    private static final LinkedTransferQueue<List<String>> REQUESTS = new LinkedTransferQueue<>();

    @BeforeAll
    static void start() throws Exception {
        copyDemo();
        ui.run(() -> new WindowRequests(ui.shell(), window.parts()::open).listen(REQUESTS));
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    @Test
    void namedJobsAreOpenedOnceAndTheWindowComesToTheFront() throws Exception {
        String first = folder.resolve("alder-beck.job").toString();
        String second = folder.resolve("rowan-brook.job").toString();
        ui.run(() -> ui.shell().setMinimized(true));
        assertTrue(REQUESTS.tryTransfer(List.of(first, second), 20, TimeUnit.SECONDS), "the window takes it");
        ui.await("both are open", () -> window.parts().parts().size() == 2);
        assertTrue(ui.ask(() -> !ui.shell().getMinimized()));
        assertTrue(REQUESTS.tryTransfer(List.of(first), 20, TimeUnit.SECONDS));
        ui.await("the first is shown again", () -> "alder-beck"
                .equals(window.partService().getActivePart().getLabel()));
        assertEquals(2, ui.ask(() -> window.parts().parts().size()), "and not opened twice");
        assertTrue(REQUESTS.tryTransfer(List.of(), 20, TimeUnit.SECONDS), "a start without a job");
    }
}
