// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.OptionalDouble;

/** Sizes of what a change of circuit depends on: tails, earthing conductor, main bonding. */
public final class Earthing {
    private final StepTable tails;
    private final StepTable bonding;
    private final StepTable conductor;
    private final double sameUpToMm2;

    Earthing(Table tails, Table bonding, Table earthing) {
        this.tails = StepTable.of(tails, "fuse", "tails");
        this.bonding = StepTable.of(bonding, "neutral", "bonding");
        java.util.Map<Double, Double> larger = new java.util.TreeMap<>();
        double same = 0;
        for (TableRow row : earthing.typed()) {
            if (row.text("conductor").isEmpty()) {
                same = Math.max(same, row.positive("line"));
            } else {
                larger.put(row.positive("line"), row.positive("conductor"));
            }
        }
        this.conductor = new StepTable(larger);
        this.sameUpToMm2 = same;
    }

    /** Smallest tails, mm2, for a service fuse, A; empty beyond the table. */
    public OptionalDouble tailsMm2(double fuseA) {
        return tails.at(fuseA);
    }

    /** The expression of a working that gives the tails for the symbol of a service fuse, A. */
    public String tailsExpression(String fuse) {
        return tails.expression(fuse);
    }

    /** The expression of a working that gives the main bonding for the symbol of the supply's neutral, mm2. */
    public String bondingExpression(String neutral) {
        return bonding.expression(neutral);
    }

    /** The expression of a working that gives the protective conductor for the symbol of the line conductor, mm2. */
    public String conductorExpression(String line) {
        return "if(" + line + " <= " + StepTable.number(sameUpToMm2) + ", " + line + ", " + conductor.expression(line)
                + ")";
    }

    /** Smallest main bonding conductor, mm2, by the supply's neutral, mm2, with a combined neutral and earth. */
    public OptionalDouble bondingMm2(double neutralMm2) {
        return bonding.at(neutralMm2);
    }

    /** Smallest protective conductor, mm2, by the line conductor, mm2, without a calculation; empty beyond the table. */
    public OptionalDouble conductorMm2(double lineMm2) {
        return lineMm2 <= sameUpToMm2 ? OptionalDouble.of(lineMm2) : conductor.at(lineMm2);
    }
}
