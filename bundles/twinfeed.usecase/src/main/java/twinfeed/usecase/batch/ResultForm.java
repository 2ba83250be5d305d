// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The forms in which the results of a list are written. */
public enum ResultForm {
    /** A workbook, most urgent first, with totals and visits. */
    WORKBOOK(".xlsx"),
    /** A line a dwelling with commas between the values, in the order of the list. */
    CSV(".csv"),
    /** A JSON object a line and dwelling, in the order of the list. */
    JSON_LINES(".jsonl");

    private final String ending;

    ResultForm(String ending) {
        this.ending = ending;
    }

    /** How names of its files end, with the dot. */
    public String ending() {
        return ending;
    }

    /** All endings, in order. */
    public static List<String> endings() {
        return List.of(WORKBOOK.ending, CSV.ending, JSON_LINES.ending);
    }

    /** The form that a file's name asks for; a workbook where it asks for none. */
    public static ResultForm of(Path out) {
        String name = out.toString().toLowerCase(Locale.ROOT);
        for (ResultForm form : values()) {
            if (name.endsWith(form.ending)) {
                return form;
            }
        }
        return WORKBOOK;
    }
}
