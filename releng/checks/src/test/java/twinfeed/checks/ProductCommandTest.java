// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.checks.Product.Run;

/** The command line of the assembled product: statuses, streams, folders. The folder has a space in its name on purpose. */
class ProductCommandTest {
    private static final String[] CALC = {
        "calc", "flow", "power=9.5kW", "rated=240V", "supply=230V", "intake=5C", "outlet=40C"
    };

    @TempDir
    private static Path scratch = Path.of("");

    private static Product product = new Product(Path.of(""), java.util.Map.of());

    @BeforeAll
    static void startTheProductOnce() throws IOException {
        product = Product.copyTo(scratch.resolve("a product"));
        assertAnswers(product);
        Product.copy(kept(), scratch.resolve("kept"), file -> true);
    }

    /** Tests damage what the first start has kept; it takes long to make. */
    @BeforeEach
    void putBackWhatTheFirstStartHasKept() throws IOException {
        delete(kept());
        Product.copy(scratch.resolve("kept"), kept(), file -> true);
    }

    private static Path kept() {
        return product.folder().resolve("state");
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private static void assertAnswers(Product started) {
        Run run = started.run(CALC);
        assertEquals(
                "",
                run.err().lines().filter(line -> !line.startsWith("Caution:")).collect(Collectors.joining("\n")));
        assertTrue(run.out().startsWith("mass flow = 3.57"), run.out());
        assertEquals(0, run.status());
    }

    @Test
    void answersAndSaysNothingElse() {
        assertAnswers(product);
    }

    @Test
    void passesTheStatusThrough() {
        assertEquals(0, product.run("--help").status());
        assertEquals(
                0, product.run("assess", "demo/rowan-brook.job", "--strict").status());
        assertEquals(1, product.run("assess", "demo/alder-beck.job", "--strict").status());
        Run refused = product.run("assess", "demo/nowhere.job");
        assertEquals(2, refused.status());
        assertEquals("", refused.out());
        assertTrue(refused.err().contains("nowhere.job"), refused.err());
        assertEquals(2, product.run("no-such-verb").status());
    }

    @Test
    void printsNothingButOneDocumentWhereJsonIsAskedFor() throws IOException {
        Run run = product.run("assess", "demo/rowan-brook.job", "--json");
        assertEquals(0, run.status());
        try (JsonParser parser = new JsonFactory().createParser(run.out())) {
            parser.nextToken();
            parser.skipChildren();
            assertNull(parser.nextToken());
        }
    }

    @Test
    void takesFilesRelativeToTheFolderOfTheCall() throws IOException {
        Path elsewhere = Files.createDirectory(scratch.resolve("elsewhere"));
        for (String name : List.of("rowan-brook.job", "heaters.catalogue", "prices.csv")) {
            Files.copy(product.demo(name), elsewhere.resolve(name));
        }
        Path link = Files.createSymbolicLink(elsewhere.resolve("tw"), product.script());
        Run run = product.run(elsewhere, link, "quote", "rowan-brook.job", "--book", "prices.csv", "--out", "q.xlsx");
        assertEquals(0, run.status(), run.err());
        assertTrue(Files.size(elsewhere.resolve("q.xlsx")) > 10_000);
    }

    @Test
    void startsManyTimesAtOnceAlsoTheFirstTime() throws Exception {
        Product fresh = Product.copyTo(scratch.resolve("fresh"));
        ExecutorService pool = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Run>> calls = Stream.generate(() -> (Callable<Run>) () -> fresh.run("plugins"))
                    .limit(8)
                    .toList();
            Set<Run> different = new java.util.HashSet<>();
            for (Future<Run> call : pool.invokeAll(calls)) {
                different.add(call.get());
            }
            assertEquals(1, different.size(), different.toString());
            Run run = different.iterator().next();
            assertEquals(0, run.status());
            assertFalse(run.out().isBlank());
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void takesClassesFromTheArchiveOfTheFirstStart() throws IOException {
        Path log = scratch.resolve("classes.txt");
        // The Java machine splits its options at spaces, as any shell would.
        Run run = product.with("TWINFEED_JAVA_OPTIONS", "-Xlog:class+load:file=../classes.txt")
                .run(CALC);
        assertEquals(0, run.status(), run.err());
        List<String> lines = Files.readAllLines(log);
        long archived = lines.stream()
                .filter(line -> line.contains("shared objects file (top)"))
                .count();
        long ours = lines.stream()
                .filter(line -> line.contains("shared objects file (top)") && line.contains(" twinfeed."))
                .count();
        assertTrue(archived > 800, "classes from the product's archive: " + archived + " of " + lines.size());
        assertTrue(ours > 30, "of them ours: " + ours);
    }

    @Test
    void ignoresAnArchiveThatIsNone() throws IOException {
        Path archive = product.state().resolve("headless.jsa");
        assertTrue(Files.size(archive) > 1_000_000);
        for (String broken : List.of("", "no archive")) {
            Files.delete(archive);
            Files.writeString(archive, broken);
            assertAnswers(product);
        }
        Files.delete(archive);
        assertAnswers(product);
    }

    /** The Java machine does not survive an archive that was cut off after it was made; that costs one run and no more. */
    @Test
    void recoversFromAnArchiveThatWasCutOff() throws IOException {
        Path archive = product.state().resolve("headless.jsa");
        byte[] whole = Files.readAllBytes(archive);
        Files.delete(archive);
        Files.write(archive, java.util.Arrays.copyOf(whole, whole.length / 3));
        Run crashed = product.run(CALC);
        assertEquals(3, crashed.status());
        assertAnswers(product);
        assertTrue(Files.size(archive) > whole.length / 2);
    }

    @Test
    void ignoresTheArchiveOfAnotherFolder() throws IOException {
        Path moved = Files.move(product.folder(), scratch.resolve("moved"));
        try {
            assertAnswers(new Product(moved, java.util.Map.of()));
        } finally {
            Files.move(moved, product.folder());
        }
    }

    @Test
    void worksWhereNothingCanBeKept() throws IOException {
        Product started =
                Product.copyTo(scratch.resolve("nothing kept")).keepingNothing().with("HOME", "/dev/null");
        assertAnswers(started);
        assertAnswers(started);
    }

    @Test
    void worksWhereWhatWasKeptIsGone() throws IOException {
        delete(product.state().resolve("headless"));
        assertAnswers(product);
    }

    @Test
    void mapsWhateverKeepsItFromStartingToThree() throws IOException {
        Run noMachine = product.with("TWINFEED_JAVA_OPTIONS", "-Xmx1k").run(CALC);
        assertEquals(3, noMachine.status());
        assertTrue(noMachine.err().contains("heap"), noMachine.err());
        Run noJava = product.with("JAVA_HOME", "").with("PATH", "/nowhere").run(CALC);
        assertEquals(3, noJava.status());
        assertTrue(noJava.err().contains("JAVA_HOME"), noJava.err());
        Product maimed = Product.copyTo(scratch.resolve("maimed"));
        try (Stream<Path> files = Files.list(maimed.folder().resolve("plugins"))) {
            for (Path jar : files.filter(file -> file.toString().contains("twinfeed.cli_"))
                    .toList()) {
                Files.delete(jar);
            }
        }
        Run noApplication = maimed.run(CALC);
        assertEquals(3, noApplication.status());
        assertEquals("", noApplication.out());
        assertTrue(noApplication.err().contains("twinfeed.cli"), noApplication.err());
    }
}
