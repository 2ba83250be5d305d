// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.faults;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.visit.FaultSheet;
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

/** Puts a fault-finding onto the sheet that a technician takes along, in the order in which it is worked through. */
public final class JobSheetWriter {
    private static final int MOST_CAUSES = 8;
    private static final double LEAST_CHANCE = 0.01;

    /** Nothing is printed as certain. */
    private static final double MOST_PRINTED = 0.99;

    private final FaultSheet sheet;
    private final Survey survey;
    private final DocumentTexts words;
    private final List<Section> sections = new ArrayList<>();

    /**
     * Of a fault-finding.
     *
     * @param sheet what was found, its texts in the language of the sheet
     * @param survey the survey of the job
     * @param locale that language
     */
    public JobSheetWriter(FaultSheet sheet, Survey survey, Locale locale) {
        this.sheet = sheet;
        this.survey = survey;
        this.words = new DocumentTexts(locale);
    }

    /**
     * The sheet.
     *
     * @param reference what the job is called
     * @param firm whose sheet it is
     * @param programVersion version of the program
     * @param day day of the visit and of its prices
     */
    public JobSheet write(String reference, Firm firm, String programVersion, LocalDate day) {
        sections.clear();
        sentences(
                "job.stop",
                Tone.CAUTION,
                sheet.isolationNotice().isEmpty() ? List.of() : List.of(sheet.isolationNotice()));
        sentences("job.cautions", Tone.CAUTION, sheet.cautions());
        next(sheet.next());
        isolation();
        causes();
        sentences("job.links", Tone.PLAIN, sheet.links());
        readings();
        answers();
        sentences("job.steps", Tone.PLAIN, sheet.steps());
        expected();
        RepairAdvice repair = sheet.repair();
        if (repair != null) {
            new RepairSection(repair, words).write().forEach(sections::add);
        }
        table("job.done", List.of(column("", Kind.BOX, 1)), List.of(List.of("")));
        sentences("job.notices", Tone.PLAIN, sheet.notices());
        sentences("job.source", Tone.SMALL, List.of(sources(repair)));
        return new JobSheet(
                words.get("job.title"),
                reference,
                facts(day),
                new Said(words.get("job.conclusion"), sheet.summary()),
                sections,
                List.of(words.get("job.field.by"), words.get("job.field.instruments"), words.get("job.field.date")),
                firm,
                programVersion,
                words.locale(),
                day.atStartOfDay().toInstant(ZoneOffset.UTC));
    }

    /** In one paragraph: a technician reads it once, if at all. */
    private String sources(@Nullable RepairAdvice repair) {
        List<String> all = new ArrayList<>(List.of(sheet.source()));
        if (repair != null) {
            all.addAll(repair.assumptions());
        }
        return String.join(" · ", all);
    }

    private List<Said> facts(LocalDate day) {
        Customer customer = survey.getCustomer();
        Site site = survey.getSite();
        String visit = new PrintFormat(words, null).day(day);
        return List.of(
                fact("job.customer", customer == null ? "" : place(customer.getName(), customer.getAddress())),
                fact("job.site", site == null ? "" : place(site.getName(), site.getAddress())),
                fact("job.unit", sheet.heater()),
                fact("job.day", visit),
                fact("job.surveyed", survey.getTakenBy()));
    }

    private Said fact(String key, @Nullable String text) {
        return new Said(words.get(key), text == null || text.isBlank() ? words.get("job.nobody") : text);
    }

    private static String place(@Nullable String name, @Nullable String address) {
        String lines = Titles.lines(address);
        return name == null ? lines : lines.isEmpty() ? name : name + "\n" + lines;
    }

    private void sentences(String key, Tone tone, List<String> sentences) {
        if (!sentences.isEmpty()) {
            sections.add(new Section(words.get(key), tone, sentences, null));
        }
    }

    private void table(String key, List<Column> columns, List<List<String>> rows, String... before) {
        if (!rows.isEmpty()) {
            sections.add(new Section(words.get(key), Tone.PLAIN, List.of(before), new Table(columns, rows)));
        }
    }

    private Column column(String key, Kind kind, int share) {
        return new Column(key.isEmpty() ? "" : words.get(key), kind, share);
    }

    private void next(FaultSheet.@Nullable Next next) {
        List<String> sentences = new ArrayList<>();
        if (next == null) {
            sentences.add(words.get(withoutStep()));
        } else {
            String minutes = String.valueOf(Math.round(next.minutes()));
            sentences.add(next.question());
            sentences.add(words.get("job.next.where", Map.of("how", next.how(), "minutes", minutes)));
            if (!next.procedure().isEmpty()) {
                sentences.add(words.get("job.next.first"));
            }
        }
        sections.add(new Section(words.get("job.next"), Tone.NEXT, sentences, null));
    }

    private String withoutStep() {
        return switch (sheet.conclusion()) {
            case "part" -> "job.next.part";
            case "supply" -> "job.next.supply";
            case "nothing-reported" -> "job.next.nothing";
            default -> "job.next.none";
        };
    }

    /** All of it, ticked or not: whoever takes the sheet to the unit may have to open it. */
    private void isolation() {
        table(
                "job.isolation",
                List.of(
                        column("", Kind.TICK, 5),
                        column("job.isolation.step", Kind.TEXT, 53),
                        column("job.isolation.by", Kind.BOX, 24),
                        column("job.isolation.at", Kind.BOX, 18)),
                sheet.isolation().stream()
                        .map(tick -> List.of(tick.done() ? JobSheet.DONE : "", tick.title(), tick.by(), tick.at()))
                        .toList());
    }

    private void causes() {
        if (sheet.conclusion().equals("nothing-reported")) {
            return;
        }
        table(
                "job.causes",
                List.of(
                        column("job.causes.chance", Kind.FIGURE, 9),
                        column("job.causes.cause", Kind.TEXT, 27),
                        column("job.causes.reason", Kind.TEXT, 54),
                        column("job.causes.found", Kind.TICK, 10)),
                sheet.causes().stream()
                        .filter(cause -> cause.chance() >= LEAST_CHANCE)
                        .limit(MOST_CAUSES)
                        .map(cause -> List.of(percent(cause.chance()), cause.title(), cause.reason(), ""))
                        .toList(),
                words.get("job.causes.note"));
    }

    private String percent(double chance) {
        return Math.round(100 * Math.min(chance, MOST_PRINTED)) + words.get("number.percent");
    }

    private void readings() {
        table(
                "job.readings",
                List.of(
                        column("job.readings.title", Kind.TEXT, 32),
                        column("job.readings.value", Kind.TEXT, 20),
                        column("job.readings.expected", Kind.TEXT, 22),
                        column("job.readings.sound", Kind.SIGN, 11),
                        column("job.readings.again", Kind.BOX, 15)),
                sheet.readings().stream().map(this::reading).toList());
    }

    private List<String> reading(FaultSheet.Reading reading) {
        Boolean sound = reading.sound();
        String key = sound == null ? "unknown" : sound ? "yes" : "no";
        return List.of(reading.title(), reading.value(), reading.expected(), words.get("job.sound." + key), "");
    }

    private void answers() {
        table(
                "job.answers",
                List.of(
                        column("job.answers.question", Kind.TEXT, 44),
                        column("job.answers.answer", Kind.SIGN, 10),
                        column("job.answers.origin", Kind.TEXT, 16),
                        column("job.answers.note", Kind.TEXT, 30)),
                sheet.answers().stream().map(this::answer).toList());
    }

    private List<String> answer(FaultSheet.Answer answer) {
        return List.of(
                answer.question(),
                words.get("job.answer." + answer.answer()),
                words.get("job.origin." + answer.origin()),
                answer.note());
    }

    private void expected() {
        table(
                "job.expected",
                List.of(
                        column("job.expected.title", Kind.TEXT, 30),
                        column("job.expected.value", Kind.TEXT, 48),
                        column("job.expected.measured", Kind.BOX, 22)),
                sheet.expected().stream()
                        .map(each -> List.of(each.title(), each.value(), ""))
                        .toList());
    }
}
