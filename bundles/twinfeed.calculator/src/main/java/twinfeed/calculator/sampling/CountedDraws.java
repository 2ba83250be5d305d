// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

/**
 * All draws of a check that has no margin, or passes without one: they are judged in their order, which spreads them evenly, and it is counted
 * how often the response is wrong, or how many pass, whichever tells more: without a margin a response may be of no use.
 */
final class CountedDraws implements OpenDraws {
    private final double[] predicted;
    private final int predictedPasses;
    private int asked;
    private int passing;
    private int passesMore;
    private int turned;

    /**
     * Draws of none of which the truth is known yet.
     *
     * @param predicted what the response says of each
     */
    CountedDraws(double[] predicted) {
        this.predicted = predicted;
        int count = 0;
        for (double margin : predicted) {
            count += margin >= 0 ? 1 : 0;
        }
        this.predictedPasses = count;
    }

    @Override
    public int next() {
        return asked;
    }

    @Override
    public void learn(int draw, double margin, boolean passes) {
        if (draw == asked) {
            if (passes != (predicted[draw] >= 0)) {
                turned++;
                passesMore += passes ? 1 : -1;
            }
            passing += passes ? 1 : 0;
            asked++;
        }
    }

    @Override
    public double passes() {
        if (turned > fewer()) {
            return (double) passing / asked * predicted.length;
        }
        double correction = asked == 0 ? 0 : (double) passesMore / asked * predicted.length;
        return Math.min(predicted.length, Math.max(0, predictedPasses + correction));
    }

    /** How many of those asked pass, or fail, whichever are fewer. */
    private int fewer() {
        return Math.min(passing, asked - passing);
    }

    /** That of the number of draws in which the truth says otherwise than the response, or than most truths do, one more assumed. */
    @Override
    public double deviation() {
        if (asked == 0) {
            return predicted.length;
        }
        double otherwise = (Math.min(turned, fewer()) + 1.0) / (asked + 2.0);
        double rest = 1 - (double) asked / predicted.length;
        return predicted.length * Math.sqrt(otherwise / asked * rest);
    }
}
