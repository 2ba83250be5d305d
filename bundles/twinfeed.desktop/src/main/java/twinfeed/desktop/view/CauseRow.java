// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.List;
import java.util.Map;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.document.shape.Tone;

/**
 * A cause as it is shown: by its length, its number and its word, so that none of them carries the meaning alone.
 *
 * @param title its name
 * @param share length of its bar, 0 to 1
 * @param percent the chance in a number
 * @param word the chance in a word
 * @param tone colour of the bar
 * @param reason why it fails, by the data
 */
public record CauseRow(String title, double share, String percent, String word, Tone tone, String reason) {
    /** Least chance that is given a line of its own. */
    private static final double WORTH_A_LINE = 0.01;

    /** The causes that are worth a line, likeliest first. */
    public static List<CauseRow> of(FaultSheet sheet, Words words) {
        return sheet.causes().stream()
                .filter(cause -> cause.chance() >= WORTH_A_LINE)
                .map(cause -> of(cause, words))
                .toList();
    }

    /** How many causes have no line of their own. */
    public static int remote(FaultSheet sheet) {
        return (int) sheet.causes().stream()
                .filter(cause -> cause.chance() < WORTH_A_LINE)
                .count();
    }

    private static CauseRow of(FaultSheet.Cause cause, Words words) {
        String word = cause.likelihood();
        return new CauseRow(
                Character.toUpperCase(cause.title().charAt(0)) + cause.title().substring(1),
                cause.chance(),
                percent(cause.chance(), words),
                words.get("faults.word." + word),
                tone(word),
                cause.reason());
    }

    /** Never 0 and never 100: a ranking claims no certainty. */
    static String percent(double chance, Words words) {
        long rounded = Math.max(1, Math.min(99, Math.round(chance * 100)));
        return words.format("faults.percent", Map.of("percent", String.valueOf(rounded)));
    }

    private static Tone tone(String word) {
        return switch (word) {
            case "likely" -> Tone.BAD;
            case "possible" -> Tone.DOUBT;
            default -> Tone.QUIET;
        };
    }

    /** All of it in a sentence, for screen readers. */
    public String sentence() {
        return title + ": " + percent + ", " + word;
    }
}
