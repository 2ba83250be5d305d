// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Heaters chosen for a quote, and what an office does with one that is issued. */
class IssuedVerbsTest {
    @TempDir
    Path folder;

    private Run quote(Object... more) {
        Object[] words = Stream.concat(
                        Stream.of(
                                "quote",
                                Run.DEMO.resolve("rowan-brook.job"),
                                "--book",
                                Run.DEMO.resolve("prices.csv"),
                                "--out",
                                folder.resolve("quote.xlsx"),
                                "--pdf",
                                folder.resolve("quote.pdf")),
                        Stream.of(more))
                .toArray();
        return Run.of(words);
    }

    private Path issued(String name) throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve("office"))) {
            return files.filter(file -> file.getFileName().toString().endsWith(name + ".quote"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void anIssuedQuoteIsWrittenAgainByteForByte() throws IOException {
        assertEquals(0, quote("--issue", folder.resolve("office")).status());
        Path file = issued("-r1");
        Run run = Run.of(
                "reprint",
                file,
                "--firm",
                Run.DEMO.resolve("firm.properties"),
                "--out",
                folder.resolve("again.xlsx"),
                "--pdf",
                folder.resolve("again.pdf"));
        assertEquals(0, run.status(), run.err());
        assertArrayEquals(
                Files.readAllBytes(folder.resolve("quote.pdf")), Files.readAllBytes(folder.resolve("again.pdf")));
        assertArrayEquals(
                Files.readAllBytes(folder.resolve("quote.xlsx")), Files.readAllBytes(folder.resolve("again.xlsx")));
        assertEquals(2, Run.of("reprint", file, "--pdf", file).status());
    }

    @Test
    void aQuoteThatWasChangedIsNotWrittenAgain() throws IOException {
        assertEquals(0, quote("--issue", folder.resolve("office")).status());
        Path file = issued("-r1");
        file.toFile().setWritable(true);
        Files.writeString(file, Files.readString(file).replace("Rowan Brook", "Rowan Brock"));
        Run run = Run.of("reprint", file, "--pdf", folder.resolve("again.pdf"));
        assertEquals(2, run.status());
        assertFalse(Files.exists(folder.resolve("again.pdf")));
    }

    @Test
    void aQuoteIsRevisedAndThenAccepted() throws IOException {
        assertEquals(0, quote("--issue", folder.resolve("office")).status());
        Run revised = quote("--revise", issued("-r1"), "--heater", "h95");
        assertEquals(0, revised.status(), revised.err());
        assertEquals(2, Run.of("accept", issued("-r1"), "--option", "h95").status(), "superseded");
        Run unknown = Run.of("accept", issued("-r2"), "--option", "h59");
        assertEquals(2, unknown.status());
        Run accepted = Run.of("accept", issued("-r2"), "--option", "h95");
        assertEquals(0, accepted.status(), accepted.err());
        assertTrue(accepted.out().contains("-r2 is accepted:"), accepted.out());
        assertEquals(0, Run.of("parts", issued("-r2")).status());
        assertEquals(2, Run.of("decline", issued("-r2")).status(), "decided already");
    }

    @Test
    void aQuoteIsDeclined() throws IOException {
        assertEquals(0, quote("--issue", folder.resolve("office")).status());
        Run run = Run.of("decline", issued("-r1"), "--json");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("\"state\" : \"declined\""), run.out());
    }

    @Test
    void aQuoteIsNewOrARevisionButNotBoth() {
        Run run = quote("--issue", folder.resolve("office"), "--revise", folder.resolve("x.quote"));
        assertEquals(2, run.status());
        assertFalse(Files.exists(folder.resolve("office")));
    }

    /** The survey asks about h85 and h95 alone. */
    @Test
    void anyHeaterOfTheCatalogueCanBeOfferedWhateverItsVerdict() {
        Run run = quote("--heater", "h108", "--heater", "h85");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().indexOf("10.8 kW") < run.out().indexOf("8.5 kW"), run.out());
        Run weak = Run.of(
                "quote",
                Run.DEMO.resolve("alder-beck.job"),
                "--book",
                Run.DEMO.resolve("prices.csv"),
                "--out",
                folder.resolve("weak.xlsx"),
                "--heater",
                "present");
        assertEquals(0, weak.status(), weak.err());
        assertTrue(weak.out().contains("The present unit stays"), weak.out());
        assertTrue(weak.out().contains("suits with work"), weak.out());
    }

    @Test
    void anUnknownHeaterNamesTheNearest() {
        Run run = quote("--heater", "h59");
        assertEquals(2, run.status());
        assertTrue(run.err().contains("did you mean h"), run.err());
        assertFalse(Files.exists(folder.resolve("quote.xlsx")));
    }
}
