// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import java.util.concurrent.TimeUnit;
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
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.sampling.Uncertainty;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/**
 * Every check of every calculator for the heaters of the demonstration: all eight under all months, voltages and draw-offs, and one with
 * the chances of its checks. The property {@code twinfeed.root} names the folder of the project.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class HeaterBenchmark {
    private static final int PLAIN_DRAWS = 4096;

    /** Demonstration jobs: taps with a weak supply, and one tap with a strong one. */
    @Param({"alder-beck", "rowan-brook"})
    public String job = "";

    private final Runner runner = new Runner(calculators(), (mean, spread, month, southern) -> mean);
    private final List<Candidate> candidates = new ArrayList<>();
    private Survey survey = SurveyFactory.eINSTANCE.createSurvey();

    private static List<Calculator> calculators() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return found;
    }

    /** Reads the job and takes every heater of its catalogue as a candidate. */
    @Setup
    public void prepare() {
        Path file = Path.of(System.getProperty("twinfeed.root", ""), "demo", job + ".job");
        Job loaded = JobFile.load(file);
        survey = loaded.getSurvey();
        JobFile.catalogue(loaded, file).getHeaters().forEach(heater -> candidates.add(new Candidate(heater, false)));
    }

    /** All heaters, 13 intakes, every voltage of the grid, taps shut and open. */
    @Benchmark
    public AssessmentResult allHeaters() {
        return runner.assess(survey, candidates);
    }

    /** How sure each finding about one heater is, with as few judgements of the house as that needs. */
    @Benchmark
    public OptionResult oneHeaterByNeed() {
        return Uncertainty.byNeed(runner).judge(survey, candidates.get(3));
    }

    /** The same by 4,096 draws, each judged. */
    @Benchmark
    public OptionResult oneHeaterPlain() {
        return Uncertainty.plain(runner, PLAIN_DRAWS, Uncertainty.SEED).judge(survey, candidates.get(3));
    }
}
