// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.model.work.WorkDone;

/**
 * Everything that a quote says. It is only read.
 *
 * @param survey the record of the visit
 * @param assessment findings with workings, texts already in the language of the quote
 * @param quote options with their prices
 * @param firm who quotes
 * @param programVersion version of the program
 * @param locale language and number style of the quote
 * @param time time of creation and of the last change, as the properties of its files say it; never the clock's
 * @param photos where the survey's pictures are
 * @param fingerprint hash of the frozen quote, absent for a draft
 * @param withWork the supplies with the work of the first option done; absent where that needs none
 */
public record QuoteDocument(
        Survey survey,
        Assessment assessment,
        Quote quote,
        Firm firm,
        String programVersion,
        Locale locale,
        Instant time,
        PhotoSource photos,
        @Nullable String fingerprint,
        @Nullable WorkDone withWork) {

    /**
     * A document without pictures and fingerprint, whose time is the beginning of the quote's day, UTC.
     *
     * @throws DocumentException if the quote has no date
     */
    public static QuoteDocument of(
            Survey survey, Assessment assessment, Quote quote, Firm firm, String programVersion, Locale locale)
            throws DocumentException {
        LocalDate date = quote.getDate();
        if (date == null) {
            throw new DocumentException("noDate", Map.of());
        }
        Instant time = date.atStartOfDay().toInstant(ZoneOffset.UTC);
        return new QuoteDocument(
                survey, assessment, quote, firm, programVersion, locale, time, PhotoSource.NONE, null, null);
    }

    /** The same with pictures. */
    public QuoteDocument withPhotos(PhotoSource source) {
        return new QuoteDocument(
                survey, assessment, quote, firm, programVersion, locale, time, source, fingerprint, withWork);
    }

    /** The same with the hash of the frozen quote. */
    public QuoteDocument withFingerprint(String hash) {
        return new QuoteDocument(survey, assessment, quote, firm, programVersion, locale, time, photos, hash, withWork);
    }

    /** The same with the supplies as they are once the work of the first option is done. */
    public QuoteDocument withWork(@Nullable WorkDone done) {
        return new QuoteDocument(
                survey, assessment, quote, firm, programVersion, locale, time, photos, fingerprint, done);
    }
}
