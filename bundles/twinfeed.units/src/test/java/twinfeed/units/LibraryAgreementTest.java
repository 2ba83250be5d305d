// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.AbstractUnit;

/**
 * Every unit of every kind against the unit that indriya builds from its own base units and prefixes. The factors here
 * are written as products of definitions (pound, foot, gallon, standard gravity), the ones in the program as fractions.
 */
class LibraryAgreementTest {
    private static final double ULPS = 2;
    private static final double[] MAGNITUDES = {1, 3, 0.05, 15, 123.456, 1e-6, 9.87e5};

    private static final Unit<?> INCH = METRE.multiply(254).divide(10000);
    private static final Unit<?> FOOT = INCH.multiply(12);
    private static final Unit<?> GRAVITY =
            METRE_PER_SQUARE_SECOND.multiply(980665).divide(100000);
    private static final Unit<?> POUND_FORCE =
            KILOGRAM.multiply(45359237).divide(100000000).multiply(GRAVITY);
    private static final Unit<?> WATER = KILOGRAM.divide(CUBIC_METRE).multiply(1000);
    private static final Unit<?> US_GALLON = INCH.pow(3).multiply(231);
    private static final Unit<?> IMPERIAL_GALLON = LITRE.multiply(454609).divide(100000);
    private static final Unit<?> FAHRENHEIT_STEP = KELVIN.multiply(5).divide(9);
    private static final Unit<?> BAR = PASCAL.multiply(100000);
    private static final Map<Kind, Map<String, Unit<?>>> LIBRARY = library();

    static List<Arguments> everyUnit() {
        List<Arguments> all = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (String symbol : kind.unitSymbols()) {
                all.add(Arguments.of(kind, symbol));
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("everyUnit")
    void agreesWithTheLibrary(Kind kind, String symbol) throws IncommensurableException {
        Unit<?> unit = counterpart(kind, symbol);
        Unit<?> si = counterpart(kind, siSymbol(kind));
        for (double magnitude : MAGNITUDES) {
            double expected = unit.getConverterToAny(si).convert(magnitude);
            double actual = Typed.si(kind, magnitude, symbol);
            assertEquals(expected, actual, tolerance(kind, expected), magnitude + " " + symbol);
            double back = si.getConverterToAny(unit).convert(actual);
            assertEquals(
                    back, Quantities.toUnit(kind, actual, symbol), tolerance(kind, back), magnitude + " " + symbol);
        }
    }

    private static Unit<?> counterpart(Kind kind, String symbol) {
        Map<String, Unit<?>> units = Objects.requireNonNull(LIBRARY.get(kind), kind.name());
        return Objects.requireNonNull(units.get(symbol), symbol + " has no counterpart in this test");
    }

    /** A temperature passes through kelvin in the library, which costs the ulp of some 273 K. */
    private static double tolerance(Kind kind, double expected) {
        return kind == Kind.TEMPERATURE ? 1e-12 + Math.ulp(expected) * ULPS : Math.ulp(expected) * ULPS;
    }

    private static String siSymbol(Kind kind) {
        return kind.find(kind.symbol()).orElseThrow().symbol();
    }

    private static Map<Kind, Map<String, Unit<?>>> library() {
        Map<Kind, Map<String, Unit<?>>> all = new HashMap<>();
        all.put(
                Kind.PRESSURE,
                Map.of(
                        "Pa", PASCAL,
                        "hPa", HECTO(PASCAL),
                        "kPa", KILO(PASCAL),
                        "MPa", MEGA(PASCAL),
                        "bar", BAR,
                        "mbar", BAR.divide(1000),
                        "psi", POUND_FORCE.divide(INCH.pow(2)),
                        "m head", WATER.multiply(GRAVITY).multiply(METRE),
                        "ft head", WATER.multiply(GRAVITY).multiply(FOOT)));
        all.put(
                Kind.FLOW,
                Map.of(
                        "m³/s", CUBIC_METRE.divide(SECOND),
                        "m³/h", CUBIC_METRE.divide(HOUR),
                        "L/min", LITRE.divide(MINUTE),
                        "L/s", LITRE.divide(SECOND),
                        "L/h", LITRE.divide(HOUR),
                        "US gpm", US_GALLON.divide(MINUTE),
                        "imp gpm", IMPERIAL_GALLON.divide(MINUTE)));
        all.put(
                Kind.MASS_FLOW,
                Map.of(
                        "kg/s", KILOGRAM.divide(SECOND),
                        "kg/min", KILOGRAM.divide(MINUTE),
                        "kg/h", KILOGRAM.divide(HOUR),
                        "g/s", GRAM.divide(SECOND)));
        all.put(
                Kind.LENGTH,
                Map.of(
                        "m", METRE,
                        "mm", MILLI(METRE),
                        "cm", CENTI(METRE),
                        "km", KILO(METRE),
                        "µm", MICRO(METRE),
                        "ft", FOOT,
                        "in", INCH));
        all.put(
                Kind.AREA,
                Map.of(
                        "m²",
                        SQUARE_METRE,
                        "mm²",
                        MILLI(METRE).pow(2),
                        "cm²",
                        CENTI(METRE).pow(2)));
        all.put(
                Kind.TEMPERATURE,
                Map.of(
                        "°C",
                        CELSIUS,
                        "K",
                        KELVIN,
                        "°F",
                        KELVIN.multiply(5).divide(9).shift(45967.0 / 100)));
        all.put(Kind.TEMPERATURE_DIFFERENCE, Map.of("K", KELVIN, "°F", FAHRENHEIT_STEP));
        all.put(Kind.VOLTAGE, Map.of("V", VOLT, "mV", MILLI(VOLT), "kV", KILO(VOLT)));
        all.put(Kind.CURRENT, Map.of("A", AMPERE, "mA", MILLI(AMPERE), "kA", KILO(AMPERE)));
        all.put(Kind.POWER, Map.of("W", WATT, "kW", KILO(WATT)));
        all.put(Kind.RESISTANCE, Map.of("Ω", OHM, "mΩ", MILLI(OHM), "kΩ", KILO(OHM), "MΩ", MEGA(OHM), "GΩ", GIGA(OHM)));
        all.put(Kind.DURATION, Map.of("s", SECOND, "ms", MILLI(SECOND), "min", MINUTE, "h", HOUR, "d", DAY));
        all.put(
                Kind.VELOCITY,
                Map.of(
                        "m/s", METRE.divide(SECOND),
                        "mm/s", MILLI(METRE).divide(SECOND),
                        "km/h", KILO(METRE).divide(HOUR),
                        "ft/s", FOOT.divide(SECOND)));
        all.put(
                Kind.ENERGY,
                Map.of(
                        "J", JOULE,
                        "kJ", KILO(JOULE),
                        "MJ", MEGA(JOULE),
                        "Wh", WATT.multiply(HOUR),
                        "kWh", KILO(WATT).multiply(HOUR)));
        all.put(
                Kind.CONCENTRATION,
                Map.of(
                        "kg/m³", KILOGRAM.divide(CUBIC_METRE),
                        "g/m³", GRAM.divide(CUBIC_METRE),
                        "g/L", GRAM.divide(LITRE),
                        "mg/L", MILLI(GRAM).divide(LITRE)));
        all.put(Kind.LET_THROUGH, Map.of("A²s", AMPERE.pow(2).multiply(SECOND)));
        all.put(
                Kind.GRADIENT_VOLTAGE,
                Map.of(
                        "V/(A m)", VOLT.divide(AMPERE.multiply(METRE)),
                        "mV/A/m", MILLI(VOLT).divide(AMPERE).divide(METRE)));
        all.put(
                Kind.GRADIENT_RESISTANCE,
                Map.of(
                        "Ω/m", OHM.divide(METRE),
                        "mΩ/m", MILLI(OHM).divide(METRE),
                        "Ω/km", OHM.divide(KILO(METRE))));
        all.put(
                Kind.GRADIENT_PRESSURE,
                Map.of(
                        "Pa/m", PASCAL.divide(METRE),
                        "kPa/m", KILO(PASCAL).divide(METRE),
                        "mbar/m", BAR.divide(1000).divide(METRE),
                        "bar/m", BAR.divide(METRE),
                        "m head/m", WATER.multiply(GRAVITY)));
        all.put(Kind.RATIO, Map.of("1", AbstractUnit.ONE, "%", PERCENT));
        return all;
    }
}
