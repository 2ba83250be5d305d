// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;

/**
 * Files of one form: readable UTF-8 text in XML with one root object. Comments in a file are read over and not kept.
 * Immutable and safe for threads.
 *
 * @param <T> type of the root object
 */
public final class ModelFile<T extends EObject> {
    /** The form that this program writes; it stands in the namespace, {@code urn:twinfeed:1:...}. */
    public static final int CURRENT_VERSION = 1;

    private final EClass root;
    private final Class<T> type;
    private final Migrations migrations;

    ModelFile(EClass root, Class<T> type, Migrations migrations) {
        this.root = root;
        this.type = type;
        this.migrations = migrations;
    }

    /**
     * Files whose root object is of a class of the model.
     *
     * @param root class of the root object, taken from its package so that the package is registered
     * @param type the Java type of the same class
     */
    public static <T extends EObject> ModelFile<T> of(EClass root, Class<T> type) {
        return new ModelFile<>(root, type, Migrations.STANDARD);
    }

    /**
     * Reads a file. The object belongs to no resource.
     *
     * @throws InputException if it is missing or cannot be used, with all that is wrong with it
     */
    public T load(Path path) {
        return read(path.toString(), FileText.read(path));
    }

    /**
     * Reads the content of a file.
     *
     * @param name what messages call it
     * @throws InputException if it cannot be used, with all that is wrong with it
     */
    public T read(String name, byte[] content) {
        String text = FileText.decode(name, content);
        Document document = new Document(name, root, text, true);
        int version = document.check();
        if (version < CURRENT_VERSION) {
            document = new Document(name, root, migrations.migrate(name, text, version), false);
            document.check();
        }
        return parse(document);
    }

    /**
     * Writes a file. It appears whole or not at all; a file that was there before is replaced only by a whole one. The
     * object stays as it is, in its resource if it has one.
     *
     * @throws InputException if it cannot be written, or holds text that no file can hold
     */
    public void save(T object, Path path) {
        AtomicFile.write(path, bytes(path.toString(), object));
    }

    /**
     * What {@link #save} writes; the same object gives the same bytes.
     *
     * @param name what messages call it
     * @throws InputException if the object holds text that no file can hold
     */
    public byte[] bytes(String name, T object) {
        T copy = EcoreUtil.copy(object);
        markVersion(copy);
        WritableText.check(name, copy);
        try {
            return new PlainResource().write(copy);
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory", e);
        }
    }

    private T parse(Document document) {
        try {
            return type.cast(new PlainResource().read(document.text()));
        } catch (IOException | RuntimeException refused) {
            List<InputProblem> values = document.valueProblems();
            if (!values.isEmpty()) {
                throw new InputException(values);
            }
            throw document.unreadable(refused);
        }
    }

    private static void markVersion(EObject copy) {
        EAttribute mark = versionMark(copy.eClass());
        if (mark != null) {
            copy.eSet(mark, String.valueOf(CURRENT_VERSION));
        }
    }

    static @Nullable EAttribute versionMark(EClass root) {
        EStructuralFeature feature = root.getEStructuralFeature("version");
        return feature instanceof EAttribute attribute && attribute.getEType().getInstanceClass() == String.class
                ? attribute
                : null;
    }
}
