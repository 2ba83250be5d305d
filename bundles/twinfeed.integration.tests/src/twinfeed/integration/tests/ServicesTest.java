// SPDX-License-Identifier: EPL-2.0
package twinfeed.integration.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;
import org.osgi.util.tracker.ServiceTracker;
import twinfeed.calculator.Calculator;
import twinfeed.usecase.TwinfeedService;

/** The two ways to find calculators, services of the framework and service files of the class path, find the same ones. */
class ServicesTest {
    private static final String LIST = "META-INF/services/" + Calculator.class.getName();
    private static final long PATIENCE_MS = 10_000;

    private final BundleContext context =
            FrameworkUtil.getBundle(ServicesTest.class).getBundleContext();

    @Test
    void theFrameworkOffersTheCalculatorsThatTheJarsList() throws InvalidSyntaxException {
        List<String> listed = Arrays.stream(context.getBundles())
                .filter(bundle -> bundle.getSymbolicName().startsWith("twinfeed."))
                .flatMap(ServicesTest::listedIn)
                .sorted()
                .toList();
        assertTrue(listed.size() >= 3, "listed: " + listed);
        assertEquals(listed, offered());
    }

    @Test
    void everyCalculatorBundleListsOne() {
        assertEquals(
                List.of(),
                Arrays.stream(context.getBundles())
                        .filter(bundle -> bundle.getSymbolicName().startsWith("twinfeed.calculator."))
                        .filter(bundle -> listedIn(bundle).findAny().isEmpty())
                        .map(Bundle::getSymbolicName)
                        .toList());
    }

    @Test
    void theUseCasesWorkWithAllOfThem() throws InterruptedException, InvalidSyntaxException {
        ServiceTracker<TwinfeedService, TwinfeedService> tracker =
                new ServiceTracker<>(context, TwinfeedService.class, null);
        tracker.open();
        try {
            TwinfeedService service = tracker.waitForService(PATIENCE_MS);
            List<String> known = service.calculators().stream()
                    .map(calculator -> calculator.getClass().getName())
                    .sorted()
                    .toList();
            assertEquals(offered(), known);
        } finally {
            tracker.close();
        }
    }

    private List<String> offered() throws InvalidSyntaxException {
        Collection<ServiceReference<Calculator>> references = context.getServiceReferences(Calculator.class, null);
        return references.stream()
                .map(reference -> context.getService(reference).getClass().getName())
                .sorted()
                .toList();
    }

    private static Stream<String> listedIn(Bundle bundle) {
        URL list = bundle.getEntry(LIST);
        if (list == null) {
            return Stream.empty();
        }
        try (BufferedReader text =
                new BufferedReader(new InputStreamReader(list.openStream(), StandardCharsets.UTF_8))) {
            return text
                    .lines()
                    .map(line -> line.replaceFirst("#.*", "").strip())
                    .filter(line -> !line.isEmpty())
                    .toList()
                    .stream();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
