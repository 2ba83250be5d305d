// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.interchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Firm;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.quotes.QuoteLife;
import twinfeed.units.text.Texts;

/**
 * The visit of an accepted quote as an entry of a calendar by RFC 5545. Its time is the time on the wall at the site, whatever zone a calendar is
 * in. The entry is named by the number of the quote, so that a later file for the same quote moves the visit and adds none.
 */
public final class VisitCalendar {
    private static final Texts TEXTS = new Texts(VisitCalendar.class, "Interchange");

    /** A line has at most 75 octets, its end not counted (RFC 5545, 3.1). */
    private static final int LONGEST = 75;

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);

    private final Quote quote;
    private final Survey survey;
    private final Firm firm;
    private final Locale locale;

    /** Of an accepted quote. */
    public VisitCalendar(Quote quote, Survey survey, Firm firm, Locale locale) {
        this.quote = quote;
        this.survey = survey;
        this.firm = firm;
        this.locale = locale;
    }

    /**
     * Writes it; the stream is left open.
     *
     * @param begin when the visit begins, by the clock at the site
     * @param length how long it is thought to take; more than 0
     * @param sequence how many times the entry was revised before, 0 or more; of two entries a calendar keeps the one with the higher number
     * @param revisedOn the day on which the visit was agreed
     * @param program version of the program
     */
    public void write(
            LocalDateTime begin, Duration length, int sequence, LocalDate revisedOn, String program, OutputStream out)
            throws IOException {
        StringBuilder text = new StringBuilder();
        line(text, "BEGIN", "VCALENDAR");
        line(text, "VERSION", "2.0");
        line(text, "PRODID", escaped("-//Twinfeed//Twinfeed " + program + "//" + (isGerman() ? "DE" : "EN")));
        line(text, "BEGIN", "VEVENT");
        line(text, "UID", escaped(QuoteLife.name(quote).replaceFirst("-r\\d+$", "") + "-visit@" + host()));
        // The same input gives the same file: the stamp is that of the day, not the clock's.
        line(text, "DTSTAMP", TIME.format(revisedOn.atStartOfDay()) + "Z");
        line(text, "SEQUENCE", String.valueOf(sequence));
        line(text, "DTSTART", TIME.format(begin));
        line(text, "DTEND", TIME.format(begin.plus(length)));
        line(text, "SUMMARY", escaped(summary()));
        Site site = survey.getSite();
        if (site != null && site.getAddress() != null) {
            line(text, "LOCATION", escaped(site.getAddress().replaceAll("\\s*;\\s*", ", ")));
        }
        line(text, "DESCRIPTION", escaped(description()));
        line(text, "STATUS", "CONFIRMED");
        line(text, "END", "VEVENT");
        line(text, "END", "VCALENDAR");
        out.write(text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private boolean isGerman() {
        return locale.getLanguage().equals("de");
    }

    /** A name for the firm that sets its entries apart from those of others. */
    private String host() {
        String plain = firm.name()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "twinfeed" : plain;
    }

    private String summary() {
        String site = survey.getSite() == null ? null : survey.getSite().getName();
        return Stream.of(text("visit"), QuoteLife.name(quote), site)
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
    }

    private String description() {
        String customer =
                survey.getCustomer() == null ? null : survey.getCustomer().getName();
        String phone =
                survey.getCustomer() == null ? null : survey.getCustomer().getPhone();
        String option = quote.getOptions().stream()
                .filter(each -> Objects.equals(each.getName(), quote.getChosen()))
                .map(QuoteOption::getTitle)
                .findFirst()
                .orElse(null);
        return Stream.of(
                        labelled("customer", customer),
                        labelled("phone", phone),
                        labelled("option", option),
                        text("caution"))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("\n"));
    }

    private String labelled(String key, @Nullable String value) {
        return value == null || value.isBlank() ? "" : text(key) + ": " + value;
    }

    private String text(String key) {
        return TEXTS.get(locale, key);
    }

    /** A text value (RFC 5545, 3.3.11); other control characters cannot be written. */
    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replaceAll("\r\n|\r|\n", "\\\\n")
                .replaceAll("[\\p{Cntrl}&&[^\t]]", "");
    }

    /** A line, folded where it is too long, never within a letter. */
    private static void line(StringBuilder text, String name, String value) {
        int octets = 0;
        String whole = name + ":" + value;
        for (int at = 0; at < whole.length(); ) {
            int letter = whole.codePointAt(at);
            int size = new String(Character.toChars(letter)).getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LONGEST) {
                text.append("\r\n ");
                octets = 1;
            }
            text.appendCodePoint(letter);
            octets += size;
            at += Character.charCount(letter);
        }
        text.append("\r\n");
    }
}
