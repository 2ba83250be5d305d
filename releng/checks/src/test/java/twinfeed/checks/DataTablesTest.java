// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every number of every data table is guarded. Values of standards and handbooks are compared with a second writing of the table, typed anew
 * ({@code tables/*.txt}). Values that are our judgement have nothing to be compared with: a digest of their numbers ({@code
 * tables/judgement.properties}) makes sure that none changes unnoticed.
 */
class DataTablesTest {
    private static final Path DIGESTS =
            Project.ROOT.resolve("releng/checks/src/test/resources/twinfeed/checks/tables/judgement.properties");

    static Stream<Transcription> transcriptions() {
        return Transcription.all().stream();
    }

    @ParameterizedTest
    @MethodSource("transcriptions")
    void agreesWithItsSecondWriting(Transcription transcription) {
        assertFalse(transcription.from().isBlank());
        assertEquals(List.of(), transcription.differences(DataTable.read(file(transcription.table()))));
    }

    /** The guard itself: in a copy of the table each number is made 4 % greater, and the guard must see it. */
    @ParameterizedTest
    @MethodSource("transcriptions")
    void anyNumberThatIsWrongIsNoticed(Transcription transcription) {
        DataTable table = DataTable.read(file(transcription.table()));
        assertEquals(
                List.of(),
                table.numbers().stream()
                        .filter(place ->
                                transcription.differences(table.flipped(place)).isEmpty())
                        .map(table::describe)
                        .toList());
    }

    @Test
    void noTableOfJudgementChangesUnnoticed() throws IOException {
        Map<String, String> expected = new TreeMap<>();
        for (String line : Files.readAllLines(DIGESTS)) {
            if (!line.startsWith("#")) {
                expected.put(line.substring(0, line.indexOf('=')), line.substring(line.indexOf('=') + 1));
            }
        }
        Map<String, String> found = new TreeMap<>();
        for (String name : expected.keySet()) {
            DataTable table = DataTable.read(file(name));
            found.put(name, digest(table));
            for (DataTable.Place place : table.numbers()) {
                String before = numbers(table.rows().get(place.row()));
                String after = numbers(table.flipped(place).rows().get(place.row()));
                assertFalse(before.equals(after), table.describe(place));
            }
        }
        assertEquals(expected, found, "after a change on purpose, with its reason, put the new digest into " + DIGESTS);
    }

    @Test
    void everyTableWithNumbersIsGuarded() throws IOException {
        String digests = Files.readString(DIGESTS);
        List<Transcription> transcriptions = Transcription.all();
        List<String> open = new ArrayList<>();
        int numbers = 0;
        for (Path file : DataTable.shipped()) {
            String path = file.toString().replace('\\', '/');
            int here = DataTable.read(file).numbers().size();
            numbers += here;
            boolean guarded = transcriptions.stream().anyMatch(each -> path.endsWith("/" + each.table()))
                    || digests.lines()
                            .anyMatch(line ->
                                    line.contains("=") && path.endsWith("/" + line.substring(0, line.indexOf('='))));
            if (here > 0 && !guarded) {
                open.add(path);
            }
        }
        assertEquals(List.of(), open);
        assertTrue(numbers > 500, "numbers: " + numbers);
    }

    private static Path file(String ending) {
        List<Path> found = DataTable.shipped().stream()
                .filter(file -> file.toString().replace('\\', '/').endsWith("/" + ending))
                .toList();
        assertEquals(1, found.size(), ending + ": " + found);
        return found.get(0);
    }

    private static String digest(DataTable table) {
        String text = String.join("|", table.columns())
                + table.rows().stream().map(DataTablesTest::numbers).collect(Collectors.joining("\n"));
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The names and the numbers of a row alone: reasons may be worded anew. */
    private static String numbers(List<String> row) {
        return row.stream()
                .map(DataTable::plain)
                .filter(cell -> cell.split(",").length <= 2)
                .collect(Collectors.joining("|"));
    }
}
