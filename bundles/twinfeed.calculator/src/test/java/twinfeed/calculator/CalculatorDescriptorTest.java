// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Supply;
import twinfeed.units.Kind;

class CalculatorDescriptorTest {
    private static final Check CHECK =
            Check.of("made.up", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.FLOW, "survey.water.test.flow");

    /** Its name says its id. */
    private static final class EnergyCalculator implements Calculator {
        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(EnergyCalculator.class).build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {};
        }
    }

    @Test
    void theClassGivesTheIdAndAllElseIsEmptyUnlessItIsSaid() {
        CalculatorDescriptor plain = new EnergyCalculator().descriptor();
        assertEquals("energy", plain.id());
        assertEquals(Supply.NEITHER, plain.supply());
        assertEquals(List.of(), plain.checks());
        assertEquals(List.of(), plain.reads());
        assertTrue(plain.reads("survey.anything"), "it may read all of a survey");
    }

    @Test
    void allThatIsSaidIsKept() {
        Parameter parameter = Parameter.absent("height", Kind.LENGTH, 0, 10);
        RemedyKind kind = RemedyKind.of("cleaning", RemedyKind.Stage.FITTING, "clean");
        Formula formula = new Formula("twice", List.of(), given -> Answer.of(Working.none()));
        CalculatorDescriptor said = CalculatorDescriptor.of(EnergyCalculator.class)
                .id("heat")
                .texts(Runner.TEXTS)
                .provides(SharedQuantity.TARGET_FLOW)
                .consumes(SharedQuantity.DELIVERED_POWER)
                .reads("survey.water", "survey.electricity.loads")
                .supply(Supply.WATER)
                .remedies(List.of(kind))
                .checks(CHECK)
                .parameters(parameter)
                .formulas(List.of(formula))
                .build();
        assertEquals("heat", said.id());
        assertSame(Runner.TEXTS, said.texts());
        assertEquals(List.of(SharedQuantity.TARGET_FLOW), said.provides());
        assertEquals(List.of(SharedQuantity.DELIVERED_POWER), said.consumes());
        assertEquals(Supply.WATER, said.supply());
        assertEquals(List.of(kind), said.remedies());
        assertEquals(List.of(CHECK), said.checks());
        assertEquals(List.of(parameter), said.parameters());
        assertEquals(List.of(formula), said.formulas());
        assertTrue(said.reads("survey.water"));
        assertTrue(said.reads("survey.water.test.flow"));
        assertTrue(said.reads("survey.electricity.loads[oven].power"));
        assertFalse(said.reads("survey.waterfall"));
        assertFalse(said.reads("survey.electricity"));
    }

    /** The jar's own manifest, also in a folder with a blank, as OSGi and a class path name it; "0" where there is none. */
    @ParameterizedTest
    @CsvSource({"jars, 3.1.4, 3.1.4", "my jars, 3.1.4, 3.1.4", "jars, , 0"})
    void theVersionIsThatOfTheJar(String folder, String version, String expected, @TempDir Path directory)
            throws IOException, ReflectiveOperationException {
        Path jar = Files.createDirectories(directory.resolve(folder)).resolve("sample.jar");
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        if (version != null) {
            manifest.getMainAttributes().putValue("Bundle-Version", version);
        }
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file, manifest);
                InputStream type = SyntheticCalculator.class.getResourceAsStream("SyntheticCalculator.class")) {
            out.putNextEntry(new ZipEntry("twinfeed/calculator/SyntheticCalculator.class"));
            type.transferTo(out);
        }
        assertEquals(expected, BundleVersion.of(loaded(jar.toUri().toURL())));
        assertEquals(expected, BundleVersion.of(loaded(new URL("file:" + jar))), "with its blanks as they are");
    }

    private static Class<?> loaded(URL jar) throws IOException, ReflectiveOperationException {
        // Without the class path above it, or the class would come from there.
        try (URLClassLoader loader = new URLClassLoader(new URL[] {jar}, null) {
            @Override
            protected Class<?> findClass(String name) throws ClassNotFoundException {
                return name.equals(SyntheticCalculator.class.getName())
                        ? super.findClass(name)
                        : SyntheticCalculator.class.getClassLoader().loadClass(name);
            }
        }) {
            return loader.loadClass(SyntheticCalculator.class.getName());
        }
    }

    @Test
    void aClassWithoutAPlaceHasNoVersion() {
        assertEquals("0", BundleVersion.of(String.class));
    }
}
