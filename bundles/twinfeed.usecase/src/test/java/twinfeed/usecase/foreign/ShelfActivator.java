// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.foreign;

import java.util.Dictionary;
import java.util.Hashtable;
import org.jspecify.annotations.Nullable;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceFactory;
import org.osgi.framework.ServiceRegistration;
import twinfeed.calculator.Calculator;

/** A bundle that registers its calculator itself, as one with Declarative Services does; with the header Shelf-Broken it cannot make it. */
public final class ShelfActivator implements BundleActivator {
    @Override
    public void start(BundleContext context) {
        boolean broken = context.getBundle().getHeaders().get("Shelf-Broken") != null;
        Dictionary<String, Object> properties = new Hashtable<>();
        properties.put("component.name", "the shelf");
        context.registerService(
                Calculator.class,
                new ServiceFactory<Calculator>() {
                    @Override
                    public @Nullable Calculator getService(Bundle user, ServiceRegistration<Calculator> registration) {
                        return broken ? null : new ShelfCalculator();
                    }

                    @Override
                    public void ungetService(
                            Bundle user, ServiceRegistration<Calculator> registration, Calculator service) {}
                },
                properties);
        context.registerService(Runnable.class, () -> {}, null);
    }

    @Override
    public void stop(BundleContext context) {}

    /** A calculator that cannot be made. */
    public static final class Unmakeable {
        /** Never ends well. */
        public Unmakeable() {
            throw new IllegalStateException("the shelf\n  is empty");
        }
    }
}
