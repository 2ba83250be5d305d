// SPDX-License-Identifier: EPL-2.0
package twinfeed.fuzz;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A run over one kind of file. */
final class Fuzz {
    private final Kind kind;
    private final Path demo;
    private final Map<String, Finding> findings = new LinkedHashMap<>();

    Fuzz(Kind kind, Path demo) {
        this.kind = kind;
        this.demo = demo;
    }

    /**
     * {@code KIND COUNT [SEED]}: damages and reads so many files; the exit status is 1 if one was not taken as it should. Each kind of
     * finding is written as a file into {@code target/findings/KIND}.
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        PrintStream out = System.out;
        if (arguments.length < 2) {
            out.println("releng/fuzz KIND|all COUNT [SEED]");
            System.exit(2);
        }
        Path root = Path.of(System.getProperty("twinfeed.root", "."));
        int count = Integer.parseInt(arguments[1]);
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
        boolean clean = true;
        for (Kind kind : Kind.values()) {
            if (arguments[0].equals("all") || arguments[0].equals(kind.word())) {
                Fuzz fuzz = new Fuzz(kind, root.resolve("demo"));
                out.println(fuzz.run(count, seed));
                fuzz.save(root.resolve("releng/fuzzing/target/findings").resolve(kind.word()), out);
                clean &= fuzz.findings().isEmpty();
            }
        }
        System.exit(clean ? 0 : 1);
    }

    /** What was found, one of each place in the program. */
    List<Finding> findings() {
        return new ArrayList<>(findings.values());
    }

    /** Reads so many damaged files and gives a line about it. */
    String run(int count, long seed) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("twinfeed-fuzz");
        try {
            Target target = new Target(kind, demo, folder);
            List<byte[]> samples = target.samples();
            Judge judge = new Judge();
            Mutator mutator = new Mutator(seed);
            long start = System.nanoTime();
            long slowest = 0;
            for (int i = 0; i < count; i++) {
                long before = System.nanoTime();
                add(read(mutator.mutate(samples), target, judge));
                slowest = Math.max(slowest, System.nanoTime() - before);
            }
            return String.format(
                    java.util.Locale.ROOT,
                    "%s: %d inputs from seed %d in %d s, %d accepted, slowest %d ms, findings: %d",
                    kind.word(),
                    count,
                    seed,
                    (System.nanoTime() - start) / 1_000_000_000,
                    target.accepted(),
                    slowest / 1_000_000,
                    findings.size());
        } finally {
            delete(folder);
        }
    }

    /** Reads inputs that once were not taken as they should. */
    void again(List<byte[]> inputs) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("twinfeed-fuzz");
        try {
            Target target = new Target(kind, demo, folder);
            Judge judge = new Judge();
            for (byte[] input : inputs) {
                add(read(input, target, judge));
            }
        } finally {
            delete(folder);
        }
    }

    private static @Nullable Finding read(byte[] input, Target target, Judge judge) throws InterruptedException {
        return judge.judge(input, () -> target.read(input));
    }

    private void add(@Nullable Finding finding) {
        if (finding != null) {
            // The shortest input of each place is the one to look at.
            findings.merge(
                    finding.where(), finding, (old, other) -> other.input().length < old.input().length ? other : old);
        }
    }

    private void save(Path folder, PrintStream out) throws IOException {
        int number = 0;
        for (Finding finding : findings.values()) {
            Files.createDirectories(folder);
            number++;
            Files.write(folder.resolve(number + "-" + kind.file()), finding.input());
            out.println("  " + folder.resolve(number + "-" + kind.file()) + ": " + finding.reason() + " ("
                    + finding.where() + ")");
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
