// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class RuleTitlesTest {
    private final RuleSet rules = RuleSets.standard();
    private final RuleTitles german = new RuleTitles(rules, Locale.GERMAN);

    @Test
    void devicesMethodsAndCablesAreNamedInTheReadersLanguage() {
        assertEquals("Schmelzsicherung nach BS 88-3", german.device("fuse-88-3"));
        assertEquals("direkt befestigt oder im Mauerwerk", german.method("C"));
        assertEquals("flache Mantelleitung mit zwei Adern und Schutzleiter, PVC 70 °C", german.cable("flat-70"));
        RuleTitles english = new RuleTitles(rules, Locale.UK);
        assertEquals("cartridge fuse to BS 88-3", english.device("fuse-88-3"));
        assertEquals("clipped direct or buried in masonry", english.method("C"));
        assertEquals("flat twin and earth, 70 °C thermoplastic", english.cable("flat-70"));
    }

    @Test
    void whatTheRulesDoNotKnowKeepsItsKey() {
        assertEquals("breaker-x", german.device("breaker-x"));
        assertEquals("Z", german.method("Z"));
        assertEquals("rope", german.cable("rope"));
    }

    @Test
    void aMethodIsNamedByItsRuleSetAsLetterCMeansAnotherInEach() {
        assertEquals(
                "method.bs7671-2018-a2.C",
                RuleTitles.key(rules, rules.method("C").orElseThrow()));
    }
}
