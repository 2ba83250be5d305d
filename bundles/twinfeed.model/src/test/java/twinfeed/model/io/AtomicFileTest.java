// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several files appear together or not at all. */
class AtomicFileTest {
    @TempDir
    Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private Map<Path, byte[]> contents(Path... files) {
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        for (Path file : files) {
            contents.put(file, file.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }
        return contents;
    }

    @Test
    void allOfThemAppear() throws IOException {
        Path first = folder.resolve("a.xlsx");
        Path second = folder.resolve("b.pdf");
        AtomicFile.writeAll(contents(first, second));
        assertEquals(List.of("a.xlsx", "b.pdf"), names());
        assertArrayEquals(contents(second).get(second), Files.readAllBytes(second));
    }

    @Test
    void whereOneCannotBeWrittenNoneIs() throws IOException {
        Path first = Files.writeString(folder.resolve("a.xlsx"), "before");
        Path second = folder.resolve("nowhere").resolve("b.pdf");
        InputException refused = assertThrows(InputException.class, () -> AtomicFile.writeAll(contents(first, second)));
        assertTrue(refused.getMessage().contains("b.pdf"), refused.getMessage());
        assertEquals("before", Files.readString(first));
        assertEquals(List.of("a.xlsx"), names());
    }

    @Test
    void aFolderIsNotWrittenOver() throws IOException {
        Path second = Files.createDirectory(folder.resolve("b.pdf"));
        assertThrows(InputException.class, () -> AtomicFile.writeAll(contents(folder.resolve("a.xlsx"), second)));
        assertEquals(List.of("b.pdf"), names());
    }
}
