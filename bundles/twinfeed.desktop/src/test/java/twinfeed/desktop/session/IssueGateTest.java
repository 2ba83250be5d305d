// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.issued.Revisions;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.IssueSummary;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.quote.IssueGate;
import twinfeed.usecase.quote.IssueGate.Refusal;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;

/** What a quote must have before it is issued, and by which prices a job is priced. */
final class IssueGateTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);

    private final Words words = new Words(Locale.UK);

    @TempDir
    Path folder;

    private JobServices services;
    private TwinfeedService service;

    @BeforeEach
    void open() throws Exception {
        DemoFiles.copyInto(folder);
        Path job = folder.resolve("alder-beck.job");
        Files.writeString(job, Files.readString(job).replaceAll("<candidates>(h95|h95s|h105)</candidates>\\s*", ""));
        service = DemoFiles.service();
        services = new JobServices(service, CLOCK, Locale.UK);
    }

    private JobSession session() {
        return session("alder-beck.job");
    }

    private JobSession session(String name) {
        Path file = folder.resolve(name);
        JobSession session = new JobSession(
                new OpenJob(service.open(file, null), FileFingerprint.of(file), false),
                services,
                new Threads(Runnable::run, Runnable::run, Runnable::run));
        session.recalculate();
        return session;
    }

    private Path ownPrices() throws Exception {
        Path own = folder.resolve("own.csv");
        Files.writeString(
                own,
                Files.readString(folder.resolve("prices.csv"))
                        .replace("# title: Demonstration prices (invented)", "# title: List of spring"));
        return own;
    }

    private static Quote quote(String total) {
        Quote quote = QuoteFactory.eINSTANCE.createQuote();
        QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
        option.setTotal(total.isEmpty() ? null : new java.math.BigDecimal(total));
        quote.getOptions().add(option);
        return quote;
    }

    private JobServices.Prices demonstrationPrices() {
        Path file = folder.resolve("prices.csv");
        return new JobServices.Prices(file, service.book(file));
    }

    private Survey survey() {
        return service.open(folder.resolve("alder-beck.job"), null).job().getSurvey();
    }

    @Test
    void demonstrationIssuesItsOwnJobsByItsOwnPrices() {
        assertEquals(
                List.of(), IssueGate.refusals(survey(), demonstrationPrices().book(), quote("480.00")));
    }

    @Test
    void realCustomerGetsNoInventedPrices() throws Exception {
        Survey survey = survey();
        survey.getCustomer().setName("A. Tenant");
        assertEquals(
                List.of(Refusal.DEMONSTRATION_PRICES),
                IssueGate.refusals(survey, demonstrationPrices().book(), quote("1")));
        Path own = ownPrices();
        assertEquals(List.of(), IssueGate.refusals(survey, service.book(own), quote("480.00")));
    }

    @Test
    void customerAndOneAddressAreNeeded() {
        Survey survey = survey();
        survey.getCustomer().setAddress(" ");
        assertEquals(
                List.of(), IssueGate.refusals(survey, demonstrationPrices().book(), quote("1")), "the site has one");
        survey.getSite().setAddress(null);
        assertEquals(
                List.of(Refusal.NO_ADDRESS),
                IssueGate.refusals(survey, demonstrationPrices().book(), quote("1")));
        survey.setCustomer(null);
        survey.setSite(null);
        assertEquals(
                List.of(Refusal.NO_CUSTOMER, Refusal.NO_ADDRESS, Refusal.NO_PRICES),
                IssueGate.refusals(survey, null, null));
    }

    @Test
    void somethingMustHaveAPrice() {
        Quote empty = QuoteFactory.eINSTANCE.createQuote();
        assertEquals(
                List.of(Refusal.NOTHING_OFFERED),
                IssueGate.refusals(survey(), demonstrationPrices().book(), empty));
        for (String total : List.of("", "0.00")) {
            assertEquals(
                    List.of(Refusal.NOTHING_PRICED),
                    IssueGate.refusals(survey(), demonstrationPrices().book(), quote(total)),
                    total);
        }
        assertEquals(
                List.of(Refusal.NOTHING_PRICED),
                IssueGate.refusals(survey(), demonstrationPrices().book(), null));
    }

    @Test
    void demonstrationPricesStandInForTheDemonstrationOnly() throws Exception {
        services.demonstrationPrices(folder.resolve("prices.csv"));
        Survey survey = survey();
        assertNotNull(services.prices(survey));
        assertNull(services.prices(), "nobody has chosen any");
        survey.getCustomer().setName("A. Tenant");
        assertNull(services.prices(survey));
        services.usePrices(ownPrices());
        assertEquals("List of spring", services.prices(survey).book().getTitle());
        assertEquals("List of spring", services.prices(survey()).book().getTitle(), "what was chosen goes before");
    }

    /** The use case behind the key is guarded as well, whatever the dialogue lets through. */
    @Test
    void issuingItselfIsRefusedAndWritesNothing() throws Exception {
        services.demonstrationPrices(folder.resolve("prices.csv"));
        JobSession session = session();
        session.survey().getCustomer().setAddress(null);
        session.survey().getSite().setAddress(null);
        QuoteWork work = session.quoteWork();
        work.compute();
        Path target = folder.resolve("office");
        IllegalStateException refused = assertThrows(IllegalStateException.class, () -> work.issue(target, null, ""));
        assertTrue(refused.getMessage().contains("address"), refused.getMessage());
        assertFalse(Files.exists(target));
        session.survey().getCustomer().setName("A. Tenant");
        QuoteWork unpriced = session.quoteWork();
        IllegalStateException none = assertThrows(IllegalStateException.class, unpriced::compute);
        assertTrue(none.getMessage().contains("price book"), none.getMessage());
    }

    /** In willow-mere next to nothing was measured. */
    @Test
    void anEstimateIsIssuedForATypedReasonOnly() {
        services.demonstrationPrices(folder.resolve("prices.csv"));
        JobSession session = session("willow-mere.job");
        assertTrue(IssueSummary.of(session, words).unproven());
        assertFalse(IssueSummary.of(session(), words).unproven());
        QuoteWork work = session.quoteWork();
        work.compute();
        Path quotes = folder.resolve("office");
        RuntimeException refused = assertThrows(RuntimeException.class, () -> work.issue(quotes, null, ""));
        assertTrue(refused.getMessage().contains("estimate"), refused.getMessage());
        IssuedQuote issued = work.issue(quotes, null, "The customer wants a figure before we come again.");
        assertEquals(
                "The customer wants a figure before we come again.",
                issued.quote().getEstimateReason());
        issued.file().toFile().setWritable(true);
    }

    @Test
    void summaryShowsWhatIsIssuedAndARevisionIsProposedForTheSameSite() {
        services.demonstrationPrices(folder.resolve("prices.csv"));
        JobSession session = session();
        IssueSummary summary = IssueSummary.of(session, words);
        assertTrue(summary.ready());
        assertEquals(List.of(), summary.refusals());
        assertEquals("Netherquill Lettings (invented); 1 Osier Quay; Netherquill", summary.customer());
        assertTrue(summary.site().startsWith("Alder Beck 3; "), summary.site());
        assertEquals(
                "Demonstration prices (invented), of 1 Sept 2026",
                summary.prices().replace("Sep ", "Sept "));
        assertTrue(summary.date().startsWith("25 Nov 2026, holds until "), summary.date());
        assertFalse(summary.options().isEmpty());
        assertTrue(summary.options().get(0).total().startsWith("£"), summary.toString());
        JobSession nameless = session();
        nameless.survey().getCustomer().setName("");
        assertEquals(
                "missing; 1 Osier Quay; Netherquill",
                IssueSummary.of(nameless, words).customer());
        Path quotes = folder.resolve("office");
        assertNull(new Revisions(session).proposed(new Revisions(session).in(quotes)));
        QuoteWork work = session.quoteWork();
        work.compute();
        IssuedQuote issued = work.issue(quotes, null, "");
        // Another sitting that knows nothing of the quote but what stands in the folder.
        JobSession later = session();
        Revisions revisions = new Revisions(later);
        IssuedQuote proposed = revisions.proposed(revisions.in(quotes));
        assertNotNull(proposed);
        assertEquals(issued.name(), proposed.name());
        later.survey().getSite().setName("Alder Beck 4");
        assertNull(new Revisions(later).proposed(revisions.in(quotes)), "another house is another quote");
        IssuedQuotes.decline(issued.file(), services.today());
        session.issued(issued);
        session.lookAtIssued();
        assertEquals("declined", session.issued().stateOn(services.today()).getLiteral());
        issued.file().toFile().setWritable(true);
    }
}
