// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.repair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.diagnosis.PricedVisits;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.inference.RankedPart;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.QuoteException;
import twinfeed.units.Concentration;

class RepairPolicyTest {
    private PriceBook book;

    @BeforeEach
    void open() throws IOException {
        book = PricedVisits.book();
    }

    private RepairAdvice advice(Survey survey, ReplacementOffer... offers) {
        RepairAdvice advice = PricedVisits.desk(survey, PricedVisits.present())
                .sheet(book, PricedVisits.DAY, List.of(offers))
                .repair();
        assertNotNull(advice);
        return advice;
    }

    /** By hand from the demonstration's prices: visit 20.00 and 45 min, part 69.00 and 40 min, the hour at 54.00. */
    @Test
    void theFirstRenewalByHand() {
        RepairAdvice advice = advice(PricedVisits.openElement());
        assertEquals(new BigDecimal("165.50"), advice.lines().get(0).amount());
    }

    @Test
    void theNextVisitIsWeighedByTheChanceThatTheFirstDoesNotCure() {
        Survey survey = PricedVisits.openElement();
        RepairAdvice advice = advice(survey);
        List<RankedPart> ranked =
                PricedVisits.desk(survey, PricedVisits.present()).diagnosis().posterior().ranked().stream()
                        .filter(each ->
                                !FaultData.own().part(each.part()).codes().isEmpty())
                        .toList();
        double uncured = 1 - ranked.get(0).chance() * FaultData.own().limit("cure");
        BigDecimal next = new VisitPrices(book, PricedVisits.DAY)
                .renewal(FaultData.own().part(ranked.get(1).part()))
                .getAmount();
        assertEquals(
                next.multiply(BigDecimal.valueOf(uncured)).setScale(2, RoundingMode.HALF_UP),
                advice.lines().get(1).amount());
        assertEquals(
                advice.repair(),
                advice.lines().stream().map(RepairAdvice.Line::amount).reduce(BigDecimal.ZERO, BigDecimal::add));
        assertEquals(advice.total(), advice.repair().add(advice.later()));
    }

    @Test
    void aTestThatIsStillToBeDoneIsPaidFor() {
        RepairAdvice advice = advice(PricedVisits.survey("someHeatButWeak"));
        assertTrue(advice.lines().get(0).title().startsWith("Next test"));
        assertEquals(3, advice.lines().size());
    }

    @Test
    void theCheapestReplacementComesFirst() {
        RepairAdvice advice = advice(
                PricedVisits.openElement(), PricedVisits.offer("b", "700.00"), PricedVisits.offer("a", "450.00"));
        assertEquals("a", advice.replacements().get(0).heater());
        assertEquals(
                advice.replacements().get(0).total(),
                advice.replacements()
                        .get(0)
                        .price()
                        .add(advice.replacements().get(0).later()));
    }

    @Test
    void atTheBreakEvenAgeTheBalanceTips() {
        Survey survey = PricedVisits.openElement();
        ReplacementOffer offer = PricedVisits.offer("a", "450.00");
        Integer age = advice(survey, offer).breakEvenAge();
        assertNotNull(age);
        survey.getUnit().setAge(age);
        RepairAdvice at = advice(survey, offer);
        assertTrue(at.total().compareTo(at.replacements().get(0).total()) >= 0, at.toString());
        assertTrue(at.sentence().endsWith("We advise the new unit."), at.sentence());
        survey.getUnit().setAge(age - 1);
        RepairAdvice before = advice(survey, offer);
        assertTrue(before.total().compareTo(before.replacements().get(0).total()) < 0, before.toString());
        assertTrue(before.sentence().endsWith("We advise the repair."), before.sentence());
    }

    @Test
    void atTheBreakEvenPriceBothCostTheSame() {
        RepairAdvice advice = advice(PricedVisits.openElement(), PricedVisits.offer("a", "600.00"));
        assertEquals(
                advice.replacements().get(0).total(), advice.breakEvenPrice().add(advice.later()));
    }

    @Test
    void withoutAnOfferTheRepairStandsAlone() {
        RepairAdvice advice = advice(PricedVisits.openElement());
        assertNull(advice.breakEvenAge());
        assertNull(advice.breakEvenPrice());
        assertTrue(advice.sentence().contains("No new unit can be quoted"), advice.sentence());
    }

    @Test
    void codesThatTheBookLacksAreNamed() {
        book.getItems().removeIf(item -> item.getCode().equals("part-elements"));
        assertEquals(
                List.of("part-elements"), advice(PricedVisits.openElement()).missing());
    }

    @Test
    void theUsualAgeIsAnAssumption() {
        Survey survey = PricedVisits.openElement();
        survey.getUnit().eUnset(survey.getUnit().eClass().getEStructuralFeature("age"));
        assertTrue(advice(survey).assumptions().get(0).contains("not known"));
    }

    /** A geometric series: 0.04 (2^(8/5) - 1) / (2^(1/5) - 1) for a new unit over eight years. */
    @Test
    void failuresByTheSeries() {
        assertEquals(
                0.04 * (Math.pow(2, 1.6) - 1) / (Math.pow(2, 0.2) - 1),
                LifeModel.own().failures(0, "hardness.moderate"),
                1e-12);
        assertTrue(LifeModel.own().failures(10, "hardness.moderate")
                > 2 * LifeModel.own().failures(0, "hardness.moderate"));
    }

    @Test
    void theRateEndsSomewhere() {
        assertEquals(
                LifeModel.own().years() * LifeModel.own().value("mostRate"),
                LifeModel.own().failures(60, "hardness.very"),
                1e-12);
    }

    /** Bands of the Drinking Water Inspectorate (read), mg/L as calcium carbonate. */
    @Test
    void hardnessClasses() {
        assertEquals("hardness.soft", hardness("100 mg/L"));
        assertEquals("hardness.slight", hardness("101 mg/L"));
        assertEquals("hardness.slight", hardness("150 mg/L"));
        assertEquals("hardness.moderate", hardness("151 mg/L"));
        assertEquals("hardness.moderate", hardness("200 mg/L"));
        assertEquals("hardness.hard", hardness("201 mg/L"));
        assertEquals("hardness.hard", hardness("300 mg/L"));
        assertEquals("hardness.very", hardness("301 mg/L"));
        assertEquals("hardness.moderate", LifeModel.own().hardnessClass(null));
    }

    private static String hardness(String text) {
        return LifeModel.own().hardnessClass(Concentration.valueOf(text));
    }

    @Test
    void assumptionsCanBeEdited() {
        String data = "# source: test\n# status: judgement\n# units: none\nkey,value,reason\nhorizon,1,r\n"
                + "newRate,0.1,r\ndoubling,1,r\nmostRate,9,r\nhardness.soft,1,r\n";
        LifeModel life = LifeModel.read(new ByteArrayInputStream(data.getBytes(StandardCharsets.UTF_8)));
        assertEquals(0.1 * 8, life.failures(3, "hardness.soft"), 1e-12);
    }

    /** A firm's own assumptions take the place of the program's; what they lack is named. */
    @Test
    void aFirmsOwnAssumptions(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("ours.csv");
        Files.writeString(file, "# source: test\n# status: judgement\n# units: none\nkey,value,reason\nhorizon,3,r\n");
        System.setProperty(LifeModel.FILE, file.toString());
        try {
            assertEquals(3, LifeModel.current().years());
            String lacks = assertThrows(IllegalArgumentException.class, () -> LifeModel.current()
                            .value("newRate"))
                    .getMessage();
            assertTrue(lacks.contains("no newRate in the life data"), lacks);
            System.setProperty(LifeModel.FILE, folder.resolve("missing.csv").toString());
            String missing = assertThrows(IllegalArgumentException.class, LifeModel::current)
                    .getMessage();
            assertTrue(missing.contains("missing.csv: it cannot be read"), missing);
        } finally {
            System.clearProperty(LifeModel.FILE);
        }
        assertEquals(8, LifeModel.current().years());
    }

    @Test
    void aBookWithoutALabourRateIsRefused() {
        book.setLabourRate(null);
        assertThrows(QuoteException.class, () -> new VisitPrices(book, PricedVisits.DAY));
    }

    /** Every code of the visit and of a part, each once: what a firm's price list has to have. */
    @Test
    void theCodesThatAPriceListNeeds() {
        List<String> codes = VisitPrices.codes();
        assertTrue(codes.containsAll(List.of("part-elements", "isolator-50", "task-change-isolator", "part-seals")));
        assertEquals(codes.stream().distinct().toList(), codes);
        assertEquals("task-repair-visit", codes.get(0));
    }
}
