// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.data;

import java.util.List;

/**
 * Something that can have failed.
 *
 * @param key its key, for example {@code solenoid-valve}; {@link FaultData#SUPPLY} and {@link FaultData#NONE} are no parts of the unit
 * @param weight prior weight, more than 0; only ratios count
 * @param codes price-book codes of its renewal; empty where there is nothing to renew
 * @param reason why the weight is what it is
 */
public record FaultPart(String key, double weight, List<String> codes, String reason) {
    public FaultPart {
        codes = List.copyOf(codes);
    }
}
