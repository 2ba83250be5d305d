// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.model.assessment.FindingClass;
import twinfeed.usecase.TwinfeedService;

/** A calculator that breaks leaves its check unanswered: the rest goes on, and the exit status says that something is missing. */
class UnansweredTest {
    private static final Path JOB = Run.DEMO.resolve("rowan-brook.job");
    private static final Path BOOK = Run.DEMO.resolve("prices.csv");

    @TempDir
    private Path folder;

    private static final class Broken implements Calculator {
        private static final CalculatorDescriptor DESCRIPTOR = CalculatorDescriptor.of(Broken.class)
                .checks(List.of(Check.inWords("broken.check", FindingClass.ADVICE)))
                .build();

        @Override
        public CalculatorDescriptor descriptor() {
            return DESCRIPTOR;
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {
                throw new IllegalStateException("made to break");
            };
        }
    }

    private static Run run(Object... arguments) {
        List<Calculator> calculators = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(calculators::add);
        calculators.add(new Broken());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] words = Stream.of(arguments).map(Object::toString).toArray(String[]::new);
        int status = new Verbs(
                        new TwinfeedService(calculators),
                        Run.DAY,
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run(words);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void assessOptionsAndQuoteEndWithFour() {
        assertEquals(4, run("assess", JOB).status());
        assertEquals(4, run("options", JOB, "--book", BOOK).status());
        Run quote = run("quote", JOB, "--book", BOOK, "--out", folder.resolve("quote.xlsx"));
        assertEquals(4, quote.status(), quote.err());
    }

    @Test
    void aFaultFindingEndsWithFourWithPricesAndWithout() {
        Run plain = run("faults", JOB, "--json");
        assertEquals(4, plain.status(), plain.err());
        assertTrue(plain.out().replace(" ", "").contains("\"unanswered\":2"), plain.out());
        Run priced = run("faults", JOB, "--book", BOOK);
        assertEquals(4, priced.status(), priced.err());
        assertTrue(priced.out().contains("Checks that a calculator left unanswered"), priced.out());
        assertEquals(0, Run.of("faults", JOB).status());
    }

    @Test
    void aListEndsWithFourAndSaysHowMany() throws Exception {
        Path list = java.nio.file.Files.writeString(folder.resolve("list.csv"), "dwelling\nOne\nTwo\n");
        Path out = folder.resolve("result.xlsx");
        Run run = run("batch", list, "--template", JOB, "--book", BOOK, "--out", out, "--json");
        assertEquals(4, run.status(), run.err());
        assertTrue(run.out().replace(" ", "").contains("\"unanswered\":2"), run.out());
        Run text = run("batch", list, "--template", JOB, "--book", BOOK, "--out", out);
        assertEquals(4, text.status(), text.err());
        assertTrue(text.out().contains("\nA calculator left a check unanswered in: 2\n"), text.out());
    }
}
