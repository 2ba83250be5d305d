// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Fixtures;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Flow;
import twinfeed.units.Power;

/** When two surveys are the same to a calculator. */
class SurveyValuesTest {
    private final Survey survey = Fixtures.survey("8 L/min ± 0.5 L/min", "0.3 ohm");

    private static CalculatorDescriptor reading(String... paths) {
        return CalculatorDescriptor.of(Calculator.class).id("made").reads(paths).build();
    }

    private List<Object> after(Consumer<Survey> edit, CalculatorDescriptor calculator) {
        Survey edited = EcoreUtil.copy(survey);
        edit.accept(edited);
        return SurveyValues.of(edited).readBy(calculator);
    }

    private void assertSame(CalculatorDescriptor calculator, Consumer<Survey> edit) {
        assertEquals(SurveyValues.of(survey).readBy(calculator), after(edit, calculator));
    }

    private void assertOther(CalculatorDescriptor calculator, Consumer<Survey> edit) {
        assertNotEquals(SurveyValues.of(survey).readBy(calculator), after(edit, calculator));
    }

    private static Consumer<Survey> flow(String text) {
        return edited -> edited.getWater().getTest().setFlow(Flow.valueOf(text));
    }

    @Test
    void whatACalculatorDoesNotReadMakesNoDifference() {
        assertSame(reading("survey.electricity"), flow("9 L/min"));
        assertOther(reading("survey.water"), flow("9 L/min ± 0.5 L/min"));
        assertOther(reading("survey.water.test.flow"), flow("9 L/min ± 0.5 L/min"));
        assertOther(reading(), flow("9 L/min ± 0.5 L/min"));
    }

    @Test
    void theWayInWhichAReadingIsWrittenMakesNoDifferenceButItsToleranceDoes() {
        assertSame(reading("survey.water"), flow("8.0 L/min ± 0.5 L/min"));
        assertOther(reading("survey.water"), flow("8 L/min ± 0.6 L/min"));
        assertOther(reading("survey.water"), flow("8 L/min u 0.5 L/min"));
        assertOther(reading("survey.water"), flow("8 L/min"));
        flow("8 L/min").accept(survey);
        assertOther(reading("survey.water"), flow("8 L/min ± 0 L/min"));
    }

    @Test
    void whatIsAddedOrTakenAwayMakesADifference() {
        assertOther(reading("survey.water"), edited -> edited.getWater().setSharedServicePipe(true));
        assertOther(reading("survey.electricity"), edited -> edited.getElectricity()
                .eUnset(SurveyPackage.Literals.ELECTRICAL_FEED__EXTERNAL_LOOP));
        assertSame(reading("survey.water"), edited -> edited.setNotes("gate sticks"));
    }

    @Test
    void elementsOfAListAreToldApart() {
        load(survey, "2 kW");
        load(survey, "3 kW");
        assertOther(
                reading("survey.electricity.loads"),
                edited -> edited.getElectricity().getLoads().move(0, 1));
        assertOther(reading("survey.electricity.loads"), edited -> load(edited, "1 kW"));
        assertSame(reading("survey.electricity.circuit"), edited -> load(edited, "1 kW"));
    }

    @Test
    void anElementOfWhichNothingIsKnownYetIsOneMore() {
        load(survey, "2 kW");
        Consumer<Survey> another =
                edited -> edited.getElectricity().getLoads().add(SurveyFactory.eINSTANCE.createLoad());
        assertOther(reading("survey.electricity"), another);
        assertSame(reading("survey.water"), another);
    }

    private static void load(Survey house, String power) {
        Load load = SurveyFactory.eINSTANCE.createLoad();
        load.setPower(Power.valueOf(power));
        house.getElectricity().getLoads().add(load);
    }

    @Test
    void aParameterBelongsToItsCalculator() {
        assertOther(reading("survey.water"), edited -> parameter(edited, "made"));
        assertSame(reading("survey.water"), edited -> parameter(edited, "other"));
        assertSame(reading(), edited -> parameter(edited, "other"));
    }

    private static void parameter(Survey house, String calculator) {
        ParameterValue value = SurveyFactory.eINSTANCE.createParameterValue();
        value.setCalculator(calculator);
        value.setKey("share");
        value.setValue("0.9");
        house.getParameters().add(value);
    }

    @Test
    void allDataOfAHeaterCount() {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        List<Object> bare = SurveyValues.all(heater);
        heater.setPower(Power.valueOf("9.5 kW"));
        List<Object> rated = SurveyValues.all(heater);
        assertNotEquals(bare, rated);
        heater.setPower(Power.valueOf("9500 W"));
        assertEquals(rated, SurveyValues.all(heater));
    }
}
