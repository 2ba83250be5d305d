// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import twinfeed.engineering.pipe.Outlet;

/** The feed with some taps open. */
interface TapNetwork {
    /** Pressure at the unit's inlet, Pa, while the unit takes a flow, m3/s; below 0 the supply cannot give it. */
    double inletPa(double flowM3PerS);

    /** Flow, m3/s, through a unit that is an outlet. */
    double flowThrough(Outlet unit);
}
