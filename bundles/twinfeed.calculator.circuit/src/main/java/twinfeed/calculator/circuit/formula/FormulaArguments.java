// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.CableSize;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.calculator.rules.Method;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.units.Kind;

/** The arguments of a formula, looked up in the rule set; what is not in a table is refused with what the table has. */
public final class FormulaArguments {
    private final Arguments arguments;
    private final RuleSet rules;

    FormulaArguments(Arguments arguments) {
        this.arguments = arguments;
        String id = arguments.word("rules");
        this.rules = RuleSets.find(id)
                .orElseThrow(() -> FormulaRefusal.of("rules", id, "rules", String.join(", ", RuleSets.ids())));
    }

    RuleSet rules() {
        return rules;
    }

    boolean has(String key) {
        return arguments.has(key) && !(isWord(key) && arguments.word(key).isEmpty());
    }

    private boolean isWord(String key) {
        return List.of("device", "method", "cable").contains(key);
    }

    double si(String key) {
        return arguments.si(key);
    }

    String word(String key) {
        return arguments.word(key);
    }

    /** A number that the rule set has, unless it was given. */
    double ruled(String key, String number) {
        return arguments.si(key, rules.number(number));
    }

    double nominalV() {
        return ruled("nominal", "voltage.nominal");
    }

    double dropLimitV() {
        return ruled("limit", "drop.limit") * nominalV();
    }

    private String cable() {
        String cable = arguments.word("cable");
        if (cable.isEmpty()) {
            return rules.cables().first();
        }
        if (!rules.cables().keys().contains(cable)) {
            throw notRuled("cable", cable, rules.cables().keys());
        }
        return cable;
    }

    CableSize size() {
        double mm2 = SiValues.mm2(arguments.si("size"));
        String cable = cable();
        return rules.cables()
                .find(cable, mm2)
                .orElseThrow(() -> FormulaRefusal.of("size", area(mm2), "size", cable, known(cable)));
    }

    private String known(String cable) {
        return String.join(
                ", ", sizes(cable).stream().map(size -> area(size.sizeMm2())).toList());
    }

    private static String area(double mm2) {
        return CodeNumbers.number(mm2) + " mm²";
    }

    private static ArgumentException notRuled(String argument, String word, Collection<String> known) {
        return FormulaRefusal.of(argument, word, "choice", String.join(", ", known));
    }

    private List<CableSize> sizes(String cable) {
        return rules.cables().sizes(cable);
    }

    /** All sizes of the cable, smallest first. */
    List<CableSize> sizes() {
        return sizes(cable());
    }

    Method method() {
        String key = arguments.word("method");
        return rules.method(key).orElseThrow(() -> notRuled("method", key, rules.methods()));
    }

    /** Tabulated capacity of a size for the method given. */
    double tabulatedA(CableSize size, Method method) {
        OptionalDouble current = size.currentA(method.key());
        if (current.isEmpty()) {
            throw FormulaRefusal.of("size", area(size.sizeMm2()), "rating.method", method.key());
        }
        return current.getAsDouble();
    }

    DeviceKind device() {
        String word = arguments.word("device");
        String key = word.isEmpty() ? rules.text("device.new.kind") : word;
        DeviceKind kind = rules.devices()
                .find(key)
                .orElseThrow(() -> notRuled("device", key, rules.devices().keys()));
        checkRating(word, kind);
        return kind;
    }

    /** Refuses a rating in which a device that was named is not made: its tabulated values would be another's. */
    private void checkRating(String word, DeviceKind kind) {
        boolean given = !word.isEmpty() && arguments.has("rating");
        if (given && !kind.ratings().contains(arguments.si("rating"))) {
            throw FormulaRefusal.of(
                    "rating",
                    CodeNumbers.number(arguments.si("rating")) + " A",
                    "rating.made",
                    kind.title(),
                    String.join(
                                    ", ",
                                    kind.ratings().stream()
                                            .map(CodeNumbers::number)
                                            .toList())
                            + " A");
        }
    }

    /** Voltage drop of the cable, V/(A m): as given, or of the size in the table. */
    double gradientVPerAm() {
        if (arguments.has("gradient")) {
            return arguments.si("gradient");
        }
        need("size", "gradient");
        return size().dropVPerAm();
    }

    /** R1 + R2 of the cable at 20 degC, ohm/m: as given, or of the size and its protective conductor in the tables. */
    double lineOhmPerM() {
        if (arguments.has("line")) {
            return arguments.si("line");
        }
        need("size", "line");
        CableSize size = size();
        double cpcMm2 = arguments.has("cpc") ? SiValues.mm2(arguments.si("cpc")) : size.cpcMm2();
        OptionalDouble cpc = rules.cables().conductorOhmPerM(cpcMm2);
        if (cpc.isEmpty()) {
            throw FormulaRefusal.of("cpc", area(cpcMm2), "conductor");
        }
        return size.lineOhmPerM() + cpc.getAsDouble();
    }

    /** Refuses a call that gives neither of two arguments. */
    void need(String one, String other) {
        if (!has(one) && !has(other)) {
            throw FormulaRefusal.ofCall("either", one, other);
        }
    }

    /** Adds the lines that end in the current Ib: as given, or of a power at its rated voltage. */
    double current(Working.Builder working) {
        need("current", "power");
        if (has("current")) {
            working.input("Ib", "designCurrent", si("current"), "A", "");
        } else {
            working.input("Pr", "ratedPower", si("power"), "W", "")
                    .input("Ur", "ratedVoltage", si("rated"), "V", "")
                    .step("Ib", "designCurrent", "Pr / Ur", "A", "");
        }
        return working.value("Ib");
    }

    /** The cable as one segment of the length given. */
    CableSegment segment(CableSize size, Method method, Factors factors) {
        return new CableSegment(
                si("length"),
                size.dropVPerAm(),
                tabulatedA(size, method),
                factors.ca(),
                factors.cg(),
                factors.ci(),
                factors.cf());
    }

    /** Adds the limit dUmax of the voltage drop and the cable's drop g. */
    Working.Builder addDrop(Working.Builder working, double gradientVPerAm) {
        return working.input("dUmax", "dropLimit", dropLimitV(), "V", rules.source("drop.limit"))
                .input("g", "dropGradient", Kind.GRADIENT_VOLTAGE.amount(gradientVPerAm), rules.tableSource("cables"));
    }

    /** Adds the factors Ca, Cg, Ci and Cf. */
    Factors factors(Working.Builder working, @Nullable Method method) {
        Factors factors = new Factors(
                factor("ca", rules.ambientFactor(si("ambient")), "ambient"),
                factor("cg", rules.groupingFactor(word("layout"), Math.ceil(si("grouped"))), "grouped"),
                arguments.si("ci", method != null && method.insulated() ? 1 : rules.insulationFactor(si("insulated"))),
                arguments.si("cf", device().cableFactor()));
        working.input("Ca", "ambientFactor", factors.ca, "", source("ca", "ambient"))
                .input("Cg", "groupingFactor", factors.cg, "", source("cg", "grouping"))
                .input("Ci", "insulationFactor", factors.ci, "", source("ci", "insulation"))
                .input("Cf", "deviceFactor", factors.cf, "", source("cf", "devices"));
        return factors;
    }

    private double factor(String key, OptionalDouble tabulated, String from) {
        if (arguments.has(key)) {
            return arguments.si(key);
        }
        if (tabulated.isEmpty()) {
            throw FormulaRefusal.ofCall("factor", from, key);
        }
        return tabulated.getAsDouble();
    }

    private String source(String key, String table) {
        return arguments.has(key) ? "" : rules.tableSource(table);
    }

    /** Factors on a cable's capacity. */
    record Factors(double ca, double cg, double ci, double cf) {}
}
