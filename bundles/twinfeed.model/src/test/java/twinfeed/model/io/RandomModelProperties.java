// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.job.JobPackage;
import twinfeed.units.Kind;
import twinfeed.units.Quantity;

/** Random jobs go to a file and come back the same; written again they give the same bytes. */
class RandomModelProperties {
    private static final int DEEPEST_LIST = 3;

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings()
                .ofMaxLength(40)
                .withCharRange(' ', '~')
                .withChars("<>&\"'\t\n\r]]>{}äß±²°€\uFEFF\u2028\uD7FF\uE000\u0085")
                .withCharRange('\u00A0', '\u017F');
    }

    @Property(seed = "1", tries = 300)
    void savedTwiceIsTheSame(@ForAll long seed, @ForAll("texts") String text) {
        EObject job = random(JobPackage.Literals.JOB, new Random(seed), text);
        ModelFile<EObject> form = ModelFile.of(JobPackage.Literals.JOB, EObject.class);
        byte[] first = form.bytes("random.job", job);
        EObject back = form.read("random.job", first);
        assertArrayEquals(first, form.bytes("random.job", back));
        job.eSet(JobPackage.Literals.JOB__VERSION, "1");
        assertTrue(EcoreUtil.equals(job, back), () -> new String(first, StandardCharsets.UTF_8));
    }

    private static EObject random(EClass type, Random random, String text) {
        EObject object = EcoreUtil.create(type);
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (random.nextInt(3) == 0) {
                continue;
            }
            object.eSet(feature, feature.isMany() ? list(feature, random, text) : one(feature, random, text));
        }
        return object;
    }

    private static List<Object> list(EStructuralFeature feature, Random random, String text) {
        List<Object> list = new ArrayList<>();
        for (int i = random.nextInt(DEEPEST_LIST); i > 0; i--) {
            list.add(one(feature, random, text));
        }
        return list;
    }

    private static Object one(EStructuralFeature feature, Random random, String text) {
        return feature instanceof EReference reference
                ? random(reference.getEReferenceType(), random, text)
                : value((EAttribute) feature, random, text);
    }

    private static Object value(EAttribute attribute, Random random, String text) {
        EDataType type = attribute.getEAttributeType();
        Class<?> java = type.getInstanceClass();
        if (type instanceof EEnum choice) {
            return choice.getELiterals()
                    .get(random.nextInt(choice.getELiterals().size()))
                    .getInstance();
        } else if (Quantity.class.isAssignableFrom(java)) {
            return quantity(type, random);
        } else if (java == String.class) {
            return attribute.isID() ? "id" + random.nextInt() : text;
        } else if (java == Boolean.class) {
            return random.nextBoolean();
        } else if (java == Integer.class || java == int.class) {
            return random.nextInt();
        } else if (java == Double.class) {
            return random.nextGaussian() * 1e6;
        } else if (java == BigDecimal.class) {
            return BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(4));
        }
        return LocalDate.ofEpochDay(random.nextInt(40_000));
    }

    private static Object quantity(EDataType type, Random random) {
        Quantity zero = (Quantity) EcoreUtil.createFromString(type, "0 " + unit(type));
        Quantity value = zero.withSi(random.nextDouble() * 1e3);
        return random.nextBoolean() ? value : value.withHalfWidthSi(random.nextDouble());
    }

    private static String unit(EDataType type) {
        for (Kind kind : Kind.values()) {
            if (kind.name().replace("_", "").equalsIgnoreCase(type.getName())) {
                return kind == Kind.RATIO ? "" : kind.displayUnit();
            }
        }
        throw new IllegalArgumentException("no kind for " + type.getName());
    }
}
