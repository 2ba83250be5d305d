// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Step;
import twinfeed.model.survey.Survey;
import twinfeed.units.Amount;
import twinfeed.units.text.Phrase;

/**
 * All that is said of a house, finding by finding, as lines that a person can read through: outcome and figures, arguments, the
 * working, curves, and each work, where it is first offered with its items and what it changes in the survey. What a working has in common
 * with one before it is given once. Numbers have five significant digits.
 */
public final class HouseRecord {
    private static final MathContext DIGITS = new MathContext(5);

    private final BiFunction<List<Step>, Set<String>, List<String>> workings;

    private HouseRecord(BiFunction<List<Step>, Set<String>, List<String>> workings) {
        this.workings = workings;
    }

    /** A record with the workings line by line: symbol, value, meaning and origin. */
    public static HouseRecord withLines() {
        return new HouseRecord(HouseRecord::linesOf);
    }

    /** A record with the figures of the workings, those of the rounds of searches left out. */
    public static HouseRecord withFigures() {
        return new HouseRecord(HouseRecord::figuresOf);
    }

    /** The lines of each finding by the key of its check. */
    public Map<String, String> of(Survey survey, List<Finding> findings) {
        Map<String, String> record = new LinkedHashMap<>();
        Set<String> told = new HashSet<>();
        for (Finding finding : findings) {
            List<String> lines = new ArrayList<>();
            lines.add(head(finding));
            String arguments = arguments(finding.arguments());
            if (!arguments.isEmpty()) {
                lines.add("    with " + arguments);
            }
            lines.addAll(workings.apply(finding.working().steps(), told));
            finding.series().forEach(series -> lines.add("    " + series(series)));
            for (Remedy remedy : finding.remedies()) {
                List<String> work = remedy(survey, remedy);
                lines.addAll(told.add(String.join("\n", work)) ? work : List.of("    work " + remedy.id()));
            }
            record.put(finding.check().key(), String.join("\n", lines));
        }
        return record;
    }

    /**
     * What a record says otherwise than another one, as the text of a file.
     *
     * @param record as {@link #of} gives it
     * @param usual the other one; empty for all that the record says
     */
    public static String differences(Map<String, String> record, Map<String, String> usual) {
        return record.entrySet().stream()
                .filter(each -> !each.getValue().equals(usual.get(each.getKey())))
                .map(each -> each.getValue() + "\n")
                .collect(Collectors.joining());
    }

    private static String head(Finding finding) {
        StringBuilder head = new StringBuilder(finding.check().key() + " " + finding.outcome());
        if (!finding.variant().isEmpty()) {
            head.append(" (").append(finding.variant()).append(')');
        }
        Finding.Figures figures = finding.printed();
        if (figures != null) {
            String unit = finding.check().unit().symbol();
            head.append(": ").append(number(figures.value())).append(' ').append(unit);
            if (figures.limited()) {
                head.append(", limit ").append(number(figures.limit()));
            }
        }
        String condition = condition(finding.condition());
        head.append(condition.isEmpty() ? "" : "; at " + condition);
        head.append(finding.missing().isEmpty() ? "" : "; missing " + String.join(", ", finding.missing()));
        return head.toString();
    }

    private static String condition(Condition condition) {
        List<String> parts = new ArrayList<>();
        if (condition.subject() != null) {
            parts.add(condition.subject());
        }
        if (condition.intake() != null) {
            parts.add("month " + condition.intake().month() + " of "
                    + number(condition.intake().temperatureC()) + " °C");
        }
        if (condition.drawOff() != null) {
            parts.add("open " + condition.drawOff().names());
        }
        if (condition.voltageV() != null) {
            parts.add(number(condition.voltageV()) + " V");
        }
        return String.join(", ", parts);
    }

    private static String arguments(Map<String, Object> arguments) {
        return new TreeMap<>(arguments)
                .entrySet().stream()
                        .map(each -> each.getKey() + "=" + value(each.getValue()))
                        .collect(Collectors.joining(", "));
    }

    private static String value(Object value) {
        if (value instanceof Amount amount) {
            return number(amount.doubleValue()) + " " + amount.unit().symbol();
        }
        if (value instanceof Phrase phrase) {
            return phrase.key();
        }
        return value instanceof Number number ? number(number.doubleValue()) : String.valueOf(value);
    }

    private static String number(double value) {
        // What rounding leaves of a difference is nothing.
        BigDecimal rounded =
                new BigDecimal(Math.abs(value) < 1e-9 ? 0 : value).round(DIGITS).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** The lines of a working; of those that stood in another one before, the symbols. */
    private static List<String> linesOf(List<Step> steps, Set<String> told) {
        List<String> lines = new ArrayList<>();
        StringBuilder again = new StringBuilder();
        for (Step each : steps) {
            String line = step(each);
            if (told.add(line)) {
                endOfKnown(again, lines);
                lines.add("    " + line);
            } else {
                again.append(' ').append(each.symbol());
            }
        }
        endOfKnown(again, lines);
        return lines;
    }

    private static void endOfKnown(StringBuilder again, List<String> lines) {
        if (!again.isEmpty()) {
            lines.add("    as above:" + again);
            again.setLength(0);
        }
    }

    private static String step(Step step) {
        String origin = step.origin().isEmpty() ? "" : " <- " + step.origin();
        return step.symbol() + " = " + number(step.value()) + " " + step.unit() + " (" + step.meaning() + ")"
                + (step.expression() == null ? origin : "");
    }

    /** The figures of a working but for the rounds of searches; of those that stood in another one before, how many. */
    private static List<String> figuresOf(List<Step> steps, Set<String> told) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int known = 0;
        for (Step each : steps) {
            String unit = each.unit().isEmpty() ? "" : " " + each.unit();
            String value = each.symbol() + " = " + number(each.value()) + unit;
            if (each.origin().startsWith(Origin.ROUND)) {
                continue;
            }
            if (told.add(value)) {
                line.append(line.isEmpty() ? "" : "; ").append(value);
            } else {
                known++;
            }
        }
        if (!steps.isEmpty()) {
            lines.add("    by " + line + "; and " + known + " as above");
        }
        return lines;
    }

    private static String series(Series series) {
        List<String> points = new ArrayList<>();
        for (int at = 0; at < series.y().length; at++) {
            points.add((series.labels().isEmpty() ? "" : series.labels().get(at) + " ")
                    + number(series.xAxis().unit().fromSi(series.x()[at])) + ": "
                    + number(series.yAxis().unit().fromSi(series.y()[at])));
        }
        return "curve " + series.key() + " " + String.join("; ", points);
    }

    private static List<String> remedy(Survey survey, Remedy remedy) {
        List<String> lines = new ArrayList<>();
        String items = remedy.items().stream()
                .map(item -> item.code() + " x " + item.quantity().toPlainString())
                .collect(Collectors.joining(", "));
        lines.add("    work " + remedy.id() + " (" + remedy.kind() + "): " + items + "; "
                + arguments(remedy.arguments()));
        Survey after = EcoreUtil.copy(survey);
        remedy.edit().accept(after);
        changes("", survey, after, lines);
        return lines;
    }

    private static void changes(String path, @Nullable EObject before, @Nullable EObject after, List<String> lines) {
        EObject either = before == null ? after : before;
        if (either == null) {
            return;
        }
        for (EStructuralFeature feature : either.eClass().getEAllStructuralFeatures()) {
            if (feature.isDerived() || feature.isTransient()) {
                continue;
            }
            compare(path + feature.getName(), get(before, feature), get(after, feature), lines);
        }
    }

    private static @Nullable Object get(@Nullable EObject owner, EStructuralFeature feature) {
        return owner == null || (!feature.isMany() && !owner.eIsSet(feature)) ? null : owner.eGet(feature);
    }

    private static void compare(String path, @Nullable Object before, @Nullable Object after, List<String> lines) {
        if (before instanceof List<?> || after instanceof List<?>) {
            List<?> old = before instanceof List<?> list ? list : List.of();
            List<?> now = after instanceof List<?> list ? list : List.of();
            for (int at = 0; at < Math.max(old.size(), now.size()); at++) {
                compare(
                        path + "[" + at + "]",
                        at < old.size() ? old.get(at) : null,
                        at < now.size() ? now.get(at) : null,
                        lines);
            }
        } else if (before instanceof EObject || after instanceof EObject) {
            changes(path + ".", (EObject) before, (EObject) after, lines);
        } else if (!String.valueOf(before).equals(String.valueOf(after))) {
            lines.add("        " + path + ": " + before + " -> " + after);
        }
    }
}
