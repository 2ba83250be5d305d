// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.search.WorkCost;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.io.InputException;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;

/** The service at a house of the demonstration, whose breaker is too small for the strongest heater. */
final class TwinfeedServiceTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();
    private static final Path BOOK = Demo.FOLDER.resolve("prices.csv");
    private static final PriceBook PRICES = SERVICE.book(BOOK);

    @TempDir
    private Path folder;

    private static OpenedJob rowan() {
        return SERVICE.open(Demo.FOLDER.resolve("rowan-brook.job"), null);
    }

    private static List<String> offered(AssessedJob judged) {
        return judged.record().getOptions().stream()
                .map(OptionAssessment::getHeaterId)
                .toList();
    }

    private static OptionAssessment last(AssessedJob judged) {
        return judged.record().getOptions().get(judged.record().getOptions().size() - 1);
    }

    @Test
    void oneHeaterIsJudgedWithItsWork() {
        AssessedJob judged = SERVICE.judge(rowan(), PRICES, "h105", Locale.UK);
        assertEquals(List.of("h75", "h105"), offered(judged));
        OptionAssessment strong = last(judged);
        assertEquals(Verdict.SUITS_WITH_WORK, strong.getVerdict());
        assertFalse(judged.unanswered());
        Survey surveyed = judged.opened().job().getSurvey();
        assertEquals(
                "50 A",
                judged.withWork(strong)
                        .getElectricity()
                        .getCircuit()
                        .getDevice()
                        .getRating()
                        .toString());
        assertEquals(
                "40 A",
                surveyed.getElectricity().getCircuit().getDevice().getRating().toString(),
                "the survey is not changed");
        assertTrue(
                EcoreUtil.equals(surveyed, judged.withWork(EcoreUtil.copy(strong))),
                "work is that of an option of this job");
    }

    @Test
    void heatersOfTheCatalogueAreAskedForBesideThoseOfTheSurvey() {
        AssessedJob judged = SERVICE.oneByOne().judgeWith(rowan(), PRICES, List.of("h105"), Locale.GERMANY);
        assertEquals(List.of("h75", "h85", "h95", "h105"), offered(judged));
        assertEquals(
                twinfeed.pricing.TranslatedBook.text(PRICES, Locale.GERMANY, "Heater 10.5 kW, two-element"),
                last(judged).getTitle());
        assertFalse(last(judged).getTitle().startsWith("Heater"), last(judged).getTitle());
    }

    @Test
    void aFirstLookFindsNoWork() {
        OpenedJob opened = rowan();
        opened.job().getSurvey().getCandidates().add("h105");
        AssessedJob quick = SERVICE.quickAssess(opened, Locale.UK);
        assertEquals(List.of("h75", "h85", "h95", "h105"), offered(quick));
        assertEquals(Verdict.SUITS, quick.record().getOptions().get(1).getVerdict());
        assertTrue(last(quick).getRemedies().isEmpty());
        assertTrue(last(quick).getVerdict() != Verdict.SUITS);
        assertEquals(
                last(quick).getVerdict(),
                SERVICE.asItStands(
                                Candidates.withPresentHeater(opened.job().getSurvey(), new Candidates(opened).all()),
                                new Candidates(opened).only("h105"),
                                Locale.UK)
                        .getOptions()
                        .get(1)
                        .getVerdict());
    }

    private static Remedy remedy(String code, int quantity, int leadDays) {
        return new Remedy(code, code, Map.of(), List.of(Remedy.Item.of(code, quantity)), false, leadDays, survey -> {});
    }

    @Test
    void theCheaperWorkWinsByTheBookInForce() {
        WorkCost.Source costs = BookCosts.of(PRICES, rowan());
        assertEquals(new WorkCost(0, BigDecimal.ZERO.setScale(2), 0), costs.of(List.of()));
        Remedy cable = remedy("cable-10", 7, 9);
        WorkCost cost = costs.of(List.of(cable));
        assertEquals(0, cost.enquiries());
        assertTrue(cost.price().signum() > 0);
        assertEquals(9, cost.leadDays());
        Remedy unknown = remedy("no-such-code", 1, 0);
        assertEquals(1, costs.of(List.of(unknown)).enquiries(), "nobody knows its price");
        assertEquals(
                WorkCost.BY_COUNT.of(List.of(cable)),
                BookCosts.of(null, rowan()).of(List.of(cable)));
    }

    @Test
    void formulasAreFoundByName() {
        List<String> names = SERVICE.formulas().stream().map(NamedFormula::name).toList();
        assertEquals(names.stream().sorted().toList(), names);
        assertTrue(names.size() > 5, names.toString());
        assertEquals(names.get(3), SERVICE.formula(names.get(3)).orElseThrow().name());
        assertTrue(SERVICE.formula("no.such.formula").isEmpty());
        assertTrue(SERVICE.check(CheckTopic.WINTER_FLOW).isPresent());
        assertEquals(List.of(), SERVICE.problems());
        assertTrue(new TwinfeedService(List.of()).check(CheckTopic.WINTER_FLOW).isEmpty());
    }

    @Test
    void aPriceListSaysWhatItWouldChange() throws IOException {
        String text = Files.readString(BOOK);
        Path list = Files.writeString(
                folder.resolve("new.csv"),
                text.replaceAll("(?m)^cable-10,", "cable-11,").replaceFirst("(?m)^# title: .*$", "# title: Spring"));
        BookReport report = SERVICE.bookReport(list, PRICES);
        assertEquals(List.of("cable-11"), report.added());
        assertEquals(List.of("cable-10"), report.removed());
        assertTrue(
                report.changed().stream()
                        .anyMatch(each -> each.code().isEmpty() && each.after().equals("Spring")),
                report.changed().toString());
        assertTrue(report.lacking().stream().anyMatch(each -> each.codes().contains("cable-10")));
        assertTrue(report.text() != null && report.text().contains("cable-11"));
        BookReport first = SERVICE.bookReport(list, null);
        assertTrue(first.added().size() > 10);
        assertEquals(List.of(), first.changed());
    }

    @Test
    void aPriceListWithARefusedRowIsNotTaken() throws IOException {
        Path list = Files.writeString(
                folder.resolve("new.csv"),
                Files.readString(BOOK).replaceAll("(?m)^(cable-10,.*),standard", "$1,luxury"));
        BookReport report = SERVICE.bookReport(list, PRICES);
        assertEquals(1, report.refused().size(), report.refused().toString());
        assertNull(report.text());
        assertEquals(List.of(), report.lacking());
        UnusableException refused = assertThrows(UnusableException.class, () -> SERVICE.book(list));
        assertTrue(refused.getMessage().contains("luxury"), refused.getMessage());
        Path nowhere = folder.resolve("nowhere.csv");
        assertThrows(InputException.class, () -> SERVICE.book(nowhere));
        Path text = Files.writeString(folder.resolve("text.xlsx"), "no workbook");
        UnusableException noBook = assertThrows(UnusableException.class, () -> SERVICE.book(text));
        assertTrue(noBook.getMessage().startsWith(text + ": "), noBook.getMessage());
        assertEquals(
                noBook.getMessage().indexOf("text.xlsx"), noBook.getMessage().lastIndexOf("text.xlsx"), "named once");
        assertFalse(noBook.problems().get(0).right().isEmpty(), noBook.getMessage());
    }
}
