// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.safety;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The tester is proved before and after the test for dead (common practice, also in guidance on safe work on electrical equipment). */
class SafeIsolationTest {
    private static void assertInTurn(String text, String... words) {
        assertTrue(Pattern.compile(String.join(".*", words)).matcher(text).find(), text);
    }

    @Test
    void theTesterIsProvedBeforeAndAfterTheTestForDead() {
        assertInTurn(
                SafeIsolation.stages(Locale.UK), "breaker off", "prove the tester", "dead", "prove the tester again");
        assertInTurn(
                SafeIsolation.brief(Locale.UK), "breaker off", "prove the tester", "dead", "prove the tester again");
        String[] german = {"aus", "Spannungsprüfer prüfen", "Spannungsfreiheit", "Spannungsprüfer erneut prüfen"};
        assertInTurn(SafeIsolation.stages(Locale.GERMAN), german);
        assertInTurn(SafeIsolation.brief(Locale.GERMAN), german);
    }

    @Test
    void aSuspectIsolatorIsNotReliedOn() {
        assertInTurn(SafeIsolation.suspected(Locale.UK), "breaker first", "dead before it is handled");
        assertInTurn(SafeIsolation.suspected(Locale.GERMAN), "zuerst den Leitungsschutzschalter", "spannungsfrei");
    }
}
