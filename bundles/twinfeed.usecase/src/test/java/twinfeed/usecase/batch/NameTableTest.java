// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class NameTableTest {
    @Test
    void aNameKeepsItsFirstNumberHoweverManyThereAre() {
        NameTable names = new NameTable();
        for (int number = 1; number <= 100_000; number++) {
            assertEquals(0, names.putIfAbsent("Rowan Lane " + number, number));
        }
        for (int number = 1; number <= 100_000; number++) {
            assertEquals(number, names.putIfAbsent("rowan  lane " + number + " ", 7));
        }
    }

    @Test
    void aNumberIsMoreThanNothing() {
        assertThrows(IllegalArgumentException.class, () -> new NameTable().putIfAbsent("Rowan Lane 1", 0));
    }
}
