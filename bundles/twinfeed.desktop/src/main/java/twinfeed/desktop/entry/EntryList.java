// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.desktop.session.SurveyEdits;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.FileFingerprint;

/** A list that is edited entry by entry: a price book, or a catalogue of heaters. Belongs to the thread of the display. */
abstract class EntryList {
    private final Words words;
    private final SurveyEdits edits = new SurveyEdits(false);
    private Path file;
    private FileFingerprint mark;

    /**
     * An opened list.
     *
     * @param file the file that it was read from
     * @param mark what that file held
     */
    EntryList(Path file, FileFingerprint mark, Words words) {
        this.file = file;
        this.mark = mark;
        this.words = words;
    }

    /** The object that holds the entries. */
    abstract EObject root();

    /** The reference that holds them. */
    abstract EReference reference();

    /** The values of an entry, in the order in which they are asked. */
    abstract List<EntryField> fields();

    /** The values of the list as a whole, likewise. */
    abstract List<EntryField> headFields();

    /** The values that stand in the table. */
    abstract List<String> columns();

    /** Those of them that are numbers. */
    abstract List<String> numbers();

    /** A new entry that can be read as it is, not in the list yet. */
    abstract EObject create(String name);

    /** Name of the value by which others refer to an entry. */
    abstract String nameField();

    /** Marks an entry as out of date, or as holding again. */
    abstract void outOfDate(EObject entry);

    /** Whether an entry is out of date. */
    abstract boolean isOutOfDate(EObject entry);

    /**
     * What is wrong or odd, worked out on a copy and out of the way.
     *
     * @param copy a copy of {@link #root()} that nobody else changes
     */
    abstract List<EntryRemark> remarks(EObject copy);

    /** Names that others refer to and the list lacks, likewise. */
    abstract List<String> lacking(EObject copy);

    /** Writes a copy, likewise; throws if it cannot be written, and its message says why. */
    abstract void write(EObject copy, Path target);

    /** Texts. */
    Words words() {
        return words;
    }

    /** The edits. */
    SurveyEdits edits() {
        return edits;
    }

    /** The file. */
    Path file() {
        return file;
    }

    /** What the file held when it was read or written last. */
    FileFingerprint mark() {
        return mark;
    }

    /** It was written there. */
    void saved(Path target, FileFingerprint now) {
        file = target;
        mark = now;
        edits.saved();
    }

    /** The entries. */
    @SuppressWarnings("unchecked")
    EList<EObject> entries() {
        return (EList<EObject>) root().eGet(reference());
    }

    /** A field by its name. */
    Optional<EntryField> field(String name) {
        return fields().stream().filter(field -> field.name().equals(name)).findFirst();
    }

    /** What an entry is called. */
    String name(EObject entry) {
        return field(nameField()).map(field -> field.show(entry)).orElse("");
    }

    /** Whether each of some typed words stands somewhere in an entry. */
    boolean holds(EObject entry, String typed) {
        String all = fields().stream()
                .map(field -> field.show(entry))
                .collect(java.util.stream.Collectors.joining(" "))
                .toLowerCase(Locale.ROOT);
        return Stream.of(typed.strip().toLowerCase(Locale.ROOT).split("\\s+")).allMatch(all::contains);
    }

    /** Adds an entry under a name that is free. */
    EObject add(String wanted) {
        EObject entry = create(free(wanted));
        edits.put(root(), reference(), entry, null);
        return entry;
    }

    /** Adds a copy of an entry under a name that is free. */
    EObject copy(EObject entry) {
        EObject copy = EcoreUtil.copy(entry);
        copy.eSet(copy.eClass().getEStructuralFeature(nameField()), free(name(entry)));
        edits.put(root(), reference(), copy, null);
        return copy;
    }

    private String free(String wanted) {
        String name = wanted;
        for (int i = 2; taken(name); i++) {
            name = wanted + "-" + i;
        }
        return name;
    }

    private boolean taken(String name) {
        return entries().stream().anyMatch(entry -> name(entry).equalsIgnoreCase(name));
    }
}
