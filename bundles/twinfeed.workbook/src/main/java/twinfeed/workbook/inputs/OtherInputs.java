// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.inputs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Step;

/**
 * Inputs of workings that are no readings of the survey: data of heaters, figures of tables and rules, defaults, and readings that the
 * work changes. Each stands once, whoever uses it.
 */
final class OtherInputs {
    /** What an input is, in the order in which the sheet shows them. */
    enum Group {
        /** A heater's datum. */
        HEATER,
        /** A table, a rule, a default or an assumption. */
        TABLE,
        /** What a reading becomes by the work. */
        WORK
    }

    /** Path, value and unit make an input: the same path has another value where work changes it. */
    private record Key(String path, double value, String unit) {
        static Key of(Step step) {
            return new Key(step.getOrigin(), Inputs.value(step), Inputs.unit(step));
        }
    }

    private final Map<Key, Step> found = new LinkedHashMap<>();
    private final Map<Key, String> addresses = new HashMap<>();
    private final ReadingCells readings;

    OtherInputs(ReadingCells readings) {
        this.readings = readings;
    }

    /** Takes note of an input that is no reading. */
    void find(Step step) {
        found.putIfAbsent(Key.of(step), step);
    }

    /** The inputs of a group, in the order in which they were found. */
    List<Step> of(Group group) {
        List<Step> some = new ArrayList<>();
        for (Step step : found.values()) {
            if (group(step.getOrigin()) == group) {
                some.add(step);
            }
        }
        return some;
    }

    private Group group(String path) {
        if (path.startsWith("heater[")) {
            return Group.HEATER;
        }
        return path.startsWith(Inputs.RENEWED) || readings.has(path) ? Group.WORK : Group.TABLE;
    }

    /** Says where an input stands. */
    void place(Step step, String address) {
        addresses.put(Key.of(step), address);
    }

    /** Where an input stands. */
    @Nullable
    String address(Step step) {
        return addresses.get(Key.of(step));
    }
}
