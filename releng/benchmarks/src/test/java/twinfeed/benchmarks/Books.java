// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.document.Firm;
import twinfeed.document.QuoteDocument;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobFactory;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.QuoteBuilder;
import twinfeed.pricing.QuoteRequest;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.workbook.QuoteWorkbook;

/** Workbooks of quotes as the program writes them, whatever the verdict. */
final class Books {
    static final Path DEMO = demo();
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final TwinfeedService service = TwinfeedService.onClassPath();
    private final PriceBook prices = service.book(DEMO.resolve("prices.csv"));

    private static Path demo() {
        Path folder = Path.of("").toAbsolutePath();
        while (!java.nio.file.Files.isDirectory(folder.resolve("demo"))) {
            folder = folder.getParent();
        }
        return folder.resolve("demo");
    }

    /** A job of the demonstration. */
    OpenedJob opened(String name) {
        return service.open(DEMO.resolve(name), null);
    }

    /** The book of a job; its heaters are those that the program would offer, or all of them if it would offer none. */
    byte[] of(OpenedJob job) throws IOException {
        return of(job, Locale.ROOT);
    }

    /** The same in a language. */
    byte[] of(OpenedJob job, Locale locale) throws IOException {
        return written(service.judge(job, prices, null, locale), List.of(), locale);
    }

    /** A random house with its heater, which is offered even if it does not suit. */
    byte[] random(long seed) throws IOException {
        RandomHouse house = RandomHouse.of(seed);
        Heater heater = EcoreUtil.copy(house.candidate().heater());
        // An item of the price book, so that it has a price.
        heater.setId("h95");
        Survey survey = EcoreUtil.copy(house.survey());
        Job job = JobFactory.eINSTANCE.createJob();
        job.setSurvey(survey);
        survey.getCandidates().add(heater.getId());
        var catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        catalogue.getHeaters().add(heater);
        OpenedJob opened = new OpenedJob(Path.of("random-" + seed + ".job"), job, catalogue, List.of());
        return written(judged(opened), List.of(heater.getId()), Locale.ROOT);
    }

    AssessedJob judged(OpenedJob opened) {
        return service.judge(opened, prices, null, Locale.ROOT);
    }

    private byte[] written(AssessedJob judged, List<String> chosen, Locale locale) throws IOException {
        QuoteRequest request = QuoteRequest.of(judged.opened().job().getSurvey(), judged.record(), prices, DAY);
        Quote quote = QuoteBuilder.draft(chosen.isEmpty() ? request : request.choosing(chosen));
        QuoteDocument document = QuoteDocument.of(
                judged.opened().job().getSurvey(),
                judged.record(),
                quote,
                Firm.of("", "", ""),
                TwinfeedService.VERSION,
                locale);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        QuoteWorkbook.write(document, out);
        return out.toByteArray();
    }
}
