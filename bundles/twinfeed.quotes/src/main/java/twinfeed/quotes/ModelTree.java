// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;

/**
 * Objects of the model as trees for JSON and back: an object is a map by the names of its features, an unset feature is left out, and so is one that
 * the model keeps in no file;
 * booleans and whole numbers stay what they are, doubles too, and decimals, dates, quantities and enumerations are text, so
 * that no digit is lost.
 */
public final class ModelTree {
    private ModelTree() {}

    static Map<String, @Nullable Object> of(EObject object) {
        return of(object, List.of());
    }

    /**
     * The tree without these attributes.
     *
     * @throws IllegalArgumentException if something of the object has no form in a tree
     */
    public static Map<String, @Nullable Object> of(EObject object, Collection<EAttribute> without) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
            if (object.eIsSet(feature) && !feature.isTransient() && !without.contains(feature)) {
                tree.put(feature.getName(), value(object, feature, without));
            }
        }
        return tree;
    }

    private static Object value(EObject object, EStructuralFeature feature, Collection<EAttribute> without) {
        Object value = object.eGet(feature);
        if (!feature.isMany()) {
            return one(feature, value, without);
        }
        List<Object> several = new ArrayList<>();
        ((List<?>) value).forEach(element -> several.add(one(feature, element, without)));
        return several;
    }

    private static Object one(EStructuralFeature feature, Object value, Collection<EAttribute> without) {
        if (feature instanceof EReference reference) {
            EObject object = (EObject) value;
            if (!reference.isContainment() || object.eClass() != reference.getEReferenceType()) {
                throw new IllegalArgumentException(feature.getName() + " has no form in a tree");
            }
            return of(object, without);
        }
        if (value instanceof Boolean || value instanceof Integer) {
            return value;
        }
        if (value instanceof Double number) {
            // JSON has no infinity; a margin without a limit has one.
            return Double.isFinite(number) ? number : number.toString();
        }
        if (value instanceof BigDecimal decimal) {
            return decimal.toPlainString();
        }
        return EcoreUtil.convertToString(((EAttribute) feature).getEAttributeType(), value);
    }

    /**
     * The object of a tree.
     *
     * @throws IllegalArgumentException if the tree says what the class does not know
     */
    static EObject object(EClass type, @Nullable Object tree) {
        EObject object = EcoreUtil.create(type);
        if (!(tree instanceof Map<?, ?> map)) {
            throw new IllegalArgumentException(type.getName() + " is no JSON object");
        }
        map.forEach((key, value) -> {
            EStructuralFeature feature = type.getEStructuralFeature((String) key);
            if (feature == null) {
                throw new IllegalArgumentException(type.getName() + " has no " + key);
            }
            object.eSet(feature, feature.isMany() ? several(feature, value) : read(feature, value));
        });
        return object;
    }

    private static List<Object> several(EStructuralFeature feature, @Nullable Object value) {
        if (!(value instanceof List<?> list)) {
            throw new IllegalArgumentException(feature.getName() + " is no JSON array");
        }
        List<Object> several = new ArrayList<>();
        list.forEach(element -> several.add(read(feature, element)));
        return several;
    }

    private static Object read(EStructuralFeature feature, @Nullable Object value) {
        if (feature instanceof EReference reference) {
            return object(reference.getEReferenceType(), value);
        }
        EDataType type = ((EAttribute) feature).getEAttributeType();
        Class<?> java = type.getInstanceClass();
        if (value instanceof Double number && (java == Integer.class || java == int.class)) {
            return BigDecimal.valueOf(number).intValueExact();
        }
        boolean plain = value instanceof Boolean || value instanceof Double;
        if (plain && java.isInstance(value)) {
            return value;
        }
        if (!(value instanceof String text)) {
            throw new IllegalArgumentException(feature.getName() + " has the value " + value);
        }
        return EcoreUtil.createFromString(type, text);
    }
}
