// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.apache.fop.fonts.CMapSegment;
import org.apache.fop.fonts.truetype.FontFileReader;
import org.apache.fop.fonts.truetype.TTFFile;

/**
 * Which letters the embedded typefaces have. A letter is set in the first family that has it; what neither has is replaced by the sign
 * that Unicode keeps for that, so that it is seen and stops nothing.
 */
final class FontSelector {
    /** Family of running text. */
    static final String TEXT = "Text";

    /** Family of signs and of other scripts. */
    static final String SIGNS = "Signs";

    private static final int REPLACEMENT = 0xFFFD;

    /** FOP keeps letters as single Java characters. */
    private static final int LAST_PLANE_0 = 0xFFFF;

    /** A longer word than this may be broken within, or it would leave a narrow column. */
    private static final int LONG_WORD = 24;

    /** Where a long word may first be broken. */
    private static final int FIRST_BREAK = 8;

    private static final char BREAK_HERE = '\u200B';

    /** A place where a word may be broken, and shows a hyphen if it is. */
    private static final char HYPHEN_HERE = '\u00AD';

    private static final String VOWELS = "aeiouyäöü";

    /**
     * Letters that are set in one family.
     *
     * @param family the family
     * @param text the letters
     */
    record Run(String family, String text) {}

    private final BitSet text;
    private final BitSet signs;
    private final ArabicForms arabic;
    private final Pictographs pictographs;

    FontSelector() {
        text = covered("LiberationSans-Regular.ttf");
        text.and(covered("LiberationSans-Bold.ttf"));
        signs = covered("DejaVuSans.ttf");
        signs.and(covered("DejaVuSans-Bold.ttf"));
        arabic = new ArabicForms(signs::get);
        pictographs = new Pictographs(letter -> letter <= LAST_PLANE_0 && (text.get(letter) || signs.get(letter)));
    }

    private static BitSet covered(String file) {
        try (InputStream stream = FontSelector.class.getResourceAsStream("fonts/" + file)) {
            TTFFile font = new TTFFile(false, false);
            font.readFont(new FontFileReader(stream), "", file);
            BitSet letters = new BitSet();
            for (CMapSegment segment : font.getCMaps()) {
                letters.set(segment.getUnicodeStart(), segment.getUnicodeEnd() + 1);
            }
            return letters;
        } catch (IOException broken) {
            throw new UncheckedIOException("typeface " + file, broken);
        }
    }

    /** Cuts a text into runs of one family each, Arabic letters joined, pictographs as signs or by their names. */
    List<Run> set(String whole) {
        return runs(arabic.of(pictographs.of(whole)));
    }

    /** A text in one family, that of signs where a letter needs it; for drawings, where nothing is broken. */
    Run whole(String whole) {
        StringBuilder letters = new StringBuilder();
        String family = TEXT;
        for (int letter :
                arabic.of(pictographs.of(whole)).codePoints().map(this::shown).toArray()) {
            letters.appendCodePoint(letter);
            family = Character.isWhitespace(letter) || text.get(letter) ? family : SIGNS;
        }
        return new Run(family, letters.toString());
    }

    /** Cuts a text into runs of one family each. */
    List<Run> runs(String whole) {
        List<Run> runs = new ArrayList<>();
        StringBuilder open = new StringBuilder();
        String family = TEXT;
        int[] letters = whole.codePoints().map(this::shown).toArray();
        int word = 0;
        for (int at = 0; at < letters.length; at++) {
            int shown = letters[at];
            String wanted = Character.isWhitespace(shown) || text.get(shown) ? TEXT : SIGNS;
            if (!wanted.equals(family) && open.length() > 0) {
                runs.add(new Run(family, open.toString()));
                open.setLength(0);
            }
            family = wanted;
            word = ends(shown) ? 0 : word + 1;
            open.appendCodePoint(shown);
            if (word >= FIRST_BREAK && word + rest(letters, at) > LONG_WORD) {
                breakable(letters, at, open);
            }
        }
        if (open.length() > 0) {
            runs.add(new Run(family, open.toString()));
        }
        return runs;
    }

    /**
     * Lets a line end behind a letter: in a word where a syllable may begin, which is a consonant before a vowel and right often enough in
     * English and German; anywhere in a code, without a hyphen that would be taken for a part of it.
     */
    private static void breakable(int[] letters, int at, StringBuilder open) {
        if (at + 2 >= letters.length || !Character.isLetter(letters[at]) || !Character.isLetter(letters[at + 1])) {
            open.append(BREAK_HERE);
        } else if (!vowel(letters[at + 1]) && letters[at + 1] != 'h' && vowel(letters[at + 2])) {
            open.append(HYPHEN_HERE);
        }
    }

    /** Whether a line may end here anyhow. */
    private static boolean ends(int letter) {
        return Character.isWhitespace(letter) || letter == '-';
    }

    private static boolean vowel(int letter) {
        return VOWELS.indexOf(Character.toLowerCase(letter)) >= 0;
    }

    /** Letters of the word behind a place. */
    private static int rest(int[] letters, int at) {
        int end = at + 1;
        while (end < letters.length && !ends(letters[end])) {
            end++;
        }
        return end - at - 1;
    }

    private int shown(int letter) {
        if (letter == '\n' || letter == '\t' || letter == '\r') {
            return ' ';
        }
        if (letter == HYPHEN_HERE) {
            return letter;
        }
        boolean control = letter < ' ' || Character.getType(letter) == Character.FORMAT || letter > LAST_PLANE_0;
        return !control && (text.get(letter) || signs.get(letter)) ? letter : REPLACEMENT;
    }
}
