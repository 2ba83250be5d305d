// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.crash;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program works without any network, and asks for none: no name is looked up, nothing connected, no port opened. */
class NoNetworkTest {
    @TempDir
    private Path folder;

    private record Ended(int status, String said) {}

    private static Ended run(Object... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Djava.security.manager=allow",
                "-cp",
                System.getProperty("java.class.path"),
                NoNetworkRun.class.getName()));
        Stream.of(words).map(Object::toString).forEach(command::add);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(process.waitFor(), said);
    }

    @Test
    void noVerbAsksForTheNetwork() throws Exception {
        Office office = Office.in(folder);
        Ended ended = run(
                "form",
                office.job(),
                "--out",
                folder.resolve("form.xlsx"),
                ",",
                "read",
                folder.resolve("form.xlsx"),
                "--out",
                folder.resolve("read.job"),
                ",",
                "help",
                "job",
                ",",
                "assess",
                office.job(),
                ",",
                "options",
                office.job(),
                "--book",
                office.prices(),
                "--json",
                ",",
                "quote",
                office.job(),
                "--book",
                office.prices(),
                "--out",
                office.workbook(),
                "--pdf",
                office.pdf(),
                "--ubl",
                folder.resolve("quote.xml"),
                ",",
                "quote",
                office.job(),
                "--book",
                office.prices(),
                "--out",
                office.workbook(),
                "--issue",
                office.quotes(),
                ",",
                "verify",
                office.quotes(),
                ",",
                "faults",
                office.job(),
                "--book",
                office.prices(),
                "--pdf",
                folder.resolve("faults.pdf"),
                ",",
                "batch",
                office.dwellings(),
                "--template",
                office.job(),
                "--book",
                office.prices(),
                "--out",
                office.results(),
                ",",
                "book",
                office.prices(),
                ",",
                "plugins");
        assertEquals(0, ended.status(), ended.said());
    }

    /** The guard is no ornament: what does ask is caught. */
    @Test
    void aNetworkRequestIsNoticed() throws Exception {
        Ended ended = run("assess", "http://localhost:9/house.job");
        assertTrue(ended.status() == 2, "a web address is a file that is not there: " + ended);
        assertTrue(!ended.said().contains("asked for the network"), ended.said());
        Process probe = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.security.manager=allow",
                        "-cp",
                        System.getProperty("java.class.path"),
                        NetworkProbe.class.getName())
                .redirectErrorStream(true)
                .start();
        String said = new String(probe.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(99, probe.waitFor(), said);
    }
}
