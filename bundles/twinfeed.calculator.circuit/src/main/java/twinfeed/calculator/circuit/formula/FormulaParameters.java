// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.List;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.units.Kind;

/** The parameters that the circuit's formulas share, so that one key always means the same. */
public final class FormulaParameters {
    static final Parameter RULES = Parameter.word("rules", RuleSets.DEFAULT);
    static final Parameter CABLE = Parameter.word("cable", "");
    static final Parameter POWER = Parameter.absent("power", Kind.POWER, 1, 100e3);
    static final Parameter RATED = Parameter.optional("rated", Kind.VOLTAGE, 240, 50, 500);
    static final Parameter SUPPLY = Parameter.optional("supply", Kind.VOLTAGE, 230, 50, 500);
    static final Parameter NOMINAL = Parameter.absent("nominal", Kind.VOLTAGE, 50, 500);
    static final Parameter SIZE = Parameter.required("size", Kind.AREA, 0.5e-6, 1000e-6);
    static final Parameter MAYBE_SIZE = Parameter.absent("size", Kind.AREA, 0.5e-6, 1000e-6);
    static final Parameter CPC = Parameter.absent("cpc", Kind.AREA, 0.5e-6, 1000e-6);
    static final Parameter LENGTH = Parameter.required("length", Kind.LENGTH, 0, 1000);
    static final Parameter CURRENT = Parameter.absent("current", Kind.CURRENT, 0.001, 10_000);
    static final Parameter METHOD = Parameter.word("method", null);
    static final Parameter MAYBE_METHOD = Parameter.word("method", "");
    static final Parameter AMBIENT = Parameter.optional("ambient", Kind.TEMPERATURE, 30, 0, 60);
    static final Parameter GROUPED = Parameter.optional("grouped", Kind.RATIO, 1, 1, 100);
    static final Parameter LAYOUT = Parameter.word("layout", "bunched", "bunched", "single-layer");
    static final Parameter INSULATED = Parameter.optional("insulated", Kind.LENGTH, 0, 0, 1000);
    static final Parameter CA = Parameter.absent("ca", Kind.RATIO, 0.1, 2);
    static final Parameter CG = Parameter.absent("cg", Kind.RATIO, 0.1, 1);
    static final Parameter CI = Parameter.absent("ci", Kind.RATIO, 0.1, 1);
    static final Parameter CF = Parameter.absent("cf", Kind.RATIO, 0.1, 1);
    static final Parameter DEVICE = Parameter.word("device", "");
    static final Parameter RATING = Parameter.required("rating", Kind.CURRENT, 1, 1000);
    static final Parameter MAYBE_RATING = Parameter.absent("rating", Kind.CURRENT, 1, 1000);
    static final Parameter LIMIT = Parameter.absent("limit", Kind.RATIO, 0.001, 0.2);
    static final Parameter GRADIENT = Parameter.absent("gradient", Kind.GRADIENT_VOLTAGE, 1e-5, 1);
    static final Parameter LINE = Parameter.absent("line", Kind.GRADIENT_RESISTANCE, 1e-5, 1);
    static final Parameter ZE = Parameter.optional("ze", Kind.RESISTANCE, 0, 0, 1000);
    static final Parameter OWN_LIMIT = Parameter.absent("zmax", Kind.RESISTANCE, 0.001, 100e3);
    static final Parameter CMIN = Parameter.absent("cmin", Kind.RATIO, 0.5, 1.1);
    static final Parameter MULTIPLE = Parameter.absent("multiple", Kind.RATIO, 1, 100);
    static final Parameter HOT = Parameter.absent("hot", Kind.RATIO, 1, 2);

    /** What makes up the factors on a cable's capacity. */
    static final List<Parameter> FACTORS = List.of(AMBIENT, GROUPED, LAYOUT, INSULATED, CA, CG, CI, CF, DEVICE);

    private FormulaParameters() {}
}
