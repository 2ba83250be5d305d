// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.search.WorkCost;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.QuoteBuilder;
import twinfeed.pricing.QuoteRequest;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Length;
import twinfeed.units.Resistance;
import twinfeed.usecase.choices.ChoicesInJob;
import twinfeed.usecase.choices.QuoteChoices;

/** The least costly works by the demonstration's prices, in its houses and in many that are changed at random. */
class LeastCostlyWorksTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();
    private static final PriceBook BOOK = SERVICE.book(Demo.FOLDER.resolve("prices.csv"));
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static OpenedJob job(String name, String heater) {
        OpenedJob job = SERVICE.open(Demo.FOLDER.resolve(name + ".job"), null);
        job.job().getSurvey().getCandidates().clear();
        job.job().getSurvey().getCandidates().add(heater);
        return job;
    }

    private static Circuit circuit(OpenedJob job) {
        return job.job().getSurvey().getElectricity().getCircuit();
    }

    private static WorkPlan plan(OpenedJob job, String heater) {
        return plan(SERVICE.judge(job, BOOK, heater, Locale.UK));
    }

    private static WorkPlan plan(AssessedJob judged) {
        return judged.plans().stream()
                .filter(plan -> !plan.before().candidate().present())
                .findFirst()
                .orElseThrow();
    }

    private static List<String> ids(WorkPlan plan) {
        return plan.works().stream().map(Remedy::id).toList();
    }

    /** 6/2.5 mm² twin and earth above a ceiling, covered by at most 100 mm of insulation. */
    private static OpenedJob coveredCable(String name, int piece, String heater, String length) {
        OpenedJob job = job(name, heater);
        circuit(job).getSegments().forEach(segment -> {
            segment.setSize(Area.valueOf("6 mm2"));
            segment.setCpc(Area.valueOf("2.5 mm2"));
        });
        circuit(job).getSegments().get(piece).setMethod("100");
        circuit(job).getSegments().get(piece).setLength(Length.valueOf(length));
        return job;
    }

    /**
     * 6 mm² covered by insulation at a ceiling carries 34 A (BS 7671 table 4D5, method 100; from memory): too little behind 40 A, enough behind 32 A,
     * and 7.5 kW at 240 V draw 31.25 A. An RCBO costs 31.00 and 20 min at 54.00 an hour, in all 49.00; lifting 9 m costs 0.60 and 6 min for each,
     * 54.00, and lifting 6 m 36.00.
     */
    @Test
    void theSmallerDeviceIsTakenWhereItCostsLessThanLiftingTheCable() {
        WorkPlan device = plan(coveredCable("rowan-brook", 0, "h75", "9 m"), "h75");
        assertEquals(List.of("device-rcbo-32"), ids(device));
        assertEquals(new BigDecimal("49.00"), device.cost().price());
        WorkPlan lifted = plan(coveredCable("rowan-brook", 0, "h75", "6 m"), "h75");
        assertEquals(List.of("lift-out-of-insulation"), ids(lifted));
        assertEquals(new BigDecimal("36.00"), lifted.cost().price());
    }

    /** Nothing but the prices decides between a smaller device and a new cable inside a wall. */
    @Test
    void noCableIsRenewedWhereASmallerDeviceDoes() {
        OpenedJob job = coveredCable("birch-syke", 0, "h75", "9 m");
        circuit(job).getSegments().forEach(segment -> segment.setMethod("102"));
        assertEquals(List.of("device-rcbo-32"), ids(plan(job, "h75")));
    }

    /** 10 mm² run anew lies clear of the insulation, and so costs no lifting and need not be thicker. */
    @Test
    void aNewCableNeedNotBeThickerForTheInsulationThatItIsLaidClearOf() {
        List<String> works = ids(plan(job("alder-beck", "h105"), "h105"));
        assertEquals(List.of("cable-10", "enclosure-rcbo-45", "full-bore-valve"), works.subList(0, 3));
        assertFalse(works.contains("lift-out-of-insulation"), works.toString());
    }

    private static PriceBook without(String... codes) {
        PriceBook book = EcoreUtil.copy(BOOK);
        book.getItems().removeIf(item -> List.of(codes).contains(item.getCode()));
        return book;
    }

    /** The smaller device has no price and so the cable is lifted, which may cost more: that is said to the office, not to the customer. */
    @Test
    void aWorkThatThePriceBookLacksIsNamed() {
        OpenedJob job = coveredCable("rowan-brook", 0, "h75", "9 m");
        AssessedJob judged = SERVICE.judge(job, without("rcbo-32"), "h75", Locale.UK);
        assertEquals(List.of("lift-out-of-insulation"), ids(plan(judged)));
        assertEquals(
                List.of(
                        "The price book “Demonstration prices (invented)” lacks rcbo-32; works that need it are taken only where no"
                                + " others serve: RCBO of 32 A in place of the present breaker or fuse"),
                judged.unpriced());
        QuoteRequest request = QuoteRequest.of(job.job().getSurvey(), judged.record(), without("rcbo-32"), DAY);
        assertTrue(QuoteBuilder.draft(request).getAssumptions().stream().noneMatch(each -> each.contains("rcbo-32")));
        List<String> german =
                SERVICE.judge(job, without("rcbo-32"), "h75", Locale.GERMAN).unpriced();
        assertTrue(
                german.get(0).startsWith("In der Preisliste „Demonstration prices (invented)“ fehlt rcbo-32;"),
                german::toString);
    }

    @Test
    void aWorkWhosePriceHoldsNoLongerIsNamed() {
        OpenedJob job = coveredCable("rowan-brook", 0, "h75", "6 m");
        PriceBook book = EcoreUtil.copy(BOOK);
        book.getItems().stream()
                .filter(item -> item.getCode().equals("lift-out-of-insulation"))
                .forEach(item -> item.setHoldsUntil(LocalDate.of(2026, 9, 30)));
        AssessedJob judged = SERVICE.judge(job, book, "h75", Locale.UK);
        assertEquals(List.of("device-rcbo-32"), ids(plan(judged)));
        assertEquals(1, judged.unpriced().size());
        assertTrue(
                judged.unpriced().get(0).startsWith("The price of lift-out-of-insulation in the price book"),
                judged.unpriced()::toString);
    }

    /** A work is only offered once another is done: behind 32 A the cable need not be lifted, behind 40 A it must. */
    @Test
    void aWorkThatIsOfferedOnlyBesideAnotherIsNamedToo() {
        OpenedJob job = coveredCable("rowan-brook", 0, "h85", "9 m");
        circuit(job).getDevice().setRating(Current.valueOf("32 A"));
        AssessedJob judged = SERVICE.judge(job, without("lift-out-of-insulation"), "h85", Locale.UK);
        assertEquals(List.of("cable-10", "device-rcbo-40"), ids(plan(judged)));
        assertEquals(1, judged.unpriced().size());
        assertTrue(judged.unpriced().get(0).contains("lacks lift-out-of-insulation;"));
    }

    /** Nothing is said where every work has a price, where none is needed, and of works that would cost more whatever the missing price. */
    @Test
    void nothingIsSaidOfPricesThatDoNotMatter() {
        OpenedJob job = coveredCable("rowan-brook", 0, "h75", "9 m");
        assertEquals(List.of(), SERVICE.judge(job, BOOK, "h75", Locale.UK).unpriced());
        assertEquals(
                List.of(),
                SERVICE.judge(job, without("cable-16"), "h75", Locale.UK).unpriced());
        AssessedJob suits = SERVICE.judge(job("rowan-brook", "h85"), without("rcbo-32"), "h85", Locale.UK);
        assertEquals(List.of(), suits.unpriced());
    }

    private static <T> T of(Random random, List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    /** A house of the demonstration with another heater, and with cable, device and origin changed at random. */
    private static OpenedJob random(Random random) {
        OpenedJob job = job(
                of(random, List.of("alder-beck", "rowan-brook", "birch-syke", "willow-mere", "hazel-ghyll")),
                of(random, List.of("h75", "h85", "h90", "h95", "h95s", "h105", "h105s")));
        Survey survey = job.job().getSurvey();
        Circuit circuit = survey.getElectricity().getCircuit();
        circuit.getDevice().setRating(Current.valueOf(of(random, List.of("32 A", "40 A", "45 A", "50 A"))));
        String size = of(random, List.of("4 mm2", "6 mm2", "10 mm2"));
        circuit.getSegments().forEach(segment -> {
            segment.setSize(Area.valueOf(size));
            segment.setCpc(null);
            segment.setMethod(of(random, List.of("A", "C", "C", "100", "101", "102", "103")));
            segment.setConfidence(of(random, List.of(Confidence.SEEN, Confidence.ASSUMED, Confidence.CONCEALED)));
            segment.setLength(Length.valueOf(of(random, List.of("2 m", "4 m", "9 m", "15 m"))));
            segment.setGrouped(of(random, List.of(1, 1, 2)));
        });
        if (random.nextInt(4) == 0) {
            circuit.setMeasuredLoop(Resistance.valueOf(of(random, List.of("0.5 ohm", "0.9 ohm"))));
        }
        if (random.nextInt(4) == 0) {
            survey.getElectricity().setMainBonding(Area.valueOf("6 mm2"));
        }
        if (random.nextInt(4) == 0) {
            survey.getElectricity().setTails(Area.valueOf("16 mm2"));
        }
        return job;
    }

    /** In whatever house: to want one work less never makes the rest cheaper. */
    @Test
    void withoutOneOfTheWorksAHeaterNeverCostsLess() {
        int dearer = 0;
        Random random = new Random(1);
        for (int house = 0; house < 60; house++) {
            OpenedJob job = random(random);
            String heater = job.job().getSurvey().getCandidates().get(0);
            WorkPlan plan = plan(job, heater);
            WorkCost.Source costs = BookCosts.of(BOOK, job);
            for (String work : ids(plan)) {
                OpenedJob without =
                        new OpenedJob(job.file(), EcoreUtil.copy(job.job()), job.catalogue(), job.warnings());
                without.job().setQuote(ChoicesInJob.draft(QuoteChoices.NONE.without(work)));
                WorkPlan other = plan(without, heater);
                WorkCost cost = costs.of(other.works());
                String what = "house " + house + ", " + heater + ": " + ids(plan) + " " + plan.cost() + ", without "
                        + work + " " + ids(other) + " " + cost;
                assertTrue(other.works().isEmpty() || cost.compareTo(plan.cost()) >= 0, what);
                dearer += cost.compareTo(plan.cost()) > 0 ? 1 : 0;
            }
        }
        assertTrue(dearer > 40, "dearer without a work: " + dearer);
    }

    /** What the search compares is what the quote charges: no work is counted that the quote then finds needless, and none is left out. */
    @Test
    void theWorksCostInAQuoteWhatTheSearchTookThemToCost() {
        PriceBook book = EcoreUtil.copy(BOOK);
        book.setContingency(null);
        // Fitting a heater fills this visit; where the unit stays, 75 min of it are left for works.
        book.setMinimumMinutes(135);
        int several = 0;
        Random random = new Random(2);
        for (int house = 0; house < 60; house++) {
            OpenedJob job = random(random);
            String heater = job.job().getSurvey().getCandidates().get(0);
            AssessedJob judged = SERVICE.judge(job, book, heater, Locale.UK);
            WorkPlan plan = plan(judged);
            Assessment without = EcoreUtil.copy(judged.record());
            without.getOptions().forEach(option -> option.getRemedies().clear());
            for (WorkPlan each : judged.plans()) {
                String name = each.before().candidate().present() ? QuoteRequest.PRESENT : heater;
                assertEquals(
                        each.cost().price(),
                        net(judged, judged.record(), book, name).subtract(net(judged, without, book, name)),
                        "house " + house + ", " + name + ": " + ids(each));
            }
            several += plan.works().size() > 1 ? 1 : 0;
        }
        assertTrue(several > 30, "several works: " + several);
    }

    private static BigDecimal net(AssessedJob judged, Assessment record, PriceBook book, String heater) {
        QuoteRequest request = QuoteRequest.of(judged.opened().job().getSurvey(), record, book, DAY)
                .choosing(List.of(heater));
        return QuoteBuilder.draft(request).getOptions().get(0).getNet();
    }
}
