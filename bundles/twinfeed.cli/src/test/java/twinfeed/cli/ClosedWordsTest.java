// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.document.Firm;
import twinfeed.model.io.InputException;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.form.SurveyForms;
import twinfeed.usecase.form.SurveyWords;
import twinfeed.workbook.form.FormLanguage;
import twinfeed.workbook.form.SurveyFormWorkbook;

/** A word of a closed list that is misspelt is refused, with the nearest known word, on each way into the program. */
class ClosedWordsTest {
    /** The texts of a survey that anybody words as he likes; every other one is of a closed list. */
    private static final Set<String> FREE = Set.of(
            "Survey.takenBy",
            "Survey.notes",
            "Survey.publicNotes",
            "Customer.name",
            "Customer.address",
            "Customer.phone",
            "Customer.email",
            "Site.name",
            "Site.address",
            "Site.kind",
            "Site.reference",
            "Site.loftAccess",
            "Site.note",
            "PresentUnit.note",
            "Symptom.note",
            "Symptom.by",
            "Symptom.at",
            "IsolationTick.by",
            "IsolationTick.at",
            "ElementReading.name",
            "FaultStep.what",
            "FaultStep.by",
            "FaultStep.at",
            "WaterTest.takenAt",
            "PipeSegment.name",
            "PipeSegment.size",
            "DrawOff.name",
            "CableSegment.name",
            "Load.name",
            "ParameterValue.value",
            "Photo.file",
            "Photo.caption");

    /** Names of pieces of the same survey, of heaters and of calculators' parameters: they must lead somewhere, and their own tests look at that. */
    private static final Set<String> NAMES = Set.of(
            "Survey.candidates",
            "WaterTest.gaugeAfter",
            "DrawOff.teeAfter",
            "Photo.subject",
            "ParameterValue.calculator",
            "ParameterValue.key");

    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();

    @TempDir
    private Path folder;

    private static Job demo() {
        return JobFile.read(Run.DEMO.resolve("alder-beck.job")).job();
    }

    private static FormLanguage language() {
        return new FormLanguage(
                Locale.ROOT,
                new SurveyWords(
                        SERVICE.calculators(),
                        Locale.ROOT,
                        null,
                        JobFile.catalogue(demo(), Run.DEMO.resolve("alder-beck.job"))));
    }

    private static Stream<EAttribute> attributes() {
        return SurveyPackage.eINSTANCE.getEClassifiers().stream()
                .filter(EClass.class::isInstance)
                .flatMap(type -> ((EClass) type).getEAttributes().stream());
    }

    private static String name(EAttribute attribute) {
        return attribute.getEContainingClass().getName() + "." + attribute.getName();
    }

    static List<EAttribute> closed() {
        FormLanguage language = language();
        return attributes()
                .filter(attribute -> attribute.getEAttributeType().getInstanceClass() != Boolean.class)
                .filter(attribute -> !language.words(attribute).isEmpty())
                .toList();
    }

    /** A text that is added to the model has to be one or the other. */
    @Test
    void everyTextOfASurveyIsFreeANameOrOfAClosedList() {
        Set<String> open = new TreeSet<>();
        List<String> closed = closed().stream().map(ClosedWordsTest::name).toList();
        attributes()
                .filter(attribute -> attribute.getEAttributeType().getInstanceClass() == String.class)
                .map(ClosedWordsTest::name)
                .filter(name -> !closed.contains(name))
                .forEach(open::add);
        Set<String> known = new TreeSet<>(FREE);
        known.addAll(NAMES);
        assertEquals(known, open);
        assertTrue(
                closed.containsAll(List.of(
                        "Symptom.key",
                        "Fitting.kind",
                        "ProtectiveDevice.kind",
                        "CableSegment.method",
                        "CableSegment.cable",
                        "Isolator.kind",
                        "ResidualDevice.type",
                        "WaterFeed.backflowProtection",
                        "IsolationTick.step")),
                closed.toString());
    }

    @ParameterizedTest
    @MethodSource("closed")
    void aJobWithAMisspeltWordIsRefused(EAttribute attribute) throws IOException {
        Job job = demo();
        String known = put(job, attribute);
        Path file = folder.resolve("house.job");
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        JobFile.save(job, file);
        String text = Files.readString(file);
        String right = attribute.getName() + "=\"" + known + "\"";
        assertTrue(text.contains(right), right);
        Files.writeString(file, text.replace(right, attribute.getName() + "=\"" + known + "q\""));
        Run run = Run.of("assess", file);
        assertEquals(2, run.status(), name(attribute));
        assertTrue(run.err().contains("\"" + known + "q\"") && run.err().contains("did you mean"), run.err());
    }

    @ParameterizedTest
    @MethodSource("closed")
    void aListOfDwellingsWithAMisspeltWordSetsThatRowAside(EAttribute attribute) throws IOException {
        Job job = demo();
        String known = put(job, attribute);
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        Path like = folder.resolve("house.job");
        JobFile.save(job, like);
        String column = attribute.getEContainingClass() == SurveyPackage.Literals.SYMPTOM
                ? "symptoms"
                : column(find(job, attribute), attribute);
        if (column.equals("symptoms") && attribute != SurveyPackage.Literals.SYMPTOM__KEY
                || column.contains("faultFinding")) {
            return; // what was answered and ticked in a house comes from no list
        }
        Path list = Files.writeString(folder.resolve("list.csv"), "dwelling," + column + "\nOne," + known + "q\n");
        Run run = Run.of(
                "batch",
                list,
                "--template",
                like,
                "--book",
                Run.DEMO.resolve("prices.csv"),
                "--out",
                folder.resolve("result.xlsx"));
        assertTrue(run.out().contains("Rows rejected: 1"), column + ": " + run.out() + run.err());
        assertTrue(run.err().contains("\"" + known + "q\"") && run.err().contains("did you mean"), run.err());
    }

    @ParameterizedTest
    @MethodSource("closed")
    void aSiteFormWithAMisspeltWordIsRefused(EAttribute attribute) throws IOException {
        if (!attribute.getEAttributeType().getInstanceClass().equals(String.class)) {
            return; // a list of the model itself cannot be set to anything else here; its cells are checked by
            // SurveyFormTest
        }
        Job job = demo();
        String known = put(job, attribute);
        find(job, attribute).eSet(attribute, known + "q");
        Path form = folder.resolve("form.xlsx");
        try (OutputStream out = Files.newOutputStream(form)) {
            SurveyFormWorkbook.write(job, language(), Firm.DEFAULT_ACCENT, TwinfeedService.VERSION, out);
        }
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        InputException refused = assertThrows(
                InputException.class,
                () -> new SurveyForms(SERVICE).read(form, folder.resolve("house.job"), "heaters.catalogue", Run.DAY),
                name(attribute));
        assertTrue(
                refused.getMessage().contains(known + "q")
                        && refused.getMessage().contains("did you mean"),
                refused.getMessage());
    }

    /** Sets the attribute to a word of its list, in the first thing that has it; gives the word. */
    private static String put(Job job, EAttribute attribute) {
        EObject owner = find(job, attribute);
        if (!owner.eIsSet(attribute)) {
            owner.eSet(
                    attribute,
                    EcoreUtil.createFromString(
                            attribute.getEAttributeType(),
                            language().words(attribute).get(0).value()));
        }
        if (owner instanceof Fitting fitting) {
            fitting.setK(null);
        }
        return EcoreUtil.convertToString(attribute.getEAttributeType(), owner.eGet(attribute));
    }

    /** The first thing of a survey that has an attribute; made where there is none. */
    private static EObject find(Job job, EAttribute attribute) {
        EClass type = attribute.getEContainingClass();
        if (type == SurveyPackage.Literals.SURVEY) {
            return job.getSurvey();
        }
        for (Iterator<EObject> all = EcoreUtil.getAllProperContents(job.getSurvey(), false); all.hasNext(); ) {
            EObject each = all.next();
            if (each.eClass() == type) {
                return each;
            }
        }
        EObject made = EcoreUtil.create(type);
        List<EObject> owners = new ArrayList<>(List.of(job.getSurvey()));
        EcoreUtil.<EObject>getAllProperContents(job.getSurvey(), false).forEachRemaining(owners::add);
        for (EObject owner : owners) {
            for (EReference part : owner.eClass().getEAllContainments()) {
                if (part.getEReferenceType() == type) {
                    put(owner, part, made);
                    return made;
                }
            }
        }
        EObject between = EcoreUtil.create(SurveyPackage.Literals.FAULT_FINDING);
        job.getSurvey().eSet(SurveyPackage.Literals.SURVEY__FAULT_FINDING, between);
        return find(job, attribute);
    }

    @SuppressWarnings("unchecked")
    private static void put(EObject owner, EReference part, EObject made) {
        if (part.isMany()) {
            ((List<EObject>) owner.eGet(part)).add(made);
        } else {
            owner.eSet(part, made);
        }
    }

    /** The column of a list of dwellings for an attribute of a thing. */
    private static String column(EObject owner, EAttribute attribute) {
        String path = attribute.getName();
        @Nullable EObject at = owner;
        while (at != null && at.eClass() != SurveyPackage.Literals.SURVEY) {
            EObject container = at.eContainer();
            EReference part = at.eContainmentFeature();
            String step = part.isMany()
                    ? part.getName() + "[" + (((List<?>) container.eGet(part)).indexOf(at) + 1) + "]"
                    : part.getName();
            path = step + "." + path;
            at = container;
        }
        return path;
    }
}
