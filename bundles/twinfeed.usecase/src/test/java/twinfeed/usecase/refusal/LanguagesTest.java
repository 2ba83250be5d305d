// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.refusal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Translation;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.calculator.rules.RuleTitles;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.visit.FaultLog;
import twinfeed.document.picture.PhotoReader;
import twinfeed.model.io.InputException;
import twinfeed.model.rows.CsvRows;
import twinfeed.pricing.book.RowRemark;
import twinfeed.quotes.LifeException;
import twinfeed.units.UnitException;

/** What is refused is said in German too, with the same values in it; and in the language of the program. */
class LanguagesTest {
    @ParameterizedTest
    @ValueSource(
            classes = {
                UnitException.class,
                InputException.class,
                CsvRows.class,
                RowRemark.class,
                LifeException.class,
                PhotoReader.class,
                FaultLog.class,
                RuleSets.class,
                FaultData.class
            })
    void germanSaysAllThatEnglishSays(Class<?> beside) {
        Translation.assertGerman(beside, "messages");
    }

    @Test
    void refusalsOfUseCasesAndTitlesOfRulesAreInGermanToo() {
        Translation.assertGerman(Refusals.class, "Refusals");
        Translation.assertGerman(RuleTitles.class, "Rules");
    }

    @Test
    void languageOfTheProgramIsSpoken() {
        Locale before = Locale.getDefault(Locale.Category.DISPLAY);
        try {
            Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMANY);
            assertEquals(
                    "haus.job: es ist kein Gerät da, dessen Störung zu suchen wäre; das Gerät angeben, mit seiner Kennung im"
                            + " Katalog oder, soweit bekannt, mit eigenen Daten",
                    Refusals.ofFile("haus.job", "fault.unit").toString());
            assertEquals(
                    "ist h95 gemeint? Oder eines von diesen nennen: h85, h95",
                    Refusals.oneOf("name", "h96", java.util.List.of("h85", "h95")));
        } finally {
            Locale.setDefault(Locale.Category.DISPLAY, before);
        }
        assertEquals("there is no such rule set", Refusals.wrong("rules"));
    }

    @Test
    void aRefusalNamesTheFileAndKeepsTheCause() {
        java.io.IOException cause = new java.io.IOException("no room");
        InputException refused = Refusals.exception(cause, "haus.job", "fault.unit");
        assertSame(cause, refused.getCause());
        assertEquals("haus.job", refused.problems().get(0).file());
    }
}
