// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The line of a fault, whatever the line ends and however a tag is broken. */
class TagLinesTest {
    private static final String TEXT =
            "<?xml version=\"1.0\"?>|<job:Job xmlns:job=\"urn:twinfeed:1:job\"|  version=\"1\">|"
                    + "<survey|   takenBy='quoted \"a > b\" takenOn=\"x\"'|   takenOn = \"yesterday\"|   notes=\"a\"|><wather|/>|"
                    + "</survey>|</job:Job>|";

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void linesOfFaults(String lineEnd) {
        byte[] text = TEXT.replace("|", lineEnd).getBytes(StandardCharsets.UTF_8);
        InputException refused = Assertions.assertThrows(
                InputException.class, () -> JobFile.form().read("x.job", text));
        assertEquals("survey.takenOn", refused.problems().get(0).element());
        assertEquals(6, refused.problems().get(0).line());
        assertEquals("survey.wather", refused.problems().get(1).element());
        assertEquals(8, refused.problems().get(1).line());
    }

    @Test
    void attributeThatIsNotThereIsAtItsTag() {
        TagLines lines = new TagLines("<a>\n<b\n c='d'\n/></a>");
        assertEquals(3, lines.ofAttribute(4, 3, "c"));
        assertEquals(2, lines.ofAttribute(4, 3, "e"));
        assertEquals(2, lines.ofTag(4, 3));
    }

    @Test
    void pieceOfText() {
        assertEquals(2, new TagLines("a\nb").ofText("b"));
        assertEquals(1, new TagLines("a\nb").ofText("c"));
    }
}
