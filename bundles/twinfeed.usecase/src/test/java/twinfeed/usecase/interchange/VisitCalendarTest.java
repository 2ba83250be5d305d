// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.document.Firm;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** The visit of an accepted quote, by RFC 5545. */
final class VisitCalendarTest {
    private final Quote quote = QuoteFactory.eINSTANCE.createQuote();
    private int sequence = 1;
    private LocalDate revisedOn = LocalDate.of(2026, 11, 25);
    private final Survey survey = SurveyFactory.eINSTANCE.createSurvey();

    VisitCalendarTest() {
        quote.setNumber("2026-0042");
        quote.setRevision(2);
        quote.setDate(LocalDate.of(2026, 11, 25));
    }

    private String written(String firm, Locale locale) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new VisitCalendar(quote, survey, Firm.of(firm, "", ""), locale)
                .write(
                        LocalDateTime.of(2026, 12, 31, 22, 30),
                        Duration.ofMinutes(210),
                        sequence,
                        revisedOn,
                        "1.2",
                        bytes);
        return bytes.toString(StandardCharsets.UTF_8);
    }

    /** The lines without their folding (RFC 5545, 3.1). */
    private List<String> lines(String firm, Locale locale) throws Exception {
        return List.of(written(firm, locale).replace("\r\n ", "").split("\r\n"));
    }

    private String value(String name, String firm, Locale locale) throws Exception {
        return lines(firm, locale).stream()
                .filter(line -> line.startsWith(name + ":"))
                .map(line -> line.substring(name.length() + 1))
                .findFirst()
                .orElse("none");
    }

    private String value(String name) throws Exception {
        return value(name, "Netherquill", Locale.UK);
    }

    @Test
    void anEntryOfWhichOnlyQuoteAndVisitAreKnown() throws Exception {
        assertEquals(
                List.of(
                        "BEGIN:VCALENDAR",
                        "VERSION:2.0",
                        "PRODID:-//Twinfeed//Twinfeed 1.2//EN",
                        "BEGIN:VEVENT",
                        "UID:2026-0042-visit@netherquill",
                        "DTSTAMP:20261125T000000Z",
                        "SEQUENCE:1",
                        "DTSTART:20261231T223000",
                        "DTEND:20270101T020000",
                        "SUMMARY:Shower: visit for the accepted quote\\, 2026-0042-r2",
                        "DESCRIPTION:Electricity and hot water can kill: safe isolation first\\, work by competent"
                                + " persons\\, licensed where the law requires it.",
                        "STATUS:CONFIRMED",
                        "END:VEVENT",
                        "END:VCALENDAR"),
                lines("Netherquill", Locale.UK));
    }

    @Test
    void aLaterRevisionMovesTheSameEntry() throws Exception {
        String before = value("UID");
        quote.setRevision(12);
        sequence = 11;
        revisedOn = LocalDate.of(2026, 12, 1);
        assertEquals(before, value("UID"));
        assertEquals("11", value("SEQUENCE"));
        assertEquals("20261201T000000Z", value("DTSTAMP"));
    }

    @Test
    void firmsAreToldApart() throws Exception {
        assertEquals("2026-0042-visit@nether-quill-sons", value("UID", "(Nether & Quill, Sons)", Locale.UK));
        assertEquals("2026-0042-visit@twinfeed", value("UID", "", Locale.UK));
    }

    @Test
    void itSaysWhoAndWhereAndWhat() throws Exception {
        Customer customer = SurveyFactory.eINSTANCE.createCustomer();
        customer.setName("A. Tenant; flat 2");
        customer.setPhone("01632 960002");
        survey.setCustomer(customer);
        Site site = SurveyFactory.eINSTANCE.createSite();
        site.setName("Mill Row");
        site.setAddress("3 Mill Row ;Westermere\nWM1 9XX\\2\u0007");
        survey.setSite(site);
        for (String name : List.of("h85", "h95")) {
            QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
            option.setName(name);
            option.setTitle("Heater " + name);
            quote.getOptions().add(option);
        }
        quote.setChosen("h95");
        assertEquals("3 Mill Row\\, Westermere\\nWM1 9XX\\\\2", value("LOCATION"));
        assertTrue(value("SUMMARY").endsWith("2026-0042-r2\\, Mill Row"), value("SUMMARY"));
        assertTrue(
                value("DESCRIPTION")
                        .startsWith(
                                "Customer: A. Tenant\\; flat 2\\nTelephone: 01632 960002\\nAccepted: Heater h95\\n"),
                value("DESCRIPTION"));
        customer.setPhone(" ");
        site.setAddress(null);
        assertFalse(value("DESCRIPTION").contains("Telephone"), value("DESCRIPTION"));
        assertEquals("none", value("LOCATION"));
    }

    @Test
    void itIsInTheLanguageOfTheFirm() throws Exception {
        assertEquals("-//Twinfeed//Twinfeed 1.2//DE", value("PRODID", "Netherquill", Locale.GERMANY));
        assertTrue(value("SUMMARY", "Netherquill", Locale.GERMANY).startsWith("Dusche"));
    }

    /** RFC 5545, 3.1: no line is longer than 75 octets, and none is broken within a letter. */
    @Test
    void longLinesAreFoldedBetweenLetters() throws Exception {
        Site site = SurveyFactory.eINSTANCE.createSite();
        survey.setSite(site);
        for (int shift = 0; shift < 4; shift++) {
            String address = "x".repeat(shift) + "\u00fc\u20ac\ud83d\udebf".repeat(40);
            site.setAddress(address);
            String text = written("Netherquill", Locale.UK);
            int longest = 0;
            for (String line : text.split("\r\n")) {
                longest = Math.max(longest, line.getBytes(StandardCharsets.UTF_8).length);
            }
            assertTrue(longest <= 75 && longest > 71, "octets: " + longest);
            assertFalse(text.contains("?"), text);
            assertEquals(address, value("LOCATION"));
        }
        site.setAddress("y".repeat(75 - "LOCATION:".length()));
        assertFalse(written("Netherquill", Locale.UK).contains("y\r\n "), "75 octets are one line");
        site.setAddress("y".repeat(76 - "LOCATION:".length()));
        assertTrue(written("Netherquill", Locale.UK).contains("y\r\n y\r\n"), "76 octets are two");
        site.setAddress("y".repeat(150 - "LOCATION:".length()));
        assertTrue(
                written("Netherquill", Locale.UK).contains("\r\n " + "y".repeat(74) + "\r\n y\r\n"),
                "the space counts");
    }
}
