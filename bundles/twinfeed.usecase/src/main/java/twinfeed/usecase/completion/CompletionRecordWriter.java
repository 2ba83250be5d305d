// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.diagnosis.completion.CompletionReading;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.model.job.Completion;

/** The record of finished work: the data that a minor-works or installation certificate asks for, which is not that certificate. */
public final class CompletionRecordWriter {
    private final CompletionSheet sheet;
    private final RuleSet rules;
    private final PageParts parts;

    /**
     * Of finished work.
     *
     * @param sheet the readings, judged
     * @param rules the rule set of the job, whose edition is named
     * @param locale language of the record, that of the sheet's texts
     */
    public CompletionRecordWriter(CompletionSheet sheet, RuleSet rules, Locale locale) {
        this.sheet = sheet;
        this.rules = rules;
        this.parts = new PageParts(locale);
    }

    /**
     * The record.
     *
     * @param reference what the job is called
     * @param firm whose record it is
     * @param programVersion version of the program
     * @param day the day on which it is printed, where the completion names none
     */
    public JobSheet write(String reference, Firm firm, String programVersion, LocalDate day) {
        Completion done = sheet.completion();
        LocalDate on = done.getDoneOn() == null ? day : done.getDoneOn();
        parts.sentences("record.what", Tone.CAUTION, List.of(parts.get("record.data"), parts.get("record.local")));
        parts.sentences("record.open", Tone.NEXT, open());
        parts.sentences("record.work", Tone.PLAIN, work());
        readings();
        parts.table(
                "record.installation",
                List.of(),
                List.of(parts.column("record.item", Kind.TEXT, 40), parts.column("record.value", Kind.BOX, 60)),
                new InstallationData(parts, rules).rows(sheet.house()));
        parts.sentences("record.departures", Tone.PLAIN, List.of(text(done.getDepartures(), "record.departures.none")));
        parts.sentences("record.notes", Tone.PLAIN, lines(done.getNotes()));
        parts.sentences("record.source", Tone.SMALL, List.of(rules.title() + ": " + rules.caution()));
        return parts.page(
                parts.get("record.title"),
                reference,
                parts.facts(
                        sheet.house(),
                        parts.fact("fact.unit", PageTexts.heater(sheet.heater(), parts)),
                        parts.fact("fact.day", parts.day(on)),
                        parts.fact("fact.tester", done.getBy())),
                new Said(parts.get("record.state"), parts.get("record.state." + sheet.state())),
                List.of(
                        parts.get("field.tester"),
                        done.getInstruments() == null
                                ? parts.get("field.instruments")
                                : parts.get("field.instruments.known", Map.of("text", done.getInstruments())),
                        parts.get("field.signature")),
                firm,
                programVersion,
                on);
    }

    private List<String> open() {
        List<String> all = new ArrayList<>();
        if (!sheet.wrong().isEmpty()) {
            all.add(parts.get("record.open.wrong", Map.of("readings", titles(sheet.wrong()))));
        }
        if (!sheet.open().isEmpty()) {
            all.add(parts.get("record.open.missing", Map.of("readings", titles(sheet.open()))));
        }
        return all;
    }

    private static String titles(List<CompletionReading> readings) {
        return readings.stream().map(CompletionReading::title).collect(Collectors.joining("; "));
    }

    private List<String> work() {
        return parts.work(sheet, lines(sheet.completion().getWork()), sheet.works());
    }

    private void readings() {
        parts.table(
                "record.readings",
                List.of(),
                List.of(
                        parts.column("record.readings.title", Kind.TEXT, 40),
                        parts.column("record.readings.expected", Kind.TEXT, 24),
                        parts.column("record.readings.value", Kind.BOX, 24),
                        parts.column("record.readings.sound", Kind.SIGN, 12)),
                sheet.readings().stream()
                        .map(each ->
                                List.of(each.title(), each.expected(), each.value(), parts.get("sound." + sound(each))))
                        .toList());
    }

    private static String sound(CompletionReading reading) {
        if (reading.sound() != null) {
            return reading.wrong() ? "no" : "yes";
        }
        return reading.needed() ? "open" : "unneeded";
    }

    private String text(@Nullable String text, String otherwise) {
        return text == null || text.isBlank() ? parts.get(otherwise) : text;
    }

    private static List<String> lines(@Nullable String text) {
        return text == null || text.isBlank() ? List.of() : List.of(text.strip());
    }
}
