// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.DocumentTexts;
import twinfeed.document.JobSheet;
import twinfeed.document.ReportedDangers;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.check.DangerSigns;
import twinfeed.model.check.FailedSafety;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.TranslatedBook;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.BookCosts;
import twinfeed.usecase.Candidates;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.JobSheetFiles;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;

/** Whether the unit that is there is unsafe, and the notice that says so. */
public final class UnsafeNotices {
    private final TwinfeedService service;

    /** With the calculators of this service. */
    public UnsafeNotices(TwinfeedService service) {
        this.service = service;
    }

    /**
     * Why the unit is unsafe: where readings after the work were entered, those that fail on safety and the checks of safety that the
     * house as it was finished fails; else the failed checks of safety of the unit that is there, and what was reported or seen at it that
     * can be a danger. Empty if there is nothing of the kind.
     */
    public List<Reason> reasons(OpenedJob opened, @Nullable PriceBook book, Locale locale) {
        if (opened.job().getCompletion() != null) {
            return reasons(new CompletionService(service).sheet(opened, book, locale));
        }
        AssessedJob judged =
                service.judgeCandidates(opened, new Candidates(opened).present(), BookCosts.of(book, opened), locale);
        return Stream.concat(
                        judged.record().getOptions().stream()
                                .flatMap(option -> FailedSafety.of(option).stream())
                                .map(finding -> new Reason(finding.getKey(), finding.getTitle(), finding.getText())),
                        reported(opened.job().getSurvey(), locale))
                .toList();
    }

    /** The quote says these among the dangers and names this notice, so they have to stand in it. */
    private static Stream<Reason> reported(Survey survey, Locale locale) {
        String title = new PageParts(locale).get("notice.reported");
        DocumentTexts words = new DocumentTexts(locale);
        return survey.getSymptoms().stream()
                .filter(DangerSigns::is)
                .map(sign -> new Reason(sign.getKey(), title, ReportedDangers.sentence(sign, words)))
                .distinct();
    }

    /** Why the unit is unsafe, by what was measured after the work and the checks of the house as it was finished; empty if nothing says so. */
    public static List<Reason> reasons(CompletionSheet sheet) {
        return sheet.unsafe().stream()
                .map(each -> new Reason(
                        each.key(),
                        each.title(),
                        each.expected().isEmpty() ? each.value() : each.value() + " (" + each.expected() + ")"))
                .toList();
    }

    /**
     * Writes the notice of an unsafe unit.
     *
     * @param reasons why it is unsafe; at least one
     * @param book price book that has the unit's name in the language; null for the catalogue's name
     * @throws twinfeed.model.io.InputException if a file cannot be written
     */
    public static void write(
            OpenedJob opened,
            List<Reason> reasons,
            @Nullable PriceBook book,
            FirmFile firm,
            LocalDate day,
            Locale locale,
            OutputPaths out) {
        Heater heater = CompletionService.fitted(opened).heater();
        String title = heater.getTitle() == null ? String.valueOf(heater.getId()) : heater.getTitle();
        String name = book == null ? title : TranslatedBook.text(book, locale, title);
        JobSheet notice = new UnsafeNoticeWriter(opened.job().getSurvey(), reasons, locale)
                .write(opened.name(), name, firm.firm(), TwinfeedService.VERSION, day);
        new JobSheetFiles().add(notice, out).write();
    }
}
