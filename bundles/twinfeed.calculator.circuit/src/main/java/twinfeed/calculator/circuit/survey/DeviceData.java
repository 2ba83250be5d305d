// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.ProtectiveDevice;

/**
 * The circuit's protective device as the survey has it.
 *
 * @param known whether the survey has one at all
 * @param word its kind as the survey calls it, empty if unset
 * @param kind its kind, absent if unset or unknown to the rule set
 * @param ratingA In, A
 * @param breakingA breaking capacity, A
 * @param letThroughA2s energy let-through, A2s
 */
public record DeviceData(
        boolean known,
        String word,
        @Nullable DeviceKind kind,
        @Nullable Double ratingA,
        @Nullable Double breakingA,
        @Nullable Double letThroughA2s) {

    public static DeviceData of(@Nullable ProtectiveDevice device, RuleSet rules) {
        if (device == null) {
            return new DeviceData(false, "", null, null, null, null);
        }
        String word = device.getKind() == null ? "" : device.getKind();
        return new DeviceData(
                true,
                word,
                rules.devices().find(word).orElse(null),
                positive(SiValues.of(device.getRating())),
                SiValues.of(device.getBreakingCapacity()),
                SiValues.of(device.getLetThrough()));
    }

    /** A rating of zero is no rating; the checks then say that it is missing instead of dividing by it. */
    private static @Nullable Double positive(@Nullable Double value) {
        return value != null && value > 0 ? value : null;
    }

    /** Factor that the device puts on the cable; 1 for an unknown one. */
    public double cableFactor() {
        return kind == null ? 1 : kind.cableFactor();
    }

    /** Origin of its rating in workings; of a fuse it is none, for its rating picks a line of a table, which only the program does. */
    public String ratingOrigin() {
        return kind != null && kind.multiple().isPresent() ? ReadingPaths.DEVICE_RATING : "";
    }

    public boolean family(DeviceKind.Family family) {
        return kind != null && kind.family() == family;
    }
}
