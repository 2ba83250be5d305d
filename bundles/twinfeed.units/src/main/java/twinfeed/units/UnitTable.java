// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static twinfeed.units.TradeUnit.scaled;
import static twinfeed.units.TradeUnit.shifted;
import static twinfeed.units.TradeUnit.si;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The units of one kind and their spellings.
 *
 * <p>Factors are exact by definition: the international foot and pound (1959), the US gallon of 231 cubic inches, the
 * imperial gallon of 4.54609 L, standard gravity 9.80665 m/s2, the conventional water column of 1000 kg/m3
 * (NIST Special Publication 811, 2008, appendix B).
 *
 * <p>Left out on purpose: a plain "gpm", which is US or imperial by country, and "kA2s", which the rules of SI read as
 * 1e6 A2s and many data sheets as 1e3 A2s.
 */
final class UnitTable {
    private final List<TradeUnit> units;
    private final Map<String, TradeUnit> bySpelling = new LinkedHashMap<>();

    private UnitTable(List<TradeUnit> units) {
        this.units = units;
        for (TradeUnit unit : units) {
            bySpelling.put(Spelling.key(unit.symbol()), unit);
            for (String alias : unit.aliases()) {
                bySpelling.put(Spelling.key(alias), unit);
            }
        }
    }

    static UnitTable of(Kind kind) {
        return new UnitTable(
                switch (kind) {
                    case PRESSURE -> pressure();
                    case FLOW -> flow();
                    case MASS_FLOW -> massFlow();
                    case LENGTH -> length();
                    case AREA -> area();
                    case TEMPERATURE -> temperature();
                    case TEMPERATURE_DIFFERENCE -> temperatureDifference();
                    case VOLTAGE ->
                        List.of(si("V", "volt", "volts"), scaled("mV", "1", "1000"), scaled("kV", "1000", "1"));
                    case CURRENT ->
                        List.of(si("A", "amp", "amps"), scaled("mA", "1", "1000"), scaled("kA", "1000", "1"));
                    case POWER -> List.of(scaled("kW", "1000", "1"), si("W", "watt", "watts"));
                    case RESISTANCE -> resistance();
                    case DURATION -> duration();
                    case VELOCITY ->
                        List.of(
                                si("m/s"),
                                scaled("mm/s", "1", "1000"),
                                scaled("km/h", "5", "18"),
                                scaled("ft/s", "3048", "10000"));
                    case ENERGY -> energy();
                    case CONCENTRATION -> concentration();
                    case LET_THROUGH -> List.of(si("A²s", "A² s", "A²·s"));
                    case GRADIENT_VOLTAGE -> gradientVoltage();
                    case GRADIENT_RESISTANCE -> gradientResistance();
                    case GRADIENT_PRESSURE -> gradientPressure();
                    case RATIO -> List.of(si("1"), scaled("%", "1", "100", "percent"));
                });
    }

    List<TradeUnit> units() {
        return units;
    }

    List<String> symbols() {
        return units.stream().map(TradeUnit::symbol).toList();
    }

    List<String> spellings() {
        List<String> all = new ArrayList<>();
        for (TradeUnit unit : units) {
            all.add(unit.symbol());
            all.addAll(unit.aliases());
        }
        return List.copyOf(all);
    }

    /** The unit that is meant by a spelling as written, or with another case of letters where that is clear. */
    Optional<TradeUnit> find(String typed) {
        TradeUnit exact = bySpelling.get(Spelling.key(typed));
        return exact != null ? Optional.of(exact) : findIgnoringCase(typed);
    }

    private Optional<TradeUnit> findIgnoringCase(String typed) {
        Spelling spelling = new Spelling(typed);
        Optional<TradeUnit> found = Optional.empty();
        boolean clear = false;
        for (Map.Entry<String, TradeUnit> entry : bySpelling.entrySet()) {
            if (!spelling.isLike(entry.getKey())) {
                continue;
            }
            if (found.isPresent() && found.get() != entry.getValue()) {
                return Optional.empty();
            }
            found = Optional.of(entry.getValue());
            clear |= spelling.hasEveryMOf(entry.getKey());
        }
        return clear ? found : Optional.empty();
    }

    /** The spellings that differ from what was typed in the case of letters only. */
    List<String> ignoringCase(String typed) {
        Spelling spelling = new Spelling(typed);
        return spellings().stream().filter(spelling::isLike).toList();
    }

    private static List<TradeUnit> pressure() {
        return List.of(
                scaled("bar", "100000", "1"),
                scaled("kPa", "1000", "1"),
                scaled("mbar", "100", "1"),
                si("Pa"),
                scaled("MPa", "1000000", "1"),
                scaled("hPa", "100", "1"),
                scaled("psi", "44482216152605", "6451600000", "lbf/in²"),
                scaled("m head", "980665", "100", "m of head", "mH2O", "m H2O", "m water"),
                scaled("ft head", "298906692", "100000", "ft of head", "ftH2O", "ft H2O"));
    }

    private static List<TradeUnit> flow() {
        return List.of(
                scaled("L/min", "1", "60000", "lpm", "litre/min", "litres/min"),
                scaled("L/s", "1", "1000", "litre/s", "litres/s"),
                scaled("L/h", "1", "3600000"),
                scaled("m³/h", "1", "3600"),
                si("m³/s"),
                scaled("US gpm", "3785411784", "60000000000000", "US gal/min"),
                scaled("imp gpm", "454609", "6000000000", "imp gal/min", "UK gpm", "UK gal/min"));
    }

    private static List<TradeUnit> massFlow() {
        return List.of(
                scaled("kg/min", "1", "60"), si("kg/s"), scaled("kg/h", "1", "3600"), scaled("g/s", "1", "1000"));
    }

    private static List<TradeUnit> length() {
        return List.of(
                si("m", "metre", "metres"),
                scaled("mm", "1", "1000"),
                scaled("cm", "1", "100"),
                scaled("km", "1000", "1"),
                scaled("µm", "1", "1000000", "um"),
                scaled("ft", "3048", "10000", "foot", "feet"),
                scaled("in", "254", "10000", "inch", "inches"));
    }

    private static List<TradeUnit> area() {
        return List.of(scaled("mm²", "1", "1000000", "sq mm"), scaled("cm²", "1", "10000"), si("m²", "sq m"));
    }

    private static List<TradeUnit> temperature() {
        return List.of(
                si("°C", "C", "degC", "deg C"),
                shifted("K", "-273.15", "1", "1"),
                shifted("°F", "-32", "5", "9", "F", "degF", "deg F"));
    }

    private static List<TradeUnit> temperatureDifference() {
        return List.of(si("K", "°C", "C", "degC", "deg C"), scaled("°F", "5", "9", "F", "degF", "deg F"));
    }

    private static List<TradeUnit> resistance() {
        return List.of(
                si("Ω", "ohm", "ohms"),
                scaled("mΩ", "1", "1000", "mohm", "mOhm"),
                scaled("kΩ", "1000", "1", "kohm", "kOhm"),
                scaled("MΩ", "1000000", "1", "Mohm", "MOhm"),
                scaled("GΩ", "1000000000", "1", "Gohm"));
    }

    private static List<TradeUnit> duration() {
        return List.of(
                si("s", "sec", "second", "seconds"),
                scaled("ms", "1", "1000"),
                scaled("min", "60", "1", "minute", "minutes"),
                scaled("h", "3600", "1", "hr", "hour", "hours"),
                scaled("d", "86400", "1", "day", "days"));
    }

    private static List<TradeUnit> energy() {
        return List.of(
                scaled("kWh", "3600000", "1"),
                scaled("Wh", "3600", "1"),
                si("J"),
                scaled("kJ", "1000", "1"),
                scaled("MJ", "1000000", "1"));
    }

    /** A part per million of water is one milligram by litre: the reports of water suppliers use both for hardness. */
    private static List<TradeUnit> concentration() {
        return List.of(
                scaled("mg/L", "1", "1000", "ppm"), scaled("g/L", "1", "1"), si("kg/m³"), scaled("g/m³", "1", "1000"));
    }

    private static List<TradeUnit> gradientVoltage() {
        return List.of(scaled("mV/A/m", "1", "1000", "mV/(A m)", "mV/(A·m)"), si("V/(A m)", "V/A/m", "V/(A·m)"));
    }

    private static List<TradeUnit> gradientResistance() {
        return List.of(
                scaled("mΩ/m", "1", "1000", "mohm/m"), scaled("Ω/km", "1", "1000", "ohm/km"), si("Ω/m", "ohm/m"));
    }

    private static List<TradeUnit> gradientPressure() {
        return List.of(
                scaled("kPa/m", "1000", "1"),
                si("Pa/m"),
                scaled("mbar/m", "100", "1"),
                scaled("bar/m", "100000", "1"),
                scaled("m head/m", "980665", "100"));
    }
}
