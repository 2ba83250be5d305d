// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.assessment.AssessmentPackage;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.job.JobPackage;
import twinfeed.model.pricebook.PricebookPackage;
import twinfeed.model.quote.QuotePackage;
import twinfeed.model.survey.SurveyPackage;

/** A value for every attribute of the model, found by reflection so that a new attribute is tested without a line here. */
final class Samples {
    static final List<EPackage> PACKAGES = List.of(
            JobPackage.eINSTANCE,
            SurveyPackage.eINSTANCE,
            CataloguePackage.eINSTANCE,
            PricebookPackage.eINSTANCE,
            AssessmentPackage.eINSTANCE,
            QuotePackage.eINSTANCE);

    private static final Map<String, String> QUANTITIES = Map.ofEntries(
            Map.entry("Pressure", "3.0 bar ± 0.05 bar"),
            Map.entry("Flow", "12 L/min u 0.2 L/min"),
            Map.entry("MassFlow", "3 kg/min"),
            Map.entry("Length", "-0.3 m ± 2 cm"),
            Map.entry("Area", "6 mm²"),
            Map.entry("Temperature", "12.5 °C ± 0.5 °C"),
            Map.entry("TemperatureDifference", "14 K"),
            Map.entry("Voltage", "238 V ± 2 V"),
            Map.entry("Current", "30 mA"),
            Map.entry("Power", "9.5 kW"),
            Map.entry("Resistance", "0.24 ohm ± 5 %"),
            Map.entry("Duration", "28 ms"),
            Map.entry("Velocity", "1.5 m/s"),
            Map.entry("Concentration", "250 mg/L"),
            Map.entry("LetThrough", "54000 A²s"),
            Map.entry("Ratio", "5 %"));

    private static final AtomicInteger IDS = new AtomicInteger();

    private Samples() {}

    static List<EClass> classes() {
        List<EClass> classes = new ArrayList<>();
        for (EPackage pack : PACKAGES) {
            for (EClassifier classifier : pack.getEClassifiers()) {
                if (classifier instanceof EClass type) {
                    classes.add(type);
                }
            }
        }
        return classes;
    }

    /** An object with every feature set that a file keeps, down to the leaves; lists get two elements. */
    static EObject full(EClass type) {
        EObject object = EcoreUtil.create(type);
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (!feature.isTransient()) {
                set(object, feature);
            }
        }
        return object;
    }

    /** An object with one feature set. */
    static EObject only(EStructuralFeature feature) {
        EObject object = EcoreUtil.create(feature.getEContainingClass());
        set(object, feature);
        return object;
    }

    private static void set(EObject object, EStructuralFeature feature) {
        if (feature.isMany()) {
            object.eSet(feature, List.of(value(feature, 1), value(feature, 2)));
        } else {
            object.eSet(feature, value(feature, 1));
        }
    }

    private static Object value(EStructuralFeature feature, int number) {
        return feature instanceof EReference reference
                ? full(reference.getEReferenceType())
                : value((EAttribute) feature, number);
    }

    private static Object value(EAttribute attribute, int number) {
        EDataType type = attribute.getEAttributeType();
        if (type instanceof EEnum choice) {
            return choice.getELiterals().get(number - 1).getInstance();
        }
        String text = QUANTITIES.get(type.getName());
        if (text != null) {
            return EcoreUtil.createFromString(type, text);
        }
        return plain(attribute, type.getInstanceClass(), number);
    }

    private static Object plain(EAttribute attribute, Class<?> type, int number) {
        if (type == String.class) {
            return attribute.isID() ? "id-" + IDS.incrementAndGet() : attribute.getName() + " " + number;
        } else if (type == Boolean.class) {
            return number == 1;
        } else if (type == Integer.class || type == int.class) {
            return 10 + number;
        } else if (type == Double.class) {
            return 0.1 + number;
        } else if (type == BigDecimal.class) {
            return new BigDecimal("12.50");
        } else if (type == LocalDate.class) {
            return LocalDate.of(2026, 2, number);
        }
        throw new IllegalArgumentException("no sample for " + attribute.getName() + " of " + type);
    }
}
