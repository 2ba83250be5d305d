// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import twinfeed.model.survey.Confidence;

class QuoteRequestTest {
    private static final RequiredItem VALVE = RequiredItem.of("full-bore-valve", 1);
    private static final RequiredItem BREAKER = RequiredItem.of("breaker-40", 1);

    private final QuoteRequest request =
            QuoteRequest.of(Samples.survey(Confidence.SEEN), Samples.assessment(), DemoBook.read(), DemoBook.DAY);

    @Test
    void furtherNeedsOfAnOptionJoinThoseThatItHas() {
        QuoteRequest more = request.adding("h75", List.of(VALVE))
                .adding("h95", List.of(VALVE))
                .adding("h75", List.of(BREAKER, VALVE));
        assertEquals(Map.of("h75", List.of(VALVE, BREAKER, VALVE), "h95", List.of(VALVE)), more.extras());
        assertEquals(Map.of(), request.extras(), "the first request stays as it was");
    }
}
