// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.FindingClass;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/**
 * One question that a calculator answers.
 *
 * @param key speaking key, unique over all calculators, for example {@code circuit.voltageDrop}
 * @param kind what the check is about; decides whether a failure rules an option out
 * @param limitType whether the value has to stay at or under the limit, or at or over it; {@link LimitType#REPORT} has no limit
 * @param unit kind of value, limit and margin, which are in SI, and the unit in which they are printed; a bare number where the answer has
 *     no figure
 * @param needs readings without which the answer is "cannot tell", as paths from the survey or the heater, for example
 *     {@code survey.water.test.flow}, {@code survey.electricity.circuit.segments.length}, {@code heater.power}; a path through
 *     a list asks for every element, and for at least one
 * @param topic what it answers, where pages or other bundles look for that answer whoever gives it; else {@link CheckTopic#OTHER}
 */
public record Check(
        String key, FindingClass kind, LimitType limitType, DisplayUnit unit, List<String> needs, CheckTopic topic) {
    public Check {
        needs = List.copyOf(needs);
    }

    /** Whether a failure of this check rules an option out. */
    public boolean deciding() {
        return deciding(kind);
    }

    /** Whether a failure of a check of this class rules an option out; so does one whose class nobody stated. */
    public static boolean deciding(FindingClass kind) {
        return kind != FindingClass.PERFORMANCE && kind != FindingClass.ADVICE;
    }

    /** A figure worth knowing, which has no limit. */
    public static Check report(String key, Kind quantity, String... needs) {
        return of(key, FindingClass.ADVICE, LimitType.REPORT, quantity, needs);
    }

    /** A check of a quantity that is printed in the trade's unit, with needs given one by one. */
    public static Check of(String key, FindingClass kind, LimitType limitType, Kind quantity, String... needs) {
        return of(key, kind, limitType, DisplayUnit.of(quantity), needs);
    }

    /** The same for a quantity that is printed in another unit. */
    public static Check of(String key, FindingClass kind, LimitType limitType, DisplayUnit unit, String... needs) {
        return new Check(key, kind, limitType, unit, List.of(needs), CheckTopic.OTHER);
    }

    /** A question that is answered in words, without a figure. */
    public static Check inWords(String key, FindingClass kind, String... needs) {
        return of(key, kind, LimitType.REPORT, Kind.RATIO, needs);
    }

    /** The same as the answer to a topic that others look for. */
    public Check about(CheckTopic answered) {
        return new Check(key, kind, limitType, unit, needs, answered);
    }

    /** The margin of a value, both in SI: 0 or more passes; exactly 0 where value and limit differ by rounding only. */
    public double margin(double value, double limit) {
        return limitType.margin(value, limit, unit.toSi(LimitType.SLACK_AT_ZERO));
    }
}
