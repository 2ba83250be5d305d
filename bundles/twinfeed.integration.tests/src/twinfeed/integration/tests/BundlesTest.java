// SPDX-License-Identifier: EPL-2.0
package twinfeed.integration.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;

/** All that the features list comes up. */
class BundlesTest {
    private final BundleContext context =
            FrameworkUtil.getBundle(BundlesTest.class).getBundleContext();

    @Test
    void everyBundleFindsWhatItImports() {
        assertTrue(context.getBundles().length > 80, "bundles: " + context.getBundles().length);
        assertEquals(
                List.of(),
                bundles()
                        .filter(bundle -> bundle.getState() == Bundle.INSTALLED)
                        .map(Bundle::getSymbolicName)
                        .toList());
    }

    /** With its bundles every key of the application's own model vanishes. */
    @Test
    void theOldWorkbenchIsNotThere() {
        assertEquals(
                List.of(),
                bundles()
                        .map(Bundle::getSymbolicName)
                        .filter(name -> name.equals("org.eclipse.ui") || name.startsWith("org.eclipse.ui."))
                        .toList());
    }

    @Test
    void everyBundleOfOursWithServicesIsStarted() {
        List<Bundle> providers = bundles()
                .filter(bundle -> bundle.getSymbolicName().startsWith("twinfeed."))
                .filter(bundle -> bundle.getHeaders("").get("Service-Component") != null)
                .toList();
        assertTrue(providers.size() >= 4, "providers: " + providers);
        assertEquals(
                List.of(),
                providers.stream()
                        .filter(bundle -> bundle.getState() != Bundle.ACTIVE)
                        .map(Bundle::getSymbolicName)
                        .toList());
    }

    private Stream<Bundle> bundles() {
        return Arrays.stream(context.getBundles());
    }
}
