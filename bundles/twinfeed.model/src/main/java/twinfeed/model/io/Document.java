// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.util.List;
import org.eclipse.emf.ecore.EClass;

/**
 * The text of one file and what it is to hold.
 *
 * @param name what messages call the file
 * @param root class of the root object
 * @param text the text
 * @param asTyped whether the text is that of the file, so that its lines can be named; false after a migration
 */
record Document(String name, EClass root, String text, boolean asTyped) {

    DocumentBounds bounds() {
        return DocumentBounds.of(root);
    }

    /**
     * Checks form and structure, the values not: they are read once, by the model.
     *
     * @return the document's version, at most the present one; of an older one only that it is well-formed is known
     * @throws InputException with all that is wrong
     */
    int check() {
        DocumentScan scan = new DocumentScan(this, false);
        int version = scan.run();
        if (!scan.problems().isEmpty()) {
            throw new InputException(new DocumentScan(this, true).allProblems());
        }
        return version;
    }

    /** The values that cannot be read; a second walk, made only when reading has failed. */
    List<InputProblem> valueProblems() {
        return new DocumentScan(this, true).allProblems();
    }

    /** For a failure of reading that no check explains. */
    InputException unreadable(Throwable cause) {
        return Refusal.ofFile(cause, name, "file.unexplained", String.valueOf(cause.getMessage()));
    }
}
