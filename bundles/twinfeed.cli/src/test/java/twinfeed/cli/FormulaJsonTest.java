// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Parameter;
import twinfeed.cli.json.JsonReport;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Step;
import twinfeed.units.Kind;
import twinfeed.usecase.FormulaAnswer;
import twinfeed.usecase.NamedFormula;
import twinfeed.usecase.TwinfeedService;

/** Formulas, their answers and the calculators in JSON, beside what they declare and answer. */
class FormulaJsonTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();

    private static JsonNode printed(Consumer<JsonReport> printing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        printing.accept(new JsonReport(out, "Take care."));
        return new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(each -> texts.add(each.asText()));
        return texts;
    }

    private static NamedFormula flow() {
        return SERVICE.formula("flow").orElseThrow();
    }

    private static JsonNode answered(FormulaAnswer answer) throws IOException {
        return printed(json -> json.answer(flow(), answer, 3, Locale.UK));
    }

    @Test
    void anAnswerHasResultsInSiAndAsText() throws IOException {
        Step step = AssessmentFactory.eINSTANCE.createStep();
        step.setSymbol("P");
        step.setMeaning("power");
        step.setValue(9500.0);
        step.setUnit("W");
        step.setExpression("U * I");
        step.setSource("arithmetic");
        JsonNode answer = answered(new FormulaAnswer(
                List.of(
                        new FormulaAnswer.Result("power", "Power taken", Kind.POWER, 9512.3),
                        new FormulaAnswer.Result("current", "Current", Kind.CURRENT, 39.6)),
                FormulaAnswer.Note.NONE,
                List.of(new FormulaAnswer.Note("hot", "It is hot."), new FormulaAnswer.Note("far", "It is far.")),
                List.of(step)));
        assertEquals("urn:twinfeed:json:answer:1", answer.get("schema").asText());
        assertEquals("flow", answer.get("formula").asText());
        assertEquals(2, answer.get("results").size());
        JsonNode power = answer.get("results").get(0);
        assertEquals("power", power.get("key").asText());
        assertEquals("Power taken", power.get("title").asText());
        assertEquals(9512.3, power.get("value").asDouble());
        assertEquals("W", power.get("unit").asText());
        assertEquals("9.51 kW", power.get("text").asText());
        assertFalse(answer.has("trouble") || answer.has("troubleText"));
        assertEquals(List.of("hot", "far"), texts(answer.get("warnings")));
        assertEquals(List.of("It is hot.", "It is far."), texts(answer.get("warningTexts")));
        assertEquals(
                "[{\"symbol\":\"P\",\"meaning\":\"power\",\"value\":9500.0,\"unit\":\"W\",\"expression\":\"U * I\","
                        + "\"source\":\"arithmetic\"}]",
                answer.get("working").toString());
        assertEquals("Take care.", answer.get("cautions").asText());
    }

    @Test
    void whatStandsAgainstAnAnswerIsNamedAndSaid() throws IOException {
        JsonNode answer = answered(new FormulaAnswer(
                List.of(), new FormulaAnswer.Note("colder", "It does not get colder."), List.of(), List.of()));
        assertEquals("colder", answer.get("trouble").asText());
        assertEquals("It does not get colder.", answer.get("troubleText").asText());
        assertTrue(answer.get("results").isEmpty() && answer.get("working").isEmpty());
        assertFalse(answer.has("warnings") || answer.has("warningTexts"));
    }

    @Test
    void everyFormulaIsListedWithItsParameters() throws IOException {
        List<NamedFormula> formulas = SERVICE.formulas();
        JsonNode list = printed(json -> json.formulas(formulas, Locale.UK)).get("formulas");
        assertEquals(formulas.size(), list.size());
        Set<String> seen = new TreeSet<>();
        for (int i = 0; i < formulas.size(); i++) {
            NamedFormula formula = formulas.get(i);
            JsonNode one = list.get(i);
            assertEquals(formula.name(), one.get("name").asText());
            assertEquals(formula.calculator(), one.get("calculator").asText());
            assertEquals(
                    formula.text(Locale.UK, "formula." + formula.name()),
                    one.get("help").asText());
            List<Parameter> parameters = formula.formula().parameters();
            assertEquals(parameters.size(), one.get("parameters").size());
            for (int at = 0; at < parameters.size(); at++) {
                Parameter parameter = parameters.get(at);
                JsonNode told = one.get("parameters").get(at);
                String where = formula.name() + " " + parameter.key();
                assertEquals(parameter.key(), told.get("key").asText(), where);
                assertEquals(
                        formula.text(Locale.UK, "parameter." + parameter.key()),
                        told.get("help").asText(),
                        where);
                assertEquals(parameter.required(), told.get("required").asBoolean(), where);
                seen.add(values(parameter, told, where));
            }
        }
        assertEquals(Set.of("number", "number by default", "words", "words by default"), seen);
    }

    private static String values(Parameter parameter, JsonNode told, String where) {
        Kind kind = parameter.kind();
        if (kind == null) {
            assertEquals(parameter.words(), texts(told.path("words")), where);
            String usual = told.path("fallbackWord").asText("");
            assertEquals(parameter.defaultWord() == null ? "" : parameter.defaultWord(), usual, where);
            assertFalse(told.has("kind") || told.has("least") || told.has("fallback"), where);
            return usual.isEmpty() ? "words" : "words by default";
        }
        assertEquals(kind.name().toLowerCase(Locale.ROOT), told.get("kind").asText(), where);
        assertEquals(kind.symbol(), told.get("unit").asText(), where);
        assertEquals(parameter.least(), told.get("least").asDouble(), where);
        assertEquals(parameter.most(), told.get("most").asDouble(), where);
        Double usual = parameter.defaultValue();
        assertEquals(usual, told.has("fallback") ? (Double) told.get("fallback").asDouble() : null, where);
        assertFalse(told.has("words"), where);
        return usual == null ? "number" : "number by default";
    }

    @Test
    void everyCalculatorIsListedWithWhatItDeclares() throws IOException {
        List<CalculatorDescriptor> declared =
                SERVICE.calculators().stream().map(Calculator::descriptor).toList();
        JsonNode list = printed(json -> json.plugins(declared)).get("plugins");
        assertEquals(declared.size(), list.size());
        for (int i = 0; i < declared.size(); i++) {
            CalculatorDescriptor descriptor = declared.get(i);
            JsonNode one = list.get(i);
            assertEquals(descriptor.id(), one.get("id").asText());
            assertEquals(descriptor.version(), one.get("version").asText());
            assertEquals(
                    descriptor.texts().get(Locale.ROOT, "title"),
                    one.get("title").asText());
            assertEquals(names(descriptor.consumes()), texts(one.path("takes")));
            assertEquals(names(descriptor.provides()), texts(one.path("gives")));
            assertEquals(descriptor.parameters().stream().map(Parameter::key).toList(), texts(one.path("parameters")));
            assertEquals(descriptor.formulas().stream().map(each -> each.name()).toList(), texts(one.path("formulas")));
            assertEquals(descriptor.checks().size(), one.get("checks").size());
            for (int at = 0; at < descriptor.checks().size(); at++) {
                Check check = descriptor.checks().get(at);
                JsonNode told = one.get("checks").get(at);
                assertEquals(check.key(), told.get("key").asText());
                assertEquals(
                        descriptor.texts().get(Locale.ROOT, "check." + check.key()),
                        told.get("title").asText());
                assertEquals(
                        check.kind().name().toLowerCase(Locale.ROOT),
                        told.get("class").asText());
                assertEquals(check.unit().symbol(), told.get("unit").asText());
                assertEquals(check.needs(), texts(told.path("needs")));
            }
        }
    }

    private static List<String> names(List<SharedQuantity> quantities) {
        return quantities.stream().map(SharedQuantity::name).toList();
    }
}
