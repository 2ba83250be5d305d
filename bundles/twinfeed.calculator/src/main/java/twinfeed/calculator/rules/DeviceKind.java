// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A kind of overcurrent protective device.
 *
 * @param key key as surveys name it
 * @param title what it is
 * @param family whether it is a breaker, a breaker with residual-current protection or a fuse
 * @param multiple current that trips it at once over its rating; empty where it has no instant trip
 * @param cableFactor factor that it puts on the capacity of the cable behind it, 1 for most
 * @param ratings ratings in which it is made, A, smallest first
 */
public record DeviceKind(
        String key, String title, Family family, OptionalDouble multiple, double cableFactor, List<Double> ratings) {
    public DeviceKind {
        ratings = ratings.stream().sorted().toList();
    }

    /** What a device is, as far as its replacement goes. */
    public enum Family {
        /** Circuit-breaker. */
        BREAKER,
        /** Circuit-breaker with residual-current protection. */
        RCBO,
        /** Fuse. */
        FUSE
    }
}
