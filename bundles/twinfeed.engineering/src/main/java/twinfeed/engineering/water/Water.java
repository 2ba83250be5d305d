// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Polynomial;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.numeric.Symbol;

/**
 * Properties of liquid water at 0.2 MPa absolute, from 0 to 100 degC.
 *
 * <p>Polynomials fitted by least largest error to IAPWS-IF97 region 1 at 0.2 MPa absolute (1 bar gauge; liquid up to
 * 120 degC). Largest errors against that formulation over the whole of 0..100 degC, and over 0..60 degC alone: density
 * 0.0024 %, specific heat 0.025 %, dynamic viscosity 0.12 %, kinematic viscosity 0.12 %, specific enthalpy 11 J/kg (the
 * heat of 0.0025 K). At the pressures of a house, 0 to 10 bar gauge, density differs from this by less than 0.05 % (0..60
 * degC) and the heat for a shower by less than 0.3 %.
 *
 * <p>Specific heat is the exact derivative of enthalpy, so that power, flow and temperature computed either way agree.
 *
 * <p>Every property is also given as an expression in a symbol, made from the same coefficients in the same order, with
 * {@code + - * /}, {@code exp} and brackets, so that a working or a spreadsheet recomputes it.
 *
 * <p>Source: IAPWS R7-97(2012), Industrial Formulation 1997; the fit is this project's own and is tested against an
 * independent implementation of the formulation.
 */
public final class Water {
    /** Lowest temperature of the fits, degC. */
    public static final double LOWEST_C = 0;

    /** Highest temperature of the fits, degC. */
    public static final double HIGHEST_C = 100;

    private static final Polynomial DENSITY =
            Polynomial.of("999.9177", "0.05252651", "-0.007562953", "0.0000422567", "-0.000000134193");
    private static final Polynomial ENTHALPY =
            Polynomial.of("160.2", "4217.924", "-1.414955", "0.02313045", "-0.0001767345", "0.0000005910453");
    private static final Polynomial SPECIFIC_HEAT = ENTHALPY.derivative();
    private static final Polynomial LOG_VISCOSITY =
            Polynomial.of("-6.325821", "-0.0341368", "0.0002924516", "-0.000001999399", "0.00000000640538");

    /** A straight line through the enthalpies, at most 0.05 K off: where the search for a temperature starts. */
    private static final double LINE_OFFSET_J_PER_KG = 165;

    private static final double LINE_SLOPE_J_PER_KG_K = 4188.23;

    private Water() {}

    /**
     * Returns the density, kg/m3.
     *
     * @param temperatureC 0..100 degC
     * @throws DomainException outside that range
     */
    public static double density(double temperatureC) {
        return DENSITY.at(requireInRange(temperatureC, "temperatureC"));
    }

    /**
     * Returns the isobaric specific heat, J/(kg K).
     *
     * @param temperatureC 0..100 degC
     * @throws DomainException outside that range
     */
    public static double specificHeat(double temperatureC) {
        return SPECIFIC_HEAT.at(requireInRange(temperatureC, "temperatureC"));
    }

    /**
     * Returns the specific enthalpy, J/kg; zero is that of IAPWS-IF97 (liquid at the triple point, nearly).
     *
     * @param temperatureC 0..100 degC
     * @throws DomainException outside that range
     */
    public static double enthalpy(double temperatureC) {
        return ENTHALPY.at(requireInRange(temperatureC, "temperatureC"));
    }

    /**
     * Returns the dynamic viscosity, Pa s.
     *
     * @param temperatureC 0..100 degC
     * @throws DomainException outside that range
     */
    public static double dynamicViscosity(double temperatureC) {
        return Math.exp(LOG_VISCOSITY.at(requireInRange(temperatureC, "temperatureC")));
    }

    /**
     * Returns the kinematic viscosity, m2/s.
     *
     * @param temperatureC 0..100 degC
     * @throws DomainException outside that range
     */
    public static double kinematicViscosity(double temperatureC) {
        return dynamicViscosity(temperatureC) / density(temperatureC);
    }

    /**
     * Returns the temperature, degC, at which water has the given enthalpy: the inverse of {@link #enthalpy}.
     *
     * <p>A straight line gives the start, two Newton steps the answer, to rounding. The steps are the same as those of
     * {@link #temperatureStartExpression} and {@link #temperatureStepExpression} (twice).
     *
     * @param enthalpyJPerKg specific enthalpy, J/kg, finite
     * @return the temperature, or {@link FailureReason#OUTSIDE_WATER_RANGE} below 0 and above 100 degC
     */
    public static Solution temperatureAtEnthalpy(double enthalpyJPerKg) {
        Require.finite(enthalpyJPerKg, "enthalpyJPerKg");
        if (enthalpyJPerKg < ENTHALPY.at(LOWEST_C) || enthalpyJPerKg > ENTHALPY.at(HIGHEST_C)) {
            return Solution.none(FailureReason.OUTSIDE_WATER_RANGE);
        }
        double start = (enthalpyJPerKg - LINE_OFFSET_J_PER_KG) / LINE_SLOPE_J_PER_KG_K;
        double temperatureC = temperatureStep(enthalpyJPerKg, temperatureStep(enthalpyJPerKg, start));
        return Solution.of(Math.min(Math.max(temperatureC, LOWEST_C), HIGHEST_C));
    }

    private static double temperatureStep(double enthalpyJPerKg, double nearC) {
        return nearC - (ENTHALPY.at(nearC) - enthalpyJPerKg) / SPECIFIC_HEAT.at(nearC);
    }

    /** Returns {@link #density} as an expression in the given symbol, degC. */
    public static String densityExpression(String symbol) {
        return DENSITY.expression(Symbol.checked(symbol));
    }

    /** Returns {@link #specificHeat} as an expression in the given symbol, degC. */
    public static String specificHeatExpression(String symbol) {
        return SPECIFIC_HEAT.expression(Symbol.checked(symbol));
    }

    /** Returns {@link #enthalpy} as an expression in the given symbol, degC. */
    public static String enthalpyExpression(String symbol) {
        return ENTHALPY.expression(Symbol.checked(symbol));
    }

    /** Returns {@link #dynamicViscosity} as an expression in the given symbol, degC. */
    public static String dynamicViscosityExpression(String symbol) {
        return "exp(" + LOG_VISCOSITY.expression(Symbol.checked(symbol)) + ")";
    }

    /** Returns the start of {@link #temperatureAtEnthalpy} as an expression in the symbol of an enthalpy, J/kg. */
    public static String temperatureStartExpression(String enthalpySymbol) {
        return "(" + Symbol.checked(enthalpySymbol) + " - " + LINE_OFFSET_J_PER_KG + ") / " + LINE_SLOPE_J_PER_KG_K;
    }

    /**
     * Returns one step of {@link #temperatureAtEnthalpy} as an expression in the symbols of an enthalpy, J/kg, and of the
     * temperature before the step, degC. Two steps after the start give the temperature.
     */
    public static String temperatureStepExpression(String enthalpySymbol, String nearSymbol) {
        return Symbol.checked(nearSymbol) + " - (" + enthalpyExpression(nearSymbol) + " - "
                + Symbol.checked(enthalpySymbol) + ") / (" + specificHeatExpression(nearSymbol) + ")";
    }

    /** The temperature unchanged, if liquid water's properties are known at it. */
    static double requireInRange(double temperatureC, String argument) {
        if (Require.finite(temperatureC, argument) < LOWEST_C || temperatureC > HIGHEST_C) {
            throw new DomainException(FailureReason.OUTSIDE_WATER_RANGE, argument, temperatureC);
        }
        return temperatureC;
    }
}
