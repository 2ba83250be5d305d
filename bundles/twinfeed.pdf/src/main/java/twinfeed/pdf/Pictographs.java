// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntPredicate;

/**
 * Small pictures among letters, as telephones write them: none of the embedded typefaces has them, and one with all of them would weigh more than
 * the rest of the program. A common one is set as the plain sign for the same thing; any other is named in brackets by its name in Unicode, for a
 * picture may carry the sense of a note. What only changes its look (variant, colour of skin, joiner) is left out.
 */
final class Pictographs {
    private static final int FIRST_SKIN = 0x1F3FB;
    private static final int LAST_SKIN = 0x1F3FF;
    private static final int FIRST_FLAG_LETTER = 0x1F1E6;
    private static final int LAST_FLAG_LETTER = 0x1F1FF;
    private static final int KEY_CAP = 0x20E3;
    private static final int JOINER = 0x200D;

    private static final Map<Integer, Integer> PLAIN = plain();

    private final IntPredicate known;

    /** @param known letters that the typefaces have */
    Pictographs(IntPredicate known) {
        this.known = known;
    }

    private static Map<Integer, Integer> plain() {
        Map<Integer, Integer> signs = new HashMap<>();
        same(signs, 0x263A, 0x1F600, 0x1F601, 0x1F603, 0x1F604, 0x1F606, 0x1F609, 0x1F60A, 0x1F642);
        same(signs, 0x2639, 0x1F614, 0x1F61E, 0x1F61F, 0x1F622, 0x1F625, 0x1F62D, 0x1F641);
        same(signs, 0x2764, 0x1F493, 0x1F495, 0x1F496, 0x1F497, 0x1F499, 0x1F49A, 0x1F49B, 0x1F49C, 0x1F5A4, 0x1F9E1);
        same(signs, 0x260E, 0x1F4DE, 0x1F57F, 0x1F581);
        same(signs, 0x2709, 0x1F4E7, 0x1F4E8, 0x1F4E9, 0x1F582);
        same(signs, 0x2713, 0x2705);
        same(signs, 0x2717, 0x274C, 0x274E);
        same(signs, 0x2605, 0x2B50, 0x1F31F);
        same(signs, 0x2600, 0x1F31E);
        return signs;
    }

    private static void same(Map<Integer, Integer> signs, int plain, int... pictures) {
        for (int picture : pictures) {
            signs.put(picture, plain);
        }
    }

    /** A text in which they can be read. */
    String of(String text) {
        if (text.codePoints().allMatch(letter -> letter < KEY_CAP && letter != JOINER)) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length() + 16);
        int[] letters = text.codePoints().toArray();
        for (int at = 0; at < letters.length; at++) {
            int letter = letters[at];
            if (flag(letter) && at + 1 < letters.length && flag(letters[at + 1])) {
                out.append('[')
                        .append(country(letter))
                        .append(country(letters[++at]))
                        .append(']');
            } else if (!look(letters, at)) {
                put(letter, out);
            }
        }
        return out.toString();
    }

    private void put(int letter, StringBuilder out) {
        int sign = PLAIN.getOrDefault(letter, letter);
        String name = picture(letter) && !known.test(sign) ? Character.getName(letter) : null;
        if (name == null) {
            out.appendCodePoint(sign);
        } else {
            out.append('[').append(name.toLowerCase(Locale.ROOT)).append(']');
        }
    }

    private static boolean picture(int letter) {
        return Character.getType(letter) == Character.OTHER_SYMBOL;
    }

    private static boolean flag(int letter) {
        return letter >= FIRST_FLAG_LETTER && letter <= LAST_FLAG_LETTER;
    }

    private static char country(int letter) {
        return (char) ('A' + letter - FIRST_FLAG_LETTER);
    }

    /** Whether something only changes the look of what is before it; a joiner may also stand between letters of a script, where it counts. */
    private static boolean look(int[] letters, int at) {
        int letter = letters[at];
        boolean variant = letter >= 0xFE00 && letter <= 0xFE0F || letter >= 0xE0100 && letter <= 0xE01EF;
        boolean skin =
                letter >= FIRST_SKIN && letter <= LAST_SKIN && at > 0 && !Character.isWhitespace(letters[at - 1]);
        boolean joiner =
                letter == JOINER && at > 0 && (picture(letters[at - 1]) || !Character.isLetter(letters[at - 1]));
        return variant || skin || joiner || letter == KEY_CAP;
    }
}
