// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
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
}
