// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.inputs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Titles;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Step;
import twinfeed.workbook.sheet.CellNames;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** The block of inputs that drives the workbook: cells of the sheet of the survey, and which of them a working means. */
public final class Inputs {
    /** What the origins of first trials of a search begin with: they are no inputs, any near value does. */
    public static final String START = "start.";

    /** What the origins of readings begin with whose thing the work renews with the same figure. */
    static final String RENEWED = twinfeed.calculator.formula.Origin.RENEWED;

    private static final int LAST = 4;
    private static final Pattern ELEMENT = Pattern.compile("\\[([^\\]]*)\\][^\\[]*$");

    private final QuoteSheets sheets;
    private final CellNames names;
    private final ReadingCells readings = new ReadingCells();
    private final OtherInputs others = new OtherInputs(readings);
    private final Map<String, List<Step>> used = new HashMap<>();

    /** The inputs of a document's workings. */
    public Inputs(QuoteSheets sheets, CellNames names) {
        this.sheets = sheets;
        this.names = names;
        steps(step -> used.computeIfAbsent(step.getOrigin(), path -> new ArrayList<>())
                .add(step));
    }

    private void steps(Consumer<Step> each) {
        for (OptionAssessment option : sheets.document().assessment().getOptions()) {
            Stream.concat(option.getFindings().stream(), option.getAfterWork().stream())
                    .flatMap(finding -> finding.getSteps().stream())
                    .filter(Inputs::known)
                    .forEach(each);
        }
    }

    /** Whether a line is an input whose origin is known. */
    private static boolean known(Step step) {
        return step.getExpression() == null
                && step.getOrigin() != null
                && !step.getOrigin().startsWith(START);
    }

    static double value(Step step) {
        return step.getValue() == null ? 0 : step.getValue();
    }

    static String unit(Step step) {
        return step.getUnit() == null ? "" : step.getUnit();
    }

    /** The cells of readings. */
    public ReadingCells readings() {
        return readings;
    }

    /**
     * Whether a working uses the reading of a path, so that the workbook follows a change of it. Where work changes the reading, that is
     * another figure. The reading must have its cell.
     */
    public boolean uses(String path) {
        return used.getOrDefault(path, List.of()).stream()
                .anyMatch(step -> readings.formula(path, value(step), unit(step)) != null);
    }

    /** The style of a reading's cell. */
    public CellStyle look(String path, CellStyle base) {
        return uses(path) ? base.fill(CellStyle.Fill.INPUT) : base;
    }

    /** Names the cell of an input after its path. */
    public void name(String path, String address) {
        if (uses(path)) {
            names.add("v_" + path, address);
        }
    }

    /** Writes the inputs that are no readings, under the readings; call it when all readings have their cells. */
    public void writeOthers(SheetWriter page) {
        steps(step -> {
            if (readings.formula(step.getOrigin(), value(step), unit(step)) == null) {
                others.find(step);
            }
        });
        Map<String, String> heaters = sheets.document().assessment().getOptions().stream()
                .collect(Collectors.toMap(
                        option -> "heater[" + option.getHeaterId() + "]",
                        option -> Titles.option(sheets.words(), option),
                        (first, second) -> first));
        for (OtherInputs.Group group : OtherInputs.Group.values()) {
            boolean first = true;
            for (Step step : others.of(group)) {
                if (first) {
                    page.gap(4);
                    page.row().text(0, LAST, sheets.words().get("inputs." + group), SheetStyles.BAND);
                    first = false;
                }
                write(page, step, heaters);
            }
        }
    }

    private void write(SheetWriter page, Step step, Map<String, String> heaters) {
        String path = step.getOrigin();
        double value = value(step);
        page.row().text(0, label(step, heaters), SheetStyles.LINE);
        page.number(
                1, value, SheetStyles.LINE.format(NumberFormats.exact(value)).fill(CellStyle.Fill.INPUT));
        page.text(2, step.getUnit(), SheetStyles.LINE);
        page.text(3, LAST, step.getSource(), SheetStyles.LINE_MUTED);
        // What a reading becomes by the work has a name of its own beside the reading's.
        names.add((readings.has(path) ? "v_done." : "v_") + path, page.fullAddress(1));
        others.place(step, page.fullAddress(1));
    }

    private static String label(Step step, Map<String, String> heaters) {
        String path = step.getOrigin();
        Matcher element = ELEMENT.matcher(path);
        if (!element.find()) {
            return step.getMeaning();
        }
        String owner = heaters.getOrDefault(path.substring(0, path.indexOf(']') + 1), element.group(1));
        return owner.isEmpty() ? step.getMeaning() : step.getMeaning() + ", " + owner;
    }

    /** The formula that gives an input's figure from the block of inputs; absent where its origin is not known. */
    public @Nullable String formula(Step step) {
        if (!known(step)) {
            return null;
        }
        String reading = readings.formula(step.getOrigin(), value(step), unit(step));
        return reading == null ? others.address(step) : reading;
    }
}
