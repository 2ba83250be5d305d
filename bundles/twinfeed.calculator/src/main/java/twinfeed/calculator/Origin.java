// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import twinfeed.model.catalogue.Heater;

/** Origins of inputs of workings, see {@link Step#origin()}. */
public final class Origin {
    public static final String SUPPLY_VOLTAGE = "survey.electricity.supplyVoltage";

    private Origin() {}

    /** A heater's datum. */
    public static String heater(Heater heater, String datum) {
        return "heater[" + (heater.getId() == null ? "" : heater.getId()) + "]." + datum;
    }

    /** An intake temperature: the reading of the winter, or a month's figure of the climate. */
    public static String intake(Intake intake) {
        return intake.design() ? "survey.winterIntake" : "climate.month." + intake.month();
    }

    /** A figure of the rule set, or one that follows from it. */
    public static String rule(String key) {
        return "rules." + key;
    }
}
