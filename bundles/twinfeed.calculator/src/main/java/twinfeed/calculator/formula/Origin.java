// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import twinfeed.model.catalogue.Heater;

/** Origins of lines of workings, see {@link Step#origin()}. */
public final class Origin {
    /** The origin of lines that were taken over from a part that several workings share. */
    public static final String SHARED = "shared";

    /** What the origins of lines of rounds of a search begin with. */
    public static final String ROUND = "round.";

    /** What the origin of a reading begins with whose thing the work renews with the same figure. */
    public static final String RENEWED = "done.";

    public static final String SUPPLY_VOLTAGE = "survey.electricity.supplyVoltage";

    private Origin() {}

    /** A heater's datum. */
    public static String heater(Heater heater, String datum) {
        return "heater[" + (heater.getId() == null ? "" : heater.getId()) + "]." + datum;
    }

    /** A figure of the rule set, or one that follows from it. */
    public static String rule(String key) {
        return "rules." + key;
    }
}
