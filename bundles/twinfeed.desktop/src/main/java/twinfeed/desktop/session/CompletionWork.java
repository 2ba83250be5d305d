// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.EAttribute;
import org.jspecify.annotations.Nullable;
import twinfeed.model.job.Completion;
import twinfeed.model.job.JobFactory;
import twinfeed.usecase.OpenedJob;

/**
 * The readings after the work of one open job, judged while they are typed. What is typed is kept with the job when its field is left, as
 * one edit that can be undone. Computes only while somebody looks.
 */
public final class CompletionWork {
    private final JobSession session;
    private final Threads threads;
    private final Recalculation<CompletionResult> recalculation;
    private final CompletionJudge judge;
    private final ChangeNotifier resulted = new ChangeNotifier();
    private final Map<EAttribute, Optional<Object>> typed = new LinkedHashMap<>();
    private boolean watched;
    private @Nullable CompletionResult result;

    CompletionWork(JobSession session, Threads threads) {
        this.session = session;
        this.threads = threads;
        this.recalculation = new Recalculation<>(threads.display());
        this.judge = new CompletionJudge(session.services());
        session.edits().changed().listen(this::entered);
    }

    /** Somebody looks, or looks away. */
    public void watch(boolean looks) {
        boolean begins = looks && !watched;
        watched = looks;
        if (begins) {
            ask();
        }
    }

    /** Other prices are in force, for instance: judges anew. */
    public void refresh() {
        ask();
    }

    /** What was typed stands in the job now, or was given up. */
    private void entered() {
        typed.clear();
        ask();
    }

    /**
     * A reading is being typed: it is judged at once, and kept later.
     *
     * @param reading what is read
     * @param value its value as it stands; null if the field is empty
     */
    public void typing(EAttribute reading, @Nullable Object value) {
        typed.put(reading, Optional.ofNullable(value));
        ask();
    }

    /** What is being typed is no value yet: the one that the job has is judged until it is. */
    public void unreadable(EAttribute reading) {
        if (typed.remove(reading) != null) {
            ask();
        }
    }

    private void ask() {
        long asked = recalculation.next();
        if (watched) {
            OpenedJob copy = session.copy();
            put(copy);
            recalculation.ask(
                    asked, () -> session.services().completion(asked, judge, copy), threads.quick(), answer -> {
                        result = answer;
                        resulted.fire();
                    });
        }
    }

    private void put(OpenedJob copy) {
        if (typed.isEmpty()) {
            return;
        }
        @Nullable Completion there = copy.job().getCompletion();
        Completion readings = there == null ? JobFactory.eINSTANCE.createCompletion() : there;
        typed.forEach((reading, value) ->
                value.ifPresentOrElse(given -> readings.eSet(reading, given), () -> readings.eUnset(reading)));
        copy.job().setCompletion(readings);
    }

    /** Fires when there is a new result. */
    public ChangeNotifier resulted() {
        return resulted;
    }

    /** The newest result; null before the first. */
    public @Nullable CompletionResult result() {
        return result;
    }

    /** Whether that result is the one for what stands on the page now. */
    public boolean current() {
        CompletionResult known = result;
        return known != null && known.revision() == recalculation.revision();
    }
}
