// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class CanonicalJsonTest {
    @ParameterizedTest
    @CsvFileSource(resources = "rfc8785-numbers.csv", numLinesToSkip = 1)
    void printsTheNumbersOfTheStandard(String bits, String text) {
        double value = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertEquals(text, CanonicalJson.write(value));
    }

    /** 2 to the power of -44 is a number for which the JDK before 19 prints a digit too many or the wrong neighbour. */
    @Test
    void findsTheShortestBesideAPowerOfTwo() {
        assertEquals("5.684341886080802e-14", CanonicalJson.write(Math.pow(2, -44)));
        assertEquals("2e-323", CanonicalJson.write(2e-323));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatJsonCannotSay(double value) {
        assertThrows(IllegalArgumentException.class, () -> CanonicalJson.write(value));
    }

    /** RFC 8785, 3.2.2 and 3.2.3: numbers, text and literals in one object, keys sorted. */
    @Test
    void writesTheExampleOfTheStandard() {
        Map<String, Object> example = Map.of(
                "numbers",
                List.of(333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001),
                "string",
                "\u20ac$\u000f\nA'B\"\\\\\"/",
                "literals",
                java.util.Arrays.asList(null, true, false));
        assertEquals(
                "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                        + "\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}",
                CanonicalJson.write(example));
    }

    /** RFC 8785, 3.2.3: keys are sorted by their UTF-16 code units, so that an emoji comes before a Hebrew presentation form. */
    @Test
    void sortsKeysLikeTheStandard() {
        Map<String, Object> example = Map.of(
                "\u20ac", "Euro Sign",
                "\r", "Carriage Return",
                "\ufb33", "Hebrew Letter Dalet With Dagesh",
                "1", "One",
                "\ud83d\ude00", "Emoji: Grinning Face",
                "\u0080", "Control",
                "\u00f6", "Latin Small Letter O With Diaeresis");
        assertEquals(
                "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                        + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                        + "\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}",
                CanonicalJson.write(example));
    }

    @Test
    void refusesHalfASurrogatePairAndForeignTypes() {
        assertThrows(IllegalArgumentException.class, () -> CanonicalJson.write("a\ud83d"));
        assertThrows(IllegalArgumentException.class, () -> CanonicalJson.write("\ude00b"));
        assertThrows(IllegalArgumentException.class, () -> CanonicalJson.write(new Object()));
    }

    @Test
    void writesEmptyOnes() {
        assertEquals("[[],{},\"\"]", CanonicalJson.write(List.of(List.of(), Map.of(), "")));
    }

    @Test
    void readsWhatItWrites() {
        String text = "{\"a\":[1,2.5,true,null,\"\u00e4\\n\"],\"b\":{}}";
        assertEquals(text, CanonicalJson.write(JsonText.read(text.getBytes(StandardCharsets.UTF_8))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "{\"a\":1,\"a\":2}", "1 2", "{\"a\":}", "nul", "[1,]"})
    void refusesWhatIsNoJson(String text) {
        assertThrows(IllegalArgumentException.class, () -> JsonText.read(text.getBytes(StandardCharsets.UTF_8)));
    }
}
