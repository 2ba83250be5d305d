// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.List;
import java.util.Optional;

/**
 * The spelling of a unit as somebody typed it, and the rule by which it is recognised: as written, or else with
 * another case of letters where only one unit of the kind can be meant. The letter m is never taken for M, nor M for m,
 * where it may be the prefix or the metre: a milliohm is not a megohm.
 */
final class Spelling {
    private final String key;

    Spelling(String typed) {
        this.key = key(typed);
    }

    /** The unit that is meant; empty if there is none, or if two could be meant. */
    Optional<TradeUnit> among(List<TradeUnit> units) {
        for (TradeUnit unit : units) {
            if (matches(unit, false)) {
                return Optional.of(unit);
            }
        }
        List<TradeUnit> meant =
                units.stream().filter(unit -> matches(unit, true)).toList();
        return meant.size() == 1 && sameM(meant.get(0)) ? Optional.of(meant.get(0)) : Optional.empty();
    }

    /** Whether both are the same but for the case of letters. */
    boolean isLike(String spelling) {
        return same(key(spelling), true);
    }

    private boolean matches(TradeUnit unit, boolean anyCase) {
        if (same(key(unit.symbol()), anyCase)) {
            return true;
        }
        for (String alias : unit.aliases()) {
            if (same(key(alias), anyCase)) {
                return true;
            }
        }
        return false;
    }

    private boolean same(String spelling, boolean anyCase) {
        return anyCase ? key.equalsIgnoreCase(spelling) : key.equals(spelling);
    }

    private boolean sameM(TradeUnit unit) {
        if (sameM(key(unit.symbol()))) {
            return true;
        }
        return unit.aliases().stream().anyMatch(alias -> sameM(key(alias)));
    }

    private boolean sameM(String spelling) {
        if (!key.equalsIgnoreCase(spelling)) {
            return false;
        }
        for (int i = 0; i < key.length(); i++) {
            if (Character.toLowerCase(key.charAt(i)) == 'm'
                    && key.charAt(i) != spelling.charAt(i)
                    && mayBePrefixOrMetre(spelling, i)) {
                return false;
            }
        }
        return true;
    }

    /** An m at the head of a symbol is a prefix or the metre, unless it is the m of minute, metre or words like these. */
    private static boolean mayBePrefixOrMetre(String spelling, int at) {
        boolean head = at == 0 || !Character.isLetter(spelling.charAt(at - 1));
        return head && !spelling.startsWith("min", at) && !spelling.startsWith("metre", at);
    }

    /** One form for what looks alike: superscripts, the two omegas, the two degree signs, spaces around a solidus. */
    private static String key(String typed) {
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
