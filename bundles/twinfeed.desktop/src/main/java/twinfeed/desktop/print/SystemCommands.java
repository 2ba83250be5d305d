// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.print;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs commands as processes; their output goes through a file, so that none waits because nobody reads. */
final class SystemCommands implements Commands {
    private static final long LIMIT_S = 60;

    @Override
    public Answer run(List<String> command) throws IOException {
        Path said = Files.createTempFile("twinfeed-print", ".txt");
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            process.getOutputStream().close();
            if (!process.waitFor(LIMIT_S, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IOException(command.get(0) + " does not answer");
            }
            return new Answer(
                    process.exitValue(), new String(Files.readAllBytes(said), Charset.defaultCharset()).strip());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        } finally {
            Files.deleteIfExists(said);
        }
    }
}
