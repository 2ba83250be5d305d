// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.units.Quantity;

/**
 * Changes a survey and its heater by chance: readings taken away, made larger or smaller, answers turned, words exchanged for others that
 * stand in the same field of some house. What comes out need not be sensible; it has to be answered in whole sentences.
 */
final class ChangedHouse {
    private static final double[] FACTORS = {0.05, 0.3, 0.7, 0.9, 1.1, 1.5, 3, 10};

    private final TreeMap<String, TreeSet<String>> words = new TreeMap<>();

    /** Learns which words stand in which field. */
    void learn(EObject root) {
        for (EObject object : all(root)) {
            for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                if (!attribute.isMany() && object.eGet(attribute) instanceof String word) {
                    words.computeIfAbsent(key(attribute), each -> new TreeSet<>())
                            .add(word);
                }
            }
        }
    }

    /** Adds words that no house has. */
    void learn(String type, String feature, String... more) {
        words.computeIfAbsent(type + "." + feature, each -> new TreeSet<>()).addAll(List.of(more));
    }

    private static String key(EAttribute attribute) {
        return attribute.getEContainingClass().getName() + "." + attribute.getName();
    }

    private static List<EObject> all(EObject root) {
        List<EObject> all = new ArrayList<>();
        all.add(root);
        root.eAllContents().forEachRemaining(all::add);
        return all;
    }

    /** A copy in which some values are others. */
    <T extends EObject> T change(T root, Random random) {
        T copy = EcoreUtil.copy(root);
        List<EObject> objects = all(copy);
        for (int i = 1 + random.nextInt(12); i > 0; i--) {
            EObject object = objects.get(random.nextInt(objects.size()));
            List<EAttribute> attributes = object.eClass().getEAllAttributes();
            if (!attributes.isEmpty()) {
                change(object, attributes.get(random.nextInt(attributes.size())), random);
            }
        }
        if (random.nextInt(3) == 0) {
            EObject part = objects.get(random.nextInt(objects.size()));
            if (part.eContainer() != null) {
                EcoreUtil.remove(part);
            }
        }
        return copy;
    }

    private void change(EObject object, EAttribute attribute, Random random) {
        if (attribute.isMany() || !attribute.isChangeable()) {
            return;
        }
        Object old = object.eGet(attribute);
        if (random.nextInt(4) == 0) {
            object.eUnset(attribute);
        } else if (attribute.getEAttributeType() instanceof EEnum choice) {
            List<Enumerator> literals = choice.getELiterals().stream()
                    .map(literal -> literal.getInstance())
                    .toList();
            object.eSet(attribute, literals.get(random.nextInt(literals.size())));
        } else if (attribute.getEAttributeType().getInstanceClass() == Boolean.class) {
            object.eSet(attribute, random.nextBoolean());
        } else if (old instanceof Quantity reading) {
            double factor = FACTORS[random.nextInt(FACTORS.length)];
            object.eSet(
                    attribute,
                    EcoreUtil.createFromString(attribute.getEAttributeType(), scaled(reading.toString(), factor)));
        } else if (attribute.getEAttributeType().getInstanceClass() == String.class
                && words.containsKey(key(attribute))) {
            List<String> known = List.copyOf(words.get(key(attribute)));
            object.eSet(attribute, known.get(random.nextInt(known.size())));
        } else if (old instanceof Integer number) {
            object.eSet(attribute, (int) (number * FACTORS[random.nextInt(FACTORS.length)]));
        }
    }

    private static String scaled(String reading, double factor) {
        String plain = reading.replaceFirst(" ±.*", "");
        int space = plain.indexOf(' ');
        String number = space < 0 ? plain : plain.substring(0, space);
        String unit = space < 0 ? "" : plain.substring(space);
        return new java.math.BigDecimal(number)
                        .multiply(java.math.BigDecimal.valueOf(factor))
                        .stripTrailingZeros()
                        .toPlainString()
                + unit;
    }
}
