// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.List;
import java.util.Locale;
import org.osgi.service.component.annotations.Component;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Context;
import twinfeed.calculator.ExchangeKey;
import twinfeed.calculator.Parameter;
import twinfeed.calculator.Phrase;
import twinfeed.calculator.Statement;
import twinfeed.calculator.Texts;
import twinfeed.calculator.rules.Method;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.units.Kind;

/**
 * Judges the circuit that feeds a heater, and gives the voltage and power that arrive there.
 *
 * <p>The currents compared are those at the heater's own rated voltage; the check of voltage drop takes full conductor
 * temperature, the delivered power the temperature that belongs to the current. Tables and limits are the rule set's.
 */
@Component(service = Calculator.class)
public final class CircuitCalculator implements Calculator {
    private static final Texts TEXTS = new Texts(CircuitCalculator.class, "Circuit");

    private static final Statement STATEMENT = new Statement(
            "circuit",
            "0.1.0",
            TEXTS,
            List.of(ExchangeKey.TERMINAL_VOLTAGE, ExchangeKey.DELIVERED_POWER, ExchangeKey.DESIGN_CURRENT),
            List.of(),
            CircuitChecks.ALL,
            List.of(
                    Parameter.optional("ambient", Kind.TEMPERATURE, 30, 10, 60),
                    Parameter.optional("loftAmbient", Kind.TEMPERATURE, 40, 10, 60)),
            CircuitFormulas.ALL);

    /**
     * A method's title in the reader's language where the messages have it for this rule set; a rule set that says something else
     * is told in its own words.
     */
    static Object methodTitle(RuleSet rules, Method method) {
        String key = "method." + rules.id() + "." + method.key();
        return method.title().equals(TEXTS.find(Locale.ROOT, key)) ? Phrase.of(key) : method.title();
    }

    @Override
    public Statement statement() {
        return STATEMENT;
    }

    @Override
    public Assessor prepare(Context context) {
        CircuitSurvey survey = CircuitSurvey.of(context);
        CircuitWorks works = new CircuitWorks(survey);
        LoopData loop = LoopData.of(survey);
        List<Judge> judges = List.of(
                new LoadJudge(survey, works),
                new CapacityJudge(survey, works),
                new DropJudge(survey, works),
                new TerminalJudge(survey),
                new LoopJudge(survey, loop, works),
                new ElectrodeJudge(survey, works),
                new ResidualJudge(survey, works),
                new ResidualLoadJudge(survey, works),
                new ConductorJudge(survey, loop),
                new FaultLevelJudge(survey, context),
                new IsolatorJudge(survey, works),
                new InstructionJudge(survey, works),
                new OriginJudge(survey, works),
                new ConditionJudge(survey, works),
                new RoomJudge(survey, works, context),
                new ReachJudge(survey));
        return (candidate, exchange, findings) -> {
            ShowerCase shower = new ShowerCase(candidate.heater(), ShowerLoad.of(candidate.heater()), exchange);
            judges.forEach(judge -> judge.judge(shower, findings));
        };
    }
}
