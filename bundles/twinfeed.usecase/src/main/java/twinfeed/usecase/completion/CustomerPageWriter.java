// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import twinfeed.diagnosis.completion.CompletionReading;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.job.Completion;
import twinfeed.model.survey.WaterFeed;

/** The page that stays with the customer: what was done, settings, care, guarantee, when to call. */
public final class CustomerPageWriter {
    /** From here on scale is a matter: mg/L as calcium carbonate, the "hard" of the Drinking Water Inspectorate's bands. */
    private static final double HARD = 0.2;

    private final CompletionSheet sheet;
    private final PageParts parts;

    /**
     * Of finished work.
     *
     * @param sheet the readings, judged
     * @param locale language of the page, that of the sheet's texts
     */
    public CustomerPageWriter(CompletionSheet sheet, Locale locale) {
        this.sheet = sheet;
        this.parts = new PageParts(locale);
    }

    /**
     * The page.
     *
     * @param reference what the job is called
     * @param firm who did the work
     * @param programVersion version of the program
     * @param day the day on which it is printed, where the completion names none
     */
    public JobSheet write(String reference, Firm firm, String programVersion, LocalDate day) {
        Completion done = sheet.completion();
        LocalDate on = done.getDoneOn() == null ? day : done.getDoneOn();
        parts.sentences("customer.safety", Tone.CAUTION, safety());
        parts.sentences("customer.done", Tone.PLAIN, work());
        parts.sentences("customer.settings", Tone.PLAIN, settings());
        parts.sentences("customer.care", Tone.PLAIN, care());
        parts.sentences("customer.guarantee", Tone.PLAIN, guarantee(on));
        parts.sentences("customer.call", Tone.NEXT, call(firm));
        parts.sentences("customer.papers", Tone.SMALL, List.of(parts.get("customer.papers.text")));
        return parts.page(
                parts.get("customer.title"),
                reference,
                parts.facts(
                        sheet.house(),
                        parts.fact("fact.unit", PageTexts.heater(sheet.heater(), parts)),
                        parts.fact("fact.day", parts.day(on))),
                new Said(
                        parts.get("customer.state"),
                        parts.get("customer.state." + sheet.state(), Map.of("day", parts.day(on)))),
                List.of(parts.get("field.handed"), parts.get("field.received")),
                firm,
                programVersion,
                on);
    }

    private List<String> safety() {
        List<String> all = new ArrayList<>();
        all.add(parts.get("customer.safety.scald"));
        if (sheet.house().getCustomer() != null
                && Boolean.TRUE.equals(sheet.house().getCustomer().getVulnerable())) {
            all.add(parts.get("customer.safety.vulnerable"));
        }
        all.add(parts.get("customer.safety.cover"));
        return all;
    }

    private List<String> work() {
        String work = sheet.completion().getWork();
        List<String> said = work == null || work.isBlank() ? List.of() : List.of(work.strip());
        return parts.work(sheet, said, sheet.customerWorks());
    }

    private List<String> settings() {
        List<String> all = new ArrayList<>();
        String settings = sheet.completion().getSettings();
        if (settings != null && !settings.isBlank()) {
            all.add(settings.strip());
        }
        for (CompletionReading each : sheet.readings()) {
            if (each.key().equals("outlet") && each.entered()) {
                all.add(parts.get("customer.settings.outlet", Map.of("outlet", each.value())));
            }
        }
        all.add(parts.get("customer.settings.seasons"));
        return all;
    }

    private List<String> care() {
        WaterFeed water = sheet.house().getWater();
        boolean hard = water != null
                && water.getHardness() != null
                && water.getHardness().si() >= HARD;
        List<String> all = new ArrayList<>();
        all.add(parts.get(hard ? "customer.care.hard" : "customer.care.soft"));
        all.add(parts.get("customer.care.hose"));
        all.add(parts.get("customer.care.residual"));
        return all;
    }

    private List<String> guarantee(LocalDate on) {
        List<String> all = new ArrayList<>();
        Heater heater = sheet.heater();
        Integer years = heater.getGuaranteeYears();
        if (sheet.fitted() && years != null && years > 0) {
            all.add(parts.get(
                    "customer.guarantee.heater", Map.of("years", years, "until", parts.day(on.plusYears(years)))));
        }
        all.add(parts.get("customer.guarantee.work"));
        return all;
    }

    private List<String> call(Firm firm) {
        List<String> all = new ArrayList<>();
        all.add(parts.get("customer.call.off"));
        all.add(parts.get("customer.call.when"));
        if (!firm.contact().isEmpty()) {
            all.add(parts.get("customer.call.contact", Map.of("contact", firm.contact())));
        }
        return all;
    }
}
