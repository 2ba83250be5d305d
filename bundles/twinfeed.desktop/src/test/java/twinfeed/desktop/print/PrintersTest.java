// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The system is asked by its own commands; what they answer is as the manual pages of CUPS have it (lpstat(1), lp(1)). */
final class PrintersTest {
    private final List<List<String>> asked = new ArrayList<>();

    private Commands answering(Map<String, Commands.Answer> answers) {
        return command -> {
            asked.add(command);
            Commands.Answer answer = answers.get(String.join(" ", command.subList(0, Math.min(2, command.size()))));
            if (answer == null) {
                throw new IOException("no such command: " + command.get(0));
            }
            return answer;
        };
    }

    @Test
    void usualPrinterComesFirst() {
        CupsPrinters printers = new CupsPrinters(answering(Map.of(
                "lpstat -e", new Commands.Answer(0, "Hall\nOffice_A4\n"),
                "lpstat -d", new Commands.Answer(0, "Systemstandardziel: Office_A4"))));
        assertEquals(List.of("Office_A4", "Hall"), printers.names());
        assertTrue(printers.firstPageAlone());
    }

    @Test
    void whereNothingPrintsThereIsNoPrinter() {
        assertEquals(List.of(), new CupsPrinters(answering(Map.of())).names());
        assertEquals(
                List.of(),
                new CupsPrinters(answering(Map.of(
                                "lpstat -e", new Commands.Answer(1, "lpstat: Bad file descriptor"),
                                "lpstat -d", new Commands.Answer(1, "lpstat: Bad file descriptor"))))
                        .names());
    }

    @Test
    void firstPageAloneIsAskedFor() throws Exception {
        CupsPrinters printers = new CupsPrinters(answering(Map.of("lp -d", new Commands.Answer(0, "request id is 7"))));
        printers.print(Path.of("quote.pdf"), "Hall", true);
        List<String> command = asked.get(0);
        assertEquals(List.of("lp", "-d", "Hall"), command.subList(0, 3));
        assertEquals("1", command.get(command.indexOf("-P") + 1));
        assertEquals("quote.pdf", command.get(command.size() - 1));
        printers.print(Path.of("quote.pdf"), "Hall", false);
        assertFalse(asked.get(1).contains("-P"));
    }

    @Test
    void refusalIsTheSystemsOwn() {
        CupsPrinters printers = new CupsPrinters(
                answering(Map.of("lp -d", new Commands.Answer(1, "lp: The printer or class does not exist."))));
        IOException refused =
                assertThrows(IOException.class, () -> printers.print(Path.of("quote.pdf"), "Attic", false));
        assertEquals("lp: The printer or class does not exist.", refused.getMessage());
    }

    @Test
    void nothingInANameIsReadAsAScript() throws Exception {
        WindowsPrinters printers =
                new WindowsPrinters(answering(Map.of("powershell -NoProfile", new Commands.Answer(0, "Office\nHall"))));
        assertEquals(List.of("Office", "Hall"), printers.names());
        printers.print(Path.of("o'hare$(x).pdf"), "Hall", false);
        String script = asked.get(1).get(asked.get(1).size() - 1);
        assertTrue(script.contains("'o''hare$(x).pdf'"), script);
        assertTrue(script.contains("'\"Hall\"'"), script);
    }

    @Test
    void commandIsRunToItsEnd() throws Exception {
        Commands.Answer answer = new SystemCommands()
                .run(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version"));
        assertEquals(0, answer.status());
        assertTrue(answer.text().contains("version"), answer.text());
        assertThrows(IOException.class, () -> new SystemCommands().run(List.of("no-such-command-of-any-system")));
    }
}
