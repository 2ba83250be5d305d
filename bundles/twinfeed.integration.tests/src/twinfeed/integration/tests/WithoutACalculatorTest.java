// SPDX-License-Identifier: EPL-2.0
package twinfeed.integration.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceReference;
import twinfeed.calculator.Calculator;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.usecase.TwinfeedService;

/** A calculator is a plug-in: without any one of them the use cases start, and the others judge a house. */
class WithoutACalculatorTest {
    private static final long PATIENCE_MS = 10_000;
    private static final long PAUSE_MS = 20;

    private final BundleContext context =
            FrameworkUtil.getBundle(WithoutACalculatorTest.class).getBundleContext();

    @TestFactory
    List<DynamicTest> theUseCasesWorkWithoutEachInTurn() {
        List<Bundle> plugins = Arrays.stream(context.getBundles())
                .filter(bundle -> bundle.getSymbolicName().startsWith("twinfeed.calculator."))
                .toList();
        assertTrue(plugins.size() >= 5, plugins::toString);
        return plugins.stream()
                .map(plugin -> DynamicTest.dynamicTest(plugin.getSymbolicName(), () -> without(plugin)))
                .toList();
    }

    private void without(Bundle plugin) throws Exception {
        Set<String> all = idsOf(service(found -> providing(found, plugin)));
        plugin.stop();
        try {
            TwinfeedService service = service(each -> !providing(each, plugin));
            Set<String> left = idsOf(service);
            assertEquals(all.size() - 1, left.size(), left::toString);
            Path job = Path.of(System.getProperty("twinfeed.root"), "demo", "rowan-brook.job");
            Assessment judged = service.judge(service.open(job, null), null, null, Locale.UK)
                    .record();
            assertTrue(
                    judged.getOptions().size() > 1,
                    "options: " + judged.getOptions().size());
            for (OptionAssessment option : judged.getOptions()) {
                assertFalse(option.getFindings().isEmpty(), option.getTitle());
                assertTrue(option.isSetVerdict(), option.getTitle());
            }
        } finally {
            plugin.start();
        }
        assertEquals(all, idsOf(service(found -> providing(found, plugin))));
    }

    private static boolean providing(TwinfeedService service, Bundle plugin) {
        return service.calculators().stream().anyMatch(each -> plugin.equals(FrameworkUtil.getBundle(each.getClass())));
    }

    private static Set<String> idsOf(TwinfeedService service) {
        return service.calculators().stream()
                .map(Calculator::descriptor)
                .map(statement -> statement.id())
                .collect(Collectors.toSet());
    }

    /** The service as soon as it is one of a kind: the framework makes it anew when calculators come and go. */
    private TwinfeedService service(Predicate<TwinfeedService> wanted) throws InterruptedException {
        for (long waited = 0; waited < PATIENCE_MS; waited += PAUSE_MS) {
            ServiceReference<TwinfeedService> reference = context.getServiceReference(TwinfeedService.class);
            TwinfeedService service = reference == null ? null : context.getService(reference);
            if (service != null && wanted.test(service)) {
                return service;
            }
            Thread.sleep(PAUSE_MS);
        }
        throw new AssertionError("the use cases did not come up again");
    }
}
