// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.DocumentTexts;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Column;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Section;
import twinfeed.document.JobSheet.Table;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.PrintFormat;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.document.Titles;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.units.text.Texts;

/** What the pages after the work have in common: texts, facts at the head, sections one after the other. */
final class PageParts {
    static final Texts TEXTS = new Texts(PageParts.class, "Completion");

    private final Locale locale;
    private final List<Section> sections = new ArrayList<>();

    PageParts(Locale locale) {
        this.locale = locale;
    }

    String get(String key) {
        return TEXTS.get(locale, key);
    }

    /** A message, or null if there is none. */
    @Nullable
    String find(String key) {
        return TEXTS.find(locale, key);
    }

    /**
     * What was done, and under one heading what was to be done: nobody has said that each was, so whoever signs strikes out what was not.
     *
     * @param said what somebody wrote of it
     * @param planned the works that were to be done, in the reader's words
     */
    List<String> work(CompletionSheet sheet, List<String> said, List<String> planned) {
        List<String> all = new ArrayList<>(said);
        if (sheet.fitted()) {
            all.add(get("work.fitted", Map.of("heater", PageTexts.heater(sheet.heater(), this))));
        }
        if (!planned.isEmpty()) {
            all.add(get("work.planned"));
            planned.forEach(each -> all.add("• " + each));
        }
        return all.isEmpty() ? List.of(get("work.none")) : all;
    }

    String get(String key, Map<String, ?> values) {
        return TEXTS.format(locale, key, values);
    }

    Locale locale() {
        return locale;
    }

    String day(LocalDate day) {
        return new PrintFormat(new DocumentTexts(locale), null).day(day);
    }

    Said fact(String key, @Nullable String text) {
        return new Said(get(key), text == null || text.isBlank() ? get("fact.unknown") : text);
    }

    /** Customer and dwelling, then the rest. */
    List<Said> facts(Survey survey, Said... more) {
        Customer customer = survey.getCustomer();
        Site site = survey.getSite();
        List<Said> all = new ArrayList<>();
        all.add(fact("fact.customer", customer == null ? "" : place(customer.getName(), customer.getAddress())));
        all.add(fact("fact.site", site == null ? "" : place(site.getName(), site.getAddress())));
        all.addAll(List.of(more));
        return all;
    }

    private static String place(@Nullable String name, @Nullable String address) {
        String lines = Titles.lines(address);
        return name == null ? lines : lines.isEmpty() ? name : name + "\n" + lines;
    }

    void sentences(String key, Tone tone, List<String> sentences) {
        if (!sentences.isEmpty()) {
            sections.add(new Section(get(key), tone, sentences, null));
        }
    }

    void table(String key, List<String> before, List<Column> columns, List<List<String>> rows) {
        if (!rows.isEmpty()) {
            sections.add(new Section(get(key), Tone.PLAIN, before, new Table(columns, rows)));
        }
    }

    Column column(String key, Kind kind, int share) {
        return new Column(key.isEmpty() ? "" : get(key), kind, share);
    }

    JobSheet page(
            String title,
            String reference,
            List<Said> facts,
            Said conclusion,
            List<String> fields,
            Firm firm,
            String programVersion,
            LocalDate day) {
        return new JobSheet(
                title,
                reference,
                facts,
                conclusion,
                sections,
                fields,
                firm,
                programVersion,
                locale,
                day.atStartOfDay().toInstant(ZoneOffset.UTC));
    }
}
