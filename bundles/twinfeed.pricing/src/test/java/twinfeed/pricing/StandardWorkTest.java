// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import twinfeed.model.pricebook.PriceItem;

/** What jobs need besides what they are for. */
class StandardWorkTest {
    @Test
    void namesAllThatAJobMayNeedAnyway() {
        assertEquals(
                List.of(
                        "task-isolate",
                        "task-replace-unit",
                        "task-test-certify",
                        "certificate",
                        "notification",
                        "travel",
                        "disposal"),
                StandardWork.codes());
    }

    @Test
    void theDemonstrationBookHasAPriceForAllOfIt() {
        var codes = DemoBook.read().getItems().stream().map(PriceItem::getCode).collect(Collectors.toSet());
        assertTrue(codes.containsAll(StandardWork.codes()), codes.toString());
    }

    @Test
    void workOfWhichThereIsNoneBringsNothingWithIt() {
        assertEquals(List.of(), WorkRules.companions("consumer-unit", BigDecimal.ZERO));
        assertEquals(
                List.of(RequiredItem.of("test-circuits", 1)),
                WorkRules.companions("consumer-unit", new BigDecimal("0.5")));
    }
}
