// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.pipe.PipeSegment;

/**
 * The water feed as the calculations see it: a supply curve at the gauge's pipe, pipes on to the unit, and taps on the way.
 * Pipes ahead of the gauge are in the curve already and are not counted again.
 *
 * @param curve the supply, corrected for the gauge's height
 * @param run the pipes from the gauge to the unit, in order
 * @param taps the taps, in the order in which they are opened
 * @param test the readings from which the curve was made; absent where it comes from nowhere else
 */
public record Feed(SupplyCurve curve, List<NamedPipe> run, List<SurveyedTap> taps, @Nullable TestOrigin test) {
    /** A feed whose curve is given as such. */
    public Feed(SupplyCurve curve, List<NamedPipe> run, List<SurveyedTap> taps) {
        this(curve, run, taps, null);
    }

    public Feed {
        run = List.copyOf(run);
        taps = List.copyOf(taps);
    }

    /** The pipes from the gauge to a tee. */
    public List<PipeSegment> upTo(int tee) {
        return pipes(run.subList(0, tee));
    }

    /** The pipes from a tee to the unit. */
    public List<PipeSegment> from(int tee) {
        return pipes(run.subList(tee, run.size()));
    }

    public static List<PipeSegment> pipes(List<NamedPipe> pieces) {
        List<PipeSegment> pipes = new ArrayList<>(pieces.size());
        for (NamedPipe piece : pieces) {
            pipes.add(piece.pipe());
        }
        return pipes;
    }

    /** How many pieces are shared with any of the first taps, counted from the gauge. */
    public int shared(int open) {
        int shared = 0;
        for (int i = 0; i < open; i++) {
            shared = Math.max(shared, taps.get(i).tee());
        }
        return shared;
    }

    /** Whether the first taps leave at the same tee. */
    public boolean oneTee(int open) {
        for (int i = 1; i < open; i++) {
            if (taps.get(i).tee() != taps.get(0).tee()) {
                return false;
            }
        }
        return true;
    }

    /** Rise of the whole run, m. */
    public double riseM() {
        return run.stream().mapToDouble(piece -> piece.pipe().riseM()).sum();
    }
}
