// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.FormulaCall;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.rules.Table;
import twinfeed.model.survey.Survey;
import twinfeed.units.Quantities;

/** The formulas against published examples; the source of each stands in cases.csv and in the message. */
class PublishedCasesTest {
    private static List<Map<String, String>> rows() throws IOException {
        try (InputStream stream = PublishedCasesTest.class.getResourceAsStream("cases.csv")) {
            return Table.read("cases", Objects.requireNonNull(stream)).rows();
        }
    }

    static Formula formula(String name) {
        return FormulaCall.formula(new CircuitCalculator(), name);
    }

    static Answer answer(String name, String typed) {
        return FormulaCall.answer(formula(name), typed, " ");
    }

    static Answer.Result result(Answer answer, String key) {
        return FormulaCall.result(answer, key);
    }

    @TestFactory
    Stream<DynamicTest> published() throws IOException {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.get("id") + " " + row.get("formula") + " " + row.get("arguments"), () -> check(row)));
    }

    private static void check(Map<String, String> row) {
        Answer answer = answer(text(row, "formula"), text(row, "arguments"));
        Answer.Result result = result(answer, text(row, "result"));
        double found = Quantities.toUnit(result.kind(), result.si(), text(row, "unit"));
        double expected = Double.parseDouble(text(row, "expected"));
        double tolerance = Double.parseDouble(text(row, "tolerance").replace(" %", "")) / 100;
        assertEquals(
                expected,
                found,
                Math.max(1e-9, Math.abs(expected)) * tolerance,
                () -> row.get("id") + ": " + row.get("source") + " (" + row.get("status") + ")");
    }

    private static String text(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    /** The last line of each working is the answer, so that a person who follows it arrives there. */
    @TestFactory
    Stream<DynamicTest> workings() throws IOException {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest("working of " + row.get("id"), () -> {
                    Answer answer = answer(text(row, "formula"), text(row, "arguments"));
                    List<Step> steps = answer.working().steps();
                    assertTrue(!steps.isEmpty());
                    Step last = steps.get(steps.size() - 1);
                    boolean reached = answer.results().stream()
                            .anyMatch(result -> Math.abs(Quantities.toUnit(
                                                    result.kind(),
                                                    result.si(),
                                                    last.unit().isEmpty() ? "1" : last.unit())
                                            - last.value())
                                    <= 1e-9 * Math.abs(last.value()));
                    assertTrue(reached, "the working ends in " + last);
                }));
    }

    /** Formula and check are one calculation: the same cable in one piece, 10.5 m. */
    @Test
    void theDeliveredPowerIsThatOfTheCheck() {
        Answer answer = answer("delivered", "power=9.5kW rated=240V supply=238V size=10mm2 method=C length=10.5m");
        Survey survey = Surveys.suitable();
        Finding check = Surveys.finding(survey, Surveys.heater("9.5 kW", "240 V"), "circuit.deliveredPower");
        assertEquals(Fixtures.value(check) * 1000, result(answer, "power").si(), 1e-6);
        assertEquals(238, result(answer, "terminalVoltage").si(), 2);
        List<Step> steps = answer.working().steps();
        assertEquals(Fixtures.value(check), steps.get(steps.size() - 1).value(), 1e-9);
    }

    /** What cannot be used is refused with what would be right. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "capacity | size=7mm2 method=C | 10 mm²",
                "capacity | size=10mm2 method=Q | 101",
                "capacity | size=10mm2 method=C cable=rope | flat-70",
                "capacity | size=10mm2 method=C device=knife-switch | breaker-b",
                "capacity | size=10mm2 method=C rules=moon | iec60364-5-52",
                "capacity | size=10mm2 method=C grouped=60 | cg",
                "drop | length=10m current=40A | gradient",
                "drop | size=10mm2 length=10m | power",
                "loop | size=10mm2 cpc=7mm2 length=10m | conductors",
                "loop | length=10m | line",
                "adiabatic | current=900A | time",
                "adiabatic | time=0.1s | loop",
                "fuse | rating=30A time=30s | 5 s",
                "fuse | rating=30A | time",
                "max-run | size=10mm2 | rating",
                "device-limit | device=breaker-b | zmax",
                "device-limit | device=fuse-88-3 rating=30A | 16, 20, 32",
                "needed-rating | device=fuse-1361 rating=32A | 30"
            })
    void refusals(String formula, String typed, String said) {
        String message = String.valueOf(assertThrows(ArgumentException.class, () -> answer(formula, typed))
                .getMessage());
        assertTrue(message.contains(said), message);
    }

    /** Rule of thumb of guides to the wiring rules: a loop measured cold may be at most 0.8 of the limit. */
    @Test
    void anOwnLoopLimitNeedsNoDevice() {
        Answer answer = answer("device-limit", "zmax=1.2ohm");
        assertEquals(1.2, answer.results().get(0).si(), 1e-12);
        assertEquals(0.96, answer.results().get(1).si(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "device-limit | device=fuse-gg rating=40A rules=iec60364-5-52 | noLoopLimit",
                "max-run | size=10mm2 rating=45A ze=2ohm | noLengthLeft",
                "max-run | size=10mm2 device=fuse-gg rating=40A rules=iec60364-5-52 | noLoopLimit",
                "adiabatic | current=900A time=0.05s | letThroughNeeded",
                "fuse | device=breaker-b rating=40A time=1s | noFuseCurve",
                "fuse | rating=30A size=1mm2 | conductorTooThin",
                "highest-power | rating=50A size=6mm2 method=C length=10m | deviceAboveCapacity"
            })
    void troubles(String formula, String typed, String trouble) {
        assertEquals(trouble, answer(formula, typed).trouble());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "drop | size=6mm2 length=40m current=45A | dropAboveLimit",
                "electrode | residual=30mA resistance=2kohm | electrodeTooHigh",
                "electrode | residual=30mA resistance=300ohm | electrodeUnsteady",
                "adiabatic | current=2kA time=0.1s size=4mm2 | conductorTooThin",
                "needed-rating | rating=50A method=103 insulated=1m ambient=60C | noSize",
                "max-run | size=10mm2 current=40A rating=40A ze=0.2ohm | boundByDrop",
                "max-run | size=10mm2 current=10A zmax=1ohm ze=0.9ohm | boundByLoop",
                "loop | size=10mm2 length=20m ze=0.9ohm zmax=1ohm | loopAboveLimit",
                "fuse | rating=30A time=5s size=1mm2 | conductorTooThin",
                "max-run | size=10mm2 current=10A rating=40A ze=0.9ohm | boundByLoop",
                "highest-power | rating=40A size=10mm2 method=C length=10m | boundByDevice",
                "highest-power | rating=40A size=6mm2 method=C length=90m | boundByDrop"
            })
    void warnings(String formula, String typed, String warning) {
        assertTrue(answer(formula, typed).warnings().contains(warning));
    }

    @Test
    void aCableThatIsNamedIsTheOneThatIsLookedUp() {
        assertEquals(
                64,
                result(answer("capacity", "size=10mm2 method=C cable=flat-70"), "capacity")
                        .si(),
                1e-9);
    }

    @Test
    void aZeroSpareIsCarried() {
        assertTrue(answer("capacity", "size=10mm2 method=100 rating=45A")
                .warnings()
                .isEmpty());
        assertTrue(answer("capacity", "size=10mm2 method=100 rating=50A")
                .warnings()
                .contains("deviceAboveCapacity"));
    }
}
