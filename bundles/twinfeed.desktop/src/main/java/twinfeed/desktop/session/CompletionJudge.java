// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.List;
import java.util.Objects;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.model.job.Completion;
import twinfeed.model.job.JobFactory;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.completion.CompletionService;
import twinfeed.usecase.completion.FinishedHouse;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;
import twinfeed.usecase.completion.UnsafeNotices;

/**
 * Judges the readings after the work. The work that was to be done is looked for anew only when survey, unit or prices have changed: a
 * reading that is typed must not wait for it. Belongs to one queue of work.
 */
final class CompletionJudge {
    private record Known(
            Survey survey,
            @Nullable String heaterId,
            @Nullable PriceBook book,
            FinishedHouse house,
            List<Reason> before) {}

    private final JobServices services;
    private @Nullable Known known;

    CompletionJudge(JobServices services) {
        this.services = services;
    }

    /**
     * Judges.
     *
     * @param opened a job that nobody else changes meanwhile
     * @throws RuntimeException if nothing can be judged; its message says why
     */
    CompletionResult judge(long revision, OpenedJob opened) {
        Known now = known(opened);
        @Nullable Completion entered = opened.job().getCompletion();
        CompletionSheet sheet = new CompletionService(services.service())
                .sheet(
                        now.house(),
                        entered == null ? JobFactory.eINSTANCE.createCompletion() : entered,
                        services.locale());
        return new CompletionResult(revision, sheet, entered == null ? now.before() : UnsafeNotices.reasons(sheet), "");
    }

    private synchronized Known known(OpenedJob opened) {
        Survey survey = opened.job().getSurvey();
        @Nullable Completion entered = opened.job().getCompletion();
        @Nullable String heaterId = entered == null ? null : entered.getHeaterId();
        JobServices.@Nullable Prices prices = services.prices(survey);
        @Nullable PriceBook book = prices == null ? null : prices.book();
        @Nullable Known last = known;
        if (last != null
                && last.book() == book
                && Objects.equals(last.heaterId(), heaterId)
                && EcoreUtil.equals(last.survey(), survey)) {
            return last;
        }
        OpenedJob untouched = new OpenedJob(opened.file(), EcoreUtil.copy(opened.job()), opened.catalogue(), List.of());
        FinishedHouse house = new CompletionService(services.service()).finished(untouched, book, services.locale());
        untouched.job().setCompletion(null);
        List<Reason> before = new UnsafeNotices(services.service()).reasons(untouched, book, services.locale());
        Known made = new Known(EcoreUtil.copy(survey), heaterId, book, house, before);
        known = made;
        return made;
    }
}
