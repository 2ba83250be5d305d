// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.job.Job;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.quotes.ModelTree;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.OpenedJob;

/**
 * Judges houses with the same readings once: the flats of a block are surveyed by one pattern, and many of them differ in nothing but their names.
 * Calculators never see the words that tell such houses apart, so that what comes of a row does not depend on the rows before it.
 *
 * <p>A house is remembered when it comes for the second time, so that a list whose houses all differ costs no memory. Each thread remembers its own,
 * for the workings of a judgement may be used by one thread at a time.
 */
final class AlikeHouses {
    /** How many houses are remembered by all threads; each takes about a third of a megabyte. */
    private static final int REMEMBERED = 128;

    /** How many houses a thread would know again. */
    private static final int KNOWN_AGAIN = 4096;

    /** Words about a house that decide no check. */
    private static final Set<EAttribute> WORDS = Set.of(
            SurveyPackage.Literals.CUSTOMER__NAME,
            SurveyPackage.Literals.CUSTOMER__ADDRESS,
            SurveyPackage.Literals.CUSTOMER__PHONE,
            SurveyPackage.Literals.CUSTOMER__EMAIL,
            SurveyPackage.Literals.SITE__NAME,
            SurveyPackage.Literals.SITE__ADDRESS,
            SurveyPackage.Literals.SITE__REFERENCE,
            SurveyPackage.Literals.SITE__NOTE,
            SurveyPackage.Literals.PRESENT_UNIT__NOTE,
            SurveyPackage.Literals.SURVEY__TAKEN_BY,
            SurveyPackage.Literals.SURVEY__NOTES,
            SurveyPackage.Literals.SURVEY__PUBLIC_NOTES);

    private final Function<OpenedJob, AssessedJob> judge;
    private final ThreadLocal<Memory> memory = ThreadLocal.withInitial(Memory::new);

    /**
     * With what judges a house.
     *
     * @param judge answers the same for the same readings
     */
    AlikeHouses(Function<OpenedJob, AssessedJob> judge) {
        this.judge = judge;
    }

    /** What follows from the readings of a house, be they of another house too. */
    AssessedJob judged(OpenedJob house) {
        Map<String, ?> readings = ModelTree.of(house.job().getSurvey(), WORDS);
        Memory remembered = memory.get();
        @Nullable AssessedJob alike = remembered.houses.get(readings);
        if (alike == null) {
            alike = judge.apply(withoutWords(house));
            if (remembered.met.put(readings.hashCode(), true) != null) {
                remembered.houses.put(readings, alike);
            }
        }
        return new AssessedJob(house, alike.assessed(), alike.plans(), alike.record());
    }

    private static OpenedJob withoutWords(OpenedJob house) {
        Job job = EcoreUtil.copy(house.job());
        for (Iterator<EObject> all = EcoreUtil.getAllProperContents(job, false); all.hasNext(); ) {
            EObject object = all.next();
            WORDS.stream()
                    .filter(word -> word.getEContainingClass() == object.eClass())
                    .forEach(object::eUnset);
        }
        return new OpenedJob(house.file(), job, house.catalogue(), house.warnings());
    }

    /** The houses that a thread judged last. */
    private static final class Memory {
        final Map<Map<String, ?>, AssessedJob> houses =
                new LastUsed<>(Math.max(1, REMEMBERED / Runtime.getRuntime().availableProcessors()));
        final Map<Integer, Boolean> met = new LastUsed<>(KNOWN_AGAIN);
    }

    /** Forgets what was not asked for the longest. */
    private static final class LastUsed<K, V> extends LinkedHashMap<K, V> {
        private static final long serialVersionUID = 1;

        private final int most;

        LastUsed(int most) {
            super(16, 0.75F, true);
            this.most = most;
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
        }
    }
}
