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
        Run nothing = Run.of("reprint", file);
        assertEquals(2, nothing.status());
        assertTrue(nothing.err().contains("name at least one file"), nothing.err());
    }

    /** The photographs are kept when the quote is issued: what becomes of the job later does not matter. */
    @Test
    void photographsAreWrittenAgainAsTheyWereIssued() throws IOException {
        Path house = Files.createDirectory(folder.resolve("house"));
        for (String name : new String[] {"alder-beck.job", "alder-beck-loft.jpg", "heaters.catalogue"}) {
            Files.copy(Run.DEMO.resolve(name), house.resolve(name));
        }
        Path office = folder.resolve("office");
        Run run = Run.of(
                "quote",
                house.resolve("alder-beck.job"),
                "--book",
                Run.DEMO.resolve("prices.csv"),
                "--out",
                folder.resolve("quote.xlsx"),
                "--issue",
                office);
        assertEquals(0, run.status(), run.err());
        Files.delete(house.resolve("alder-beck-loft.jpg"));
        Object[] again = {
            "reprint",
            issued("-r1"),
            "--firm",
            Run.DEMO.resolve("firm.properties"),
            "--out",
            folder.resolve("again.xlsx")
        };
        Run reprinted = Run.of(again);
        assertEquals(0, reprinted.status(), reprinted.err());
        assertArrayEquals(
                Files.readAllBytes(folder.resolve("quote.xlsx")), Files.readAllBytes(folder.resolve("again.xlsx")));
        assertEquals(0, Run.of("verify", office).status());
        Path photo;
        try (Stream<Path> photos = Files.list(office.resolve("photos"))) {
            photo = photos.findFirst().orElseThrow();
        }
        photo.toFile().setWritable(true);
        Files.writeString(photo, "another picture");
        Run changed = Run.of(again);
        assertEquals(2, changed.status());
        assertTrue(changed.err().contains("it is not the picture that was issued"), changed.err());
        Run told = Run.of("verify", office);
        assertEquals(1, told.status());
        assertTrue(told.out().contains("2026-0001-r1, alder-beck-loft.jpg: the photograph is missing"), told.out());
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

    /** As in the window: the acceptance stays on record with the reason why it was taken back. */
    @Test
    void aDecisionIsTakenBackForAReason() throws IOException {
        assertEquals(0, quote("--issue", folder.resolve("office")).status());
        Path file = issued("-r1");
        assertEquals(
                2, Run.of("reopen", file, "--reason", "Nobody has decided.").status());
        assertEquals(0, Run.of("accept", file, "--option", "h85").status());
        assertEquals(2, Run.of("reopen", file).status(), "no reason");
        Run blank = Run.of("reopen", file, "--reason", "  ");
        assertEquals(2, blank.status());
        assertTrue(blank.err().contains("there is no reason"), blank.err());
        Run before = Run.of("reopen", file, "--reason", "The other flat was meant.", "--date", "2026-11-24");
        assertEquals(2, before.status());
        Run reopened = Run.of("reopen", file, "--reason", "The other flat was meant.", "--date", "2026-11-26");
        assertEquals(0, reopened.status(), reopened.err());
        assertTrue(reopened.out().contains("-r1 is issued:"), reopened.out());
        assertEquals(2, Run.of("parts", file).status(), "not accepted any more");
        Run list = Run.of("issued", folder.resolve("office"));
        assertEquals(0, list.status(), list.err());
        assertTrue(
                list.out().contains("accepted 2026-11-25 (h85), taken back 2026-11-26: The other flat was meant."),
                list.out());
        assertEquals(0, Run.of("decline", file).status(), "it is open again");
    }

    @Test
    void theListSaysWhereEachQuoteStands() throws IOException {
        Path office = folder.resolve("office");
        assertTrue(Run.of("issued", folder).out().contains("Nothing was issued there."));
        assertEquals(0, quote("--issue", office).status());
        assertEquals(0, quote("--revise", issued("-r1"), "--heater", "h95").status());
        Run list = Run.of("issued", office);
        assertEquals(0, list.status(), list.err());
        String[] lines = list.out().split("\\R");
        assertEquals(2, lines.length, list.out());
        assertTrue(lines[0].startsWith("2026-0001-r1  2026-11-25 - 2026-12-25  superseded"), lines[0]);
        assertTrue(lines[1].startsWith("2026-0001-r2  2026-11-25 - 2026-12-25  open  "), lines[1]);
        assertTrue(lines[1].contains("Netherquill Lettings (invented), Rowan Brook, flat 2  h95 382.20 GBP"), lines[1]);
        Run later = Run.of("issued", issued("-r2"), "--date", "2026-12-26");
        assertTrue(later.out().contains("  lapsed  "), later.out());
        Path changed = issued("-r1");
        changed.toFile().setWritable(true);
        Files.writeString(changed, Files.readString(changed).replace("Rowan Brook", "Rowan Brock"));
        Run told = Run.of("issued", office);
        assertEquals(1, told.status());
        assertTrue(told.err().contains("changed since it was issued"), told.err());
        Files.writeString(changed, "no quote");
        Run broken = Run.of("issued", office);
        assertEquals(1, broken.status());
        assertTrue(broken.out().contains("2026-0001-r2"), "the others are shown: " + broken.out());
        assertEquals(2, Run.of("issued", changed).status());
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
        assertTrue(weak.out().contains("The heater that is there stays"), weak.out());
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
