// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The comparison is only fair if the plain writer writes what it is asked for. */
class PlainWorkbookTest {
    @Test
    void hasTheCellsThatWereAskedFor(@TempDir Path folder) throws IOException {
        List<WorkbookSize> sizes = List.of(new WorkbookSize(30, 12, 5, 3), new WorkbookSize(0, 0, 1, 0));
        Path file = folder.resolve("plain.xlsx");
        PlainWorkbook.write(file, sizes);
        assertEquals(sizes, WorkbookSize.of(file));
    }
}
