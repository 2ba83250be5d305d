// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written where no heater is known to suit, and where none does. */
class EstimateTest {
    @TempDir
    private Path folder;

    private Path job(String old, String fresh) throws IOException {
        String text = Files.readString(Run.DEMO.resolve("hazel-ghyll.job"));
        assertTrue(text.contains(old), old);
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        return Files.writeString(folder.resolve("house.job"), text.replace(old, fresh));
    }

    private Run quote(Path job, Object... more) {
        Object[] words = {
            "quote",
            job,
            "--book",
            Run.DEMO.resolve("prices.csv"),
            "--out",
            folder.resolve("q.xlsx"),
            "--pdf",
            folder.resolve("q.pdf")
        };
        Object[] all = java.util.Arrays.copyOf(words, words.length + more.length);
        System.arraycopy(more, 0, all, words.length, more.length);
        return Run.of(all);
    }

    private String paper() throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve("q.pdf").toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
        }
    }

    /** Without the running pressure nobody can tell: that is issued for a typed reason only. */
    @Test
    void anEstimateIsIssuedForATypedReasonOnly() throws IOException {
        Path job = job("runningPressure=\"1.35 bar ± 0.3 bar\" flow=\"8 L/min ± 0.2 L/min\"", "");
        Path office = folder.resolve("office");
        Run refused = quote(job, "--issue", office);
        assertEquals(2, refused.status(), refused.out());
        assertTrue(refused.err().contains("it is an estimate: readings are missing"), refused.err());
        assertTrue(refused.err().contains("--reason"), refused.err());
        assertFalse(Files.exists(folder.resolve("q.pdf")), "nothing is written");
        assertFalse(Files.exists(office.resolve("quotes"))
                && Files.list(office.resolve("quotes")).findAny().isPresent());
        Run issued = quote(job, "--issue", office, "--reason", "The landlord wants a figure first.");
        assertEquals(0, issued.status(), issued.err());
        String frozen = Files.readString(office.resolve("quotes/2026-0001-r1.quote"));
        assertTrue(frozen.contains("The landlord wants a figure first."), "the reason is kept");
        String paper = paper();
        assertFalse(paper.contains("The landlord wants a figure first."), "and not printed");
        assertTrue(paper.contains("Estimate 2026-0001"), paper);
        assertTrue(paper.contains("An estimate, not an offer"), paper);
        assertTrue(paper.contains("To be measured before we can give a fixed price"), paper);
        assertTrue(paper.contains("Contingency"), paper);
        assertFalse(paper.contains("Signature"), paper);
        assertFalse(paper.contains("Can be accepted until"), paper);
    }

    /** The heater is asked for by name and known not to suit: somebody answers for that offer. */
    @Test
    void anOptionThatDoesNotSuitIsIssuedForATypedReasonOnly() throws IOException {
        Path job = job("prospectiveFault=\"1.3 kA", "prospectiveFault=\"60 kA");
        Path office = folder.resolve("office");
        Run refused = quote(job, "--heater", "h105", "--issue", office);
        assertEquals(2, refused.status(), refused.out());
        assertTrue(refused.err().contains("an option is not known to suit: Heater 10.5 kW"), refused.err());
        assertFalse(Files.exists(folder.resolve("q.pdf")), "nothing is written");
        Run issued = quote(
                job, "--heater", "h105", "--issue", office, "--reason", "The network operator replaces the cut-out.");
        assertEquals(0, issued.status(), issued.err());
    }

    /** The window's gate stands before the command line too; all that is wrong is said at once. */
    @Test
    void aQuoteWithoutCustomerAddressOrOwnPricesIsNotIssued() throws IOException {
        Path job = job("name=\"Netherquill Lettings (invented)\" address=\"1 Osier Quay; Netherquill\"", "");
        Files.writeString(job, Files.readString(job).replace("address=\"5 Hazel Ghyll; Netherquill\"", ""));
        assertEquals(0, quote(job).status(), "a draft may be written");
        Path office = folder.resolve("office");
        Run refused = quote(job, "--issue", office);
        assertEquals(2, refused.status(), refused.out());
        assertTrue(refused.err().contains("survey.customer.name: the quote names no customer"), refused.err());
        assertTrue(refused.err().contains("survey.customer.address: the quote has no address"), refused.err());
        assertTrue(refused.err().contains("the prices are those of the demonstration"), refused.err());
        assertFalse(Files.exists(office));
        Path own = Files.writeString(
                folder.resolve("own.csv"),
                Files.readString(Run.DEMO.resolve("prices.csv"))
                        .replace("# title: Demonstration prices (invented)", "# title: List of spring"));
        Files.writeString(
                job,
                Files.readString(job).replace("<customer ", "<customer name=\"A. Tenant\" address=\"2 Sedge Row\" "));
        Run foreign = quote(job, "--issue", office);
        assertEquals(2, foreign.status(), foreign.out());
        assertEquals(1, foreign.err().lines().count(), foreign.err());
        assertTrue(foreign.err().contains("the customer is not"), foreign.err());
        Run issued = Run.of("quote", job, "--book", own, "--out", folder.resolve("own.xlsx"), "--issue", office);
        assertEquals(0, issued.status(), issued.err());
    }

    /** Where nothing suits there is a paper that says why and what to do; it cannot be issued. */
    @Test
    void whereNothingSuitsThePaperSaysWhyAndWhatToDo() throws IOException {
        Path job = job("prospectiveFault=\"1.3 kA", "prospectiveFault=\"60 kA");
        Run run = quote(job);
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("it does not suit, with or without work"), run.out());
        String paper = paper();
        assertTrue(paper.contains("Checked and not offered"), paper);
        assertTrue(paper.contains("Heater 10.5 kW, two-element: The breaker is not strong enough"), paper);
        assertTrue(paper.contains("What you can do next"), paper);
        assertFalse(paper.contains("Signature"), paper);
        assertEquals(1, quote(job, "--strict").status());
        Run refused = quote(job, "--issue", folder.resolve("office"));
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains("nothing is offered: no heater suits"), refused.err());
    }
}
