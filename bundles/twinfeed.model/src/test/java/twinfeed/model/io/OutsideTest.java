// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Nothing in a file reaches out of it. The attacks are the usual ones of the field (external entity, exponential and quadratic
 * entity expansion, external DTD, XInclude, schema location, href): well known, no source. A listening socket and a file with a
 * secret witness that nothing was fetched.
 */
class OutsideTest {
    private static final String SECRET = "larch-and-alder";
    private static final String JOB = "<job:Job xmlns:job=\"urn:twinfeed:1:job\" version=\"1\"";

    @TempDir
    Path folder;

    private ServerSocket witness;

    @BeforeEach
    void listen() throws IOException {
        witness = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        witness.setSoTimeout(50);
        Files.writeString(folder.resolve("secret.txt"), SECRET);
    }

    @AfterEach
    void close() throws IOException {
        witness.close();
    }

    static Stream<String> attacks() {
        return Stream.of(
                "<!DOCTYPE j [<!ENTITY e SYSTEM \"FILE\">]>\n" + JOB + "><survey notes=\"&e;\"/></job:Job>",
                "<!DOCTYPE j [<!ENTITY e SYSTEM \"FILE\">]>\n" + JOB
                        + "><survey><candidates>&e;</candidates></survey></job:Job>",
                "<!DOCTYPE j SYSTEM \"HTTP/a.dtd\">\n" + JOB + "/>",
                "<!DOCTYPE j [<!ENTITY % p SYSTEM \"HTTP/a.dtd\"> %p;]>\n" + JOB + "/>",
                "<!DOCTYPE j PUBLIC \"-//x//y\" \"HTTP/a.dtd\">\n" + JOB + "/>",
                "<!DOCTYPE j>\n" + JOB + "/>",
                JOB + "><survey href=\"HTTP/b.job#/\"/></job:Job>",
                JOB + "><survey href=\"FILE#/\"/></job:Job>",
                JOB + " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
                        + " xsi:schemaLocation=\"urn:twinfeed:1:job HTTP/c.ecore\"/>",
                JOB + " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
                        + " xsi:noNamespaceSchemaLocation=\"HTTP/c.xsd\"/>",
                JOB
                        + "><xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\"FILE\" parse=\"text\"/></job:Job>",
                "<?xml-stylesheet href=\"HTTP/d.xsl\"?>\n" + JOB + "/>",
                JOB + "><?include FILE?></job:Job>");
    }

    @ParameterizedTest
    @MethodSource("attacks")
    void refusedWithoutLookingOutside(String attack) throws IOException {
        InputException refused = refused(attack);
        String message = refused.getMessage();
        assertTrue(message.contains("is not allowed") && message.contains("; remove it"), message);
        assertFalse(message.contains(SECRET), message);
        assertTrue(refused.problems().get(0).line() > 0, message);
        assertThrows(SocketTimeoutException.class, () -> witness.accept().close());
    }

    @ParameterizedTest
    @MethodSource("attacks")
    void refusedInAnOlderFormToo(String attack) throws IOException {
        String older = attack.replace("urn:twinfeed:1:", "urn:twinfeed:0:").replace("version=\"1\"", "version=\"0\"");
        String message = refused(older).getMessage();
        assertTrue(message.contains("is not allowed"), message);
        assertThrows(SocketTimeoutException.class, () -> witness.accept().close());
    }

    @Test
    void billionLaughs() {
        StringBuilder bomb = new StringBuilder("<!DOCTYPE j [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 30; i++) {
            bomb.append("<!ENTITY a%d \"&a%d;&a%d;\">".formatted(i, i - 1, i - 1));
        }
        bomb.append("]>").append(JOB).append("><survey notes=\"&a29;\"/></job:Job>");
        assertQuicklyRefused(bomb.toString());
    }

    @Test
    void quadraticBlowUp() {
        String bomb = "<!DOCTYPE j [<!ENTITY a \"" + "x".repeat(100_000) + "\">]>" + JOB + "><survey notes=\""
                + "&a;".repeat(100_000) + "\"/></job:Job>";
        assertQuicklyRefused(bomb);
    }

    @Test
    void deepNestingEndsWithAMessage() {
        String deep = JOB + ">" + "<a>".repeat(200_000) + "</a>".repeat(200_000) + "</job:Job>";
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> assertThrows(InputException.class, () -> read(deep)));
    }

    private void assertQuicklyRefused(String bomb) {
        InputException refused = assertTimeoutPreemptively(
                Duration.ofSeconds(10), () -> assertThrows(InputException.class, () -> read(bomb)));
        assertEquals(
                "attack.job, line 1: a document type declaration or an entity is not allowed; remove it and write out what"
                        + " it stands for",
                refused.getMessage());
    }

    private InputException refused(String attack) {
        String text = attack.replace("HTTP", "http://127.0.0.1:" + witness.getLocalPort())
                .replace("FILE", folder.resolve("secret.txt").toUri().toString());
        return assertThrows(InputException.class, () -> read(text));
    }

    private static void read(String text) {
        JobFile.form().read("attack.job", text.getBytes(StandardCharsets.UTF_8));
    }
}
