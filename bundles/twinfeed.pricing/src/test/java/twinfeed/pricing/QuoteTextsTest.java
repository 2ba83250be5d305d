// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Payment;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.pricing.texts.StandingTextFile;
import twinfeed.pricing.texts.StandingTexts;

/** What a quote says around its prices: all of what it leaves out, agrees on and warns of, and how many heaters suit. */
class QuoteTextsTest {
    @TempDir
    private Path folder;

    private final PriceBook book = DemoBook.read();
    private final Survey survey = Samples.survey(Confidence.SEEN);
    private final Assessment assessment = Samples.assessment();

    private Quote draft() {
        return QuoteBuilder.draft(QuoteRequest.of(survey, assessment, book, DemoBook.DAY));
    }

    /** How each text begins, by its first words. */
    private static List<String> beginnings(List<String> texts) {
        return texts.stream()
                .map(text -> text.substring(0, Math.min(text.length(), 24)))
                .toList();
    }

    private OptionAssessment option(String id) {
        return assessment.getOptions().stream()
                .filter(option -> id.equals(option.getHeaterId()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void namesAllThatIsLeftOut() {
        book.getExclusions().clear();
        assertEquals(
                List.of(
                        "Anything that is not listed.".substring(0, 24),
                        "Faults that we find only",
                        "Painting and tiling, bey",
                        "Testing for asbestos, an"),
                beginnings(draft().getExclusions()));
    }

    @Test
    void namesAllThatIsAgreed() {
        book.getTerms().clear();
        book.getPayments().clear();
        book.setContingency(null);
        assertEquals(
                List.of(
                        "This quote can be accept",
                        "Tax is rounded line by l",
                        "Tax is at the rates of 2",
                        "We tell the building aut",
                        "When the work is done yo",
                        "If a cable or pipe turns",
                        "Please make sure that we",
                        "Textured coatings may ho",
                        "The total is due when th",
                        "If you sign the contract"),
                beginnings(draft().getTerms()));
    }

    /** A customer whose drinking water runs through lead reads of it, whatever becomes of the shower. */
    @Test
    void warnsOfALeadPipe() {
        String lead = "A pipe of lead was seen.";
        assertFalse(beginnings(draft().getCautions()).contains(lead));
        PipeSegment pipe = SurveyFactory.eINSTANCE.createPipeSegment();
        if (survey.getWater() == null) {
            survey.setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        }
        survey.getWater().getSegments().add(pipe);
        assertFalse(beginnings(draft().getCautions()).contains(lead), "copper, where nobody says otherwise");
        pipe.setMaterial(PipeMaterial.LEAD);
        assertTrue(beginnings(draft().getCautions()).contains(lead));
        pipe.setMaterial(PipeMaterial.COPPER);
        assertFalse(beginnings(draft().getCautions()).contains(lead));
        DrawOff tap = SurveyFactory.eINSTANCE.createDrawOff();
        PipeSegment branch = SurveyFactory.eINSTANCE.createPipeSegment();
        branch.setMaterial(PipeMaterial.LEAD);
        tap.getSegments().add(branch);
        survey.getWater().getDrawOffs().add(tap);
        assertTrue(beginnings(draft().getCautions()).contains(lead), "the pipe of a tap counts too");
    }

    @Test
    void standingTextsMayNameTheHouse() throws Exception {
        survey.getSite().setName("Rowan Cottage");
        Path texts = Files.writeString(folder.resolve("texts"), "term.valid=Holds for {site} until {validUntil}.\n");
        StandingTexts own = StandingTextFile.load(texts, Locale.ENGLISH);
        QuoteRequest request =
                QuoteRequest.of(survey, assessment, book, DemoBook.DAY).in(Locale.ENGLISH, own);
        assertTrue(
                QuoteBuilder.draft(request).getTerms().contains("Holds for Rowan Cottage until 25 December 2026."),
                () -> QuoteBuilder.draft(request).getTerms().toString());
    }

    /** What nobody has checked is not counted among what suits, nor among what does not. */
    @Test
    void aHeaterWithoutAVerdictIsCountedNowhere() {
        assessment.getOptions().removeIf(option -> !Boolean.TRUE.equals(option.getPresent()));
        OptionAssessment unset = Samples.option("h95", "Heater 0", 9, Verdict.SUITS);
        unset.unsetVerdict();
        assessment.getOptions().add(unset);
        assessment.getOptions().add(Samples.option("h75", "Heater 1", 9, Verdict.SUITS));
        assertTrue(draft().getSummary().contains("2 heaters"), draft().getSummary());
        assertTrue(draft().getSummary().contains("one of them suits."), draft().getSummary());
    }

    /** Only what fails, and has figures, of the check of scalding is told. */
    @Test
    void noOtherTemperatureIsToldThanOneThatScalds() {
        Finding scald = Samples.finding("pressure.scald", Outcome.PASSES, "It does not scald.");
        scald.setTopic(CheckTopic.SCALDING);
        scald.setValue(41.0);
        scald.setLimit(44.0);
        option("h75").getFindings().add(scald);
        Finding other = Samples.finding("water.flow", Outcome.FAILS, "Too little.");
        other.setValue(3.0);
        other.setLimit(5.0);
        option("h75").getFindings().add(other);
        assertFalse(cautions().contains("another tap"), cautions());
        scald.setOutcome(Outcome.FAILS);
        scald.setValue(null);
        assertFalse(cautions().contains("another tap"), cautions());
        scald.setValue(66.0);
        scald.setLimit(null);
        assertFalse(cautions().contains("another tap"), cautions());
        scald.setLimit(44.0);
        assertTrue(cautions().contains("another tap"), cautions());
    }

    private String cautions() {
        return String.join(" ", draft().getCautions());
    }

    @Test
    void theHeadNamesWhenThePricesAreFromAndWhyNoRepairIsOffered() {
        QuoteRequest request = QuoteRequest.of(survey, assessment, book, DemoBook.DAY)
                .reporting(
                        new FaultReport(List.of("It is cold."), "The tank.", null, "The part is not made any more."));
        Quote quote = QuoteBuilder.draft(request);
        assertEquals(book.getDate(), quote.getBookDate());
        assertEquals("The part is not made any more.", quote.getRepairLeftOut());
    }

    @Test
    void fourOptionsStandSideBySide() {
        QuoteRequest request = QuoteRequest.of(survey, assessment, book, DemoBook.DAY)
                .choosing(List.of("h75", "h95", "h105s", "h108"));
        assertEquals(4, QuoteBuilder.draft(request).getOptions().size());
    }

    @Test
    void theCurrencyThatIsNoneIsNamed() {
        book.setCurrency("XXQ");
        assertTrue(assertThrows(QuoteException.class, this::draft).getMessage().contains("XXQ"));
    }

    @Test
    void whatTakesNoTimeHasNoLineOfLabour() {
        book.getItems().stream()
                .filter(item -> item.getCode().equals("h75"))
                .forEach(item -> item.setMinutes(BigDecimal.ZERO));
        assertTrue(
                draft().getOptions().get(0).getSections().stream()
                        .filter(section -> section.getKey().equals("labour"))
                        .flatMap(section -> section.getLines().stream())
                        .noneMatch(line -> "h75".equals(line.getCode())),
                "an hour of nothing");
    }

    @Test
    void agreesOnStagesAndAContingencyWhereTheBookHasThem() {
        List<String> terms = beginnings(draft().getTerms());
        assertFalse(terms.contains("The total is due when th"), terms.toString());
        assertFalse(terms.contains("A contingency is money k"), "nothing is in doubt");
        survey.getElectricity().getCircuit().getSegments().get(0).setConfidence(Confidence.CONCEALED);
        terms = beginnings(draft().getTerms());
        assertTrue(terms.contains("A contingency is money k"), terms.toString());
        book.setContingency(null);
        assertFalse(beginnings(draft().getTerms()).contains("A contingency is money k"));
    }

    @Test
    void saysOfACoatingWhatTheSurveySays() {
        survey.getSite().setTexturedCoating(true);
        assertTrue(beginnings(draft().getTerms()).contains("There is a textured coat"));
        survey.getSite().setTexturedCoating(null);
        assertTrue(beginnings(draft().getTerms()).contains("Textured coatings may ho"));
    }

    @Test
    void workOfOthersAndDutiesOfNoticeAreNamedWithTheWorkThatCallsForThem() {
        String operator = "The network operator’s w";
        String pump = "The water company has to";
        assertFalse(beginnings(draft().getExclusions()).contains(operator));
        assertFalse(beginnings(draft().getTerms()).contains(pump));
        option("h95").getRemedies().add(Samples.remedy("fuse", "Larger service fuse", "operator-fuse", "1"));
        assertTrue(beginnings(draft().getExclusions()).contains(operator));
        assertFalse(beginnings(draft().getTerms()).contains(pump));
        option("h95").getRemedies().add(Samples.remedy("pump", "Break tank with pump", "break-tank-pump", "1"));
        assertTrue(beginnings(draft().getTerms()).contains(pump));
        assertFalse(beginnings(draft().getExclusions()).contains(pump));
    }

    @Test
    void warnsOfElectricityAndHotWaterOnEveryQuote() {
        List<String> cautions = beginnings(draft().getCautions());
        assertTrue(
                cautions.containsAll(
                        List.of("Electricity can kill. Ne", "Hot water scalds. Test t", "Children, old people and")),
                cautions.toString());
    }

    @Test
    void aHeaterThatFailsAsItIsIsMarked() {
        assessment.getOptions().removeIf(option -> !"h108".equals(option.getHeaterId()));
        option("h108").setVerdict(Verdict.NOT_AS_IT_IS);
        assertTrue(draft().getCautions().get(0).contains("does not suit this house as it is"));
    }

    /** With n heaters beside the present one, of which some suit as they are and some with work. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | 1 | 0 | We checked one heater against the water and the electricity of your house: it suits.",
                "1 | 0 | 1 | We checked one heater against the water and the electricity of your house: it suits once the work is done.",
                "1 | 0 | 0 | We checked one heater. We cannot say yet whether it suits: something still has to be measured.",
                "2 | 0 | 0 | We checked 2 heaters. We cannot say yet whether any of them suits: something still has to be measured.",
                "2 | 2 | 0 | We checked 2 heaters against the water and the electricity of your house: all of them suit.",
                "2 | 0 | 2 | We checked 2 heaters against the water and the electricity of your house: all of them suit once the work is done.",
                "3 | 1 | 0 | We checked 3 heaters against the water and the electricity of your house: one of them suits.",
                "3 | 0 | 1 | We checked 3 heaters against the water and the electricity of your house: one of them suits once the work is done.",
                "3 | 1 | 1 | We checked 3 heaters against the water and the electricity of your house: 2 of them suit.",
                "3 | 0 | 2 | We checked 3 heaters against the water and the electricity of your house: 2 of them suit once the work is done."
            })
    void countsTheHeatersThatSuit(int heaters, int suits, int suitsWithWork, String sentence) {
        assessment.getOptions().removeIf(option -> !Boolean.TRUE.equals(option.getPresent()));
        for (int i = 0; i < heaters; i++) {
            Verdict verdict = i < suits
                    ? Verdict.SUITS
                    : i < suits + suitsWithWork ? Verdict.SUITS_WITH_WORK : Verdict.CANNOT_TELL;
            assessment
                    .getOptions()
                    .add(Samples.option(i == 0 ? "h75" : i == 1 ? "h95" : "h108", "Heater " + i, 9, verdict));
        }
        String summary = draft().getSummary();
        assertTrue(summary.contains(sentence), summary);
    }

    /** Of n heaters some suit, some do not, and of the others nobody can tell yet: a customer must not take "one suits" for "the others do not". */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | 0 | 3 | : one of them suits. Of 3 we cannot say yet whether they suit: something still has to be measured.",
                "1 | 3 | 0 | : one of them suits. 3 do not suit, with or without work.",
                "1 | 1 | 1 | : one of them suits. One does not suit, with or without work. Of one we cannot say yet whether it suits: something still has to be measured.",
                "2 | 2 | 2 | : 2 of them suit. 2 do not suit, with or without work. Of 2 we cannot say yet whether they suit: something still has to be measured.",
                "2 | 0 | 0 | : all of them suit.",
                "0 | 1 | 2 | whether any of them suits: something still has to be measured. One does not suit, with or without work."
            })
    void tellsWhatIsKnownOfEachHeater(int suits, int unsuited, int open, String sentences) {
        assessment.getOptions().removeIf(option -> !Boolean.TRUE.equals(option.getPresent()));
        for (int i = 0; i < suits + unsuited + open; i++) {
            Verdict verdict =
                    i < suits ? Verdict.SUITS : i < suits + unsuited ? Verdict.DOES_NOT_SUIT : Verdict.CANNOT_TELL;
            assessment
                    .getOptions()
                    .add(Samples.option(i == 0 ? "h75" : i == 1 ? "h95" : "h108", "Heater " + i, 9, verdict));
        }
        String first = draft().getSummary().split("\n")[0];
        assertTrue(first.endsWith(sentences), first);
    }

    @Test
    void saysThatAHeaterFailsAsTheHouseIsWhereThatIsKnown() {
        assessment.getOptions().removeIf(option -> !Boolean.TRUE.equals(option.getPresent()));
        assessment.getOptions().add(Samples.option("h95", "Heater 0", 9, Verdict.NOT_AS_IT_IS));
        assertTrue(draft().getSummary().contains("It does not suit your house as it is."), draft().getSummary());
        assessment.getOptions().add(Samples.option("h108", "Heater 1", 9, Verdict.NOT_AS_IT_IS));
        assertTrue(draft().getSummary().contains("None of them suits your house as it is."), draft().getSummary());
        option("h108").setVerdict(Verdict.CANNOT_TELL);
        assertTrue(draft().getSummary().contains("whether any of them suits:"), draft().getSummary());
    }

    /** A danger stands at the head of the page already; and only what decides against the present unit is told. */
    @Test
    void tellsWhatIsWrongWithThePresentUnit() {
        String cold = "It goes cold when the kitchen tap opens.";
        assertTrue(draft().getSummary().contains(cold));
        option("h85").getFindings().get(0).setKind(FindingClass.SAFETY);
        assertFalse(draft().getSummary().contains(cold));
        option("h85").getFindings().get(0).setKind(FindingClass.PERFORMANCE);
        option("h85").getFindings().get(0).setOutcome(Outcome.PASSES);
        assertFalse(draft().getSummary().contains(cold));
        option("h85").getFindings().get(0).setOutcome(Outcome.FAILS);
        option("h85").setBinding("another.check");
        assertFalse(draft().getSummary().contains(cold));
    }

    @Test
    void recommendsNoneWhileThePricesOfThoseThatSuitAreOpen() {
        String waiting = "We cannot recommend one yet";
        assertFalse(draft().getSummary().contains(waiting));
        book.getItems().stream()
                .filter(item -> List.of("h75", "h95").contains(item.getCode()))
                .forEach(item -> {
                    item.setPrice(null);
                    item.setCost(null);
                    item.setMinutes(null);
                });
        assertTrue(draft().getSummary().contains(waiting), draft().getSummary());
        option("h75").setVerdict(Verdict.CANNOT_TELL);
        option("h95").setVerdict(Verdict.CANNOT_TELL);
        assertFalse(draft().getSummary().contains(waiting));
    }

    @Test
    void countsUsualFiguresOnlyWhereThereAreSome() {
        assertFalse(String.join(" ", draft().getAssumptions()).contains("Usual figures"));
    }

    /** The demonstration book asks a quarter on acceptance and the rest on completion. */
    @Test
    void theStagesOfPaymentHaveTheirSharesOfTheTotal() {
        List<Payment> payments = draft().getOptions().get(0).getPayments();
        assertEquals(2, payments.size());
        assertEquals(0, new BigDecimal("0.25").compareTo(payments.get(0).getShare()));
        assertEquals(0, new BigDecimal("0.75").compareTo(payments.get(1).getShare()));
    }

    @Test
    void refusesABookThatItCannotReckonWith() {
        book.setCurrency(null);
        assertEquals("currency", trouble());
        book.setCurrency("XXQ");
        assertEquals("currency", trouble());
        book.setCurrency("GBP");
        book.setRounding("by-the-moon");
        assertEquals("rounding", trouble());
        book.setRounding(null);
        book.getItems().get(0).setTaxClass("luxury");
        assertEquals("taxClass", trouble());
    }

    private String trouble() {
        return assertThrows(QuoteException.class, this::draft).key();
    }
}
