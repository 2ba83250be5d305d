// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.List;
import java.util.function.Supplier;
import org.eclipse.emf.common.util.EList;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.AssessmentPackage;
import twinfeed.model.assessment.Series;
import twinfeed.model.assessment.Step;
import twinfeed.model.assessment.impl.FindingImpl;

/**
 * A finding of the record whose working and curves are written when somebody first asks for them. Most are never looked at, and writing
 * them all takes several times as long as judging the house. Whatever goes through the record, a copy or a file, gets them whole.
 *
 * <p>The findings of one record share a lock: their workings come from one calculator's work, which one thread at a time may use.
 */
final class RecordedFinding extends FindingImpl {
    private final Object lock;
    private @Nullable Supplier<List<Step>> working;
    private @Nullable Supplier<List<Series>> curves;

    /**
     * A finding with nothing in it yet.
     *
     * @param lock shared by the findings of a record
     * @param working writes the working
     * @param curves writes the curves
     */
    RecordedFinding(Object lock, Supplier<List<Step>> working, Supplier<List<Series>> curves) {
        this.lock = lock;
        this.working = working;
        this.curves = curves;
    }

    @Override
    public EList<Step> getSteps() {
        synchronized (lock) {
            Supplier<List<Step>> unwritten = working;
            if (unwritten != null) {
                working = null;
                super.getSteps().addAll(unwritten.get());
            }
            return super.getSteps();
        }
    }

    @Override
    public EList<Series> getSeries() {
        synchronized (lock) {
            Supplier<List<Series>> unwritten = curves;
            if (unwritten != null) {
                curves = null;
                super.getSeries().addAll(unwritten.get());
            }
            return super.getSeries();
        }
    }

    @Override
    public boolean eIsSet(int featureID) {
        return switch (featureID) {
            case AssessmentPackage.FINDING__STEPS -> !getSteps().isEmpty();
            case AssessmentPackage.FINDING__SERIES -> !getSeries().isEmpty();
            default -> super.eIsSet(featureID);
        };
    }
}
