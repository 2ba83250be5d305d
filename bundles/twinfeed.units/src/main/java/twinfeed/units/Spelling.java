// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

/**
 * The spelling of a unit as somebody typed it, and the rule by which it is recognised: as written, or else with
 * another case of letters where only one unit of the kind can be meant. The letter m is never taken for M, nor M for m,
 * where it may be the prefix or the metre: a milliohm is not a megohm.
 */
final class Spelling {
    /** In these an m is but a letter, and may be written in capitals with the rest of the word. */
    private static final String[] WORDS_WITH_M = {"ohm", "amp", "min", "metre", "lpm", "gpm", "ppm"};

    private final String key;

    Spelling(String typed) {
        this.key = key(typed);
    }

    /** Whether both are the same but for the case of letters. */
    boolean isLike(String spelling) {
        return key.equalsIgnoreCase(key(spelling));
    }

    /** Whether every m that may be a prefix or the metre has the case that the like spelling has. */
    boolean hasEveryMOf(String spelling) {
        String other = key(spelling);
        for (int i = 0; i < key.length(); i++) {
            if (Character.toLowerCase(key.charAt(i)) == 'm'
                    && key.charAt(i) != other.charAt(i)
                    && mayBePrefixOrMetre(other, i)) {
                return false;
            }
        }
        return true;
    }

    private static boolean mayBePrefixOrMetre(String spelling, int at) {
        for (String word : WORDS_WITH_M) {
            int from = spelling.indexOf(word);
            if (from >= 0 && at == from + word.indexOf('m')) {
                return false;
            }
        }
        return true;
    }

    /** One form for what looks alike: superscripts, the two omegas, the two degree signs, spaces around a solidus. */
    static String key(String typed) {
        StringBuilder out = new StringBuilder(typed.length());
        String text = typed.strip();
        for (int i = 0; i < text.length(); i++) {
            append(out, text.charAt(i));
        }
        return out.toString().replace(" /", "/").replace("/ ", "/");
    }

    private static void append(StringBuilder out, char c) {
        switch (c) {
            case '²' -> out.append('2');
            case '³' -> out.append('3');
            case '\u2126' -> out.append('\u03a9');
            case '\u00ba' -> out.append('°');
            case '\u2103' -> out.append("°C");
            case '\u2109' -> out.append("°F");
            case '\u03bc' -> out.append('µ');
            case '\u22c5' -> out.append('·');
            case '^' -> {}
            default -> out.append(Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c);
        }
    }
}
