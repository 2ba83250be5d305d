// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.completion;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.engine.SourceText;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.document.DocumentTexts;
import twinfeed.document.OfferedFindings;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Step;
import twinfeed.model.check.LoopByResidual;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Survey;
import twinfeed.model.usual.UsualValues;

/**
 * The readings to take when the work is done, with the bands in which they are accepted: limits of the assessment and of the rule
 * set; where only a value is expected, the value with an allowance for instruments and for what moves from day to day.
 */
final class AcceptanceBands {
    /** Allowance for a resistance measured against one from tables: judgement. */
    static final double RESISTANCE = 0.15;

    /** Allowance for a voltage on another day: judgement, half of what the supply may move. */
    static final double VOLTAGE = 0.04;

    /** Allowance for a flow from a bucket and a watch: judgement. */
    static final double FLOW = 0.10;

    /** Allowance for a temperature set by hand, K: judgement. */
    private static final double TEMPERATURE_K = 2;

    private final DocumentTexts words;
    private final Survey survey;
    private final @Nullable RuleSet rules;

    AcceptanceBands(DocumentTexts words, Survey survey) {
        this.words = words;
        this.survey = survey;
        this.rules = RuleSets.find(survey.getRules() == null ? RuleSets.DEFAULT : survey.getRules())
                .orElse(null);
    }

    /** Electrical readings, dead ones first. */
    List<AcceptanceBand> electrical(OptionAssessment option) {
        return List.of(
                continuity(option),
                rule("insulation", "MΩ", "insulation.resistance", 1e-6, true),
                AcceptanceBand.question("polarity"),
                loop(option),
                rule("trip", "ms", "rcd.trip", 1000, false),
                voltage(option));
    }

    /** Readings of water and heat but the flow, whose band follows from the temperatures of the day. */
    List<AcceptanceBand> water(OptionAssessment option) {
        double target = UsualValues.targetOutletC(survey);
        return List.of(
                pressure(option),
                AcceptanceBand.question("leaks"),
                AcceptanceBand.question("tap"),
                AcceptanceBand.open("intake", "°C", words.get("basis.day")),
                new AcceptanceBand(
                        "outlet",
                        "°C",
                        target - TEMPERATURE_K,
                        target + TEMPERATURE_K,
                        words.get("basis.target", "kelvin", words.number(TEMPERATURE_K))));
    }

    private AcceptanceBand continuity(OptionAssessment option) {
        Optional<Double> expected =
                OfferedFindings.about(option, CheckTopic.LOOP_IMPEDANCE).flatMap(finding -> step(finding, "R12"));
        return expected.isEmpty() || OfferedFindings.unknownAfterWork(option)
                ? AcceptanceBand.open("continuity", "Ω", words.get("basis.unknown"))
                : around("continuity", "Ω", expected.get(), RESISTANCE);
    }

    private static Optional<Double> step(Finding finding, String symbol) {
        return finding.getSteps().stream()
                .filter(step -> symbol.equals(step.getSymbol()) && step.getValue() != null)
                .map(Step::getValue)
                .findFirst();
    }

    private AcceptanceBand around(String key, String unit, double value, double share) {
        String basis = words.get(
                "basis.around", Map.of("value", words.number(value), "unit", unit, "share", words.number(share * 100)));
        return new AcceptanceBand(key, unit, value * (1 - share), value * (1 + share), basis);
    }

    private AcceptanceBand rule(String key, String unit, String number, double factor, boolean least) {
        if (rules == null || !rules.keys().contains(number)) {
            return AcceptanceBand.open(key, unit, words.get("basis.unknown"));
        }
        double limit = rules.number(number) * factor;
        String source = SourceText.in(words.locale()).of(rules.source(number));
        return new AcceptanceBand(key, unit, least ? limit : null, least ? null : limit, source);
    }

    private AcceptanceBand loop(OptionAssessment option) {
        Optional<Finding> finding = OfferedFindings.about(option, CheckTopic.LOOP_IMPEDANCE);
        Optional<Double> limit = finding.map(Finding::getLimit);
        if (limit.isEmpty() || OfferedFindings.unknownAfterWork(option)) {
            return AcceptanceBand.open("loop", "Ω", words.get("basis.unknown"));
        }
        Circuit circuit =
                survey.getElectricity() == null ? null : survey.getElectricity().getCircuit();
        boolean coldAlready = option.getRemedies().isEmpty() && circuit != null && circuit.getMeasuredLoop() != null;
        if (rules != null && LoopByResidual.is(finding.get())) {
            return explained(finding.get(), rules);
        }
        if (coldAlready || rules == null) {
            return new AcceptanceBand("loop", "Ω", null, limit.get(), words.get("basis.check"));
        }
        double share = rules.number("measured.factor");
        return new AcceptanceBand(
                "loop", "Ω", null, limit.get() * share, words.get("basis.cold", "share", words.number(share * 100)));
    }

    /** What the RCD alone lets pass, a lost earth passes too: there the loop has to be what Ze and the conductors make of it. */
    private AcceptanceBand explained(Finding finding, RuleSet rules) {
        double unexplained = rules.number("loop.unexplained");
        return finding.getValue() == null
                ? AcceptanceBand.open("loop", "Ω", words.get("basis.unknown"))
                : new AcceptanceBand(
                        "loop",
                        "Ω",
                        null,
                        finding.getValue() + unexplained,
                        words.get(
                                "basis.explained",
                                Map.of("value", words.number(finding.getValue()), "more", words.number(unexplained))));
    }

    private AcceptanceBand voltage(OptionAssessment option) {
        Optional<Double> expected =
                OfferedFindings.about(option, CheckTopic.TERMINAL_VOLTAGE).map(Finding::getValue);
        return expected.isEmpty() || OfferedFindings.unknownAfterWork(option)
                ? AcceptanceBand.open("voltage", "V", words.get("basis.unknown"))
                : around("voltage", "V", expected.get(), VOLTAGE);
    }

    private AcceptanceBand pressure(OptionAssessment option) {
        Optional<Finding> running = OfferedFindings.about(option, CheckTopic.RUNNING_PRESSURE)
                .filter(finding -> finding.getLimit() != null);
        return running.map(finding -> new AcceptanceBand(
                        "pressure",
                        String.valueOf(finding.getUnit()),
                        finding.getLimit(),
                        null,
                        words.get("basis.instructions")))
                .orElseGet(() -> AcceptanceBand.open("pressure", "bar", words.get("basis.instructions")));
    }
}
