// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteState;
import twinfeed.quotes.Verification;
import twinfeed.usecase.Demo;
import twinfeed.usecase.quote.IssuedQuote;

/** What an office does next. The days are counted by hand on a calendar. */
final class NextStepTest {
    private static final LocalDate ISSUED = LocalDate.of(2026, 3, 2);
    private static final LocalDate UNTIL = LocalDate.of(2026, 4, 1);

    private static IssuedQuote quote(String number, int revision, QuoteState state, int daysToAnswer) {
        Quote quote = QuoteFactory.eINSTANCE.createQuote();
        quote.setNumber(number);
        quote.setRevision(revision);
        quote.setState(state);
        quote.setDate(ISSUED);
        quote.setValidUntil(UNTIL);
        if (daysToAnswer > 0) {
            quote.setDecidedOn(ISSUED.plusDays(daysToAnswer));
        }
        return new IssuedQuote(
                Path.of(number + ".quote"), quote, "", true, Verification.UNCHANGED, "A. Customer", "Mill House");
    }

    private static OfficeJob job(String customer, boolean addressed, LocalDate doneOn) {
        return new OfficeJob(Path.of("mill.job"), customer, "Mill House", addressed, ISSUED, doneOn);
    }

    private static OfficeFolder folder(List<OfficeJob> jobs, IssuedQuote... quotes) {
        return new OfficeFolder(jobs, List.of(quotes), List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-02, WAIT",
        "2026-03-08, WAIT",
        "2026-03-09, FOLLOW_UP", // seven days after 2 March
        "2026-03-24, FOLLOW_UP",
        "2026-03-25, LAPSES", // seven days before 1 April
        "2026-04-01, LAPSES",
        "2026-04-02, REVISE"
    })
    void openQuoteIsFollowedUpAndLapses(LocalDate today, NextStep.Kind kind) {
        IssuedQuote open = quote("2026-0001", 1, QuoteState.ISSUED, 0);
        assertEquals(kind, NextStep.of(open, folder(List.of(), open), today).kind());
    }

    @Test
    void lapsedQuoteWithALaterRevisionIsLeftAlone() {
        IssuedQuote first = quote("2026-0001", 1, QuoteState.ISSUED, 0);
        IssuedQuote second = quote("2026-0001", 2, QuoteState.ISSUED, 0);
        LocalDate later = UNTIL.plusDays(1);
        assertEquals(
                NextStep.Kind.NONE,
                NextStep.of(first, folder(List.of(), first, second), later).kind());
        assertEquals(
                NextStep.Kind.REVISE,
                NextStep.of(second, folder(List.of(), first, second), later).kind());
    }

    @Test
    void acceptedQuoteIsWorkUntilItsJobIsFinished() {
        IssuedQuote accepted = quote("2026-0001", 1, QuoteState.ACCEPTED, 3);
        OfficeJob open = job("A. Customer", true, null);
        OfficeJob done = job("A. Customer", true, ISSUED.plusDays(20));
        OfficeJob earlier = job("A. Customer", true, ISSUED.minusDays(1));
        assertEquals(
                NextStep.Kind.DO_WORK,
                NextStep.of(accepted, folder(List.of(open), accepted), UNTIL).kind());
        assertEquals(
                NextStep.Kind.DONE,
                NextStep.of(accepted, folder(List.of(done), accepted), UNTIL).kind());
        assertEquals(
                NextStep.Kind.DO_WORK,
                NextStep.of(accepted, folder(List.of(earlier), accepted), UNTIL).kind(),
                "work finished before the quote is that of another visit");
    }

    @Test
    void jobSaysWhatItLacksFirst() {
        OfficeFolder none = folder(List.of());
        assertEquals(NextStep.Kind.CUSTOMER, next(job("", false, null), none, OptionalInt.of(4)));
        assertEquals(NextStep.Kind.ADDRESS, next(job("A. Customer", false, null), none, OptionalInt.of(4)));
        assertEquals(NextStep.Kind.UNKNOWN, next(job("A. Customer", true, null), none, OptionalInt.empty()));
        assertEquals(NextStep.Kind.CORRECT, next(job("A. Customer", true, null), none, OptionalInt.of(-1)));
        assertEquals(NextStep.Kind.MEASURE, next(job("A. Customer", true, null), none, OptionalInt.of(4)));
        assertEquals(NextStep.Kind.ISSUE, next(job("A. Customer", true, null), none, OptionalInt.of(0)));
        OfficeFolder quoted = folder(List.of(), quote("2026-0001", 1, QuoteState.ISSUED, 0));
        assertEquals(NextStep.Kind.QUOTED, next(job("A. Customer", true, null), quoted, OptionalInt.of(0)));
        assertEquals(NextStep.Kind.ISSUE, next(job("B. Customer", true, null), quoted, OptionalInt.of(0)));
    }

    private static NextStep.Kind next(OfficeJob job, OfficeFolder office, OptionalInt readings) {
        return NextStep.of(job, office, readings, ISSUED).kind();
    }

    /** Worked by hand: of five answers three are yes; they came after 2, 3, 9 and 10 days, whose middle is 6; one quote lapsed. */
    @Test
    void ratesCountAnswers() {
        OfficeRates rates = OfficeRates.of(
                folder(
                        List.of(),
                        quote("2026-0001", 1, QuoteState.ACCEPTED, 2),
                        quote("2026-0002", 1, QuoteState.ACCEPTED, 3),
                        quote("2026-0003", 1, QuoteState.ACCEPTED, 9),
                        quote("2026-0004", 1, QuoteState.DECLINED, 10),
                        quote("2026-0005", 1, QuoteState.SUPERSEDED, 1),
                        quote("2026-0005", 2, QuoteState.ISSUED, 0)),
                UNTIL.plusDays(1));
        assertEquals(5, rates.answered());
        assertEquals(3, rates.accepted());
        assertEquals(OptionalDouble.of(6), rates.medianDays());
        assertEquals(
                OptionalDouble.empty(),
                OfficeRates.of(folder(List.of()), ISSUED).medianDays());
    }

    @Test
    void folderIsReadWithWhatLiesBelowAndElsewhere(@TempDir Path office, @TempDir Path elsewhere) throws Exception {
        Path below = Files.createDirectories(office.resolve("2026/march"));
        Files.copy(Demo.FOLDER.resolve("alder-beck.job"), below.resolve("alder.job"));
        Files.createDirectories(office.resolve(".hidden"));
        Files.copy(Demo.FOLDER.resolve("alder-beck.job"), office.resolve(".hidden/old.job"));
        Files.copy(Demo.FOLDER.resolve("birch-syke.job"), elsewhere.resolve("birch.job"));
        Files.writeString(office.resolve("broken.job"), "no job at all");
        OfficeFolder found =
                OfficeFolder.read(office, List.of(elsewhere.resolve("birch.job"), elsewhere.resolve("gone.job")));
        assertEquals(
                List.of("alder", "birch"),
                found.jobs().stream().map(OfficeJob::name).sorted().toList());
        assertEquals(1, found.troubles().size());
        assertTrue(found.troubles().get(0).contains("broken.job"));
        assertTrue(found.jobs().stream().allMatch(OfficeJob::addressed));
        assertFalse(OfficeFolder.read(office.resolve("nowhere"), List.of())
                .jobs()
                .iterator()
                .hasNext());
    }

    @Test
    void anOpenQuoteSaysTheDayThatItIsAbout() {
        IssuedQuote open = quote("2026-0001", 1, QuoteState.ISSUED, 0);
        OfficeFolder office = folder(List.of(), open);
        assertEquals(ISSUED, NextStep.of(open, office, ISSUED.plusDays(8)).on());
        assertEquals(UNTIL, NextStep.of(open, office, UNTIL.minusDays(7)).on(), "the last day on which it holds");
    }

    @Test
    void aChangedFileComesBeforeEverythingElse() {
        IssuedQuote open = quote("2026-0001", 1, QuoteState.ISSUED, 0);
        IssuedQuote changed = new IssuedQuote(
                open.file(), open.quote(), "", false, Verification.CHANGED, open.customer(), open.site());
        assertEquals(
                NextStep.Kind.CHECK_FILE,
                NextStep.of(changed, folder(List.of(), changed), UNTIL).kind());
    }

    @Test
    void whatWasDeclinedOrSupersededNeedsNothing() {
        for (QuoteState state : List.of(QuoteState.DECLINED, QuoteState.SUPERSEDED)) {
            IssuedQuote quote = quote("2026-0001", 1, state, 3);
            assertEquals(
                    NextStep.Kind.NONE,
                    NextStep.of(quote, folder(List.of(), quote), ISSUED).kind());
            assertFalse(NextStep.Kind.NONE.due());
        }
    }

    @Test
    void aFinishedJobNeedsNothingAndOneWithADeclinedQuoteIsLeftAlone() {
        OfficeJob done = job("A. Customer", true, ISSUED.plusDays(20));
        assertEquals(NextStep.Kind.DONE, next(done, folder(List.of()), OptionalInt.of(4)));
        OfficeFolder declined = folder(List.of(), quote("2026-0001", 1, QuoteState.DECLINED, 3));
        assertEquals(NextStep.Kind.NONE, next(job("A. Customer", true, null), declined, OptionalInt.of(0)));
    }

    @Test
    void whatTheOfficeDoesNowIsDue() {
        assertEquals(
                List.of("checkFile", "lapses", "followUp", "doWork", "issue"),
                java.util.Arrays.stream(NextStep.Kind.values())
                        .filter(NextStep.Kind::due)
                        .map(NextStep.Kind::key)
                        .toList());
    }

    /** A quote that lapsed or was declined counts as an answer only where no revision followed. */
    @Test
    void revisedQuotesAreNoAnswers() {
        OfficeRates rates = OfficeRates.of(
                folder(
                        List.of(),
                        quote("2026-0001", 1, QuoteState.DECLINED, 4),
                        quote("2026-0001", 2, QuoteState.ACCEPTED, 5),
                        quote("2026-0002", 1, QuoteState.ISSUED, 0),
                        quote("2026-0002", 2, QuoteState.DECLINED, 9),
                        quote("2026-0003", 1, QuoteState.ISSUED, 0)),
                UNTIL.plusDays(1));
        assertEquals(3, rates.answered(), "accepted, declined and lapsed");
        assertEquals(1, rates.accepted());
        assertEquals(OptionalDouble.of(7), rates.medianDays());
        assertEquals(
                OptionalDouble.of(5),
                OfficeRates.of(folder(List.of(), quote("2026-0001", 1, QuoteState.ACCEPTED, 5)), UNTIL)
                        .medianDays());
    }

    @Test
    void aJobWithoutCustomerOrDwellingIsReadToo(@TempDir Path office) throws Exception {
        String job = Files.readString(Demo.FOLDER.resolve("rowan-brook.job"));
        Files.writeString(office.resolve("nobody.job"), job.replaceAll("(?s)<(customer|site) [^>]*/>", ""));
        Files.writeString(
                office.resolve("site.job"),
                job.replaceAll("(?s)<customer [^>]*/>", "<customer name=\" A. Tenant \"/>"));
        OfficeFolder found = OfficeFolder.read(office, List.of());
        assertEquals(List.of(), found.troubles());
        OfficeJob nobody = found.jobs().get(0);
        assertEquals("", nobody.customer() + nobody.site());
        assertFalse(nobody.addressed());
        OfficeJob site = found.jobs().get(1);
        assertEquals("A. Tenant", site.customer());
        assertTrue(site.addressed(), "the site has an address");
    }

    @Test
    void aBrokenQuoteIsNamedAndHidesNoOther(@TempDir Path office) throws Exception {
        Path quotes = Files.createDirectories(office.resolve("quotes"));
        Files.writeString(quotes.resolve("2026-0001-r1.quote"), "no quote");
        OfficeFolder found = OfficeFolder.read(office, List.of());
        assertEquals(1, found.troubles().size());
        String trouble = found.troubles().get(0);
        assertTrue(
                trouble.startsWith(quotes.resolve("2026-0001-r1.quote") + " is not an issued quote that can be read: "),
                trouble);
        assertTrue(trouble.contains("(line 1, column 4)"), trouble);
        assertFalse(trouble.contains("Source"), trouble);
    }

    @Test
    void theLatestQuoteOfAHouseIsTheOneThatCounts() {
        IssuedQuote first = quote("2026-0001", 1, QuoteState.SUPERSEDED, 0);
        IssuedQuote second = quote("2026-0001", 2, QuoteState.ISSUED, 0);
        OfficeJob job = job("A. Customer", true, null);
        assertEquals(second, folder(List.of(), first, second).latest(job).orElseThrow());
    }
}
