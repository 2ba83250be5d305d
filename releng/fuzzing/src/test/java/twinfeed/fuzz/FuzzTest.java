// SPDX-License-Identifier: EPL-2.0
package twinfeed.fuzz;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The fuzzer itself, and the files that it once found; {@code releng/fuzz} damages new ones. */
class FuzzTest {
    private static final Path ROOT =
            Path.of(System.getProperty("twinfeed.root", "")).toAbsolutePath();
    private static final Path KNOWN = ROOT.resolve("releng/fuzzing/src/test/resources/known");

    /** Inputs that were once taken badly: {@code known/KIND/*}. */
    @ParameterizedTest
    @EnumSource
    void takesTheKnownOnesWell(Kind kind) throws IOException, InterruptedException {
        List<byte[]> inputs = new ArrayList<>();
        Path folder = KNOWN.resolve(kind.word());
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.sorted().toList()) {
                    inputs.add(Files.readAllBytes(file));
                }
            }
        }
        Fuzz fuzz = new Fuzz(kind, ROOT.resolve("demo"));
        fuzz.again(inputs);
        assertEquals(List.of(), reasons(fuzz));
    }

    private static List<String> reasons(Fuzz fuzz) {
        return fuzz.findings().stream()
                .map(finding -> finding.reason() + " (" + finding.where() + ")")
                .toList();
    }

    @Test
    void theSameSeedMakesTheSameDamage() {
        List<byte[]> samples = List.of("<job name=\"a\" power=\"9.5 kW\"/>".getBytes(StandardCharsets.UTF_8));
        Mutator one = new Mutator(7);
        Mutator other = new Mutator(7);
        int changed = 0;
        for (int i = 0; i < 200; i++) {
            byte[] damaged = one.mutate(samples);
            assertArrayEquals(damaged, other.mutate(samples));
            changed += java.util.Arrays.equals(damaged, samples.get(0)) ? 0 : 1;
        }
        assertTrue(changed > 190, "changed: " + changed);
    }

    /** The judge itself: it must see what it is there for. */
    @Test
    void theJudgeSeesWhatIsWrong() throws InterruptedException {
        Judge judge = new Judge();
        byte[] input = {1};
        assertEquals(null, judge.judge(input, () -> "a.job: power: 9x is no power; write it like 9.5 kW"));
        assertTrue(reason(judge, () -> {
                    throw new IllegalStateException("x");
                })
                .contains("IllegalState"));
        assertTrue(reason(judge, () -> "x".repeat(3000)).contains("2048"));
        assertTrue(reason(judge, () -> "java.lang.NullPointerException").contains("technical"));
        assertTrue(reason(judge, () -> "bell \u0007").contains("control"));
        assertTrue(reason(judge, () -> {
                    long sum = 0;
                    long end = System.nanoTime() + (Judge.MOST_MILLISECONDS + 10_000) * 1_000_000L;
                    java.lang.management.ThreadMXBean threads =
                            java.lang.management.ManagementFactory.getThreadMXBean();
                    long most = threads.getCurrentThreadCpuTime() + (Judge.MOST_MILLISECONDS + 100) * 1_000_000L;
                    while (threads.getCurrentThreadCpuTime() < most && System.nanoTime() < end) {
                        sum++;
                    }
                    return sum > 0 ? "" : "idle";
                })
                .contains("slow"));
    }

    private static String reason(Judge judge, Judge.Reading reading) throws InterruptedException {
        Finding finding = judge.judge(new byte[] {1}, reading);
        return finding == null ? "" : finding.reason();
    }
}
