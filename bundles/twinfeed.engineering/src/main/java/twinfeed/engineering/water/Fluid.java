// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.Require;

/**
 * What flows in a pipe: density and viscosity, both constant along the pipe.
 *
 * @param densityKgPerM3 density, kg/m3, positive
 * @param kinematicViscosityM2PerS kinematic viscosity, m2/s, positive
 */
public record Fluid(double densityKgPerM3, double kinematicViscosityM2PerS) {
    /** Standard acceleration of free fall, m/s2 (ISO 80000-3, exact by convention). */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    /** Checks the ranges. */
    public Fluid {
        Require.positive(densityKgPerM3, "densityKgPerM3");
        Require.positive(kinematicViscosityM2PerS, "kinematicViscosityM2PerS");
    }

    /**
     * Returns water at a temperature, by {@link Water}.
     *
     * @param temperatureC 0..100 degC
     * @throws DomainException outside that range
     */
    public static Fluid waterAt(double temperatureC) {
        return new Fluid(Water.density(temperatureC), Water.kinematicViscosity(temperatureC));
    }

    /** Returns the pressure, Pa, of a column of this fluid; negative for a negative height. */
    public double pressureOfHead(double headM) {
        return Require.result(densityKgPerM3 * GRAVITY_M_PER_S2 * Require.finite(headM, "headM"));
    }

    /** Returns the height, m, of the column of this fluid that has the given pressure. */
    public double headOfPressure(double pressurePa) {
        return Require.result(Require.finite(pressurePa, "pressurePa") / (densityKgPerM3 * GRAVITY_M_PER_S2));
    }
}
