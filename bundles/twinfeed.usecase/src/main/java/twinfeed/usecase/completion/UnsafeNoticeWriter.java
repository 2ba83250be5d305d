// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.model.survey.Survey;

/** The notice of an unsafe unit, to be signed on site by who found it and who was told. */
public final class UnsafeNoticeWriter {
    /**
     * Why a unit is unsafe.
     *
     * @param key key of the finding or reading
     * @param title what was looked at
     * @param text what was found
     */
    public record Reason(String key, String title, String text) {}

    private final Survey survey;
    private final List<Reason> reasons;
    private final PageParts parts;

    /**
     * For a unit.
     *
     * @param survey the house, for customer and dwelling
     * @param reasons why it is unsafe; at least one
     * @param locale language of the notice, that of the reasons' texts
     */
    public UnsafeNoticeWriter(Survey survey, List<Reason> reasons, Locale locale) {
        this.survey = survey;
        this.reasons = List.copyOf(reasons);
        this.parts = new PageParts(locale);
    }

    /**
     * The notice.
     *
     * @param reference what the job is called
     * @param heater what the unit is called
     * @param firm who gives it
     * @param programVersion version of the program
     * @param day its day
     */
    public JobSheet write(String reference, String heater, Firm firm, String programVersion, LocalDate day) {
        parts.table(
                "notice.found",
                List.of(),
                List.of(
                        parts.column("notice.found.what", Kind.TEXT, 32),
                        parts.column("notice.found.text", Kind.TEXT, 68)),
                reasons.stream().map(each -> List.of(each.title(), each.text())).toList());
        parts.sentences(
                "notice.means",
                Tone.CAUTION,
                List.of(parts.get("notice.means.use"), parts.get("notice.means.again"), parts.get("notice.means.law")));
        parts.table(
                "notice.done",
                List.of(),
                List.of(parts.column("", Kind.TICK, 6), parts.column("notice.done.what", Kind.TEXT, 94)),
                java.util.stream.Stream.of("off", "label", "told", "left", "refused")
                        .map(key -> List.of("", parts.get("notice.done." + key)))
                        .toList());
        return parts.page(
                parts.get("notice.title"),
                reference,
                parts.facts(survey, parts.fact("fact.unit", heater), parts.fact("fact.day", parts.day(day))),
                new Said(parts.get("notice.state"), parts.get("notice.state.text", Map.of("heater", heater))),
                List.of(parts.get("field.found"), parts.get("field.told"), parts.get("field.time")),
                firm,
                programVersion,
                day);
    }
}
