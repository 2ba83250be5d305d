// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hummeling.if97.IF97;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.engineering.CaseFile;
import twinfeed.engineering.ExpressionReader;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;

/** The fits against an independent implementation of IAPWS-IF97, live over the whole range, and against printed rows. */
class WaterTest {
    private static final IF97 IAPWS = new IF97(IF97.UnitSystem.SI);
    private static final double FIT_PRESSURE_PA = 0.2e6;
    private static final double STEP_C = 0.05;

    @Test
    void referenceLibraryGivesTheVerificationRow() {
        // IAPWS R7-97(2012) table 5, 300 K and 3 MPa (row from memory)
        assertEquals(0.100215168e-2, 1 / IAPWS.densityPT(3e6, 300), 1e-11);
        assertEquals(0.115331273e6, IAPWS.specificEnthalpyPT(3e6, 300), 1e-3);
        assertEquals(0.417301218e4, IAPWS.isobaricHeatCapacityPT(3e6, 300), 1e-5);
    }

    @Test
    void densityIsWithinItsStatedError() {
        DoubleUnaryOperator iapws = t -> IAPWS.densityPT(FIT_PRESSURE_PA, kelvin(t));
        assertTrue(largestError(Water::density, iapws) <= 0.0024e-2, "over 0..100 degC");
    }

    @Test
    void specificHeatIsWithinItsStatedError() {
        DoubleUnaryOperator iapws = t -> IAPWS.isobaricHeatCapacityPT(FIT_PRESSURE_PA, kelvin(t));
        assertTrue(largestError(Water::specificHeat, iapws) <= 0.025e-2, "over 0..100 degC");
    }

    @Test
    void viscositiesAreWithinTheirStatedErrors() {
        DoubleUnaryOperator dynamic = t -> IAPWS.dynamicViscosityPT(FIT_PRESSURE_PA, kelvin(t));
        DoubleUnaryOperator kinematic = t -> IAPWS.kinematicViscosityPT(FIT_PRESSURE_PA, kelvin(t));
        assertTrue(largestError(Water::dynamicViscosity, dynamic) <= 0.12e-2, "dynamic, over 0..100 degC");
        assertTrue(largestError(Water::kinematicViscosity, kinematic) <= 0.12e-2, "kinematic, over 0..100 degC");
    }

    @Test
    void enthalpyIsWithinItsStatedError() {
        double largest = temperatures()
                .map(t -> Math.abs(Water.enthalpy(t) - IAPWS.specificEnthalpyPT(FIT_PRESSURE_PA, kelvin(t))))
                .max(Double::compare)
                .orElseThrow();
        assertTrue(largest <= 11, () -> "J/kg: " + largest);
    }

    @Test
    void pressuresOfAHouseChangeLittle() {
        for (double pressurePa : List.of(0.101325e6, 1.101325e6)) {
            double density = temperatures()
                    .filter(t -> t <= 60)
                    .mapToDouble(t -> Math.abs(IAPWS.densityPT(pressurePa, kelvin(t)) / Water.density(t) - 1))
                    .max()
                    .orElseThrow();
            assertTrue(density < 0.05e-2, () -> "density at " + pressurePa + ": " + density);
            double rise =
                    IAPWS.specificEnthalpyPT(pressurePa, kelvin(40)) - IAPWS.specificEnthalpyPT(pressurePa, kelvin(5));
            assertEquals(1, rise / (Water.enthalpy(40) - Water.enthalpy(5)), 0.3e-2);
        }
    }

    @Test
    void specificHeatIsTheSlopeOfEnthalpy() {
        for (double t = 1; t <= 99; t += 0.5) {
            double slope = (Water.enthalpy(t + 1e-3) - Water.enthalpy(t - 1e-3)) / 2e-3;
            assertEquals(Water.specificHeat(t), slope, 1e-4);
        }
    }

    @Test
    void printedCasesAgree() {
        for (CaseFile.Case row : CaseFile.read("water-properties.csv").cases()) {
            double t = row.number("temperature_degC");
            assertRelative(row.number("density_kg_m3"), Water.density(t), 0.02e-2, row);
            assertRelative(row.number("cp_J_kgK"), Water.specificHeat(t), 0.05e-2, row);
            assertRelative(row.number("dynamic_viscosity_mPas") / 1000, Water.dynamicViscosity(t), 0.5e-2, row);
        }
    }

    @Test
    void temperatureComesBackFromEnthalpy() {
        temperatures()
                .forEach(t -> assertEquals(
                        t, Water.temperatureAtEnthalpy(Water.enthalpy(t)).value(), 1e-10));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 0, 160.1, 420_000, 1e300})
    void enthalpyOutsideTheRangeHasNoTemperature(double enthalpyJPerKg) {
        assertEquals(Solution.none(FailureReason.OUTSIDE_WATER_RANGE), Water.temperatureAtEnthalpy(enthalpyJPerKg));
    }

    record Property(String name, DoubleUnaryOperator function, UnaryOperator<String> expression) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Property> properties() {
        return Stream.of(
                new Property("density", Water::density, Water::densityExpression),
                new Property("specificHeat", Water::specificHeat, Water::specificHeatExpression),
                new Property("enthalpy", Water::enthalpy, Water::enthalpyExpression),
                new Property("dynamicViscosity", Water::dynamicViscosity, Water::dynamicViscosityExpression));
    }

    @ParameterizedTest
    @MethodSource("properties")
    void expressionGivesTheSame(Property property) {
        String expression = property.expression().apply("T_in");
        temperatures()
                .forEach(t -> assertEquals(
                        1,
                        ExpressionReader.value(expression, Map.of("T_in", t))
                                / property.function().applyAsDouble(t),
                        1e-15,
                        expression));
    }

    @ParameterizedTest
    @MethodSource("properties")
    void expressionSurvivesASpreadsheet(Property property) {
        // A spreadsheet keeps 15 significant digits of a literal, and some readers know neither 1E-5 nor a leading
        // sign.
        String expression = property.expression().apply("T");
        assertFalse(Pattern.compile("[0-9]E|[(*/+-] ?-|^-").matcher(expression).find(), expression);
        Matcher number = Pattern.compile("[0-9.]+").matcher(expression);
        while (number.find()) {
            String digits = number.group().replace(".", "").replaceFirst("^0+", "");
            assertTrue(digits.length() <= 15, expression);
        }
    }

    @Test
    void temperatureExpressionsGiveTheSame() {
        String start = Water.temperatureStartExpression("h");
        String step = Water.temperatureStepExpression("h", "near");
        for (double t = 0.5; t < 100; t += 0.5) {
            double h = Water.enthalpy(t);
            double near = ExpressionReader.value(start, Map.of("h", h));
            for (int i = 0; i < 2; i++) {
                near = ExpressionReader.value(step, Map.of("h", h, "near", near));
            }
            assertEquals(Water.temperatureAtEnthalpy(h).value(), near, 1e-13 * t);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1T", "T in", "T-1", "T)"})
    void refusesWhatIsNoSymbol(String symbol) {
        assertThrows(IllegalArgumentException.class, () -> Water.densityExpression(symbol));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 100.001, -273.15, 1e9})
    void refusesTemperaturesOutsideTheRange(double temperatureC) {
        List<DoubleUnaryOperator> functions =
                properties().map(Property::function).toList();
        for (DoubleUnaryOperator function : functions) {
            DomainException refused = assertThrows(DomainException.class, () -> function.applyAsDouble(temperatureC));
            assertEquals(FailureReason.OUTSIDE_WATER_RANGE, refused.trouble());
            assertEquals("temperatureC", refused.argument());
            assertEquals(temperatureC, refused.value());
        }
    }

    private static Stream<Double> temperatures() {
        return IntStream.rangeClosed(0, (int) (100 / STEP_C)).mapToObj(i -> Math.min(100, i * STEP_C));
    }

    private static double kelvin(double temperatureC) {
        return temperatureC + 273.15;
    }

    private static double largestError(DoubleUnaryOperator fit, DoubleUnaryOperator reference) {
        return temperatures()
                .mapToDouble(t -> Math.abs(fit.applyAsDouble(t) / reference.applyAsDouble(t) - 1))
                .max()
                .orElseThrow();
    }

    private static void assertRelative(double expected, double actual, double tolerance, CaseFile.Case row) {
        assertEquals(expected, actual, expected * tolerance, row::toString);
    }
}
