// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.List;
import java.util.Locale;

/**
 * Letters that are typed over a list of answers, and the answer that they lead to. Letters that follow each other soon belong together;
 * the same letter again goes on to the next answer that begins with it.
 */
public final class TypedLetters {
    /** Letters that come later than this begin anew. */
    public static final int PAUSE_MS = 1000;

    private String typed = "";
    private long last;

    /**
     * The number of the answer that a letter leads to, or the present one where it leads to none.
     *
     * @param letter what was typed
     * @param atMs when, in milliseconds of any clock
     * @param present number of the answer that is chosen; -1 for none
     */
    public int next(char letter, long atMs, List<String> answers, int present) {
        String before = atMs - last > PAUSE_MS ? "" : typed;
        last = atMs;
        String now = before + Character.toLowerCase(letter);
        boolean again = !before.isEmpty() && now.chars().allMatch(each -> each == now.charAt(0));
        typed = now;
        int found = find(now, answers, Math.max(0, present));
        if (found < 0 && again) {
            typed = now.substring(0, 1);
            found = find(typed, answers, present + 1);
        } else if (now.length() == 1) {
            found = find(now, answers, present + 1);
        }
        return found < 0 ? present : found;
    }

    /** First the answers that begin so, then those in which a later word does; from a number on and around. */
    private static int find(String start, List<String> answers, int from) {
        for (boolean word : new boolean[] {false, true}) {
            for (int i = 0; i < answers.size(); i++) {
                int index = Math.floorMod(from + i, answers.size());
                String answer = answers.get(index).toLowerCase(Locale.ROOT);
                if (answer.startsWith(start) || (word && answer.contains(" " + start))) {
                    return index;
                }
            }
        }
        return -1;
    }
}
