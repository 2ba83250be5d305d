// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import twinfeed.usecase.TwinfeedService;

/**
 * The completions and the manual page that go into the product are those of the verbs as they are. After a change of a verb
 * {@code -Dtwinfeed.renew=true} to this test writes them anew.
 */
class CommandFilesTest {
    private static final Path PRODUCT = Run.ROOT.resolve("releng/product/files/all");

    private static CommandLine commands() {
        PrintStream nowhere = new PrintStream(java.io.OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        return new Verbs(TwinfeedService.onClassPath(), Run.DAY, nowhere, nowhere).commands();
    }

    @Test
    void theProductsFilesAreThoseOfTheVerbs() throws IOException {
        for (Map.Entry<String, String> file :
                new CommandFiles(commands()).files().entrySet()) {
            Path path = PRODUCT.resolve(file.getKey());
            if (Boolean.getBoolean("twinfeed.renew")) {
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.getValue());
            }
            assertEquals(file.getValue(), Files.readString(path), path + ": renew it by -Dtwinfeed.renew=true");
        }
    }

    @Test
    void everyVerbAndOptionIsNamed() throws IOException {
        String bash = Files.readString(PRODUCT.resolve("completions/twinfeed.bash"));
        String zsh = Files.readString(PRODUCT.resolve("completions/_twinfeed"));
        String manual = Files.readString(PRODUCT.resolve("man/man1/twinfeed.1"));
        assertTrue(zsh.startsWith("#compdef twinfeed\n"));
        commands().getSubcommands().forEach((name, verb) -> {
            assertTrue(bash.contains("function _picocli_twinfeed_" + name + "()"), name);
            assertTrue(zsh.contains("function _picocli_twinfeed_" + name + "()"), name);
            assertTrue(manual.contains("\n.SS " + name), name);
            for (OptionSpec option : verb.getCommandSpec().options()) {
                assertTrue(bash.contains(option.longestName()), name + " " + option.longestName());
                assertTrue(
                        manual.contains(option.longestName().replace("-", "\\-")), name + " " + option.longestName());
            }
        });
    }

    /** The shell itself completes: a verb by its first letters, and an option of a verb. */
    @Test
    void bashCompletesVerbsAndOptions() throws IOException, InterruptedException {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no bash");
        String script = "source '" + PRODUCT.resolve("completions/twinfeed.bash") + "'\n"
                + "COMP_WORDS=(twinfeed repr); COMP_CWORD=1; COMP_LINE='twinfeed repr'; _complete_twinfeed; echo \"${COMPREPLY[@]}\"\n"
                + "COMP_WORDS=(twinfeed quote --heat); COMP_CWORD=2; COMP_LINE='twinfeed quote --heat'; _complete_twinfeed; echo \"${COMPREPLY[@]}\"\n";
        Process bash = new ProcessBuilder("/bin/bash", "-c", script)
                .redirectErrorStream(true)
                .start();
        String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(bash.waitFor(20, TimeUnit.SECONDS));
        assertTrue(said.contains("reprint"), said);
        assertTrue(said.contains("--heater"), said);
    }
}
