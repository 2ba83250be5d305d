// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.text.Words;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.check.FieldPath;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.TwinfeedService;

/**
 * How much an installer types from nothing to a verdict on a 10.5 kW heater. What is typed is what the window asks for next: the first
 * reading that a check waits for. The house is invented.
 */
final class EntriesToAnswerTest {
    /** As many as are typed in the time of a cup of tea; our own measure. */
    private static final int MOST = 25;

    private static final String HEATER = "h105";

    /** What this house answers to a reading that is asked for, as it is typed. */
    private static final Map<String, String> HOUSE = Map.ofEntries(
            Map.entry("electricity.earthing", "TN-C-S"),
            Map.entry("electricity.serviceFuse", "100 A"),
            Map.entry("electricity.serviceFuseConfirmed", "true"),
            Map.entry("electricity.externalLoop", "0.2 ohm"),
            Map.entry("electricity.prospectiveFault", "1.2 kA"),
            Map.entry("electricity.metalServices", "false"),
            Map.entry("electricity.circuit.device.kind", "breaker-b"),
            Map.entry("electricity.circuit.device.rating", "45 A"),
            Map.entry("electricity.circuit.rcd.kind", "rccb"),
            Map.entry("electricity.circuit.rcd.type", "A"),
            Map.entry("electricity.circuit.rcd.residual", "30 mA"),
            Map.entry("electricity.circuit.rcd.rating", "63 A"),
            Map.entry("electricity.circuit.rcd.tripTime", "28 ms"),
            Map.entry("electricity.circuit.rcd.scope", "circuit"),
            Map.entry("electricity.circuit.segments[board to shower].size", "10 mm²"),
            Map.entry("electricity.circuit.segments[board to shower].method", "C"),
            Map.entry("electricity.circuit.isolator.rating", "50 A"),
            Map.entry("electricity.circuit.isolator.condition", "sound"),
            Map.entry("electricity.circuit.insulationResistance", "200 Mohm"),
            Map.entry("water.test.staticPressure", "3.2 bar"),
            Map.entry("water.test.runningPressure", "2.4 bar"),
            Map.entry("water.test.flow", "14 L/min"),
            Map.entry("water.stopValveOpen", "true"),
            Map.entry("water.hardness", "120 mg/L"),
            Map.entry("electricity.circuit.rcd.load", "0 A"),
            Map.entry("electricity.deviceApproved", "true"),
            Map.entry("site.texturedCoating", "false"),
            Map.entry("site.supplementaryBonding", "true"),
            Map.entry("customer.vulnerable", "false"));

    /** What is asked for as a whole is typed field by field. */
    private static final Map<String, List<String>> WHOLE =
            Map.of("water.test", List.of("water.test.staticPressure", "water.test.runningPressure", "water.test.flow"));

    @TempDir
    Path folder;

    private final TwinfeedService service = DemoFiles.service();

    @BeforeEach
    void demo() throws Exception {
        DemoFiles.copyInto(folder);
    }

    @Test
    void verdictOnAHeaterTakesFewEntries() throws Exception {
        List<String> lines = new ArrayList<>();
        for (JobTemplate house : new JobTemplates(folder.resolve("templates"), new Words(Locale.UK))
                .all()
                .subList(1, 3)) {
            List<String> typed = new ArrayList<>(List.of("template: " + house.title(), "candidates: " + HEATER));
            Verdict verdict = answered(house.survey().get(), typed);
            lines.add(house.title() + ": " + typed.size() + " entries to \"" + verdict.getLiteral() + "\"");
            typed.forEach(each -> lines.add("  " + each));
            assertNotEquals(Verdict.CANNOT_TELL, verdict, lines.toString());
            assertTrue(typed.size() < MOST, String.join("\n", lines));
        }
        Path pictures = Path.of(System.getProperty("twinfeed.shots", "target/screenshots"));
        Files.createDirectories(pictures);
        Files.write(pictures.resolve("entries.txt"), lines);
    }

    /** Types what is asked for until the verdict on the heater stands, or nothing more is asked that this house answers. */
    private Verdict answered(Survey survey, List<String> typed) throws Exception {
        survey.getCandidates().add(HEATER);
        Path file = folder.resolve("new.job");
        while (true) {
            Files.deleteIfExists(file);
            NewJob.write(file, folder.resolve("heaters.catalogue"), survey);
            OptionAssessment option =
                    service.quickAssess(service.open(file, null), Locale.UK).record().getOptions().stream()
                            .filter(each -> HEATER.equals(each.getHeaterId()))
                            .findFirst()
                            .orElseThrow();
            Optional<String> next =
                    option.getVerdict() == Verdict.CANNOT_TELL ? asked(option, typed) : Optional.empty();
            if (next.isEmpty()) {
                return option.getVerdict();
            }
            String value = HOUSE.get(next.get());
            FieldPath.of(next.get()).set(survey, value);
            typed.add(next.get() + ": " + value);
        }
    }

    private static Optional<String> asked(OptionAssessment option, List<String> typed) {
        return option.getFindings().stream()
                .filter(each -> each.getOutcome() == Outcome.CANNOT_TELL && each.getKind() != FindingClass.ADVICE)
                .map(Finding::getMissingPaths)
                .flatMap(List::stream)
                .map(path -> path.replaceFirst("^survey\\.", ""))
                .flatMap(path -> WHOLE.getOrDefault(path, List.of(path)).stream())
                .filter(HOUSE::containsKey)
                .filter(path -> typed.stream().noneMatch(each -> each.startsWith(path + ": ")))
                .findFirst();
    }
}
