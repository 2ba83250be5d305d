// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Nothing that a customer gets tells what a thing costs the firm or how the price was made of it, hidden or not: every part of the
 * workbook, every stream and text of the PDF, its metadata, and the JSON are read for figures that stand nowhere else.
 */
class CustomerOutputTest extends DemoFolder {
    /** Costs, a markup and a margin that no price, sum or result happens to equal. */
    private static final List<String> SECRETS = List.of("17.7319", "23.9173", "0.31737", "31.737", "0.2719");

    private static final String ITEMS =
            """
            secret-a,An item of a cost,each,17.7319,,0.31737,,standard,Secret supplier,,,,,
            secret-b,Another item,each,23.9173,,,0.2719,standard,Secret supplier,,,,,
            """;

    @BeforeEach
    void copyDemo() throws IOException {
        // Every item of the book gets a cost, and its price by a markup, so that all that is offered has both to hide.
        List<String> lines = new ArrayList<>();
        boolean items = false;
        for (String line : Files.readAllLines(book)) {
            String[] cells = line.split(",", -1);
            if (items && cells.length > 7 && cells[4].matches("[0-9.]+") && !line.contains("\"")) {
                cells[3] = "17.7319";
                cells[4] = "";
                cells[5] = "0.31737";
                cells[6] = "";
                cells[8] = "Secret supplier";
            }
            lines.add(String.join(",", cells));
            items |= line.startsWith("code,");
        }
        Files.writeString(book, String.join("\n", lines) + "\n" + ITEMS);
    }

    private static void open(String where, String text) {
        for (String secret : SECRETS) {
            assertFalse(text.contains(secret), where + " tells " + secret);
        }
        assertFalse(text.contains("Secret supplier"), where + " tells the supplier");
    }

    @Test
    void noOutputForTheCustomerTellsCostOrMargin() throws IOException {
        Path out = folder.resolve("quote.xlsx");
        Path pdf = folder.resolve("quote.pdf");
        Run run = Run.of(
                "quote",
                job,
                "--book",
                book,
                "--out",
                out,
                "--pdf",
                pdf,
                "--issue",
                folder.resolve("office"),
                "--json");
        assertEquals(0, run.status(), run.err());
        open("the JSON", run.out());
        parts(out).forEach(CustomerOutputTest::open);
        pdf(pdf).forEach(CustomerOutputTest::open);
        Run text = Run.of("quote", job, "--book", book, "--out", out);
        open("the screen", text.out());
    }

    /** The test would see them: the frozen quote, which stays with the firm, holds the cost, and says so. */
    @Test
    void theFrozenQuoteHoldsThemAndSaysThatItMustNotBeSent() throws IOException {
        Path office = folder.resolve("office");
        Run run = Run.of("quote", job, "--book", book, "--out", folder.resolve("q.xlsx"), "--issue", office);
        assertEquals(0, run.status(), run.err());
        String frozen = Files.readString(office.resolve("quotes/2026-0001-r1.quote"));
        assertTrue(frozen.contains("17.7319"), "the frozen quote holds the cost");
        assertTrue(frozen.contains("not to be sent to a customer"), frozen.substring(0, 300));
        assertTrue(run.err().contains("is not to be sent to a customer"), run.err());
    }

    @Test
    void whatIsWrittenIsForOwnerAndGroup() throws IOException {
        Path out = folder.resolve("quote.xlsx");
        Path office = folder.resolve("office");
        assertEquals(
                0,
                Run.of("quote", job, "--book", book, "--out", out, "--issue", office)
                        .status());
        try (Stream<Path> written = Stream.concat(Stream.of(out), Files.walk(office))) {
            for (Path file : written.toList()) {
                String rights = PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
                assertTrue(rights.endsWith("---"), file + " " + rights);
            }
        }
        Files.setPosixFilePermissions(out, PosixFilePermissions.fromString("rw-r--r--"));
        assertEquals(0, Run.of("quote", job, "--book", book, "--out", out).status());
        assertEquals("rw-r--r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(out)));
    }

    private static Map<String, String> parts(Path book) throws IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(book.toFile())) {
            for (ZipEntry entry : java.util.Collections.list(zip.entries())) {
                byte[] bytes = zip.getInputStream(entry).readAllBytes();
                parts.put(entry.getName(), new String(bytes, StandardCharsets.UTF_8));
            }
        }
        assertTrue(parts.size() > 8, parts.keySet().toString());
        return parts;
    }

    private static Map<String, String> pdf(Path file) throws IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            parts.put("the text of the PDF", new PDFTextStripper().getText(document));
            StringBuilder all = new StringBuilder();
            for (var key : document.getDocument().getXrefTable().keySet()) {
                COSObject object = document.getDocument().getObjectFromPool(key);
                if (object.getObject() instanceof COSStream stream) {
                    try (var content = stream.createInputStream()) {
                        all.append(new String(content.readAllBytes(), StandardCharsets.ISO_8859_1));
                    }
                } else if (object.getObject() instanceof COSString text) {
                    all.append(text.getString());
                } else {
                    all.append(object.getObject());
                }
            }
            parts.put("the objects of the PDF", all.toString());
            parts.put(
                    "the metadata of the PDF",
                    String.valueOf(document.getDocumentInformation().getCOSObject()));
        }
        return parts;
    }
}
