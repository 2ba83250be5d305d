// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceLoader;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import twinfeed.calculator.Assessed;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.OptionResult;
import twinfeed.calculator.RemedySearch;
import twinfeed.calculator.Runner;
import twinfeed.calculator.WorkCost;
import twinfeed.calculator.WorkPlan;
import twinfeed.engineering.MainsTemperature;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;

/** The use cases, the only service that the faces inject. Stateless but for its calculators; thread-safe. */
@Component(service = Office.class)
public final class Office {
    /** Version of the program, as outputs name it. */
    public static final String VERSION = "0.1.0";

    private final Runner runner;

    /** With the calculators that the framework found. */
    @Activate
    public Office(@Reference(policyOption = ReferencePolicyOption.GREEDY) List<Calculator> calculators) {
        this.runner = new Runner(new ArrayList<>(calculators), MainsTemperature::onDay);
    }

    /** With the calculators of the class path, for batch engines, benchmarks and tests. */
    public static Office onClassPath() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return new Office(found);
    }
}
