// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** What no house has is refused by name, and soon. */
class HostileSizesTest {
    /** Two seconds are promised for a quiet machine; a busy one is given more, and what is wrong takes minutes. */
    private static final Duration SOON = Duration.ofSeconds(20);

    private static final String HEAD =
            "<job:Job xmlns:job=\"urn:twinfeed:1:job\" version=\"1\" catalogue=\"h.catalogue\">";

    private static InputException refused(String inSurvey) {
        String text = HEAD + "<survey " + inSurvey + "</survey></job:Job>";
        InputException refused = assertTimeoutPreemptively(
                SOON,
                () -> assertThrows(InputException.class, () -> JobFile.form()
                        .read("house.job", text.getBytes(StandardCharsets.UTF_8))));
        for (InputProblem problem : refused.problems()) {
            assertTrue(problem.toString().length() < 2_000, problem.toString());
        }
        return refused;
    }

    private static void refused(String inSurvey, String message) {
        assertTrue(
                refused(inSurvey).getMessage().contains(message),
                refused(inSurvey).getMessage());
    }

    @Test
    void aDecimalOfTwoMillionDigits() {
        refused(
                "><unit><heater id=\"x\" price=\"" + "9".repeat(2_000_000) + "\"/></unit>",
                "there is no attribute price");
        refused("takenOn=\"" + "1".repeat(2_000_000) + "\">", "this has 2000000 characters; write at most 200");
        refused("winterIntake=\"" + "1".repeat(2_000_000) + " C\">", "write at most 200");
    }

    @Test
    void nineThousandUnknownAttributesInOneTag() {
        StringBuilder attributes = new StringBuilder();
        for (int i = 0; i < 9_000; i++) {
            attributes.append("x").append(i).append("=\"1\"\n");
        }
        InputException refused = refused(attributes.append('>').toString());
        assertEquals(50, refused.problems().size());
    }

    @Test
    void fiftyThousandFittings() {
        refused(
                "><water><segments name=\"a\">" + "<fittings kind=\"bend\"/>".repeat(50_000) + "</segments></water>",
                "there are more than 250 of <fittings>");
    }

    @Test
    void threeThousandTimesTheSameCandidate() {
        refused(">" + "<candidates>h95</candidates>".repeat(3_000), "there are more than 250 of <candidates>");
    }

    @Test
    void fiveThousandPiecesOfCable() {
        refused(
                "><electricity><circuit>" + "<segments size=\"10 mm²\"/>".repeat(5_000) + "</circuit></electricity>",
                "there are more than 250 of <segments>");
    }

    @Test
    void manySmallListsInOneAnother() {
        String pieces = "<segments>" + "<fittings kind=\"bend\"/>".repeat(200) + "</segments>";
        refused("><water>" + pieces.repeat(200) + "</water>", "the file has more than 5000 elements");
    }

    @Test
    void aThousandElementsInOneAnother() {
        refused(">" + "<water>".repeat(1_000) + "</water>".repeat(1_000), "more than 30 deep");
        refused(">" + "<x>".repeat(1_000) + "</x>".repeat(1_000), "more than 30 deep");
    }
}
