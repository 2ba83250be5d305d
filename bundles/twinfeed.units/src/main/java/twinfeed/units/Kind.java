// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A kind of quantity: what a reading is asked to be. Each kind has one SI unit, in which the program calculates, the
 * spellings that people type, and the unit in which the trade usually writes it.
 */
public enum Kind {
    /** Pressure, Pa; gauge pressure unless the reading's own description says otherwise. */
    PRESSURE("Pa", "bar"),
    /** Volume flow, m3/s. */
    FLOW("m3/s", "L/min"),
    /** Mass flow, kg/s. */
    MASS_FLOW("kg/s", "kg/min"),
    /** Length, m. The bore of a pipe is shown in mm: the caller asks for it. */
    LENGTH("m", "m"),
    /** Area, m2; conductors and bores in mm². */
    AREA("m2", "mm²"),
    /** Temperature, degree Celsius (the one kind that is not kept in its coherent SI unit). */
    TEMPERATURE("degC", "°C"),
    /** Difference of two temperatures, K. */
    TEMPERATURE_DIFFERENCE("K", "K"),
    /** Voltage, V. */
    VOLTAGE("V", "V"),
    /** Current, A. */
    CURRENT("A", "A"),
    /** Power, W. */
    POWER("W", "kW"),
    /** Resistance, and the magnitude of an impedance, ohm. */
    RESISTANCE("ohm", "Ω"),
    /** Length of time, s. */
    DURATION("s", "s"),
    /** Speed of flow, m/s. */
    VELOCITY("m/s", "m/s"),
    /** Energy, J. */
    ENERGY("J", "kWh"),
    /** Mass of a solute by volume of water, kg/m3; hardness in mg/L as calcium carbonate. */
    CONCENTRATION("kg/m3", "mg/L"),
    /** Let-through energy of a protective device, the integral of i² dt, A2s. */
    LET_THROUGH("A2s", "A²s"),
    /** Voltage drop of a cable by current and length, V/(A m). */
    GRADIENT_VOLTAGE("V/(A m)", "mV/A/m"),
    /** Resistance of a conductor by length, ohm/m. */
    GRADIENT_RESISTANCE("ohm/m", "mΩ/m"),
    /** Pressure drop by length, Pa/m. */
    GRADIENT_PRESSURE("Pa/m", "kPa/m"),
    /** A ratio of two like quantities, 1. The only kind that may be written without a unit. */
    RATIO("1", "1");

    private final String symbol;
    private final String displayUnit;
    private @Nullable UnitTable units;
    private @Nullable DisplayUnit usual;

    Kind(String symbol, String displayUnit) {
        this.symbol = symbol;
        this.displayUnit = displayUnit;
    }

    /** The symbol of the unit in which values of this kind are kept, in ASCII ("1" for a ratio). */
    public String symbol() {
        return symbol;
    }

    /** The symbol of the unit in which the trade usually writes this kind ("1", written as nothing, for a ratio). */
    public String displayUnit() {
        return displayUnit;
    }

    /** How many of the SI unit make one of the unit in which the trade writes this kind: 100 000 for bar and pascal. */
    public double siPerDisplayUnit() {
        return display().siInOne();
    }

    /** How many of the unit in which the trade writes this kind make one of the SI unit: 60 000 for L/min and m3/s. */
    public double displayUnitsPerSi() {
        return display().inOneSi();
    }

    /**
     * An expression in the unit in which the trade writes this kind, made of one in SI: {@code m / rho * 60000} of {@code m / rho} for a
     * flow.
     *
     * @param expression a product or quotient, or a sum in brackets
     * @throws IllegalStateException if the two units differ in their zero
     */
    public String inDisplayUnit(String expression) {
        return expression + display().factor(" * ", " / ");
    }

    /**
     * An expression in SI, made of one in the unit in which the trade writes this kind: {@code Q / 60000} of {@code Q} for a flow.
     *
     * @param expression a product or quotient, or a sum in brackets
     * @throws IllegalStateException if the two units differ in their zero
     */
    public String inSi(String expression) {
        return expression + display().factor(" / ", " * ");
    }

    /** A value in SI that is printed in the unit in which the trade writes this kind. */
    public Amount amount(double si) {
        return usual().amount(si);
    }

    /** Built at the first use, as the table of units is. */
    DisplayUnit usual() {
        DisplayUnit known = usual;
        if (known == null) {
            known = DisplayUnit.of(this, displayUnit);
            usual = known;
        }
        return known;
    }

    private TradeUnit display() {
        return find(displayUnit).orElseThrow();
    }

    /** Whether a reading of this kind may be written as a bare number. */
    public boolean mayBeBare() {
        return this == RATIO;
    }

    /** The symbols of the units in which this kind may be written, one for each unit, the most usual first. */
    public List<String> unitSymbols() {
        return units().symbols();
    }

    /** Every spelling that is understood for this kind, the symbol of each unit before its other spellings. */
    public List<String> spellings() {
        return units().spellings();
    }

    /** Whether the text is a spelling of a unit of this kind. */
    public boolean understands(String unit) {
        return find(unit).isPresent();
    }

    Optional<TradeUnit> find(String unit) {
        return units().find(unit);
    }

    /** Built at the first use of this kind only; a race builds the same table twice and does no harm. */
    UnitTable units() {
        UnitTable table = units;
        if (table == null) {
            table = UnitTable.of(this);
            units = table;
        }
        return table;
    }

    /** The lowest value that exists, in SI; only temperature has one. */
    double lowest() {
        return this == TEMPERATURE ? -273.15 : Double.NEGATIVE_INFINITY;
    }

    /** A tolerance of a temperature is a difference of temperatures; of every other kind it is of the same kind. */
    Kind ofTolerance() {
        return this == TEMPERATURE ? TEMPERATURE_DIFFERENCE : this;
    }
}
