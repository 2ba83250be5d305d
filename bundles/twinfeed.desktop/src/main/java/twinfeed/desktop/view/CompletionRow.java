// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.List;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.completion.CompletionReading;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.shape.Tone;

/**
 * A reading after the work as it is shown.
 *
 * @param title what is measured
 * @param value what was read; words where it was not entered
 * @param expected what it should be; empty if nobody can tell
 * @param judged sign and word
 * @param tone the colour that goes with them
 */
public record CompletionRow(String title, String value, String expected, String judged, Tone tone) {
    /** All readings of a sheet, in the order in which they are taken. */
    public static List<CompletionRow> of(CompletionSheet sheet, Words words) {
        return sheet.readings().stream().map(each -> of(each, words)).toList();
    }

    private static CompletionRow of(CompletionReading reading, Words words) {
        String state = state(reading);
        return new CompletionRow(
                reading.title(),
                reading.entered() ? reading.value() : words.get("completion.notEntered"),
                reading.expected(),
                sign(state) + " " + words.get("completion.sound." + state),
                tone(state));
    }

    private static String state(CompletionReading reading) {
        if (reading.sound() != null) {
            return reading.wrong() ? reading.safety() ? "unsafe" : "wrong" : "sound";
        }
        return reading.needed() ? "open" : "unneeded";
    }

    private static String sign(String state) {
        return switch (state) {
            case "sound" -> "\u2713";
            case "unsafe", "wrong" -> "\u2717";
            case "open" -> "?";
            default -> "\u2013";
        };
    }

    private static Tone tone(String state) {
        return switch (state) {
            case "sound" -> Tone.GOOD;
            case "unsafe", "wrong" -> Tone.BAD;
            case "open" -> Tone.DOUBT;
            default -> Tone.QUIET;
        };
    }

    /** The colour of what follows from a whole sheet. */
    public static Tone tone(CompletionSheet sheet) {
        return switch (sheet.state()) {
            case "complete" -> Tone.GOOD;
            case "open" -> Tone.DOUBT;
            default -> Tone.BAD;
        };
    }
}
