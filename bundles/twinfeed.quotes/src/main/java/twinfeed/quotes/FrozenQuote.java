// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentPackage;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.io.OneLine;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PricebookPackage;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuotePackage;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.model.work.WorkDone;

/**
 * An issued quote with everything that it rests on.
 *
 * @param quote the quote as issued
 * @param survey the survey
 * @param assessment what followed from it
 * @param book the head of the price book and the items that took part
 * @param program version of the program
 * @param photos digests of the photographs by the name that the survey has for them, see {@link QuotePhotos}
 * @param withWork the supplies with the work of the first option done; absent where that needs none, and in older files
 */
public record FrozenQuote(
        Quote quote,
        Survey survey,
        Assessment assessment,
        PriceBook book,
        String program,
        SortedMap<String, String> photos,
        @Nullable WorkDone withWork) {
    /** Version of the file's form, the value of its key {@code form}. */
    public static final String FORM = "twinfeed-quote-2";

    /** The form before: the steps of each working stand in full at each finding. */
    private static final String STEPS_IN_FULL = "twinfeed-quote-1";

    /** Of what is wrong with a damaged file so many characters are told. */
    private static final int LONGEST_REASON = 300;

    /** How exceptions are named within the messages of others. */
    private static final Pattern CLASS = Pattern.compile("\\b(?:[a-z]\\w*\\.)+[A-Z]\\w*Exception: ");

    /** Stands in each file: it holds what the firm pays, and is no output for a customer. */
    public static final String NOTICE = "holds the firm's costs; not to be sent to a customer";

    public FrozenQuote {
        photos = Collections.unmodifiableSortedMap(new TreeMap<>(photos));
    }

    /** Freezes copies, without photographs; of the book only what took part. */
    public static FrozenQuote of(Quote issued, Survey survey, Assessment assessment, PriceBook book, String program) {
        PriceBook used = BookExcerpt.of(book, issued, assessment);
        return new FrozenQuote(issued, survey, assessment, used, program, new TreeMap<>(), null);
    }

    /** The same with photographs that are kept under these digests. */
    FrozenQuote with(SortedMap<String, String> kept) {
        return new FrozenQuote(quote, survey, assessment, book, program, kept, withWork);
    }

    /** The same with the supplies as they are once the work of the first option is done. */
    FrozenQuote with(@Nullable WorkDone done) {
        return new FrozenQuote(quote, survey, assessment, book, program, photos, done);
    }

    /** The file's content: canonical JSON. */
    public byte[] bytes() {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("form", FORM);
        tree.put("notice", NOTICE);
        tree.put("program", program);
        tree.put("quote", ModelTree.of(quote));
        tree.put("survey", ModelTree.of(survey));
        SharedSteps.write(ModelTree.of(assessment), tree);
        tree.put("book", ModelTree.of(book));
        if (withWork != null) {
            tree.put("withWork", ModelTree.of(withWork.supplies()));
            if (!withWork.renewed().isEmpty()) {
                tree.put("renewed", withWork.renewed());
            }
        }
        if (!photos.isEmpty()) {
            tree.put("photos", new LinkedHashMap<>(photos));
        }
        return CanonicalJson.write(tree).getBytes(StandardCharsets.UTF_8);
    }

    /** SHA-256 of the content, 64 hexadecimal digits. */
    public String digest() {
        return digest(bytes());
    }

    static String digest(byte[] bytes) {
        return FileFingerprint.of(bytes).digest();
    }

    /**
     * Reads a file's content.
     *
     * @param name name of the file for messages
     * @throws LifeException if it is no frozen quote, or one of a form that this program does not know
     */
    public static FrozenQuote read(byte[] bytes, String name) {
        try {
            return of(JsonText.read(bytes), name);
        } catch (IllegalArgumentException | ArithmeticException | DateTimeException foreign) {
            throw new LifeException("notAQuote", name, reason(foreign));
        }
    }

    /** What is wrong with a damaged file, without names of a library's classes, without characters that a screen would obey, and not whole pages of it. */
    private static String reason(Exception foreign) {
        return OneLine.of(CLASS.matcher(String.valueOf(foreign.getMessage())).replaceAll(""), LONGEST_REASON);
    }

    private static FrozenQuote of(@Nullable Object tree, String name) {
        if (!(tree instanceof Map<?, ?> map) || !(map.get("form") instanceof String form)) {
            throw new IllegalArgumentException("no key \"form\"");
        }
        return switch (form) {
            case FORM -> of(map, SharedSteps.read(map));
            case STEPS_IN_FULL -> of(map, map.get("assessment"));
            default -> throw new LifeException("unknownForm", name, form, FORM);
        };
    }

    private static FrozenQuote of(Map<?, ?> map, @Nullable Object assessment) {
        return new FrozenQuote(
                (Quote) ModelTree.object(QuotePackage.Literals.QUOTE, map.get("quote")),
                (Survey) ModelTree.object(SurveyPackage.Literals.SURVEY, map.get("survey")),
                (Assessment) ModelTree.object(AssessmentPackage.Literals.ASSESSMENT, assessment),
                (PriceBook) ModelTree.object(PricebookPackage.Literals.PRICE_BOOK, map.get("book")),
                String.valueOf(map.get("program")),
                photos(map.get("photos")),
                withWork(map));
    }

    private static @Nullable WorkDone withWork(Map<?, ?> map) {
        if (map.get("withWork") == null) {
            return null;
        }
        List<String> renewed = map.get("renewed") instanceof List<?> paths
                ? paths.stream().map(String::valueOf).toList()
                : List.of();
        return new WorkDone((Survey) ModelTree.object(SurveyPackage.Literals.SURVEY, map.get("withWork")), renewed);
    }

    private static SortedMap<String, String> photos(@Nullable Object tree) {
        SortedMap<String, String> photos = new TreeMap<>();
        if (tree == null) {
            return photos;
        }
        if (!(tree instanceof Map<?, ?> map)) {
            throw new IllegalArgumentException("\"photos\" holds no digests");
        }
        map.forEach((name, digest) -> {
            if (!String.valueOf(digest).matches("[0-9a-f]{64}")) {
                throw new IllegalArgumentException("\"photos\" holds a digest that is none");
            }
            photos.put(String.valueOf(name), String.valueOf(digest));
        });
        return photos;
    }
}
