// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
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

    @ParameterizedTest
    @MethodSource("bundles")
    void hasNoCircleOfPackages(String bundle) {
        // Generated EMF code refers from packages to their implementations and back; no hand moves those.
        JavaClasses written = CLASSES.get(bundle)
                .that(com.tngtech.archunit.base.DescribedPredicate.describe(
                        "hand-written", type -> !type.isAssignableTo("org.eclipse.emf.ecore.EObject")));
        SlicesRuleDefinition.slices()
                .matching(bundle + ".(**)")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(written);
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
