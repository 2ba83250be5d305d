// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.InvalidValue;
import twinfeed.model.io.NearestName;

/**
 * One field of a model, named as problems name it: {@code water.test.runningPressure}, {@code water.segments[rising main].length},
 * {@code electricity.circuit.segments[2].method}. A list's element is called by its name or id, else by its number from 1.
 */
public final class FieldPath {
    private static final Pattern STEP = Pattern.compile("([a-zA-Z][a-zA-Z0-9]*)(?:\\[([^\\]]+)])?");

    /** What stands for a value that is to be taken away. */
    public static final String NOTHING = "-";

    /** What says of a part that may be absent, for example main bonding, that there is none; not the same as not looked for. */
    public static final String NONE = "none";

    private final List<Step> steps;

    private record Step(String name, @Nullable String element) {}

    private FieldPath(List<Step> steps) {
        this.steps = steps;
    }

    /**
     * Reads a path.
     *
     * @throws FieldException if it has not the form of one
     */
    public static FieldPath of(String text) {
        List<Step> steps = new ArrayList<>();
        for (String part : parts(text.strip())) {
            Matcher matcher = STEP.matcher(part);
            if (!matcher.matches()) {
                throw new FieldException("field.form");
            }
            steps.add(new Step(matcher.group(1), matcher.group(2)));
        }
        return new FieldPath(List.copyOf(steps));
    }

    /** What stands between the points outside brackets. One way through, from the end, for a damaged file may have thousands of points. */
    private static Deque<String> parts(String text) {
        Deque<String> parts = new ArrayDeque<>();
        int end = text.length();
        boolean inBrackets = false;
        for (int at = end - 1; at >= 0; at--) {
            char letter = text.charAt(at);
            if (letter == ']') {
                inBrackets = true;
            } else if (letter == '[') {
                inBrackets = false;
            } else if (letter == '.' && !inBrackets) {
                parts.addFirst(text.substring(at + 1, end));
                end = at;
            }
        }
        parts.addFirst(text.substring(0, end));
        return parts;
    }

    /**
     * Sets the field. Single parts on the way that are not there yet are made; list elements are not.
     *
     * @param root the object that the path begins in; changed only if nothing is thrown
     * @param text the value as a file has it; several values of one field are separated by semicolons; {@link #NOTHING} takes it away, and
     *     {@link #NONE} says that there is no such part where the model has a feature {@code has...} beside it
     * @throws FieldException if there is no such field, or the text is no value for it
     */
    public void set(EObject root, String text) {
        List<Step> way = steps.subList(0, steps.size() - 1);
        EAttribute field = attribute(typeAt(root.eClass(), way));
        EAttribute presence = Presence.of(field);
        boolean none = presence != null && text.strip().equalsIgnoreCase(NONE);
        Object value = none || text.strip().equals(NOTHING) ? null : value(field, text.strip());
        EObject owner = root;
        for (Step step : way) {
            owner = next(owner, step);
        }
        if (value == null) {
            owner.eUnset(field);
        } else {
            owner.eSet(field, value);
        }
        if (none) {
            owner.eSet(presence, false);
        } else if (presence != null && Boolean.FALSE.equals(owner.eGet(presence))) {
            owner.eUnset(presence);
        }
    }

    /**
     * Whether an object of a class has such a field; elements of lists are not looked for.
     *
     * @throws FieldException if it has not
     */
    public void check(EClass root) {
        attribute(typeAt(root, steps.subList(0, steps.size() - 1)));
    }

    /** The value that an object has there, as a file has it; {@link #NONE} where it says that there is none, empty where nothing is said. */
    public String text(EObject root) {
        EObject owner = owner(root);
        if (owner == null) {
            return "";
        }
        EAttribute field = attribute(owner.eClass());
        EAttribute presence = Presence.of(field);
        if (presence != null && Boolean.FALSE.equals(owner.eGet(presence))) {
            return NONE;
        }
        if (!owner.eIsSet(field)) {
            return "";
        }
        List<?> values = field.isMany() ? (List<?>) owner.eGet(field) : List.of(owner.eGet(field));
        return values.stream()
                .map(value -> EcoreUtil.convertToString(field.getEAttributeType(), value))
                .collect(Collectors.joining("; "));
    }

    /** The features on the way and the field itself, for example to name them in words. */
    public List<EStructuralFeature> features(EClass root) {
        List<EStructuralFeature> features = new ArrayList<>();
        EClass type = root;
        for (Step step : steps) {
            EStructuralFeature feature = feature(type, step.name());
            features.add(feature);
            type = feature instanceof EReference part ? part.getEReferenceType() : type;
        }
        return features;
    }

    /** The element of a list that the way leads through last, as it is called there; empty if it leads through none. */
    public String element() {
        return steps.stream()
                .map(Step::element)
                .filter(Objects::nonNull)
                .reduce((first, second) -> second)
                .orElse("");
    }

    /** The one path of the field, however an element was called; absent where the way does not lead anywhere. */
    public @Nullable String in(EObject root) {
        EObject owner = owner(root);
        return owner == null ? null : ModelPath.of(owner, attribute(owner.eClass()));
    }

    private @Nullable EObject owner(EObject root) {
        @Nullable EObject owner = root;
        for (Step step : steps.subList(0, steps.size() - 1)) {
            Object next = owner.eGet(feature(owner.eClass(), step.name()));
            String element = step.element();
            owner = element == null
                    ? (EObject) next
                    : named((List<?>) next, element).orElse(null);
            if (owner == null) {
                return null;
            }
        }
        return owner;
    }

    private static EClass typeAt(EClass root, List<Step> way) {
        EClass type = root;
        for (Step step : way) {
            EStructuralFeature feature = feature(type, step.name());
            if (!(feature instanceof EReference part) || part.isMany() != (step.element() != null)) {
                throw new FieldException(feature.isMany() ? "field.element" : "field.noPart", step.name(), names(type));
            }
            type = part.getEReferenceType();
        }
        return type;
    }

    private EAttribute attribute(EClass type) {
        Step last = steps.get(steps.size() - 1);
        if (feature(type, last.name()) instanceof EAttribute field && last.element() == null) {
            return field;
        }
        throw new FieldException("field.noValue", last.name(), names(type));
    }

    private static EStructuralFeature feature(EClass type, String name) {
        EStructuralFeature feature = type.getEStructuralFeature(name);
        if (feature != null) {
            return feature;
        }
        String nearest = NearestName.of(name, allNames(type));
        throw nearest.isEmpty()
                ? new FieldException("field.unknown", name, names(type))
                : new FieldException("field.unknown.near", name, nearest);
    }

    private static List<String> allNames(EClass type) {
        return type.getEAllStructuralFeatures().stream()
                .map(EStructuralFeature::getName)
                .toList();
    }

    private static String names(EClass type) {
        return String.join(", ", allNames(type));
    }

    private static Object value(EAttribute field, String text) {
        return field.isMany()
                ? Arrays.stream(text.split(";"))
                        .map(one -> single(field.getEAttributeType(), one.strip()))
                        .toList()
                : single(field.getEAttributeType(), text);
    }

    private static Object single(EDataType type, String text) {
        InvalidValue fault = InvalidValue.of(type, text);
        if (fault != null) {
            throw new FieldException(fault);
        }
        return EcoreUtil.createFromString(type, text);
    }

    private static EObject next(EObject owner, Step step) {
        EReference part = (EReference) feature(owner.eClass(), step.name());
        String element = step.element();
        if (element != null) {
            return element((List<?>) owner.eGet(part), step.name(), element);
        }
        if (owner.eGet(part) instanceof EObject there) {
            return there;
        }
        EObject made = EcoreUtil.create(part.getEReferenceType());
        owner.eSet(part, made);
        return made;
    }

    private static EObject element(List<?> elements, String list, String called) {
        Optional<EObject> named = named(elements, called);
        if (named.isPresent()) {
            return named.get();
        }
        String there = elements.stream()
                .map(one -> ModelPath.name((EObject) one))
                .filter(name -> !name.isEmpty())
                .collect(Collectors.joining(", "));
        throw new FieldException("field.noElement", list, called, there, String.valueOf(elements.size()));
    }

    private static Optional<EObject> named(List<?> elements, String called) {
        for (int at = 0; at < elements.size(); at++) {
            EObject element = (EObject) elements.get(at);
            if (called.equals(ModelPath.name(element)) || called.equals(String.valueOf(at + 1))) {
                return Optional.of(element);
            }
        }
        return Optional.empty();
    }
}
