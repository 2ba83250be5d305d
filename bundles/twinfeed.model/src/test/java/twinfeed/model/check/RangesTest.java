// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.job.JobPackage;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.model.text.ModelDocs;
import twinfeed.units.Quantity;

/** The table knows every number of a survey and a catalogue, and agrees with what the model's documentation says of them. */
class RangesTest {
    private static final Pattern ABOVE_ZERO = Pattern.compile("more than 0\\b");
    private static final Pattern FROM_ZERO = Pattern.compile("\\b0 or more\\b");
    private static final Pattern SIGNED = Pattern.compile("may be negative");

    static Stream<EAttribute> numbers() {
        return Stream.of(SurveyPackage.eINSTANCE, CataloguePackage.eINSTANCE, JobPackage.eINSTANCE)
                .flatMap(pack -> pack.getEClassifiers().stream())
                .filter(EClass.class::isInstance)
                .flatMap(type -> ((EClass) type).getEAttributes().stream())
                .filter(attribute -> isNumber(attribute.getEAttributeType().getInstanceClass()));
    }

    private static boolean isNumber(Class<?> type) {
        return Quantity.class.isAssignableFrom(type) || type == Integer.class;
    }

    @Test
    void numbersAreSeen() {
        assertTrue(numbers().count() > 60, "numbers seen: " + numbers().count());
    }

    @Test
    void tableHasNothingElse() {
        List<String> known = numbers()
                .map(number -> number.getEContainingClass().getName() + "." + number.getName())
                .sorted()
                .toList();
        assertEquals(known, List.copyOf(Ranges.table().names()));
    }

    @Test
    void words() {
        assertEquals(
                "above 0 mm and up to 9 mm", Range.of(bore(), ">0 mm", "9 mm").words());
        assertEquals("from 1 mm to 9 mm", Range.of(bore(), "1 mm", "9 mm").words());
        assertEquals("1 mm or more", Range.of(bore(), "1 mm", "").words());
        assertEquals("above 1 mm", Range.of(bore(), ">1 mm", "").words());
        assertEquals("9 mm or less", Range.of(bore(), "", "9 mm").words());
    }

    private static EDataType bore() {
        return SurveyPackage.Literals.PIPE_SEGMENT__BORE.getEAttributeType();
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void everyNumberHasItsRange(EAttribute number) {
        Ranges.Entry entry = Ranges.table().of(number);
        assertNotNull(entry, number.getEContainingClass().getName() + "." + number.getName());
        assertTrue(entry.usual().least() >= entry.possible().least(), number.getName());
        assertTrue(entry.usual().most() <= entry.possible().most(), number.getName());
        assertTrue(entry.usual().least() < entry.usual().most(), number.getName());
        assertFalse(entry.possible().words().isBlank());
    }

    /** What is printed as an example is written in the unit that is asked for, and is a usual reading. */
    @ParameterizedTest
    @MethodSource("numbers")
    void everyExampleIsAUsualReading(EAttribute number) {
        Ranges.Entry entry = Ranges.table().of(number);
        Range example = Range.of(number.getEAttributeType(), entry.example(), entry.example());
        String name = number.getEContainingClass().getName() + "." + number.getName() + ": " + entry.example();
        assertTrue(
                example.least() >= entry.usual().least()
                        && example.most() <= entry.usual().most(),
                name);
        assertTrue(entry.example().endsWith(ReadingRange.unit(number)), name);
        assertFalse(entry.example().startsWith("-"), "spreadsheets take that for a formula: " + name);
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void rangeAgreesWithTheDocumentation(EAttribute number) {
        String documentation = ModelDocs.of(number);
        Range possible = Ranges.table().of(number).possible();
        if (ABOVE_ZERO.matcher(documentation).find()) {
            assertEquals(List.of(0.0, true), List.of(possible.least(), possible.open()), documentation);
        }
        if (FROM_ZERO.matcher(documentation).find()) {
            assertEquals(List.of(0.0, false), List.of(possible.least(), possible.open()), documentation);
        }
        if (SIGNED.matcher(documentation).find()) {
            assertTrue(possible.least() < 0, documentation);
        }
    }

    @Test
    void ends() {
        Range open = new Range(0, true, 10, "0", "10");
        assertFalse(open.contains(0));
        assertTrue(open.contains(Double.MIN_VALUE) && open.contains(10));
        assertFalse(open.contains(10.000001) || open.contains(Double.NaN));
        assertTrue(new Range(0, false, 10, "0", "10").contains(0));
        assertFalse(new Range(0, false, 10, "0", "10").contains(-0.001));
    }
}
