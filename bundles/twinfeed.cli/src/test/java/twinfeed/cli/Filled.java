// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.lang.reflect.Array;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.quote.QuotePackage;

/** Things in which nothing is left out: a text is the name of its place, no two numbers are alike, and each list has one element. */
final class Filled {
    private int number;

    /** A thing of the model with all that it contains. */
    <T extends EObject> T of(EClass type, Class<T> as) {
        return as.cast(of(type));
    }

    private EObject of(EClass type) {
        EObject made = EcoreUtil.create(type);
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            Object value = feature instanceof EAttribute attribute
                    ? value(attribute.getEAttributeType().getInstanceClass(), attribute.getName())
                    : of(((EReference) feature).getEReferenceType());
            made.eSet(feature, feature.isMany() ? List.of(value) : value);
        }
        return made;
    }

    /** A record with all that it contains. */
    <T extends Record> T of(Class<T> type) {
        try {
            RecordComponent[] parts = type.getRecordComponents();
            Class<?>[] types =
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Object[] values = Arrays.stream(parts)
                    .map(part -> value(part.getGenericType(), part.getName()))
                    .toArray();
            var constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(type.getName(), e);
        }
    }

    private Object value(Type generic, String name) {
        if (generic instanceof ParameterizedType list) {
            return List.of(value(list.getActualTypeArguments()[0], name));
        }
        Class<?> type = (Class<?>) generic;
        if (type == String.class) {
            return name;
        }
        if (type == Path.class) {
            return Path.of(name);
        }
        if (type == BigDecimal.class) {
            return BigDecimal.valueOf(++number * 100L + 50, 2);
        }
        if (type == LocalDate.class) {
            return LocalDate.of(2026, 1, 1).plusDays(++number);
        }
        if (type == int.class || type == Integer.class) {
            return ++number;
        }
        if (type == double.class || type == Double.class) {
            return ++number + 0.25;
        }
        if (type == boolean.class || type == Boolean.class) {
            return true;
        }
        if (type.isEnum()) {
            return Array.get(type.getEnumConstants(), 0);
        }
        if (EObject.class.isAssignableFrom(type)) {
            return of((EClass) Objects.requireNonNull(QuotePackage.eINSTANCE.getEClassifier(type.getSimpleName())));
        }
        return of(type.asSubclass(Record.class));
    }
}
