// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.engineering.cable.Protection;

/** The largest loop impedance with which a device disconnects in time. */
public final class LoopLimit {
    private LoopLimit() {}

    /**
     * Largest Zs with warm conductors, ohm; absent where neither the rule nor a table of the rule set gives it. For breakers the
     * instant trip is taken, which holds for every disconnection time of the rules.
     */
    public static @Nullable Double ohm(RuleSet rules, DeviceKind kind, double ratingA) {
        if (kind.multiple().isPresent()) {
            return Protection.maxLoopImpedanceOhm(
                    kind.multiple().getAsDouble(), ratingA, rules.number("voltage.nominal"), rules.number("cmin"));
        }
        double timeS = rules.disconnectionS(ratingA, false);
        OptionalDouble tabulated = rules.devices().tabulatedLoopOhm(kind.key(), ratingA, timeS);
        return tabulated.isPresent() ? Double.valueOf(tabulated.getAsDouble()) : null;
    }

    /** Adds the lines that end in the limit: by the rule for a breaker, and the figure of the table for a fuse. */
    public static void working(Working.Builder working, CircuitSurvey survey, double limitOhm, double share) {
        RuleSet rules = survey.rules();
        DeviceKind kind = survey.device().kind();
        Double ratingA = survey.device().ratingA();
        if (kind == null || ratingA == null || kind.multiple().isEmpty()) {
            working.input("Zt", "loopLimit", limitOhm, "Ω", rules.tableSource("loop"));
        } else {
            working.input("In", "deviceRating", ratingA, "A", "", ReadingPaths.DEVICE_RATING)
                    .input("m", "tripMultiple", kind.multiple().getAsDouble(), "", rules.tableSource("devices"))
                    .rule("U0", "nominalVoltage", rules, "voltage.nominal", "V")
                    .rule("Cmin", "leastVoltageFactor", rules, "cmin", "")
                    .step("Zt", "loopLimit", "Cmin * U0 / (m * In)", "Ω", survey.cite("loop"));
        }
        if (share == 1) {
            working.step(LimitType.SYMBOL, "loopLimit", "Zt", "Ω", "");
        } else {
            working.rule("sm", "measuredShare", rules, "measured.factor", "")
                    .step(LimitType.SYMBOL, "measuredLimit", "sm * Zt", "Ω", "");
        }
    }
}
