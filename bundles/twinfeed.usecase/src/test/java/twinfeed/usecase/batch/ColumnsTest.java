// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.rows.Row;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.Concentration;

/** A list of dwellings is read by its head, and each value is checked where it stands. */
final class ColumnsTest {
    private final Survey survey = SurveyFactory.eINSTANCE.createSurvey();

    private static Row row(int number, String... cells) {
        return new Row(number, List.of(cells));
    }

    private Columns columns(String... head) {
        return new Columns("list.csv", row(1, head), survey);
    }

    private List<DwellingReading> filled(Columns columns, String... cells) {
        return columns.fill(row(2, cells), survey);
    }

    private List<String> refused(String... head) {
        return assertThrows(InputException.class, () -> columns(head)).problems().stream()
                .map(problem -> problem.line() + " " + problem.element())
                .toList();
    }

    @Test
    void aDwellingMustBeNamed() {
        assertEquals(List.of("1 "), refused("water.hardness"));
        Columns columns = columns("water.hardness", " Dwelling ");
        assertEquals("Mill Row 2", columns.dwelling(row(2, "90 mg/L", " Mill Row 2 ")));
        assertEquals("", columns.dwelling(row(2, "90 mg/L")), "a short row");
        InputException unnamed = assertThrows(InputException.class, () -> filled(columns, "90 mg/L"));
        assertEquals("dwelling", unnamed.problems().get(0).element());
        assertEquals(2, unnamed.problems().get(0).line());
    }

    /** A name without its way, a slip in it, capitals, or a name that several fields have. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "address|there is no address here|site.address, customer.address?",
                "Adress|there is no Adress here|site.address",
                "test.flow|there is no test here|water.test.flow",
                "static pressure|this is not the name of a field|water.test.staticPressure",
                "water.bore|there is no bore here|water.segments[1].bore",
                "unit.hardness|there is no hardness here|water.hardness",
                "circuit.device.rating|there is no circuit here|electricity.circuit.device.rating",
                "dweling|there is no dweling here|dwelling"
            })
    void aNameThatIsNoneIsAnsweredWithThoseThatAreLikeIt(String written, String wrong, String meant) {
        InputProblem told = assertThrows(InputException.class, () -> columns("dwelling", written))
                .problems()
                .get(0);
        assertEquals(written, told.element());
        assertEquals(wrong, told.wrong());
        assertTrue(told.right().startsWith("did you mean " + meant), told.right());
    }

    @Test
    void ofManyAlikeAFewAreNamedAndOfNoneAllThatStandThere() {
        InputProblem many = assertThrows(InputException.class, () -> columns("dwelling", "note"))
                .problems()
                .get(0);
        assertEquals(4, many.right().split(", ").length, many.right());
        InputProblem none = assertThrows(InputException.class, () -> columns("dwelling", "zzzzzzzzzz"))
                .problems()
                .get(0);
        assertTrue(none.right().startsWith("name one of rules, climate"), none.right());
    }

    @Test
    void whatIsNoFieldOrStandsTwiceIsRefusedAllAtOnce() {
        assertEquals(
                List.of("1 water.softness", "1 survey.water.hardness", "1 DWELLING", "1 Symptoms"),
                refused(
                        "dwelling",
                        "water.softness",
                        "water.hardness",
                        "survey.water.hardness",
                        "DWELLING",
                        "symptoms",
                        "Symptoms"));
    }

    @Test
    void remarksAndColumnsWithoutAHeadArePassedOver() {
        Columns columns = columns("dwelling", "# of the caretaker", "", "water.hardness");
        assertEquals(1, columns.fields().size());
        List<DwellingReading> readings = filled(columns, "Mill Row 2", "by the bins", "x", "90 mg/L");
        assertEquals(List.of(new DwellingReading(0, "survey.water.hardness", "90 mg/L", ReadingOrigin.OWN)), readings);
    }

    @Test
    void whereEachReadingIsFromIsSaid() {
        WaterFeed water = SurveyFactory.eINSTANCE.createWaterFeed();
        water.setHardness(Concentration.valueOf("250 mg/L"));
        survey.setWater(water);
        Columns columns = columns("dwelling", "site.reference", "water.hardness", "water.lowestHandset");
        assertEquals(
                List.of("0 NQ-1 OWN", "1 250 mg/L TEMPLATE", "2  MISSING"),
                filled(columns, "Mill Row 2", "NQ-1", " ").stream()
                        .map(reading -> reading.column() + " " + reading.value() + " " + reading.origin())
                        .toList());
        assertEquals(
                ReadingOrigin.MISSING,
                filled(columns, "Mill Row 3", "NQ-2", "-").get(1).origin(),
                "the list takes it away");
    }

    /** The unit in which a column is asked for is that of the trade: mg/L, bar, L/min. */
    @Test
    void aPlainNumberIsInTheUnitOfItsColumn() {
        Columns columns = columns("dwelling", "water.hardness", "water.test.staticPressure", "site.reference");
        assertEquals(
                List.of("90 mg/L", "3.5 bar \u00b1 0.05 bar", "12"),
                filled(columns, "Mill Row 2", "90", "3.5 \u00b1 0.05", "12").stream()
                        .map(DwellingReading::value)
                        .toList());
        assertEquals(
                "3.5 bar u 0.1 bar",
                filled(columns, "Mill Row 2", "90", "3.5 u 0.1", "12").get(1).value());
        assertEquals(
                "350 kPa",
                filled(columns, "Mill Row 2", "90", "350 kPa", "12").get(1).value());
    }

    @Test
    void whatDoesNotFitIsToldWithItsColumnAndRow() {
        Columns columns = columns("dwelling", "water.hardness", "survey.unit.age");
        InputException wrong =
                assertThrows(InputException.class, () -> columns.fill(row(7, "Mill Row 2", "hard", "old"), survey));
        assertEquals(
                List.of("7 water.hardness hard", "7 unit.age old"),
                wrong.problems().stream()
                        .map(problem -> problem.line() + " " + problem.element() + " " + problem.reading())
                        .toList());
        assertTrue(wrong.problems().stream().map(InputProblem::right).noneMatch(String::isEmpty));
    }

    @Test
    void complaintsAreWordsInOneCell() {
        Columns columns = columns("dwelling", "symptoms");
        filled(columns, "Mill Row 2", "rcdTrips; weakFlowHere;; rcdTrips ;-");
        assertEquals(
                List.of("rcdTrips", "weakFlowHere"),
                survey.getSymptoms().stream().map(Symptom::getKey).toList());
    }
}
