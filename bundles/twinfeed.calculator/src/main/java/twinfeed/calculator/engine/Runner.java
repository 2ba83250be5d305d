// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Assumptions;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Readings;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Supply;
import twinfeed.model.survey.Survey;
import twinfeed.units.text.Texts;

/**
 * Runs all calculators over one survey and its candidates. Thread-safe; a survey is read by one thread at a time.
 *
 * <p>A calculator that breaks, loops or changes its survey ends nobody else's work: {@link #assess} runs each on a thread of its
 * own, with a copy of the survey and a time limit, names it, and answers its checks with "not checked".
 */
public final class Runner {
    /** The check under which a calculator that broke is reported; the checks that it left open decide, this one only tells why. */
    public static final Check BROKEN = Check.inWords("runner.broken", FindingClass.ADVICE);

    /** Messages of the runner itself and those that calculators share. */
    public static final Texts TEXTS = new Texts(Runner.class, "Common");

    /** The draws of most houses ask for fewer; where there are more, those of which many are asked are read again. */
    private static final int MAX_PARSED = 2_000;

    private final List<Calculator> calculators;
    private final Map<Calculator, String> sources = new IdentityHashMap<>();
    private final Map<String, CalculatorDescriptor> descriptors = new HashMap<>();
    private final List<CalculatorProblem> leftOut;
    private final Map<String, CalculatorProblem> aside = new ConcurrentHashMap<>();
    private final Map<TypedArguments, Arguments> parsedArguments = new ConcurrentHashMap<>();
    private final IntakeModel intakeModel;
    private final Influence influence;
    private final Containment containment;

    /**
     * A runner for some calculators.
     *
     * @param found the calculators, in any order; of two of one id the newer is used
     * @param intakeModel intake temperatures for climates without a table
     */
    public Runner(List<Calculator> found, IntakeModel intakeModel) {
        this(found, intakeModel, Containment.usual());
    }

    Runner(List<Calculator> found, IntakeModel intakeModel, Containment containment) {
        CalculatorSelection selection = new CalculatorSelection(found);
        this.calculators = CalculatorOrder.of(selection.calculators());
        this.leftOut = selection.problems();
        calculators.forEach(calculator -> {
            sources.put(calculator, CalculatorSource.of(calculator));
            descriptors.putIfAbsent(calculator.descriptor().id(), calculator.descriptor());
        });
        this.intakeModel = intakeModel;
        this.influence = Influence.among(calculators);
        this.containment = containment;
    }

    /** The calculators in the order in which they run. */
    public List<Calculator> calculators() {
        return calculators;
    }

    /** What was found wrong with calculators so far: those that are not used, and those that were rejected while they ran. */
    public List<CalculatorProblem> problems() {
        List<CalculatorProblem> all = new ArrayList<>(leftOut);
        calculators.forEach(calculator -> {
            CalculatorProblem problem = aside.get(calculator.descriptor().id());
            if (problem != null) {
                all.add(problem);
            }
        });
        return List.copyOf(all);
    }

    /** Whose works can change whose answers. */
    public Influence influence() {
        return influence;
    }

    /** The supply that a calculator's checks are about. */
    public Supply supply(String calculator) {
        return descriptor(calculator).map(CalculatorDescriptor::supply).orElse(Supply.NEITHER);
    }

    /** Messages of a calculator, or the runner's own for anything else. */
    public Texts texts(String calculator) {
        return descriptor(calculator).map(CalculatorDescriptor::texts).orElse(TEXTS);
    }

    private Optional<CalculatorDescriptor> descriptor(String calculator) {
        return Optional.ofNullable(descriptors.get(calculator));
    }

    /**
     * Judges candidates.
     *
     * @param survey the survey; not changed
     * @param candidates the heaters
     * @throws IllegalArgumentException if the survey names a rule set or climate that is not there
     */
    public AssessmentResult assess(Survey survey, List<Candidate> candidates) {
        while (true) {
            try {
                return containment.watch(steps -> assess(survey, candidates, steps));
            } catch (Containment.TooSlowException e) {
                setAside(e.name(), CalculatorProblem.Kind.TOO_SLOW, String.valueOf(e.getMessage()));
            } catch (ChangedSurveyException e) {
                e.calculators.forEach(calculator ->
                        setAside(calculator, CalculatorProblem.Kind.CHANGED_SURVEY, String.valueOf(e.getMessage())));
            }
            // Once more, without those set aside: each round has fewer calculators.
        }
    }

    private AssessmentResult assess(Survey survey, List<Candidate> candidates, Containment.Steps steps) {
        Assumptions assumptions = new Assumptions();
        Session session = open(survey, survey, grid -> grid, new Readings(survey), assumptions, steps);
        List<OptionResult> options = candidates.stream().map(session::judge).toList();
        List<String> changing = session.changing();
        if (!changing.isEmpty()) {
            throw new ChangedSurveyException(changing);
        }
        return new AssessmentResult(session.rules(), session.grid(), options, assumptions.list());
    }

    private static final class ChangedSurveyException extends IllegalStateException {
        private static final long serialVersionUID = 1;

        private final List<String> calculators;

        ChangedSurveyException(List<String> calculators) {
            super("it changed the survey");
            this.calculators = calculators;
        }
    }

    /** Judges one candidate, without the record of assumptions. */
    public OptionResult judge(Survey survey, Candidate candidate) {
        return judge(survey, survey, candidate);
    }

    /**
     * Judges one candidate in a house that works have changed.
     *
     * @param surveyed the house in which the readings were taken
     * @param changed the survey with the works done; may be the same
     */
    public OptionResult judge(Survey surveyed, Survey changed, Candidate candidate) {
        return judge(surveyed, changed, candidate, grid -> grid, new Readings(changed));
    }

    /**
     * Judges one candidate under some of the conditions only.
     *
     * @param surveyed the house in which the readings were taken
     * @param changed the survey with the works done; may be the same
     * @param readings tells what the changed survey lacks; may be kept as long as readings only change and none comes or goes
     */
    public OptionResult judge(
            Survey surveyed, Survey changed, Candidate candidate, UnaryOperator<Grid> focus, Readings readings) {
        return open(surveyed, changed, focus, readings, Assumptions.unrecorded(), null)
                .judge(candidate);
    }

    /**
     * Asks some checks about one candidate again and again while readings move, which are now as they were taken. Only the calculators that answer
     * them are run, and those on which their answers depend.
     *
     * @param surveyed the house in which the readings were taken
     * @param changed the survey with the works done; may be the same
     * @param focus picks the conditions
     * @param readings tells what the changed survey lacks; readings may move but none comes or goes
     * @param asked keys of the checks
     * @param cache keeps what they answer; absent where nobody asks again
     */
    public Rejudging rejudging(
            Survey surveyed,
            Survey changed,
            Candidate candidate,
            UnaryOperator<Grid> focus,
            Readings readings,
            Set<String> asked,
            @Nullable AnswerCache cache) {
        Set<String> answering = calculators.stream()
                .map(Calculator::descriptor)
                .filter(each -> each.checks().stream().anyMatch(check -> asked.contains(check.key())))
                .map(CalculatorDescriptor::id)
                .collect(Collectors.toSet());
        return new Rejudging(
                calculators.stream()
                        .filter(each -> isNeeded(each.descriptor().id(), answering))
                        .toList(),
                asked,
                candidate,
                () -> preparation(surveyed, changed, focus, readings, Assumptions.unrecorded(), null),
                cache);
    }

    private boolean isNeeded(String calculator, Set<String> answering) {
        return answering.contains(calculator)
                || answering.stream().anyMatch(other -> influence.reaches(calculator, other));
    }

    /** Prepares every calculator for a survey. */
    private Session open(
            Survey surveyed,
            Survey survey,
            UnaryOperator<Grid> focus,
            Readings readings,
            Assumptions assumptions,
            Containment.@Nullable Steps contained) {
        return preparation(surveyed, survey, focus, readings, assumptions, contained)
                .session(calculators);
    }

    private Preparation preparation(
            Survey surveyed,
            Survey survey,
            UnaryOperator<Grid> focus,
            Readings readings,
            Assumptions assumptions,
            Containment.@Nullable Steps contained) {
        RuleSet rules = rules(survey);
        Grid grid = focus.apply(new Conditions(survey, rules, intakeModel, assumptions).grid());
        return new Preparation(
                new Preparation.House(surveyed, survey, readings), rules, grid, assumptions, contained, this);
    }

    /** What was typed for a calculator, read; the same draws are made of every heater and every set of works, and ask for the same again. */
    Arguments arguments(CalculatorDescriptor calculator, Map<String, String> typed) {
        TypedArguments asked = new TypedArguments(calculator.id(), typed);
        Arguments known = parsedArguments.get(asked);
        if (known == null) {
            known = Arguments.parse(calculator.parameters(), typed);
            if (parsedArguments.size() >= MAX_PARSED) {
                parsedArguments.clear();
            }
            parsedArguments.put(asked, known);
        }
        return known;
    }

    private record TypedArguments(String calculator, Map<String, String> typed) {}

    /** The file that a calculator came in; empty where that is not known. */
    String source(Calculator calculator) {
        return sources.getOrDefault(calculator, "");
    }

    /** Why a calculator must not be asked any more. */
    Optional<String> whyAside(String calculator) {
        return Optional.ofNullable(aside.get(calculator)).map(CalculatorProblem::detail);
    }

    /** Has a calculator not asked again. */
    private void setAside(String id, CalculatorProblem.Kind kind, String reason) {
        String source = calculators.stream()
                .filter(each -> each.descriptor().id().equals(id))
                .map(this::source)
                .findFirst()
                .orElse("");
        aside.putIfAbsent(id, new CalculatorProblem(source + " (" + id + ")", kind, reason));
    }

    /** The rule set that a survey names, or the usual one. */
    public static RuleSet rules(Survey survey) {
        String id = survey.getRules() == null ? RuleSets.DEFAULT : survey.getRules();
        return RuleSets.find(id)
                .orElseThrow(() -> new IllegalArgumentException(
                        "unknown rule set \"" + id + "\"; known are " + String.join(", ", RuleSets.ids())));
    }
}
