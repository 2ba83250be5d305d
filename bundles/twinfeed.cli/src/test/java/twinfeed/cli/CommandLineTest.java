// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.model.assessment.FindingClass;
import twinfeed.usecase.TwinfeedService;

/** What every verb has in common: words that none knows, where answer and messages go, and what is left behind when one breaks. */
class CommandLineTest {
    @Test
    void withoutAVerbTheUsageIsAMessageAndNoAnswer() {
        Run run = Run.of();
        assertEquals(2, run.status());
        assertEquals("", run.out());
        assertEquals(Run.of("--help").out(), run.err());
        assertTrue(run.err().lines().allMatch(line -> line.length() <= 100), run.err());
    }

    @Test
    void theUsageThatIsAskedForIsAnAnswer() {
        Run run = Run.of("--help");
        assertEquals(0, run.status());
        assertTrue(run.out().startsWith("Usage: twinfeed"), run.out());
        assertEquals("", run.err());
        Run version = Run.of("--version");
        assertEquals("twinfeed " + TwinfeedService.VERSION, version.out().strip());
    }

    @Test
    void aMisspeltVerbNamesTheNearestInPlaceOfTheWholeUsage() {
        Run run = Run.of("qoute");
        assertEquals(2, run.status());
        assertTrue(run.err().contains("'qoute'") && run.err().contains("Did you mean: twinfeed quote"), run.err());
        assertFalse(run.err().contains("Usage:"), run.err());
    }

    @Test
    void aVerbWithoutWhatItNeedsSaysWhatAndHowItIsUsed() {
        Run run = Run.of("assess");
        assertEquals(2, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("Missing required parameter: 'JOB'"), run.err());
        assertTrue(run.err().endsWith(Run.of("assess", "--help").out()), run.err());
        assertEquals(Run.of("assess", "--help").out(), Run.of("help", "assess").out());
    }

    @Test
    void aScriptThatAsksForJsonGetsTheMistakeAsJsonToo() {
        Run run = Run.of("assess", "--json");
        assertEquals(2, run.status());
        assertTrue(run.out().contains("\"status\" : 2") && run.out().contains("JOB"), run.out());
        assertEquals("Missing required parameter: 'JOB'", run.err().strip());
        Run plain = Run.of("calc", "banana");
        assertEquals("", plain.out(), "no document that nobody asked for");
    }

    /** A file or a pipe behind the streams keeps what it gets until it is told to pass it on. */
    @ParameterizedTest
    @ValueSource(strings = {"", "assess", "calc banana", "calc units value=1bar"})
    void whatIsPrintedHasArrivedWhenTheVerbEnds(String words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream slowOut = new PrintStream(new BufferedOutputStream(out, 1 << 16), false, StandardCharsets.UTF_8);
        PrintStream slowErr = new PrintStream(new BufferedOutputStream(err, 1 << 16), false, StandardCharsets.UTF_8);
        int status = new Verbs(TwinfeedService.onClassPath(), Run.DAY, slowOut, slowErr)
                .run(words.isEmpty() ? new String[0] : words.split(" "));
        assertTrue(status == 0 ? out.size() > 0 : err.size() > 0, out + "/" + err);
    }

    /** For whoever looks for a fault of the program; others get one line. */
    @Test
    void whereItBrokeIsPrintedForThoseWhoAskForIt() {
        assertFalse(Run.of("calc", "banana").err().contains("at twinfeed.cli."));
        try {
            System.setProperty("twinfeed.debug", "true");
            assertTrue(Run.of("calc", "banana").err().contains("at twinfeed.cli.CalcVerb"));
        } finally {
            System.clearProperty("twinfeed.debug");
        }
    }

    private static final class Twice implements Calculator {
        private static final CalculatorDescriptor DESCRIPTOR = CalculatorDescriptor.of(Twice.class)
                .checks(List.of(Check.inWords("twice.check", FindingClass.ADVICE)))
                .build();

        @Override
        public CalculatorDescriptor descriptor() {
            return DESCRIPTOR;
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {};
        }
    }

    @Test
    void aCalculatorThatIsLeftOutIsNamedByEveryVerb() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = new Verbs(
                        new TwinfeedService(List.of(new Twice(), new Twice())),
                        Run.DAY,
                        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run("calc", "units", "value=1bar");
        assertEquals(0, status);
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("wice"), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aNameThatIsNotThereIsNoName() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (TerminalStream stream = new TerminalStream(out)) {
            stream.print((Object) "one\ntwo");
            stream.print((String) null);
        }
        assertEquals("one" + System.lineSeparator() + "  twonull", out.toString(StandardCharsets.UTF_8));
    }
}
