// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The printers of Windows, by PowerShell; a file is printed by the program that is set up for its kind. */
final class WindowsPrinters implements Printers {
    private static final String NAMES =
            "Get-CimInstance Win32_Printer | Sort-Object -Property Default -Descending | ForEach-Object { $_.Name }";

    private final Commands commands;

    WindowsPrinters(Commands commands) {
        this.commands = commands;
    }

    @Override
    public List<String> names() {
        try {
            Commands.Answer all = commands.run(command(NAMES));
            return all.status() == 0
                    ? all.text()
                            .lines()
                            .map(String::strip)
                            .filter(each -> !each.isEmpty())
                            .toList()
                    : List.of();
        } catch (IOException noPrinting) {
            return List.of();
        }
    }

    @Override
    public boolean firstPageAlone() {
        return false;
    }

    @Override
    public void print(Path file, String printer, boolean firstPage) throws IOException {
        Commands.Answer answer = commands.run(command("$ErrorActionPreference = 'Stop'; Start-Process -FilePath "
                + quoted(file.toString()) + " -Verb PrintTo -ArgumentList " + quoted('"' + printer + '"')));
        if (answer.status() != 0) {
            throw new IOException(answer.text());
        }
    }

    private static List<String> command(String script) {
        return List.of("powershell", "-NoProfile", "-NonInteractive", "-Command", script);
    }

    /** As one word of the script, in which nothing is replaced. */
    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
