// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Step;
import twinfeed.workbook.inputs.Inputs;

/**
 * Lines that are the same for several workings: the same formula over the same cells. Each is written once, so that a figure stands in one
 * cell and a change is followed by all.
 */
final class SharedLines {
    private final Map<String, String> written = new HashMap<>();

    /** What makes an input of which no origin is known the same as another: its check, symbol, value and unit. */
    static String input(String check, Step step) {
        String origin = step.getOrigin();
        if (origin != null && origin.startsWith(Inputs.START)) {
            return origin + "|" + step.getValue();
        }
        return String.join("|", check, step.getSymbol(), String.valueOf(step.getValue()), step.getUnit());
    }

    /** Whether a formula is nothing but a cell of the sheet itself: then that cell serves. */
    static boolean isCell(String formula) {
        int at = 0;
        while (at < formula.length() && formula.charAt(at) >= 'A' && formula.charAt(at) <= 'Z') {
            at++;
        }
        return at > 0 && at < formula.length() && formula.chars().skip(at).allMatch(Character::isDigit);
    }

    /** The address of a line that is written already, by its identity: its formula, or that of an input. */
    @Nullable
    String find(String identity) {
        return written.get(identity);
    }

    void add(String identity, String address) {
        written.put(identity, address);
    }
}
