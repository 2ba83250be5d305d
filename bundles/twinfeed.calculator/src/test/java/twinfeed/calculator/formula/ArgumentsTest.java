// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import twinfeed.units.Kind;

class ArgumentsTest {
    private static final List<Parameter> PARAMETERS = List.of(
            Parameter.required("power", Kind.POWER, 1000, 12_000),
            Parameter.optional("voltage", Kind.VOLTAGE, 230, 200, 260),
            Parameter.absent("length", Kind.LENGTH, 0, 100),
            Parameter.word("method", "C", "A", "C"),
            Parameter.word("device", null, "breaker-b", "rcbo-b"),
            Parameter.word("note", null));

    /** What has to be given, and some more in pairs of key and value; an empty value leaves a key out. */
    private static Map<String, String> typed(String... more) {
        Map<String, String> typed =
                new LinkedHashMap<>(Map.of("power", "9.5 kW", "device", "rcbo-b", "note", "by hand"));
        for (int i = 0; i < more.length; i += 2) {
            typed.put(more[i], more[i + 1]);
        }
        typed.values().removeIf(String::isEmpty);
        return typed;
    }

    private static ArgumentException refused(String... more) {
        return assertThrows(ArgumentException.class, () -> Arguments.parse(PARAMETERS, typed(more)));
    }

    @Test
    void whatIsNotGivenHasItsDefault() {
        Arguments arguments = Arguments.parse(PARAMETERS, typed());
        assertEquals(9500, arguments.si("power"));
        assertEquals(230, arguments.si("voltage"));
        assertEquals("C", arguments.word("method"));
        assertEquals("rcbo-b", arguments.word("device"));
        assertEquals("by hand", arguments.word("note"));
        assertTrue(arguments.has("voltage") && arguments.has("method"));
        assertFalse(arguments.has("length"));
        assertEquals(7, arguments.si("length", 7));
        assertEquals(230, arguments.si("voltage", 7));
        assertEquals(
                "no value for length",
                assertThrows(IllegalArgumentException.class, () -> arguments.si("length"))
                        .getMessage());
        assertEquals(
                "no value for length",
                assertThrows(IllegalArgumentException.class, () -> arguments.word("length"))
                        .getMessage());
    }

    @Test
    void whatIsGivenCountsUpToBothEndsOfItsRange() {
        Arguments arguments = Arguments.parse(
                PARAMETERS, typed("power", "12 kW", "voltage", "200 V", "length", "0 m", "method", "A"));
        assertEquals(12_000, arguments.si("power"));
        assertEquals(200, arguments.si("voltage"));
        assertEquals(0, arguments.si("length", 7));
        assertEquals("A", arguments.word("method"));
    }

    @Test
    void aValueThatIsNoQuantityNamesItsKey() {
        ArgumentException bare = refused("power", "9.5");
        assertEquals("power", bare.argument());
        assertEquals("9.5", bare.typed());
        assertEquals("power=9.5 is not understood: \"9.5\" has no unit; write power in kW, W", bare.getMessage());
        assertEquals(
                "voltage=230 A is not understood: \"A\" is not a unit of voltage; write it in V, mV, kV",
                refused("voltage", "230 A").getMessage());
    }

    @Test
    void aQuantityOutOfRangeIsRefusedWithTheRange() {
        ArgumentException high = refused("power", "12.1 kW");
        assertEquals("power", high.argument());
        assertEquals("12.1 kW", high.typed());
        assertEquals("is out of range; give 1.000 kW to 12.00 kW", high.reason());
        assertEquals("power=12.1 kW is out of range; give 1.000 kW to 12.00 kW", high.getMessage());
        assertEquals("199 V", refused("voltage", "199 V").typed());
    }

    @Test
    void theReasonIsSaidInTheLanguageOfTheProgram() {
        Locale before = Locale.getDefault(Locale.Category.DISPLAY);
        try {
            Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMANY);
            Parameter hot = Parameter.required("power", Kind.POWER, 1500, 12_000);
            ArgumentException high = assertThrows(
                    ArgumentException.class, () -> Arguments.parse(List.of(hot), Map.of("power", "13 kW")));
            assertEquals("liegt außerhalb des zulässigen Bereichs; 1,500 kW bis 12,00 kW angeben", high.reason());
        } finally {
            Locale.setDefault(Locale.Category.DISPLAY, before);
        }
    }

    @Test
    void aWordThatIsNotListedIsRefusedWithTheList() {
        ArgumentException unknown = refused("method", "D");
        assertEquals("method=D is not known; give one of A, C", unknown.getMessage());
        assertEquals("method", unknown.argument());
        assertEquals("D", unknown.typed());
    }

    @Test
    void whatIsMissingIsNamedWithAnExample() {
        ArgumentException quantity = refused("power", "");
        assertEquals("\"power\" is missing; give it with its unit, for example power=1kW", quantity.getMessage());
        assertEquals("", quantity.argument());
        assertEquals(quantity.getMessage(), quantity.reason());
        assertEquals(
                "\"device\" is missing; give one of breaker-b, rcbo-b",
                refused("device", "").getMessage());
        assertEquals("\"note\" is missing; give it", refused("note", "").getMessage());
    }

    @Test
    void anUnknownKeyIsRefusedWithTheKnownOnes() {
        assertEquals(
                "\"pwoer\" is not known here; known are power, voltage, length, method, device, note",
                refused("pwoer", "9 kW").getMessage());
    }

    @Test
    void aWordHasNoRange() {
        assertEquals(
                "note has no range",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> ArgumentException.outOfRange(Parameter.word("note", null), "x"))
                        .getMessage());
    }

    @Test
    void aFormulaAnswersItsArguments() {
        Formula doubled = new Formula("doubled", PARAMETERS, given -> Answer.of(
                        Working.none(), new Answer.Result("twice", Kind.POWER, 2 * given.si("power")))
                .warned("made-up")
                .warned("for-a-test"));
        Answer answer = doubled.apply(Arguments.parse(doubled.parameters(), typed()));
        assertEquals(List.of(new Answer.Result("twice", Kind.POWER, 19_000)), answer.results());
        assertEquals(List.of("made-up", "for-a-test"), answer.warnings());
        assertEquals("", answer.trouble());
        Answer none = Answer.none("too-hot", Working.none()).warned("made-up");
        assertEquals("too-hot", none.trouble());
        assertEquals(List.of(), none.results());
        assertThrows(IllegalArgumentException.class, () -> new Answer.Result("twice", Kind.POWER, Double.NaN));
    }
}
