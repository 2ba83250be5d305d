// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Set;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.survey.Survey;
import twinfeed.units.Flow;
import twinfeed.units.Kind;
import twinfeed.units.Power;
import twinfeed.units.Resistance;

/** When a calculator is asked the same again. */
class HouseInputsTest {
    private static final CalculatorDescriptor WATER = CalculatorDescriptor.of(Calculator.class)
            .id("water")
            .reads("survey.water")
            .checks(Check.report("water.one", Kind.RATIO), Check.report("water.two", Kind.RATIO))
            .provides(SharedQuantity.TARGET_FLOW)
            .build();

    private final Survey survey = Fixtures.survey("8 L/min", "0.3 ohm");
    private final Candidate candidate = Fixtures.candidate();

    private CalculatorInputs inputs(Survey surveyed, Survey changed) {
        return inputs(surveyed, changed, candidate, Set.of("water.one"));
    }

    private static CalculatorInputs inputs(Survey surveyed, Survey changed, Candidate heater, Set<String> asked) {
        return new HouseInputs(surveyed, changed, Runner.rules(changed)).of(WATER, heater, asked, Set.of());
    }

    private Survey withFlow(String flow) {
        Survey edited = EcoreUtil.copy(survey);
        edited.getWater().getTest().setFlow(Flow.valueOf(flow));
        return edited;
    }

    private Survey withLoop(String loop) {
        Survey edited = EcoreUtil.copy(survey);
        edited.getElectricity().setExternalLoop(Resistance.valueOf(loop));
        return edited;
    }

    @Test
    void theHouseThatIsJudgedCountsAsFarAsItIsRead() {
        CalculatorInputs taken = inputs(survey, survey);
        Survey flow = withFlow("9 L/min");
        Survey loop = withLoop("0.4 ohm");
        assertNotEquals(taken, inputs(flow, flow));
        assertEquals(taken, inputs(loop, loop));
    }

    @Test
    void soDoesTheHouseInWhichTheReadingsWereTaken() {
        CalculatorInputs works = inputs(survey, withFlow("9 L/min"));
        assertEquals(works, inputs(withLoop("0.4 ohm"), withFlow("9 L/min")));
        assertNotEquals(works, inputs(withFlow("10 L/min"), withFlow("9 L/min")));
        assertNotEquals(works, inputs(withFlow("9 L/min"), withFlow("9 L/min")));
    }

    @Test
    void aHouseJudgedAsSurveyedIsNoHouseWithWorks() {
        Survey bare = EcoreUtil.copy(survey);
        bare.setWater(null);
        assertNotEquals(inputs(survey, survey), inputs(bare, survey));
        Survey same = EcoreUtil.copy(survey);
        assertNotEquals(inputs(survey, survey), inputs(same, survey), "works may have changed nothing that it reads");
    }

    @Test
    void anotherHeaterIsAnotherQuestion() {
        CalculatorInputs taken = inputs(survey, survey);
        Candidate strong = Fixtures.candidate();
        strong.heater().setPower(Power.valueOf("10.5 kW"));
        assertNotEquals(taken, inputs(survey, survey, strong, Set.of("water.one")));
        Candidate present = new Candidate(candidate.heater(), true);
        assertNotEquals(taken, inputs(survey, survey, present, Set.of("water.one")));
        assertEquals(taken, inputs(survey, survey, Fixtures.candidate(), Set.of("water.one")));
    }

    @Test
    void ofTheChecksAndQuantitiesItsOwnCount() {
        CalculatorInputs taken = inputs(survey, survey);
        assertEquals(taken, inputs(survey, survey, candidate, Set.of("water.one", "cable.one")));
        assertNotEquals(taken, inputs(survey, survey, candidate, Set.of("water.one", "water.two")));
        HouseInputs house = new HouseInputs(survey, survey, Runner.rules(survey));
        Set<String> asked = Set.of("water.one");
        assertEquals(taken, house.of(WATER, candidate, asked, Set.of(SharedQuantity.DESIGN_CURRENT)));
        assertNotEquals(taken, house.of(WATER, candidate, asked, Set.of(SharedQuantity.TARGET_FLOW)));
    }
}
