// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import twinfeed.model.io.InputException;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobFactory;

/** Readings are entered with person and day, and nothing is entered where one of them is wrong. */
class CompletionLogTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final Job job = JobFactory.eINSTANCE.createJob();
    private final CompletionLog log = new CompletionLog(job, "invented.twinfeed");

    @Test
    void readingsAreEnteredOneAfterTheOther() {
        log.enter(" Invented engineer ", DAY, Map.of("loop", "0.42 ohm"));
        log.enter("Another engineer", DAY.plusDays(1), Map.of("outlet", "40 °C"));
        assertEquals("Another engineer", job.getCompletion().getBy());
        assertEquals(DAY.plusDays(1), job.getCompletion().getDoneOn());
        assertEquals(0.42, job.getCompletion().getLoop().si());
        assertEquals(40, job.getCompletion().getOutlet().si());
        log.enter(" Invented engineer ", DAY, Map.of("loop", "-"));
        assertEquals("Invented engineer", job.getCompletion().getBy());
        assertNull(job.getCompletion().getLoop());
    }

    @Test
    void nothingIsEnteredWhereOneReadingIsWrong() {
        log.enter("Invented engineer", DAY, Map.of("loop", "0.42 ohm"));
        String message = refused("Invented engineer", Map.of("loop", "plenty"));
        assertTrue(message.contains("completion.loop"), message);
        assertTrue(message.contains("invented.twinfeed"), message);
        assertTrue(refused("Invented engineer", Map.of("nonsense", "1")).contains("completion.nonsense"));
        assertEquals(0.42, job.getCompletion().getLoop().si());
    }

    @Test
    void somebodyIsNamed() {
        String message = refused(" ", Map.of());
        assertTrue(message.contains("nobody is named"), message);
        assertTrue(message.contains("say who tested"), message);
        assertTrue(message.contains("completion.by"), message);
        assertNull(job.getCompletion());
    }

    private String refused(String by, Map<String, String> values) {
        return assertThrows(InputException.class, () -> log.enter(by, DAY, values))
                .getMessage();
    }
}
