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
 * A finding of the record whose sentences, working and curves are written when somebody first asks for them. Most are never looked at,
 * and writing them all takes several times as long as judging the house. Whatever goes through the record, a copy or a file, gets them
 * whole.
 *
 * <p>The findings of one record share a lock: their workings come from one calculator's work, which one thread at a time may use.
 */
final class RecordedFinding extends FindingImpl {
    private final Object lock;
    private final Unwritten sentences;
    private final Unwritten working;
    private final Unwritten curves;
    private Unwritten interval = new Unwritten(() -> {});

    /**
     * What says the sentences of a finding.
     *
     * @param text the finding in a sentence
     * @param customerText what it means in the house; gives null where there is nothing to say
     */
    record Sentences(Supplier<String> text, Supplier<@Nullable String> customerText) {}

    /**
     * A finding with nothing in it yet.
     *
     * @param lock shared by the findings of a record
     * @param sentences says the sentences
     * @param working writes the working
     * @param curves writes the curves
     */
    RecordedFinding(Object lock, Sentences sentences, Supplier<List<Step>> working, Supplier<List<Series>> curves) {
        this.lock = lock;
        this.sentences = new Unwritten(() -> {
            setText(sentences.text.get());
            setCustomerText(sentences.customerText.get());
        });
        this.working = new Unwritten(() -> super.getSteps().addAll(working.get()));
        this.curves = new Unwritten(() -> super.getSeries().addAll(curves.get()));
    }

    /**
     * What writes the interval of the margin and what to measure again, when first asked for.
     *
     * @param write sets them
     */
    void later(Runnable write) {
        this.interval = new Unwritten(write);
    }

    @Override
    public EList<Step> getSteps() {
        return written(working, super::getSteps);
    }

    @Override
    public EList<Series> getSeries() {
        return written(curves, super::getSeries);
    }

    @Override
    public @Nullable String getText() {
        return written(sentences, super::getText);
    }

    @Override
    public @Nullable String getCustomerText() {
        return written(sentences, super::getCustomerText);
    }

    @Override
    public @Nullable Double getLow() {
        return written(interval, super::getLow);
    }

    @Override
    public @Nullable Double getHigh() {
        return written(interval, super::getHigh);
    }

    @Override
    public @Nullable String getRemeasure() {
        return written(interval, super::getRemeasure);
    }

    private <T extends @Nullable Object> T written(Unwritten part, Supplier<T> value) {
        synchronized (lock) {
            part.write();
            return value.get();
        }
    }

    /** What writes a part of the finding, until somebody has asked for it. */
    private static final class Unwritten {
        private @Nullable Runnable writes;

        Unwritten(Runnable writes) {
            this.writes = writes;
        }

        void write() {
            Runnable once = writes;
            if (once != null) {
                writes = null;
                once.run();
            }
        }
    }

    @Override
    public boolean eIsSet(int featureID) {
        return switch (featureID) {
            case AssessmentPackage.FINDING__STEPS -> !getSteps().isEmpty();
            case AssessmentPackage.FINDING__SERIES -> !getSeries().isEmpty();
            case AssessmentPackage.FINDING__TEXT -> getText() != null;
            case AssessmentPackage.FINDING__CUSTOMER_TEXT -> getCustomerText() != null;
            case AssessmentPackage.FINDING__LOW -> getLow() != null;
            case AssessmentPackage.FINDING__HIGH -> getHigh() != null;
            case AssessmentPackage.FINDING__REMEASURE -> getRemeasure() != null;
            default -> super.eIsSet(featureID);
        };
    }
}
