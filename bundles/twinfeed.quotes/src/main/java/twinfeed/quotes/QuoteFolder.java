// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.LockedFile;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;

/**
 * The issued quotes of an office: {@code quotes/NUMBER-rREVISION.quote}, read-only, each with {@code .quote.sha256} and, once it is
 * decided, {@code .quote.outcome} beside it, {@code .quote.correction-1} and so on for decisions that were taken back,
 * and {@code .quote.visit-1} and so on for visits that were agreed. Several people may work in one folder at once.
 */
public final class QuoteFolder {
    private static final Pattern NAME = Pattern.compile("(\\d{4}-\\d{4,9})-r(\\d{1,6})\\.quote");

    private static final int MOST_MIB = 16;

    private final Path quotes;
    private final QuoteNumbers numbers;
    private final QuotePhotos photos;

    /**
     * The quotes of an office.
     *
     * @param office its folder; created when it is first written to
     */
    public QuoteFolder(Path office) {
        quotes = office.resolve("quotes");
        numbers = new QuoteNumbers(office);
        photos = new QuotePhotos(office);
    }

    /**
     * Issues a draft as of its own date: takes a number, freezes it and writes it.
     *
     * <p>Its photographs are kept, and the room for its files is taken, before the number is.
     *
     * @throws LifeException if it is no draft or offers nothing; no number is taken then
     * @throws IOException if the folder cannot be written; no number is taken, and no file is there, then
     */
    public OpenedQuote issue(QuoteDraft draft) throws IOException {
        int year = draft.quote().getDate().getYear();
        Quote first = QuoteLife.issue(draft.quote(), new QuoteNumber(year, 1));
        SortedMap<String, String> kept = photos.keep(draft.pictures());
        FrozenQuote provisional = draft.frozen(first, kept);
        try (QuoteFiles files = QuoteFiles.reserve(quotes, provisional.bytes().length)) {
            QuoteNumber number = numbers.take(year);
            while (Files.exists(file(QuoteLife.issue(draft.quote(), number)))) {
                // Quotes were copied here without their numbers: those numbers are taken all the same.
                number = numbers.take(year);
            }
            Quote issued = QuoteLife.issue(draft.quote(), number);
            Path file = file(issued);
            try {
                files.place(file, draft.frozen(issued, kept));
            } finally {
                if (!Files.exists(file)) {
                    numbers.giveBack(number);
                }
            }
            return open(file);
        }
    }

    /**
     * Issues a draft as the next revision of a quote, which is superseded unless it was declined or has lapsed.
     *
     * @param previous file of the latest revision
     * @throws LifeException if that one was accepted, is not the latest or was changed since it was issued, or the draft is none
     * @throws IOException if the folder cannot be read or written
     */
    public OpenedQuote revise(Path previous, QuoteDraft draft) throws IOException {
        OpenedQuote before = open(previous);
        if (before.verification() == Verification.CHANGED) {
            throw new LifeException("changedFile", previous.getFileName());
        }
        Quote revision = QuoteLife.nextRevision(draft.quote(), before.current());
        Quote issued =
                QuoteLife.issue(revision, QuoteNumber.parse(before.current().getNumber()));
        if (Files.exists(file(issued))) {
            throw new LifeException(
                    "notLatest", previous.getFileName(), file(issued).getFileName());
        }
        FrozenQuote frozen = draft.frozen(issued, photos.keep(draft.pictures()));
        try (QuoteFiles files = QuoteFiles.reserve(quotes, frozen.bytes().length)) {
            // Claimed first: an acceptance that comes in between is then refused, and not overtaken.
            LocalDate day = draft.quote().getDate();
            if (before.current().getState() == QuoteState.ISSUED) {
                boolean over = QuoteLife.stateOn(before.current(), day) == QuoteState.LAPSED;
                decide(previous, quote -> over ? QuoteLife.lapse(quote, day) : QuoteLife.supersede(quote, day));
            }
            files.place(file(issued), frozen);
        }
        return open(file(issued));
    }

    /**
     * Records that the customer accepted an option.
     *
     * @throws LifeException if the quote is not open on that day or has no such option
     * @throws IOException if the folder cannot be read or written
     */
    public OpenedQuote accept(Path file, String option, LocalDate on) throws IOException {
        return decide(file, quote -> QuoteLife.accept(quote, option, on));
    }

    /**
     * Records that the customer declined.
     *
     * @throws LifeException if the quote is not open
     * @throws IOException if the folder cannot be read or written
     */
    public OpenedQuote decline(Path file, LocalDate on) throws IOException {
        return decide(file, quote -> QuoteLife.decline(quote, on));
    }

    /**
     * Takes a customer's decision back that was recorded by mistake; what had been recorded, the day and the reason stay on record.
     *
     * @throws LifeException if it was neither accepted nor declined, was changed since it was issued, has a later revision, or there is
     *     no reason
     * @throws IOException if the folder cannot be read or written
     */
    public OpenedQuote correct(Path file, LocalDate on, String reason) throws IOException {
        try {
            return LockedFile.during(file, () -> {
                try {
                    return reopen(file, on, reason);
                } catch (IOException unwritable) {
                    throw new java.io.UncheckedIOException(unwritable);
                }
            });
        } catch (java.io.UncheckedIOException unwritable) {
            throw unwritable.getCause();
        }
    }

    private OpenedQuote reopen(Path file, LocalDate on, String reason) throws IOException {
        OpenedQuote opened = open(file);
        if (opened.verification() == Verification.CHANGED) {
            throw new LifeException("changedFile", file.getFileName());
        }
        Quote next = EcoreUtil.copy(QuoteLife.reopen(opened.current(), on, reason));
        next.setRevision(next.getRevision() + 1);
        if (Files.exists(file(next))) {
            throw new LifeException("notLatest", file.getFileName(), file(next).getFileName());
        }
        Correction.write(file, opened.current(), on, reason.strip());
        Outcome.remove(file);
        return open(file);
    }

    /**
     * Records a visit that was agreed for an accepted quote; one that was recorded before is moved by it.
     *
     * @param begin when it begins, by the clock at the site
     * @param length how long it is thought to take
     * @return how many times the entry of a calendar for this quote's number was revised before: by earlier revisions of the quote and
     *     by visits recorded for any of them; 0 for the first visit of a first revision
     * @throws LifeException if the quote is not accepted, or was changed since it was issued
     * @throws IOException if the folder cannot be read or written
     */
    public int visit(Path file, LocalDateTime begin, Duration length) throws IOException {
        OpenedQuote opened = open(file);
        if (opened.verification() == Verification.CHANGED) {
            throw new LifeException("changedFile", file.getFileName());
        }
        QuoteLife.requireAccepted(opened.current());
        int before = opened.current().getRevision() - 1;
        for (int revision = 1; revision <= opened.current().getRevision(); revision++) {
            before += VisitRecord.count(file(opened.current(), revision));
        }
        VisitRecord.add(file, begin, length);
        return before;
    }

    /**
     * What was recorded about a quote by mistake and taken back, the first one first.
     *
     * @throws LifeException if a correction cannot be read
     * @throws IOException if the folder cannot be read
     */
    public static List<Correction> corrections(Path file) throws IOException {
        return Correction.of(file);
    }

    /**
     * Records that a quote has lapsed.
     *
     * @throws LifeException if the quote is not open or still holds on that day
     * @throws IOException if the folder cannot be read or written
     */
    public OpenedQuote lapse(Path file, LocalDate on) throws IOException {
        return decide(file, quote -> QuoteLife.lapse(quote, on));
    }

    /**
     * Opens an issued quote and looks whether it is what was issued.
     *
     * @throws LifeException if the file is no issued quote
     * @throws twinfeed.model.io.InputException if it cannot be read, or is no regular file
     * @throws IOException if what lies beside it cannot be read
     */
    public static OpenedQuote open(Path file) throws IOException {
        byte[] bytes = InputBytes.read(file, MOST_MIB);
        FrozenQuote frozen = FrozenQuote.read(bytes, String.valueOf(file.getFileName()));
        String digest = FrozenQuote.digest(bytes);
        return new OpenedQuote(file, frozen, digest, verify(file, digest), Outcome.apply(file, frozen.quote()));
    }

    /**
     * The files of all issued quotes, by number and revision.
     *
     * @throws IOException if the folder cannot be read
     */
    public List<Path> files() throws IOException {
        if (!Files.isDirectory(quotes)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(quotes)) {
            return files.filter(file -> matcher(file).matches())
                    .sorted(java.util.Comparator.comparing(QuoteFolder::number).thenComparing(QuoteFolder::revision))
                    .toList();
        }
    }

    /**
     * Looks at every quote of the office, and for numbers, revisions and photographs that are missing.
     *
     * @throws IOException if the folder cannot be read
     */
    public FolderVerification verify() throws IOException {
        return FolderVerification.of(files(), numbers.taken(), photos);
    }

    private static Matcher matcher(Path file) {
        return NAME.matcher(String.valueOf(file.getFileName()));
    }

    static QuoteNumber number(Path file) {
        Matcher name = matcher(file);
        return QuoteNumber.parse(name.matches() ? name.group(1) : "");
    }

    static int revision(Path file) {
        Matcher name = matcher(file);
        return name.matches() ? Integer.parseInt(name.group(2)) : 0;
    }

    private Path file(Quote issued) {
        return file(issued, issued.getRevision());
    }

    private Path file(Quote issued, int revision) {
        return quotes.resolve(QuoteLife.name(issued, revision) + ".quote");
    }

    private static Verification verify(Path file, String digest) throws IOException {
        Path kept = QuoteFiles.digestFile(file);
        String line = Files.exists(kept) ? Files.readString(kept, StandardCharsets.ISO_8859_1) : "";
        if (!line.matches("[0-9a-f]{64} .*\\R?")) {
            return Verification.UNKNOWN;
        }
        return line.startsWith(digest) ? Verification.UNCHANGED : Verification.CHANGED;
    }

    private static OpenedQuote decide(Path file, UnaryOperator<Quote> step) throws IOException {
        OpenedQuote opened = open(file);
        if (opened.verification() == Verification.CHANGED) {
            throw new LifeException("changedFile", file.getFileName());
        }
        Quote decided = step.apply(opened.current());
        @Nullable Quote other = Outcome.write(file, decided);
        if (other != null) {
            // Somebody else was faster.
            throw new LifeException("notOpen", QuoteLife.state(other));
        }
        return open(file);
    }
}
