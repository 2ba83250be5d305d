// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a flow is called beside today's. The shares are arithmetic; which of them have a name is common practice. */
class FlowWordsTest {
    @ParameterizedTest
    @CsvSource({
        "3.0, about as much as now",
        "3.08, about as much as now",
        "3.15, a little more than now",
        "3.3, about a tenth more than now",
        "3.6, about a fifth more than now",
        "3.75, about a quarter more than now",
        "4.0, about a third more than now",
        "4.5, about half as much again as now",
        "5.0, about two thirds more than now",
        "5.25, about three quarters more than now",
        "6.0, about twice as much as now",
        "9.1, about three times as much as now",
        "30, 'four times as much as now, or more'",
        "2.85, a little less than now",
        "2.7, about a tenth less than now",
        "2.4, about a fifth less than now",
        "2.0, about a third less than now",
        "1.5, about half as much as now",
        "0.9, far less than now"
    })
    void aFlowBesideThreeLitresAMinute(double then, String said) {
        assertEquals(
                said, new DocumentTexts(Locale.UK).get(FlowWords.key(then, 3.0).orElseThrow()));
    }

    @Test
    void everyRatioHasWordsInBothLanguages() {
        for (double then = 0; then < 20; then += 0.01) {
            String key = FlowWords.key(then, 2.0).orElseThrow();
            assertTrue(new DocumentTexts(Locale.UK).find(key) != null, key);
            assertTrue(new DocumentTexts(Locale.GERMANY).find(key) != null, key);
        }
    }

    @Test
    void withoutAFlowOfTodayThereIsNothingToCompareWith() {
        assertTrue(FlowWords.key(3, null).isEmpty());
        assertTrue(FlowWords.key(3, 0.0).isEmpty());
        assertTrue(FlowWords.key(3, Double.NaN).isEmpty());
    }
}
