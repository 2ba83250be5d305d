// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.ManualChanges;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Pressure;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.choices.OwnLine;
import twinfeed.usecase.choices.QuoteChoices;

/** What an estimator changes of the quote by hand: it is in the quote, survives whatever is worked out anew, and can be undone. */
final class QuoteEditsTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);
    private static final Words WORDS = new Words(Locale.UK);

    @TempDir
    Path folder;

    private JobServices services;
    private JobSession session;

    @BeforeEach
    void open() throws Exception {
        DemoFiles.copyInto(folder);
        Path job = folder.resolve("alder-beck.job");
        Files.writeString(job, Files.readString(job).replaceAll("<candidates>(h95s|h105)</candidates>\\s*", ""));
        TwinfeedService service = DemoFiles.service();
        services = new JobServices(service, CLOCK, Locale.UK);
        services.usePrices(folder.resolve("prices.csv"));
        session = reopened();
    }

    private JobSession reopened() {
        Path file = folder.resolve("alder-beck.job");
        Threads idle = new Threads(work -> {}, work -> {}, Runnable::run);
        return new JobSession(
                new OpenJob(services.service().open(file, null), FileFingerprint.of(file), false), services, idle);
    }

    private JobResult result() {
        JobResult result = services.result(1, session.copy(), () -> true, new AnswerCache());
        assertEquals("", result.trouble());
        return result;
    }

    private static List<String> offered(Quote quote) {
        return quote.getOptions().stream().map(QuoteOption::getName).toList();
    }

    private static QuoteLine line(QuoteOption option, String code) {
        return option.getSections().stream()
                .flatMap(section -> section.getLines().stream())
                .filter(line -> code.equals(line.getCode()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(option.getName() + " has no line " + code));
    }

    private void change(QuoteChoices next) {
        session.quoteEdits().change(next);
    }

    private QuoteChoices choices() {
        return session.quoteEdits().choices();
    }

    @Test
    void whatIsOfferedAndItsOrderSurviveANewReadingSavingAndUndo() {
        List<String> proposed = offered(result().quote());
        assertTrue(proposed.size() > 1, "proposed: " + proposed);
        List<String> turned = List.of(proposed.get(1), proposed.get(0));
        change(choices().offering(turned, "It is in stock."));
        ReadingPath pressure = ReadingPath.of(SurveyPackage.Literals.SURVEY, "water.test.staticPressure");
        session.edits().set(session.survey(), pressure.steps(), Pressure.valueOf("3.1 bar"));
        Quote quote = result().quote();
        assertEquals(turned, offered(quote));
        assertTrue(quote.getSummary().endsWith("It is in stock."), quote.getSummary());
        session.save();
        session = reopened();
        assertEquals(turned, offered(result().quote()), "after the job was opened again");
        change(QuoteChoices.NONE);
        assertEquals(proposed, offered(result().quote()));
        session.edits().undo();
        assertEquals(turned, offered(result().quote()), "undo brings the change back");
    }

    /** The sums by hand: 3 x 40.00 at the standard rate of the demonstration's book, 20 %, and 5 % of the sum without tax. */
    @Test
    void ownLineAndDiscountAreInEverySum() {
        QuoteOption before = result().quote().getOptions().get(0);
        change(choices()
                .adding(new OwnLine(
                        "", "", new BigDecimal("3"), "Make good the tiling", "m²", new BigDecimal("40"), "standard")));
        QuoteOption with = result().quote().getOptions().get(0);
        QuoteLine own = line(with, "own-1");
        assertEquals("Make good the tiling", own.getDescription());
        assertEquals(0, own.getNet().compareTo(new BigDecimal("120")));
        assertTrue(new ManualChanges(choices(), WORDS).changed(own));
        BigDecimal more = with.getNet().subtract(before.getNet());
        assertTrue(
                more.compareTo(new BigDecimal("120")) >= 0,
                "net grows by the line, and by its share of doubt: " + more);
        change(choices().discount(new BigDecimal("0.05"), null, "Regular customer"));
        QuoteOption discounted = result().quote().getOptions().get(0);
        BigDecimal five = with.getNet().multiply(new BigDecimal("0.05")).setScale(2, java.math.RoundingMode.HALF_UP);
        assertEquals(with.getNet().subtract(five), discounted.getNet());
        assertEquals("Regular customer", line(discounted, "discount").getDescription());
        session.edits().undo();
        session.edits().undo();
        assertEquals(before.getTotal(), result().quote().getOptions().get(0).getTotal());
        assertFalse(choices().any());
    }

    @Test
    void itemOfTheBookIsAddedToOneOptionOnly() {
        List<String> offered = offered(result().quote());
        String code = services.prices().book().getItems().stream()
                .filter(item -> item.getPrice() != null && item.getCode().startsWith("isolator"))
                .map(item -> item.getCode())
                .findFirst()
                .orElseGet(() -> services.prices().book().getItems().get(10).getCode());
        BigDecimal other = result().quote().getOptions().get(1).getTotal();
        change(choices().adding(OwnLine.ofBook(offered.get(0), code, BigDecimal.ONE)));
        Quote quote = result().quote();
        assertTrue(line(quote.getOptions().get(0), code).getReason().contains("estimator"));
        assertEquals(other, quote.getOptions().get(1).getTotal());
    }

    @Test
    void quantityOfAWorkIsThatOfTheEstimator() {
        OptionAssessment option = workedOn();
        String code = option.getRemedies().get(0).getItems().get(0).getCode();
        change(choices().offering(List.of(option.getHeaterId()), "").quantity(code, new BigDecimal("7")));
        QuoteLine line = line(result().quote().getOptions().get(0), code);
        assertEquals(
                option.getRemedies().get(0).getId(),
                ManualChanges.work(line, option).orElse(""));
        assertTrue(new ManualChanges(choices(), WORDS).changed(line));
        change(new ManualChanges(choices(), WORDS).without(line));
        assertTrue(choices().quantities().isEmpty());
    }

    private OptionAssessment workedOn() {
        return result().judged().record().getOptions().stream()
                .filter(each -> !Boolean.TRUE.equals(each.getPresent())
                        && !each.getRemedies().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    /** Another set of works is taken where one does as well; where none does, the unwanted work stays and that is said. */
    @Test
    void workThatIsNotWantedGivesWayOrIsNamed() {
        OptionAssessment option = workedOn();
        List<String> before = option.getRemedies().stream().map(Remedy::getId).toList();
        change(choices().without(before.get(0)));
        OptionAssessment after = result().judged().record().getOptions().stream()
                .filter(each ->
                        option.getHeaterId().equals(each.getHeaterId()) && !Boolean.TRUE.equals(each.getPresent()))
                .findFirst()
                .orElseThrow();
        List<String> now = after.getRemedies().stream().map(Remedy::getId).toList();
        assertEquals(
                now.contains(before.get(0)),
                ManualChanges.staying(choices(), after).isPresent(),
                "before " + before + ", now " + now);
        assertEquals(option.getVerdict(), after.getVerdict(), "it suits with other work, or with the same");
    }

    @Test
    void changesAreSaidInASentence() {
        assertEquals("", new ManualChanges(QuoteChoices.NONE, WORDS).summary());
        String said = new ManualChanges(
                        QuoteChoices.NONE
                                .offering(List.of("h85"), "")
                                .discount(null, new BigDecimal("50"), "")
                                .without("x"),
                        WORDS)
                .summary();
        assertTrue(said.contains("what is offered") && said.contains("discount"), said);
        assertTrue(said.contains("works left out (1)"), said);
    }

    @Test
    void jobWithoutChangesHoldsNone() {
        assertNull(session.copy().job().getQuote());
        change(choices().discount(BigDecimal.ONE, null, ""));
        change(choices().discount(null, null, ""));
        assertNull(session.copy().job().getQuote(), "nothing is left behind in the file");
    }
}
