// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentException;
import twinfeed.document.QuoteDocument;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.pdf.QuotePdf;
import twinfeed.quotes.FolderVerification;
import twinfeed.quotes.LifeException;
import twinfeed.quotes.OpenedQuote;
import twinfeed.quotes.QuoteComparison;
import twinfeed.quotes.QuoteFolder;
import twinfeed.quotes.Verification;
import twinfeed.usecase.interchange.VisitCalendar;
import twinfeed.workbook.QuoteWorkbook;

/** Issues quotes into an office's folder, opens issued ones and compares two of them. */
final class IssuedQuotes {
    /** A step that reads or writes an office's folder. */
    @FunctionalInterface
    private interface Step<T> {
        T take() throws IOException;
    }

    IssuedQuote issue(AssessedJob judged, Quote draft, PriceBook book, Path office) {
        return issued(written(office, () -> new QuoteFolder(office)
                .issue(draft, judged.opened().job().getSurvey(), judged.record(), book, TwinfeedService.VERSION)));
    }

    IssuedQuote revise(AssessedJob judged, Quote draft, PriceBook book, Path previous) {
        return issued(written(previous, () -> folder(previous)
                .revise(
                        previous,
                        draft,
                        judged.opened().job().getSurvey(),
                        judged.record(),
                        book,
                        TwinfeedService.VERSION)));
    }

    IssuedQuote accept(Path file, String option, LocalDate on) {
        return issued(written(file, () -> folder(file).accept(file, option, on)));
    }

    /** The same, and the visit goes into a calendar: that file is written only if the answer could be recorded. */
    IssuedQuote accept(Path file, String option, LocalDate on, Visit visit, FirmFile firm, Locale locale) {
        OutputCheck.check(visit.calendar(), ".ics", List.of(file));
        IssuedQuote accepted = accept(file, option, on);
        VisitCalendar calendar = new VisitCalendar(accepted.quote(), survey(file), firm.firm(), locale);
        new OutputFiles()
                .add(
                        visit.calendar(),
                        bytes -> calendar.write(visit.begin(), visit.length(), TwinfeedService.VERSION, bytes))
                .write();
        return accepted;
    }

    IssuedQuote decline(Path file, LocalDate on) {
        return issued(written(file, () -> folder(file).decline(file, on)));
    }

    IssuedQuote correct(Path file, LocalDate on, String reason) {
        return issued(written(file, () -> folder(file).correct(file, on, reason)));
    }

    List<QuoteCorrection> corrections(Path file) {
        try {
            return QuoteFolder.corrections(file).stream()
                    .map(each ->
                            new QuoteCorrection(each.was(), each.decidedOn(), each.chosen(), each.on(), each.reason()))
                    .toList();
        } catch (LifeException refused) {
            throw new UnusableException(file + ": " + refused.getMessage(), refused);
        } catch (IOException unreadable) {
            throw new InputException(
                    InputProblem.ofFile(file.toString(), "it cannot be read", "name an issued quote, *.quote"),
                    unreadable);
        }
    }

    List<Path> files(Path office) {
        try {
            return new QuoteFolder(office).files();
        } catch (IOException unreadable) {
            throw new InputException(
                    InputProblem.ofFile(
                            office.toString(), "its quotes cannot be read", "name a folder that can be read"),
                    unreadable);
        }
    }

    /** The office whose folder {@code quotes} holds a file. */
    private static QuoteFolder folder(Path file) {
        return new QuoteFolder(file.toAbsolutePath().resolve("../..").normalize());
    }

    private static <T> T written(Path where, Step<T> step) {
        try {
            return step.take();
        } catch (LifeException refused) {
            throw new UnusableException(where + ": " + refused.getMessage(), refused);
        } catch (IOException unwritable) {
            throw new InputException(
                    InputProblem.ofFile(
                            where.toString(),
                            "the quote cannot be written there (" + unwritable.getMessage()
                                    + "); nothing was issued and no number is taken",
                            "name a folder that can be written and has room"),
                    unwritable);
        }
    }

    List<QuoteDifference> compare(Path before, Path after) {
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
                opened.verification().text(Locale.ROOT),
                text(survey.getCustomer() == null ? null : survey.getCustomer().getName()),
                text(survey.getSite() == null ? null : survey.getSite().getName()));
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    FolderCheck verify(Path place) {
        if (!Files.isDirectory(place)) {
            InputBytes.check(place);
        }
        try {
            return FolderCheck.of(
                    Files.isDirectory(place)
                            ? new QuoteFolder(place).verify()
                            : new FolderVerification(List.of(FolderVerification.check(place)), List.of()));
        } catch (IOException unreadable) {
            throw new InputException(
                    InputProblem.ofFile(
                            place.toString(), "it cannot be read", "name an issued quote or an office's folder"),
                    unreadable);
        }
    }

    IssuedQuote reprint(CheckTopics topics, Path file, FirmFile firm, Locale locale, OutputPaths out) {
        OpenedQuote opened = opened(file);
        if (opened.verification() != Verification.UNCHANGED) {
            throw new UnusableException(
                    file + ": " + opened.verification().text(Locale.ROOT) + "; nothing was written",
                    new IllegalStateException(opened.verification().name()));
        }
        Assessment record = opened.frozen().assessment();
        topics.complete(record);
        try {
            QuoteDocument document = QuoteDocument.of(
                            opened.frozen().survey(),
                            record,
                            opened.current(),
                            firm.firm(),
                            opened.frozen().program(),
                            locale)
                    .withFingerprint(opened.digest());
            new OutputFiles()
                    .add(out.workbook(), bytes -> QuoteWorkbook.write(document, bytes))
                    .add(out.pdf(), bytes -> QuotePdf.write(document, bytes))
                    .add(out.ubl(), bytes -> QuoteMaking.quotation(
                                    opened.current(), opened.frozen().survey(), firm)
                            .write(bytes))
                    .write();
        } catch (DocumentException refused) {
            throw new UnusableException(file + ": " + refused.getMessage(), refused);
        }
        return issued(opened);
    }

    /** The survey that was frozen with an issued quote. */
    Survey survey(Path file) {
        return opened(file).frozen().survey();
    }

    private static OpenedQuote opened(Path file) {
        try {
            return QuoteFolder.open(file);
        } catch (LifeException refused) {
            throw new UnusableException(file + ": " + refused.getMessage(), refused);
        } catch (IOException unreadable) {
            throw new InputException(
                    InputProblem.ofFile(file.toString(), "it cannot be read", "name an issued quote, *.quote"),
                    unreadable);
        }
    }

    IssuedQuote open(Path file) {
        return issued(opened(file));
    }
}
