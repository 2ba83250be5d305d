// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** A screen of its own, on which no other test shows a window. */
record Screen(Process server, String display) implements AutoCloseable {
    /** Starts one; the server picks a number that is free. */
    static Screen start() throws IOException {
        Process server = new ProcessBuilder(
                        "Xvfb", "-displayfd", "1", "-screen", "0", "1280x1024x24", "-nolisten", "tcp", "-ac")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String number = server.inputReader(StandardCharsets.US_ASCII).readLine();
        if (number == null) {
            throw new IOException("the virtual screen does not start");
        }
        return new Screen(server, ":" + number.strip());
    }

    /** Its windows, as the tool for that lists them. */
    String windows() throws IOException {
        Process tool = new ProcessBuilder("xwininfo", "-display", display, "-root", "-tree").start();
        return new String(tool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.destroy();
    }
}
