// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

/** Readings as a person types them. */
final class Typed {
    private Typed() {}

    /** The SI value of a number typed with its unit; a ratio has none. */
    static double si(Kind kind, double number, String unit) {
        return Quantities.parse(kind, unit.equals("1") ? String.valueOf(number) : number + " " + unit)
                .si();
    }
}
