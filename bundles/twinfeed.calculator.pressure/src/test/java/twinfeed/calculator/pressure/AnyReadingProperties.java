// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.calculator.Finding;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Quantities;
import twinfeed.units.Quantity;

/** Whatever was typed: an answer or "cannot tell", never a breakdown. */
class AnyReadingProperties {
    /** Replaces some readings of the house and the heater by values of any size and sign. */
    private static void spoil(EObject owner, Random random, double share) {
        for (EStructuralFeature feature : owner.eClass().getEAllStructuralFeatures()) {
            Object value = owner.eGet(feature);
            if (value instanceof Quantity quantity && random.nextDouble() < share) {
                owner.eSet(feature, spoiled(quantity, random));
            } else if (value instanceof List<?> list) {
                for (Object each : new ArrayList<>(list)) {
                    if (each instanceof EObject element) {
                        spoil(element, random, share);
                    }
                }
            } else if (value instanceof EObject child && !feature.getName().equals("electricity")) {
                spoil(child, random, share);
            }
        }
    }

    private static Quantity spoiled(Quantity quantity, Random random) {
        double factor = Math.pow(10, random.nextInt(25) - 12);
        double value =
                switch (random.nextInt(4)) {
                    case 0 -> 0;
                    case 1 -> Math.max(-273, -quantity.si() * factor);
                    default -> quantity.si() * factor;
                };
        return Quantities.ofSi(quantity.kind(), value);
    }

    @Property(seed = "7", tries = 1500)
    void nothingBreaks(@ForAll long seed) {
        Random random = new Random(seed);
        Survey survey = Samples.survey();
        Heater heater = Samples.heater();
        double share = 0.5 * random.nextDouble() * random.nextDouble();
        spoil(survey, random, share);
        spoil(heater, random, share);
        heater.setPower(Samples.heater().getPower());
        heater.setVoltage(Samples.heater().getVoltage());
        for (Finding finding : Houses.findings(survey, heater, random.nextBoolean())) {
            assertFalse(finding.check().equals(Runner.BROKEN), () -> "seed " + seed + ": " + finding.arguments());
        }
    }
}
