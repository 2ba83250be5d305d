// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.util.Collection;
import java.util.Locale;

/** The known name that is spelled most like an unknown one. */
public final class NearestName {
    private NearestName() {}

    /**
     * The nearest name by the number of letters to be put in, taken out or changed, without regard to case, spaces, hyphens and
     * underscores: "TNCS" means TN-C-S and not TN-S.
     *
     * @param unknown what was written
     * @param known the names that are known
     * @return one of them, the first of equally near ones; empty if more than a third of what was written,
     *     and more than two letters, would have to change
     */
    public static String of(String unknown, Collection<String> known) {
        String best = "";
        int least = Math.max(2, unknown.length() / 3) + 1;
        String written = letters(unknown);
        for (String name : known) {
            String letters = letters(name);
            // As many letters as one is longer must be taken out: a word of a damaged file may have thousands.
            if (Math.abs(letters.length() - written.length()) < least) {
                int distance = distance(written, letters);
                if (distance < least) {
                    least = distance;
                    best = name;
                }
            }
        }
        return best;
    }

    private static String letters(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[ _-]", "");
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
