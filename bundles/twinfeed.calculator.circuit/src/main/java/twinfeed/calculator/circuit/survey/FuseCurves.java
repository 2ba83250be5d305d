// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.engineering.cable.FuseCurve;

/** The time/current characteristics of a rule set's fuses: a tabulated loop impedance and its time are a current and its time. */
public final class FuseCurves {
    private FuseCurves() {}

    /** The curve of the circuit's device; absent for a breaker, and where the rule set has fewer than two points of it. */
    static @Nullable FuseCurve of(RuleSet rules, @Nullable DeviceKind kind, @Nullable Double ratingA) {
        return kind == null || ratingA == null || kind.family() != DeviceKind.Family.FUSE
                ? null
                : of(rules, kind.key(), ratingA);
    }

    /** The curve of the circuit's device; absent for a breaker, and where the rule set has fewer than two points of it. */
    public static @Nullable FuseCurve of(RuleSet rules, DeviceData device) {
        return of(rules, device.kind(), device.ratingA());
    }

    /** The curve of a kind of fuse and a rating, A; absent where the rule set has fewer than two points of it. */
    public static @Nullable FuseCurve of(RuleSet rules, String kind, double ratingA) {
        SortedMap<Double, Double> loops = rules.devices().tabulatedLoopsOhm(kind, ratingA);
        if (loops.size() < 2) {
            return null;
        }
        double leastV = rules.number("cmin") * rules.number("voltage.nominal");
        Map<Double, Double> currents = new TreeMap<>();
        loops.forEach((timeS, ohm) -> currents.put(timeS, leastV / ohm));
        return new FuseCurve(currents);
    }
}
