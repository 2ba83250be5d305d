// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.util.Iterator;
import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Refuses, before anything is written, text with characters that XML 1.0 cannot hold (control characters, halves of pairs). */
final class WritableText {
    private WritableText() {}

    static void check(String file, EObject root) {
        checkObject(file, root);
        for (Iterator<EObject> all = EcoreUtil.getAllProperContents(root, false); all.hasNext(); ) {
            checkObject(file, all.next());
        }
    }

    private static void checkObject(String file, EObject object) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (object.eIsSet(attribute)) {
                checkValue(file, attribute, object, object.eGet(attribute));
            }
        }
    }

    private static void checkValue(String file, EAttribute attribute, EObject object, Object value) {
        if (value instanceof List<?> list) {
            list.forEach(each -> checkValue(file, attribute, object, each));
        } else if (value instanceof String text && !isWritable(text)) {
            throw refused(file, attribute, object, text, "save.character");
        } else if (value instanceof String text && InvalidValue.isLong(attribute.getEAttributeType(), text)) {
            // Or the file could be written and not be read again.
            throw refused(file, attribute, object, text, "save.long");
        }
    }

    private static InputException refused(String file, EAttribute attribute, EObject object, String text, String key) {
        String place = object.eClass().getName() + "." + attribute.getName();
        return new InputException(new InputProblem(
                file, 0, place, text, Refusal.wrong(key, String.valueOf(text.length())), Refusal.right(key)));
    }

    private static boolean isWritable(String text) {
        return text.codePoints().allMatch(WritableText::isWritable);
    }

    /** The production Char of XML 1.0. */
    private static boolean isWritable(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
