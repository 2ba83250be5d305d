// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.units.Resistance;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.quote.QuotingService;

/**
 * A whole demonstration job, as the window re-assesses it after each change (it has 50 ms for that) and as a batch does for each
 * dwelling. The property {@code twinfeed.root} names the folder of the project.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class AssessmentBenchmark {
    private static final Path DEMO = Path.of(System.getProperty("twinfeed.root", ""), "demo");

    /** The demonstration jobs. */
    @Param({"alder-beck", "birch-syke", "hazel-ghyll", "rowan-brook", "willow-mere"})
    public String job = "";

    /** So little that no edit of a run makes the house another one. */
    private static final double LOOP_STEP_OHM = 1e-7;

    private final TwinfeedService service = TwinfeedService.onClassPath();
    private final PriceBook book = service.book(DEMO.resolve("prices.csv"));
    private final AnswerCache cache = new AnswerCache();
    private @Nullable OpenedJob opened;

    /** Reads the job. */
    @Setup
    public void open() {
        opened = read();
    }

    private OpenedJob read() {
        return service.open(DEMO.resolve(job + ".job"), null);
    }

    private OpenedJob opened() {
        return java.util.Objects.requireNonNull(opened);
    }

    /** All findings of all candidates, without the search for works. */
    @Benchmark
    public AssessedJob quickAssess() {
        return service.quickAssess(opened(), Locale.UK);
    }

    /** Findings, and for each candidate that does not suit the least costly work that makes it suit. */
    @Benchmark
    public AssessedJob judge() {
        return service.judge(opened(), book, null, Locale.UK);
    }

    /** The same as the window asks it after an edit, of a reading of the circuit here: what does not follow from it is known. */
    @Benchmark
    public AssessedJob judgeAfterAnEdit() {
        Survey survey = opened().job().getSurvey();
        @Nullable Resistance loop = survey.getElectricity().getExternalLoop();
        double ohm = loop == null ? 0 : loop.si();
        survey.getElectricity().setExternalLoop(Resistance.ofSi(ohm + LOOP_STEP_OHM));
        return service.judge(opened(), book, Locale.UK, () -> true, cache);
    }

    /** From the file to the priced quote. */
    @Benchmark
    public Quote fileToQuote() {
        AssessedJob judged = service.judge(read(), book, null, Locale.UK);
        return QuotingService.draft(judged, book, LocalDate.of(2026, Month.NOVEMBER, 25), FirmFile.none(), Locale.UK);
    }
}
