// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RemedyKindTest {
    @Test
    void aWorkIsOfAKindThatDeclaresAllItNeeds() {
        RemedyKind kind =
                RemedyKind.of("cable", RemedyKind.Stage.CABLE, "cable-6").and(List.of("cable-10", "clips"));
        assertEquals(List.of("cable-6", "cable-10", "clips"), kind.codes());
        assertTrue(kind.declares(work("cable", "cable-10", "clips")));
        assertTrue(kind.declares(work("cable")));
        assertFalse(kind.declares(work("cable", "cable-10", "glue")));
        assertFalse(kind.declares(work("pipe", "clips")));
    }

    private static Remedy work(String kind, String... codes) {
        return new Remedy(
                "id",
                kind,
                Map.of(),
                List.of(codes).stream().map(code -> Remedy.Item.of(code, 2)).toList(),
                false,
                0,
                survey -> {});
    }
}
