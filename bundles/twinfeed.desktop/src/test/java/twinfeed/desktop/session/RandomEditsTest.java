// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EcorePackage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.desktop.DemoFiles;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;

/** Hundreds of edits of any kind, taken back one by one, leave the file as it was, byte for byte; made again, as it was after them. */
class RandomEditsTest {
    private static final int EDITS = 500;

    @TempDir
    private Path folder = Path.of("");

    private final SurveyEdits edits = new SurveyEdits(false);

    @ParameterizedTest
    @ValueSource(longs = {1, 20, 300})
    void fiveHundredEditsAreTakenBackToTheSameBytes(long seed) throws Exception {
        DemoFiles.copyInto(folder);
        Job job = JobFile.load(folder.resolve("alder-beck.job"));
        byte[] before = bytes(job, "before.job");
        Random random = new Random(seed);
        int made = 0;
        while (made < EDITS) {
            byte[] state = bytes(job, "state.job");
            edit(job, random);
            if (!Arrays.equals(state, bytes(job, "state.job"))) {
                made++;
            }
        }
        byte[] after = bytes(job, "after.job");
        assertTrue(edits.dirty());
        int undone = 0;
        while (edits.canUndo()) {
            edits.undo();
            undone++;
        }
        assertTrue(undone >= EDITS, "edits taken back: " + undone);
        assertArrayEquals(before, bytes(job, "undone.job"));
        assertFalse(edits.dirty(), "as it was saved");
        for (int i = 0; i < undone; i++) {
            edits.redo();
        }
        assertFalse(edits.canRedo());
        assertArrayEquals(after, bytes(job, "redone.job"));
        Job read = JobFile.load(folder.resolve("redone.job"));
        assertEquals(job.getSurvey().getCustomer() == null, read.getSurvey().getCustomer() == null);
    }

    private byte[] bytes(Job job, String name) throws Exception {
        Path file = folder.resolve(name);
        JobFile.save(job, file);
        return Files.readAllBytes(file);
    }

    private void edit(Job job, Random random) {
        List<EObject> all = new ArrayList<>(List.of(job.getSurvey()));
        for (Iterator<EObject> each = job.getSurvey().eAllContents(); each.hasNext(); ) {
            all.add(each.next());
        }
        EObject object = all.get(random.nextInt(all.size()));
        switch (random.nextInt(6)) {
            case 0 -> addTo(object, random);
            case 1 -> removeOrMove(object, random);
            default -> set(object, random);
        }
    }

    private void addTo(EObject object, Random random) {
        List<EReference> lists = object.eClass().getEAllContainments().stream()
                .filter(each -> each.isMany() && each.isChangeable())
                .toList();
        if (!lists.isEmpty()) {
            EReference list = lists.get(random.nextInt(lists.size()));
            EObject element =
                    list.getEReferenceType().getEPackage().getEFactoryInstance().create(list.getEReferenceType());
            edits.add(object, List.of(list), element);
        }
    }

    private void removeOrMove(EObject object, Random random) {
        if (object.eContainmentFeature() != null && object.eContainmentFeature().isMany()) {
            List<?> siblings = (List<?>) object.eContainer().eGet(object.eContainmentFeature());
            if (random.nextBoolean()) {
                edits.move(object, random.nextInt(siblings.size()));
            } else {
                edits.remove(object);
            }
        }
    }

    private void set(EObject object, Random random) {
        List<EAttribute> attributes = object.eClass().getEAllAttributes().stream()
                .filter(each -> !each.isMany() && each.isChangeable() && !each.isTransient() && !each.isDerived())
                .toList();
        if (!attributes.isEmpty()) {
            EAttribute attribute = attributes.get(random.nextInt(attributes.size()));
            value(object, attribute, random).forEach(value -> edits.set(object, List.of(attribute), value.value()));
        }
    }

    private record Value(@Nullable Object value) {}

    private static Stream<Value> value(EObject object, EAttribute attribute, Random random) {
        if (random.nextInt(4) == 0) {
            return Stream.of(new Value(null));
        }
        if (attribute.getEAttributeType() instanceof EEnum words) {
            return Stream.of(new Value(words.getELiterals()
                    .get(random.nextInt(words.getELiterals().size()))
                    .getInstance()));
        }
        if (attribute.getEAttributeType() == EcorePackage.Literals.ESTRING) {
            return Stream.of(new Value("typed <&\"' " + random.nextInt(1000) + "\nÄ"));
        }
        if (attribute.getEAttributeType().getInstanceClass() == Boolean.class) {
            return Stream.of(new Value(random.nextBoolean()));
        }
        Object present = object.eGet(attribute);
        return present == null ? Stream.empty() : Stream.of(new Value(present));
    }
}
