// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/**
 * A quantity that one calculator provides and others consume.
 *
 * @param name unique name, for example {@code power.delivered}
 * @param unit its SI unit
 * @param extent over which conditions it extends
 */
public record SharedQuantity(String name, String unit, Extent extent) {
    /** Over which conditions a quantity extends. */
    public enum Extent {
        /** One value. */
        SINGLE,
        /** A value for each voltage of the grid. */
        VOLTAGE,
        /** A value for each intake temperature of the grid. */
        INTAKE,
        /** A value for each intake and voltage, see {@link Grid#index}. */
        INTAKE_VOLTAGE
    }

    /** Voltage at the heater's terminals, V, for each voltage at the origin. */
    public static final SharedQuantity TERMINAL_VOLTAGE = new SharedQuantity("voltage.terminal", "V", Extent.VOLTAGE);

    /** Power that the heater really takes, W, for each voltage at the origin. */
    public static final SharedQuantity DELIVERED_POWER = new SharedQuantity("power.delivered", "W", Extent.VOLTAGE);

    /** Mass flow that comes out at the target temperature at full power, kg/s; 0 where the intake is as warm as the target. */
    public static final SharedQuantity TARGET_FLOW = new SharedQuantity("flow.target", "kg/s", Extent.INTAKE_VOLTAGE);

    /** Design current of the shower, A. */
    public static final SharedQuantity DESIGN_CURRENT = new SharedQuantity("current.design", "A", Extent.SINGLE);

    /** Least margin of the pressure at the heater's switch over all conditions, Pa; below 0 the heat goes off. */
    public static final SharedQuantity SWITCH_MARGIN = new SharedQuantity("margin.switch", "Pa", Extent.SINGLE);

    /** How many values it has on a grid. */
    public int size(Grid grid) {
        return switch (extent) {
            case SINGLE -> 1;
            case VOLTAGE -> grid.voltageCount();
            case INTAKE -> grid.intakes().size();
            case INTAKE_VOLTAGE -> grid.intakes().size() * grid.voltageCount();
        };
    }
}
