// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each bundle uses what its line in the layer table allows, and nothing else. */
class LayersTest {
    /** The JDK, and annotations that no class needs at run time. */
    private static final List<String> EVERYWHERE = List.of(
            "java.",
            "javax.imageio.",
            "javax.xml.",
            "org.xml.sax",
            "org.w3c.dom",
            "org.jspecify.annotations",
            "org.osgi.service.component.annotations");

    /** What {@link #EVERYWHERE} allows and pure functions have no use for. */
    private static final List<String> NOT_IN_ENGINEERING = List.of(
            "java.awt.",
            "java.beans.",
            "java.io.",
            "java.net.",
            "java.nio.",
            "java.sql.",
            "java.time.format.",
            "javax.",
            "org.xml.",
            "org.w3c.");

    private static final List<String> WIDGETS = List.of("org.eclipse.swt.", "org.eclipse.jface.", "org.eclipse.e4.");
    private static final List<String> WITHOUT_WIDGETS = List.of(
            "twinfeed.desktop.form", "twinfeed.desktop.session", "twinfeed.desktop.text", "twinfeed.desktop.view");

    /** What shows results, on the screen, on paper or as JSON. */
    private static final List<String> FACES =
            List.of("twinfeed.cli", "twinfeed.desktop", "twinfeed.document", "twinfeed.pdf", "twinfeed.workbook");

    /** In what calculators answer; faces see the same in twinfeed.model.assessment. */
    private static final List<String> ANSWERS = List.of(
            "twinfeed.calculator.formula.Answer",
            "twinfeed.calculator.Candidate",
            "twinfeed.calculator.Condition",
            "twinfeed.calculator.Finding",
            "twinfeed.calculator.Findings",
            "twinfeed.calculator.PassProbability",
            "twinfeed.calculator.Remedy",
            "twinfeed.calculator.Series",
            "twinfeed.calculator.formula.Step",
            "twinfeed.calculator.formula.Working",
            "twinfeed.calculator.engine.AssessmentResult",
            "twinfeed.calculator.engine.OptionResult",
            "twinfeed.calculator.sampling.",
            "twinfeed.calculator.search.");

    private static final Map<String, JavaClasses> CLASSES = new TreeMap<>();
    private static final Map<String, String> OWNER = new TreeMap<>();

    @BeforeAll
    static void readTheClassesOfEveryBundle() {
        for (String bundle : Project.bundles()) {
            JavaClasses classes =
                    new ClassFileImporter().importPath(Project.bundle(bundle).resolve("target/classes"));
            CLASSES.put(bundle, classes);
            classes.forEach(type -> OWNER.put(type.getName(), bundle));
        }
    }

    static Stream<String> bundles() {
        return Project.bundles().stream();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void usesOnlyWhatItsLayerAllows(String bundle) {
        Layer layer = Layer.of(bundle);
        JavaClasses classes = CLASSES.get(bundle);
        assertTrue(classes.size() >= layer.atLeast(), bundle + ": classes seen: " + classes.size());
        Collection<String> broken = new TreeSet<>();
        for (JavaClass type : classes) {
            for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                JavaClass used = dependency.getTargetClass().getBaseComponentType();
                if (!allowed(layer, used)) {
                    broken.add(type.getName() + " -> " + used.getName());
                }
            }
        }
        assertEquals(List.of(), List.copyOf(broken));
    }

    private static boolean allowed(Layer layer, JavaClass used) {
        String owner = OWNER.get(used.getName());
        if (owner != null) {
            return owner.equals(layer.bundle()) || layer.ours().contains(owner);
        }
        return used.isPrimitive()
                || EVERYWHERE.stream().anyMatch(used.getPackageName().concat(".")::startsWith)
                || layer.allowsLibrary(used.getPackageName());
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void keepsItsClassesBelowItsOwnName(String bundle) {
        assertEquals(
                List.of(),
                CLASSES.get(bundle).stream()
                        .map(JavaClass::getPackageName)
                        .filter(name -> !(name + ".").startsWith(bundle + "."))
                        .distinct()
                        .toList());
    }

    /** The package that the bundle is named after is one of them: "slices by name" would leave it out. */
    @ParameterizedTest
    @MethodSource("bundles")
    void hasNoCycleOfPackages(String bundle) {
        // Generated EMF code refers from packages to their implementations and back; no hand moves those.
        JavaClasses written = CLASSES.get(bundle)
                .that(DescribedPredicate.describe(
                        "hand-written", type -> !type.isAssignableTo("org.eclipse.emf.ecore.EObject")));
        SlicesRuleDefinition.slices()
                .assignedFrom(new ByPackage())
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(written);
    }

    private static final class ByPackage implements SliceAssignment {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            return SliceIdentifier.of(type.getPackageName());
        }

        @Override
        public String getDescription() {
            return "packages";
        }
    }

    /** Numbers in, numbers out: nothing of windows, networks and databases, and no files. */
    @Test
    void engineeringUsesOnlyTheLanguageAndMathematics() {
        Collection<String> broken = new TreeSet<>();
        for (JavaClass type : CLASSES.get("twinfeed.engineering")) {
            for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                String used = dependency.getTargetClass().getBaseComponentType().getPackageName();
                if (NOT_IN_ENGINEERING.stream().anyMatch((used + ".")::startsWith)) {
                    broken.add(type.getName() + " -> "
                            + dependency.getTargetClass().getName());
                }
            }
        }
        assertEquals(List.of(), List.copyOf(broken));
    }

    /** What stands behind the widgets knows none: it is tested and mutated without a screen. */
    @Test
    void theWindowsSessionFormsAndViewsKnowNoWidgets() {
        Collection<String> broken = new TreeSet<>();
        for (JavaClass type : CLASSES.get("twinfeed.desktop")) {
            if (WITHOUT_WIDGETS.contains(type.getPackageName())) {
                for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                    String used =
                            dependency.getTargetClass().getBaseComponentType().getPackageName();
                    if (WIDGETS.stream().anyMatch((used + ".")::startsWith)) {
                        broken.add(type.getName() + " -> " + used);
                    }
                }
            }
        }
        assertEquals(List.of(), List.copyOf(broken));
    }

    /** There is one model of results for all that show them. */
    @Test
    void facesSeeResultsInTheModelOnly() {
        Collection<String> broken = new TreeSet<>();
        for (String face : FACES) {
            for (JavaClass type : CLASSES.get(face)) {
                for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                    String used =
                            dependency.getTargetClass().getBaseComponentType().getName();
                    if (ANSWERS.stream().anyMatch(answer -> isOrHolds(answer, used))) {
                        broken.add(type.getName() + " -> " + used);
                    }
                }
            }
        }
        assertEquals(List.of(), List.copyOf(broken));
    }

    /** Whether a name is that of a class or of one inside it or, where it ends in a point, of a class of that package. */
    private static boolean isOrHolds(String name, String used) {
        return name.endsWith(".") ? used.startsWith(name) : used.equals(name) || used.startsWith(name + "$");
    }

    @Test
    void everyAnswerThatFacesMustNotSeeIsStillThere() {
        List<String> names = CLASSES.get("twinfeed.calculator").stream()
                .map(JavaClass::getName)
                .toList();
        assertEquals(
                List.of(),
                ANSWERS.stream()
                        .filter(answer -> names.stream().noneMatch(name -> isOrHolds(answer, name)))
                        .toList());
    }

    /** Whoever writes a calculator has to learn what stands in this package. */
    @Test
    void whatACalculatorNeedsStaysSmall() {
        List<String> types = CLASSES.get("twinfeed.calculator").stream()
                .filter(type -> type.getPackageName().equals("twinfeed.calculator"))
                .filter(type -> type.isTopLevelClass() && type.getModifiers().contains(JavaModifier.PUBLIC))
                .map(JavaClass::getSimpleName)
                .sorted()
                .toList();
        assertTrue(types.contains("Calculator"), types::toString);
        assertTrue(types.size() <= 25, types::toString);
    }

    /** DEVELOPERS.md shows the table that this test enforces. */
    @Test
    void theTableForReadersIsThisOne() throws IOException {
        String expected = Layer.table();
        String text = Files.readString(Project.ROOT.resolve("DEVELOPERS.md"));
        assertTrue(text.contains(expected), () -> "DEVELOPERS.md should say:\n" + expected);
    }

    @Test
    void theTableHasNoLineForABundleThatIsNotThere() {
        assertEquals(
                List.of(),
                Layer.TABLE.stream()
                        .map(Layer::bundle)
                        .filter(name -> !CLASSES.containsKey(name))
                        .toList());
    }
}
