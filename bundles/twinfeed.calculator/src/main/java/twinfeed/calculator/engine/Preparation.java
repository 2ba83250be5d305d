// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Assumptions;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Context;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Readings;
import twinfeed.calculator.cache.HouseInputs;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Survey;

/** Prepares calculators for one house. One that breaks while it is prepared is kept, with the reason, so that its checks have an answer. */
final class Preparation {
    /**
     * A house.
     *
     * @param surveyed as it was when the readings were taken
     * @param changed with works done; may be the same
     * @param readings tells what the changed one lacks
     */
    record House(Survey surveyed, Survey changed, Readings readings) {}

    private final House house;
    private final RuleSet rules;
    private final Grid grid;
    private final Assumptions assumptions;
    private final Containment.@Nullable Steps contained;
    private final Runner runner;

    /**
     * A preparation.
     *
     * @param contained runs the calculators, each with a copy of the survey; absent where they share the caller's
     * @param runner knows the calculators that are not asked any more
     */
    Preparation(
            House house,
            RuleSet rules,
            Grid grid,
            Assumptions assumptions,
            Containment.@Nullable Steps contained,
            Runner runner) {
        this.house = house;
        this.rules = rules;
        this.grid = grid;
        this.assumptions = assumptions;
        this.contained = contained;
        this.runner = runner;
    }

    Grid grid() {
        return grid;
    }

    /** Whether a calculator must not be asked any more. */
    boolean isSetAside(CalculatorDescriptor calculator) {
        return runner.whyAside(calculator.id()).isPresent();
    }

    /** The values of the house as they are now. */
    HouseInputs inputs() {
        return new HouseInputs(house.surveyed, house.changed, rules);
    }

    /** A session with some calculators prepared. */
    Session session(List<Calculator> calculators) {
        return session(calculators, null);
    }

    /**
     * The same where nobody wants more than outcomes and figures of some checks.
     *
     * @param asked keys of those checks
     */
    Session sessionOfFigures(List<Calculator> calculators, Set<String> asked) {
        return session(calculators, asked);
    }

    private Session session(List<Calculator> calculators, @Nullable Set<String> asked) {
        List<Session.Prepared> prepared = new ArrayList<>();
        calculators.forEach(calculator -> prepared.add(prepare(calculator)));
        return new Session(rules, grid, house.readings, house.changed, prepared, contained, asked);
    }

    private Session.Prepared prepare(Calculator calculator) {
        CalculatorDescriptor descriptor = calculator.descriptor();
        String source = runner.source(calculator);
        Optional<String> aside = runner.whyAside(descriptor.id());
        if (aside.isPresent()) {
            return broken(descriptor, source, aside.get());
        }
        Survey own = contained == null ? house.changed : EcoreUtil.copy(house.changed);
        try {
            Assessor assessor = assessor(calculator, context(descriptor, own));
            return new Session.Prepared(descriptor, source, assessor, null, contained == null ? null : own);
        } catch (Throwable e) {
            if (!Containment.containable(e)) {
                throw e;
            }
            return broken(descriptor, source, Containment.reason(e));
        }
    }

    private Context context(CalculatorDescriptor descriptor, Survey own) {
        Arguments parameters = runner.arguments(descriptor, typed(own, descriptor.id()));
        Survey surveyed = house.surveyed == house.changed ? own : house.surveyed;
        return new Context(descriptor.id(), own, surveyed, rules, grid, house.readings, parameters, assumptions);
    }

    private @Nullable Assessor assessor(Calculator calculator, Context context) {
        if (contained == null) {
            return calculator.prepare(context);
        }
        AtomicReference<@Nullable Assessor> assessor = new AtomicReference<>();
        contained.run(context.calculator(), () -> assessor.set(calculator.prepare(context)));
        return assessor.get();
    }

    private static Session.Prepared broken(CalculatorDescriptor descriptor, String source, String failure) {
        return new Session.Prepared(descriptor, source, null, failure, null);
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
}
