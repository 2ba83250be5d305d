// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.completion.CompletionReading;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.job.Completion;
import twinfeed.model.job.JobFactory;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.Concentration;

/** The pages after the work say what is known, and leave out what is not. */
class CompletionPagesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 1);
    private static final Firm FIRM = Firm.of("Invented", "", "");
    private static final CompletionReading OUTLET =
            new CompletionReading("outlet", "Outlet", "41 °C", "", true, false, true);

    private final Survey house = SurveyFactory.eINSTANCE.createSurvey();
    private final Heater heater = CatalogueFactory.eINSTANCE.createHeater();
    private final Completion done = JobFactory.eINSTANCE.createCompletion();

    private JobSheet page(boolean fitted, Firm firm, List<String> works, CompletionReading... readings) {
        List<String> lay = works.stream().map(each -> "Plainly: " + each).toList();
        CompletionSheet sheet = new CompletionSheet(done, house, heater, fitted, works, lay, List.of(readings));
        return new CustomerPageWriter(sheet, Locale.ENGLISH).write("A job", firm, "1", DAY);
    }

    private static String text(JobSheet page) {
        return page.sections().stream()
                .flatMap(section -> section.sentences().stream())
                .collect(Collectors.joining("\n"));
    }

    private static String words(String key) {
        return new PageParts(Locale.ENGLISH).get(key);
    }

    @Test
    void theBarestPageNamesNothingThatNobodyKnows() {
        String text = text(page(false, FIRM, List.of()));
        assertTrue(text.contains(words("work.none")), text);
        assertTrue(text.contains(words("customer.care.soft")), text);
        assertFalse(text.contains(words("customer.safety.vulnerable")), text);
    }

    @Test
    void whatTheHouseAndTheWorkSayStandsOnThePage() {
        Customer customer = SurveyFactory.eINSTANCE.createCustomer();
        customer.setVulnerable(true);
        customer.setAddress("1 Invented Row");
        house.setCustomer(customer);
        Site site = SurveyFactory.eINSTANCE.createSite();
        site.setName("Flat 2");
        house.setSite(site);
        WaterFeed water = SurveyFactory.eINSTANCE.createWaterFeed();
        water.setHardness(Concentration.valueOf("300 mg/L"));
        house.setWater(water);
        heater.setId("h95");
        heater.setGuaranteeYears(2);
        done.setDoneOn(DAY.plusDays(1));
        done.setWork(" New seal. ");
        done.setSettings("Lever at three.");
        JobSheet page = page(true, Firm.of("Invented", "", "01 23"), List.of("New isolator."), OUTLET);
        String text = text(page);
        for (String part : List.of(
                words("customer.safety.vulnerable"),
                words("customer.care.hard"),
                "New seal.",
                "h95",
                "• Plainly: New isolator.",
                "Lever at three.",
                "41 °C",
                "2028",
                "01 23")) {
            assertTrue(text.contains(part), part + " in " + text);
        }
        assertTrue(page.facts().stream().anyMatch(fact -> fact.text().equals("1 Invented Row")));
        water.setHardness(Concentration.valueOf("100 mg/L"));
        customer.setVulnerable(false);
        heater.setGuaranteeYears(0);
        done.setWork(" ");
        done.setSettings(" ");
        String plain = text(page(true, FIRM, List.of()));
        assertTrue(plain.contains(words("customer.care.soft")), plain);
        assertFalse(plain.contains(words("customer.safety.vulnerable")), plain);
        assertFalse(plain.contains("01 23"), plain);
    }

    private static QuoteLine line(@Nullable String code, String unit, @Nullable String quantity) {
        QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
        line.setCode(code);
        line.setDescription("A thing");
        line.setUnit(unit);
        line.setQuantity(quantity == null ? null : new BigDecimal(quantity));
        return line;
    }

    @Test
    void onlyGoodsAreTakenFromTheShelf() {
        QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
        QuoteSection goods = QuoteFactory.eINSTANCE.createQuoteSection();
        goods.setKey("remedial");
        goods.getLines()
                .addAll(List.of(
                        line("clip", "each", "2"),
                        line("clip", "each", "3"),
                        line("task-x", "each", "1"),
                        line("visit-x", "visit", "1"),
                        line("none", "each", "0"),
                        line("open", "each", null),
                        line(null, "each", "1")));
        QuoteSection labour = QuoteFactory.eINSTANCE.createQuoteSection();
        labour.setKey("labour");
        labour.getLines().add(line("hand", "each", "1"));
        option.getSections().addAll(List.of(goods, labour));
        List<PartsListWriter.Part> parts = PartsListWriter.parts(option);
        assertEquals(
                List.of("clip"), parts.stream().map(PartsListWriter.Part::code).toList());
        assertEquals(new BigDecimal("5"), parts.get(0).quantity());
    }
}
