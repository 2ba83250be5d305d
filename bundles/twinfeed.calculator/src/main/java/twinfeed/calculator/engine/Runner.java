// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import twinfeed.calculator.Arguments;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Assumptions;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Grid;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.Outcome;
import twinfeed.calculator.Readings;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.Texts;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Survey;

/** Runs all calculators over one survey and its candidates. Thread-safe; a survey is read by one thread at a time. */
public final class Runner {
    /** The check under which a calculator that broke is reported; its kind decides, for what it would have said is unknown. */
    public static final Check BROKEN = Check.of("runner.broken", FindingClass.COMPLIANCE, LimitType.REPORT, "");

    /** Messages of the runner itself and those that calculators share. */
    public static final Texts TEXTS = new Texts(Runner.class, "Common");

    private final List<Calculator> calculators;
    private final IntakeModel intakeModel;
    private final Influence influence;

    /**
     * A runner for some calculators.
     *
     * @param found the calculators, in any order
     * @param intakeModel intake temperatures for climates without a table
     * @throws IllegalArgumentException if two have the same id
     */
    public Runner(List<Calculator> found, IntakeModel intakeModel) {
        Map<String, Calculator> byId = new LinkedHashMap<>();
        for (Calculator calculator : found) {
            String id = calculator.statement().id();
            if (byId.putIfAbsent(id, calculator) != null) {
                throw new IllegalArgumentException("two calculators have the id " + id);
            }
        }
        this.calculators = CalculatorOrder.of(new ArrayList<>(byId.values()));
        this.intakeModel = intakeModel;
        this.influence = Influence.among(calculators);
    }

    /** The calculators in the order in which they run. */
    public List<Calculator> calculators() {
        return calculators;
    }

    /** Whose works can change whose answers. */
    public Influence influence() {
        return influence;
    }

    /** Messages of a calculator, or the runner's own for anything else. */
    public Texts texts(String calculator) {
        return calculators.stream()
                .filter(each -> each.statement().id().equals(calculator))
                .findFirst()
                .map(each -> each.statement().texts())
                .orElse(TEXTS);
    }

    /**
     * Judges candidates.
     *
     * @param survey the survey; not changed
     * @param candidates the heaters
     * @throws IllegalArgumentException if the survey names a rule set or climate that is not there
     */
    public AssessmentResult assess(Survey survey, List<Candidate> candidates) {
        Assumptions assumptions = new Assumptions();
        Session session = open(survey, survey, grid -> grid, new Readings(survey), assumptions);
        List<OptionResult> options = candidates.stream().map(session::judge).toList();
        return new AssessmentResult(session.rules, session.grid, options, assumptions.list());
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
        return open(surveyed, changed, focus, readings, new Assumptions()).judge(candidate);
    }

    /** Prepares every calculator for a survey. */
    private Session open(
            Survey surveyed, Survey survey, UnaryOperator<Grid> focus, Readings readings, Assumptions assumptions) {
        RuleSet rules = rules(survey);
        Grid grid = focus.apply(new Conditions(survey, rules, intakeModel, assumptions).grid());
        List<Prepared> prepared = new ArrayList<>();
        for (Calculator calculator : calculators) {
            prepared.add(prepare(calculator, surveyed, survey, rules, grid, readings, assumptions));
        }
        return new Session(rules, grid, readings, prepared);
    }

    private static Prepared prepare(
            Calculator calculator,
            Survey surveyed,
            Survey survey,
            RuleSet rules,
            Grid grid,
            Readings readings,
            Assumptions assumptions) {
        CalculatorDescriptor statement = calculator.statement();
        try {
            Arguments parameters = Arguments.parse(statement.parameters(), typed(survey, statement.id()));
            Context context =
                    new Context(statement.id(), survey, surveyed, rules, grid, readings, parameters, assumptions);
            return new Prepared(statement, calculator.prepare(context));
        } catch (RuntimeException | LinkageError broken) {
            return new Prepared(statement, (candidate, exchange, findings) -> report(findings, statement.id(), broken));
        }
    }

    private static Map<String, String> typed(Survey survey, String calculator) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (ParameterValue value : survey.getParameters()) {
            if (calculator.equals(value.getCalculator())) {
                typed.put(value.getKey(), value.getValue());
            }
        }
        return typed;
    }

    public static RuleSet rules(Survey survey) {
        String id = survey.getRules() == null ? RuleSets.DEFAULT : survey.getRules();
        return RuleSets.find(id)
                .orElseThrow(() -> new IllegalArgumentException(
                        "unknown rule set \"" + id + "\"; known are " + String.join(", ", RuleSets.ids())));
    }

    private static void report(Findings findings, String calculator, Throwable broken) {
        findings.on(BROKEN)
                .outcome(Outcome.CANNOT_TELL)
                .argument("calculator", calculator)
                .argument("reason", String.valueOf(broken))
                .add();
    }

    private record Prepared(CalculatorDescriptor statement, Assessor assessor) {}

    /** All calculators prepared for one survey. */
    private record Session(RuleSet rules, Grid grid, Readings readings, List<Prepared> prepared) {
        OptionResult judge(Candidate candidate) {
            SharedQuantities exchange = new SharedQuantities(grid);
            List<Finding> all = new ArrayList<>();
            for (Prepared each : prepared) {
                Findings findings = new Findings(each.statement.id(), readings, candidate);
                run(each, candidate, exchange, findings);
                all.addAll(findings.list());
            }
            return OptionResult.of(candidate, all);
        }

        /** What a calculator said before it broke stays, and the rest goes on. */
        private static void run(Prepared each, Candidate candidate, SharedQuantities exchange, Findings findings) {
            try {
                each.assessor.assess(candidate, exchange, findings);
            } catch (RuntimeException | LinkageError broken) {
                report(findings, each.statement.id(), broken);
            }
        }
    }
}
