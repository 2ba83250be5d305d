// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;

/**
 * Arabic letters in the form that they have between their neighbours: a name in letters that do not join is hard to read. The forms are
 * those of Unicode's blocks Arabic Presentation Forms-A and -B, in which each letter stands as isolated, final, initial, medial in this
 * order; which letters join is seen from the forms that they have.
 *
 * <p>Own code, for want of a library that fits: FOP 2.10 puts the letters into reading order but sets those of DejaVu Sans isolated, with
 * whatever script or language its text is marked (tried, with its complex scripts on); a library for Unicode that joins them is a jar of 14
 * MB for this one function; and the Java platform joins letters only while it draws them.
 */
final class ArabicForms {
    private static final int FINAL = 1;
    private static final int INITIAL = 2;
    private static final int ALL_FORMS = 4;
    private static final char LAM = '\u0644';
    private static final char TATWEEL = '\u0640';

    /** Forms of each letter, and of lam with an alef behind it, which are written as one. */
    private static final Map<String, List<Character>> FORMS = new HashMap<>();

    static {
        // Behind these come letters of other languages that begin with their initial form.
        collect('\uFB50', '\uFBE7');
        collect('\uFE80', '\uFEFC');
    }

    private final IntPredicate shown;

    /**
     * Forms of a typeface.
     *
     * @param shown whether the typeface has a letter
     */
    ArabicForms(IntPredicate shown) {
        this.shown = shown;
    }

    private static void collect(char first, char last) {
        for (char form = first; form <= last; form++) {
            String letters = Normalizer.normalize(String.valueOf(form), Normalizer.Form.NFKC);
            if (letters.length() == 1 && letters.charAt(0) != form
                    || letters.length() == 2 && letters.charAt(0) == LAM) {
                FORMS.computeIfAbsent(letters, any -> new ArrayList<>()).add(form);
            }
        }
    }

    /** The text with each Arabic letter in its form; other text as it is. */
    String of(String text) {
        if (text.chars().noneMatch(ArabicForms::arabic)) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length());
        boolean joined = false;
        int at = 0;
        while (at < text.length()) {
            String letters = letters(text, at);
            List<Character> forms = FORMS.getOrDefault(letters, List.of());
            boolean forward = letters.charAt(0) == TATWEEL || forms.size() == ALL_FORMS;
            boolean next = forward && joinsBack(text, at + letters.length());
            if (!forms.isEmpty()) {
                int form = (joined && forms.size() > FINAL ? FINAL : 0) + (next ? INITIAL : 0);
                char wanted = forms.get(form);
                out.append(shown.test(wanted) ? String.valueOf(wanted) : letters);
            } else {
                out.append(letters);
            }
            // A mark above or below a letter parts nothing.
            joined = mark(letters.charAt(0)) ? joined : next;
            at += letters.length();
        }
        return out.toString();
    }

    private static boolean arabic(int letter) {
        return letter >= '\u0600' && letter <= '\u06FF';
    }

    private static String letters(String text, int at) {
        String pair = text.substring(at, Math.min(text.length(), at + 2));
        return FORMS.containsKey(pair) ? pair : text.substring(at, at + 1);
    }

    /** Whether the letter that comes next, marks apart, joins the one ahead of it. */
    private static boolean joinsBack(String text, int from) {
        int at = from;
        while (at < text.length() && mark(text.charAt(at))) {
            at++;
        }
        return at < text.length()
                && (text.charAt(at) == TATWEEL
                        || FORMS.getOrDefault(text.substring(at, at + 1), List.of())
                                        .size()
                                > FINAL);
    }

    private static boolean mark(char letter) {
        return Character.getType(letter) == Character.NON_SPACING_MARK;
    }
}
