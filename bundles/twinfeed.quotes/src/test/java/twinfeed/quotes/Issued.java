// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.time.LocalDate;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.DemoBook;
import twinfeed.pricing.QuoteBuilder;
import twinfeed.pricing.QuoteRequest;
import twinfeed.pricing.Samples;

/** A draft with what it rests on. */
record Issued(Quote draft, Survey survey, Assessment assessment, PriceBook book) {
    static Issued on(LocalDate day) {
        return of(Samples.survey(Confidence.CONCEALED), Samples.assessment(), DemoBook.read(), day);
    }

    static Issued of(Survey survey, Assessment assessment, PriceBook book, LocalDate day) {
        return new Issued(QuoteBuilder.draft(QuoteRequest.of(survey, assessment, book, day)), survey, assessment, book);
    }

    static Issued today() {
        return on(DemoBook.DAY);
    }

    OpenedQuote in(QuoteFolder folder) throws java.io.IOException {
        return folder.issue(new QuoteDraft(draft, survey, assessment, book, "0.1.0", java.util.Map.of()));
    }

    OpenedQuote revising(QuoteFolder folder, java.nio.file.Path previous) throws java.io.IOException {
        return folder.revise(previous, new QuoteDraft(draft, survey, assessment, book, "0.1.0", java.util.Map.of()));
    }
}
