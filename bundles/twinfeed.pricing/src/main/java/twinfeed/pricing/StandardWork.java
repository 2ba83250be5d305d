// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.List;

/** What jobs need besides the heater and its remedies. */
public final class StandardWork {
    private StandardWork() {}

    /** Price-book codes of what every job, a replacement or some work needs. */
    public static List<String> codes() {
        return WorkRules.standardCodes();
    }
}
