// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentException;
import twinfeed.document.PhotoSource;
import twinfeed.document.QuoteDocument;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.InputException;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.model.work.WorkDone;
import twinfeed.pdf.QuotePdf;
import twinfeed.quotes.FolderVerification;
import twinfeed.quotes.LifeException;
import twinfeed.quotes.OpenedQuote;
import twinfeed.quotes.QuoteComparison;
import twinfeed.quotes.QuoteDraft;
import twinfeed.quotes.QuoteFolder;
import twinfeed.quotes.QuotePhotos;
import twinfeed.quotes.Verification;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.CheckTopics;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.JobPhotos;
import twinfeed.usecase.OutputCheck;
import twinfeed.usecase.OutputFiles;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.interchange.VisitCalendar;
import twinfeed.usecase.refusal.Refusals;
import twinfeed.workbook.QuoteWorkbook;

/** Issues quotes into an office's folder, opens issued ones and compares two of them. */
public final class IssuedQuotes {
    private IssuedQuotes() {}

    /** A step that reads or writes an office's folder. */
    @FunctionalInterface
    private interface Step<T> {
        T take() throws IOException;
    }

    /**
     * Issues a draft: takes a number and freezes survey, findings and prices with it in an office's folder.
     *
     * @param office the folder of the office's quotes; created where it is first written to
     * @return the issued quote with its number, file and digest
     * @throws UnusableException if an option that is not known to suit has no reason with it
     * @throws InputException if the folder cannot be written, or {@link IssueGate} keeps the quote from being issued
     */
    public static IssuedQuote issue(AssessedJob judged, Quote draft, PriceBook book, Path office) {
        check(judged, draft, book);
        return issued(written(office, () -> new QuoteFolder(office).issue(complete(judged, draft, book))));
    }

    /**
     * Issues a draft as the next revision of a quote, which is superseded by it unless it was declined or has lapsed.
     *
     * @param previous file of the latest revision
     * @throws UnusableException if that one was accepted, is not the latest or was changed since it was issued, or an option that is not
     *     known to suit has no reason with it
     * @throws InputException if the folder cannot be written, or {@link IssueGate} keeps the quote from being issued
     */
    public static IssuedQuote revise(AssessedJob judged, Quote draft, PriceBook book, Path previous) {
        check(judged, draft, book);
        return issued(written(previous, () -> folder(previous).revise(previous, complete(judged, draft, book))));
    }

    private static QuoteDraft complete(AssessedJob judged, Quote draft, PriceBook book) {
        Survey survey = judged.opened().job().getSurvey();
        Map<String, Path> pictures = new JobPhotos(judged.opened().file()).of(survey);
        return new QuoteDraft(
                draft,
                survey,
                judged.record(),
                book,
                TwinfeedService.VERSION,
                pictures,
                QuotingService.withWork(judged, draft));
    }

    private static void check(AssessedJob judged, Quote draft, PriceBook book) {
        IssueGate.check(judged.opened().file(), judged.opened().job().getSurvey(), book, draft);
    }

    /**
     * Records that the customer accepted one option of an issued quote.
     *
     * @param option name of the option
     * @param on the day, from the date of the quote to the last day on which it holds
     * @throws UnusableException if the quote is not open on that day, was changed or has no such option
     */
    public static IssuedQuote accept(Path file, String option, LocalDate on) {
        return issued(written(file, () -> folder(file).accept(file, option, on)));
    }

    /**
     * Records that the customer accepted an option, and writes the visit that was agreed as an entry of a calendar (RFC 5545); that
     * file is written only if the answer could be recorded.
     *
     * @param firm who quotes
     * @param locale language of the entry
     * @throws UnusableException if the quote is not open on that day, was changed or has no such option; no entry is written then
     * @throws InputException if the entry cannot be written; where its place is right, the answer is recorded all the same
     */
    public static IssuedQuote accept(
            Path file, String option, LocalDate on, Visit visit, FirmFile firm, Locale locale) {
        OutputCheck.check(visit.calendar(), ".ics", List.of(file));
        IssuedQuote accepted = accept(file, option, on);
        write(accepted, on, visit, firm, locale);
        return accepted;
    }

    /**
     * Moves the visit of a quote that was accepted before, or agrees one for it: writes an entry that takes the place of an earlier one in a
     * calendar.
     *
     * @param option name of the option that was accepted
     * @param on the day on which the visit was agreed
     * @param firm who quotes
     * @param locale language of the entry
     * @throws UnusableException if the quote is not accepted, was changed, or another option was accepted; no entry is written then
     * @throws InputException if the entry cannot be written
     */
    public static IssuedQuote moveVisit(
            Path file, String option, LocalDate on, Visit visit, FirmFile firm, Locale locale) {
        OutputCheck.check(visit.calendar(), ".ics", List.of(file));
        IssuedQuote accepted = open(file);
        String chosen = accepted.quote().getChosen();
        if (chosen != null && !chosen.equals(option)) {
            throw new UnusableException(
                    file + ": " + Refusals.text("issued.otherOption", chosen, option),
                    new IllegalStateException(option));
        }
        write(accepted, on, visit, firm, locale);
        return accepted;
    }

    private static void write(IssuedQuote accepted, LocalDate on, Visit visit, FirmFile firm, Locale locale) {
        Path file = accepted.file();
        int sequence = written(file, () -> folder(file).visit(file, visit.begin(), visit.length()));
        VisitCalendar calendar = new VisitCalendar(accepted.quote(), survey(file), firm.firm(), locale);
        new OutputFiles()
                .add(
                        visit.calendar(),
                        bytes -> calendar.write(
                                visit.begin(), visit.length(), sequence, on, TwinfeedService.VERSION, bytes))
                .write();
    }

    /**
     * Records that the customer declined an issued quote.
     *
     * @throws UnusableException if the quote is not open on that day or was changed
     */
    public static IssuedQuote decline(Path file, LocalDate on) {
        return issued(written(file, () -> folder(file).decline(file, on)));
    }

    /**
     * Takes a decision of the customer back that was recorded by mistake: the quote is open again, as long as it holds. What had been
     * recorded, the day and the reason stay on record.
     *
     * @param file the issued quote
     * @param on the day of the correction
     * @param reason why, not empty
     * @throws UnusableException if it was neither accepted nor declined, was changed since it was issued, or has a later revision
     * @throws InputException if it cannot be read or written
     */
    public static IssuedQuote correct(Path file, LocalDate on, String reason) {
        return issued(written(file, () -> folder(file).correct(file, on, reason)));
    }

    /**
     * The decisions about an issued quote that were taken back, the first one first.
     *
     * @throws UnusableException if what lies beside the quote is no correction
     * @throws InputException if it cannot be read
     */
    public static List<QuoteCorrection> corrections(Path file) {
        try {
            return QuoteFolder.corrections(file).stream()
                    .map(each ->
                            new QuoteCorrection(each.was(), each.decidedOn(), each.chosen(), each.on(), each.reason()))
                    .toList();
        } catch (LifeException refused) {
            throw new UnusableException(refused.message(file), refused);
        } catch (IOException unreadable) {
            throw Refusals.exception(unreadable, file, "issued.unreadable");
        }
    }

    /**
     * The files of the quotes issued in an office's folder, by number and revision; none where nothing was issued yet.
     *
     * @throws InputException if the folder cannot be read
     */
    public static List<Path> in(Path office) {
        try {
            return new QuoteFolder(office).files();
        } catch (IOException unreadable) {
            throw Refusals.exception(unreadable, office, "issued.folder");
        }
    }

    /** The office whose folder {@code quotes} holds a file. */
    private static QuoteFolder folder(Path file) {
        return new QuoteFolder(office(file));
    }

    private static Path office(Path file) {
        return file.toAbsolutePath().resolve("../..").normalize();
    }

    private static <T> T written(Path where, Step<T> step) {
        try {
            return step.take();
        } catch (LifeException refused) {
            throw new UnusableException(refused.message(where), refused);
        } catch (IOException unwritable) {
            throw Refusals.exception(unwritable, where, "issued.unwritable", String.valueOf(unwritable.getMessage()));
        }
    }

    /** Two issued quotes line by line. */
    public static List<QuoteDifference> compare(Path before, Path after) {
        return QuoteComparison.compare(open(before).quote(), open(after).quote()).differences().stream()
                .map(one -> new QuoteDifference(
                        one.kind().name().toLowerCase(Locale.ROOT),
                        one.option(),
                        one.section(),
                        one.code(),
                        one.field(),
                        one.before(),
                        one.after()))
                .toList();
    }

    private static IssuedQuote issued(OpenedQuote opened) {
        Survey survey = opened.frozen().survey();
        return new IssuedQuote(
                opened.file(),
                opened.current(),
                opened.digest(),
                opened.verification() == Verification.UNCHANGED,
                opened.verification(),
                text(survey.getCustomer() == null ? null : survey.getCustomer().getName()),
                text(survey.getSite() == null ? null : survey.getSite().getName()));
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    /**
     * Looks whether issued quotes are as they were issued, and in an office's folder whether numbers or revisions are missing.
     *
     * @param place an issued quote, or an office's folder
     * @throws InputException if the folder cannot be read
     */
    public static FolderCheck verify(Path place) {
        if (!Files.isDirectory(place)) {
            InputBytes.check(place);
        }
        try {
            return FolderCheck.of(
                    Files.isDirectory(place)
                            ? new QuoteFolder(place).verify()
                            : new FolderVerification(List.of(FolderVerification.check(place)), List.of()));
        } catch (IOException unreadable) {
            throw Refusals.exception(unreadable, place, "issued.place");
        }
    }

    /**
     * Writes the workbook and PDF of an issued quote again, from what was frozen with it; all of it appears, or nothing.
     *
     * @param service its calculators say what the checks of an older quote are about
     * @param locale the language in which it was issued
     * @throws UnusableException if it is not as it was issued
     * @throws InputException if it cannot be read, or a file not be written
     */
    public static IssuedQuote reprint(
            TwinfeedService service, Path file, FirmFile firm, Locale locale, OutputPaths out) {
        OpenedQuote opened = opened(file);
        if (opened.verification() != Verification.UNCHANGED) {
            throw new UnusableException(
                    file + ": "
                            + Refusals.text(
                                    "issued.changed",
                                    opened.verification().text(Locale.getDefault(Locale.Category.DISPLAY))),
                    new IllegalStateException(opened.verification().name()));
        }
        Assessment record = opened.frozen().assessment();
        CheckTopics declared = new CheckTopics(service.calculators());
        declared.complete(record);
        @Nullable WorkDone done = opened.frozen().withWork();
        declared.place(record, pieces(opened.frozen().survey(), done == null ? null : done.supplies()));
        try {
            QuoteDocument document = QuoteDocument.of(
                            opened.frozen().survey(),
                            record,
                            opened.current(),
                            firm.firm(),
                            opened.frozen().program(),
                            locale)
                    .withPhotos(photos(opened))
                    .withWork(done)
                    .withFingerprint(opened.digest());
            new OutputFiles()
                    .add(out.workbook(), bytes -> QuoteWorkbook.write(document, bytes))
                    .add(out.pdf(), bytes -> QuotePdf.write(document, bytes))
                    .add(out.ubl(), bytes -> QuotingService.quotation(
                                    opened.current(), opened.frozen().survey(), firm, locale)
                            .write(bytes))
                    .write();
        } catch (DocumentException refused) {
            throw new UnusableException(file + ": " + refused.getMessage(), refused);
        }
        return issued(opened);
    }

    /** The names of pipes and cables, as surveyed and with the work done. */
    private static Set<String> pieces(@Nullable Survey... houses) {
        Set<String> names = new HashSet<>();
        for (Survey house : houses) {
            if (house != null) {
                names.addAll(HouseDrawing.names(house));
            }
        }
        return names;
    }

    /** The pictures that were kept when a quote was issued. */
    private static PhotoSource photos(OpenedQuote opened) {
        QuotePhotos kept = new QuotePhotos(office(opened.file()));
        return name -> {
            String digest = opened.frozen().photos().get(name);
            return digest == null ? null : kept.open(digest);
        };
    }

    /** The survey that was frozen with an issued quote. */
    public static Survey survey(Path file) {
        return opened(file).frozen().survey();
    }

    private static OpenedQuote opened(Path file) {
        try {
            return QuoteFolder.open(file);
        } catch (LifeException refused) {
            throw new UnusableException(refused.message(file), refused);
        } catch (IOException unreadable) {
            throw Refusals.exception(unreadable, file, "issued.unreadable");
        }
    }

    /** Opens an issued quote and says whether it is what was issued. */
    public static IssuedQuote open(Path file) {
        return issued(opened(file));
    }
}
