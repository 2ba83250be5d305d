// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks.secondmodel;

import com.hummeling.if97.IF97;

/**
 * Water at one temperature, from IAPWS-IF97 at 0.2 MPa absolute.
 *
 * @param temperatureC degC, above 0
 * @param density kg/m3
 * @param kinematicViscosity m2/s
 * @param enthalpy J/kg
 */
record LiquidWater(double temperatureC, double density, double kinematicViscosity, double enthalpy) {
    /** Standard acceleration of gravity, m/s2 (ISO 80000-3). */
    static final double GRAVITY = 9.80665;

    private static final IF97 IAPWS = new IF97(IF97.UnitSystem.SI);
    private static final double PRESSURE_PA = 0.2e6;

    static LiquidWater at(double temperatureC) {
        double kelvin = temperatureC + 273.15;
        double density = IAPWS.densityPT(PRESSURE_PA, kelvin);
        return new LiquidWater(
                temperatureC,
                density,
                IAPWS.dynamicViscosityPT(PRESSURE_PA, kelvin) / density,
                IAPWS.specificEnthalpyPT(PRESSURE_PA, kelvin));
    }

    /** Temperature of water of an enthalpy, degC. */
    static double temperatureOf(double enthalpy) {
        return Bisection.root(t -> at(t).enthalpy - enthalpy, 0.01, 110);
    }

    /** Pressure of a column, Pa. */
    double columnPa(double heightM) {
        return density * GRAVITY * heightM;
    }
}
