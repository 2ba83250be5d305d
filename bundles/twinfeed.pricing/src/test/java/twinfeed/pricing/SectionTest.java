// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SectionTest {
    @ParameterizedTest
    @EnumSource
    void isFoundByItsKey(Section section) {
        assertSame(section, Section.of(section.key()));
    }

    @Test
    void aKeyOfNoneIsRefused() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> Section.of("attic"));
        assertEquals("no section attic", refused.getMessage());
    }
}
