// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.quick;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.rules.CableSize;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.calculator.rules.RuleTitles;
import twinfeed.desktop.quick.QuickReadings.Field;
import twinfeed.desktop.text.Decimals;
import twinfeed.desktop.text.Words;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.units.UnitException;
import twinfeed.usecase.FormulaAnswer;
import twinfeed.usecase.NamedFormula;
import twinfeed.usecase.TwinfeedService;

/**
 * What the strongest heater of a circuit is, or what circuit a heater needs, without a survey. Every figure is the answer of a formula
 * that the calculators publish; here they are only asked one after the other, and the first rating and size that suffice are picked.
 */
public final class QuickQuestion {
    private static final int DIGITS = 3;
    private static final double TO_MM2 = 1e6;
    private static final double SAME_SIZE_MM2 = 1e-6;

    private final TwinfeedService service;
    private final Words words;
    private final RuleSet rules = RuleSets.standard();

    /** Asked of these use cases, answered in one language. */
    public QuickQuestion(TwinfeedService service, Words words) {
        this.service = service;
        this.words = words;
    }

    /** Device, cable, method and length are given: the strongest heater, what sets the limit, the longest run, the winter flow. */
    public QuickAnswer strongest(QuickReadings given) {
        return guarded(given, List.of(Field.RATING, Field.SIZE, Field.LENGTH), lines -> {
            String notMade = notMade(given);
            if (notMade != null) {
                return notMade;
            }
            Map<String, String> circuit = given.arguments(words.locale(), Field.RATING, Field.SIZE, Field.LENGTH);
            circuit.put("device", given.device());
            circuit.put("method", given.method());
            Asked power = ask("highest-power", circuit);
            if (power.refused()) {
                return power.trouble();
            }
            double powerW = power.si("highestPower");
            lines.add(line(
                    "power",
                    words.format(
                            "quick.at",
                            Map.of(
                                    "value", power.text("highestPower"),
                                    "voltage",
                                            Quantities.format(
                                                    Kind.VOLTAGE,
                                                    defaultValue("highest-power", "rated"),
                                                    DIGITS,
                                                    words.locale())))));
            lines.add(line("binds", power.warnings()));
            lines.add(line("capacity", power.text("capacity")));
            return follows(given, new Chosen(text(given, Field.SIZE), text(given, Field.RATING)), powerW, lines);
        });
    }

    /** The heater's power, method and length are given: the smallest device and cable that carry it, and likewise. */
    public QuickAnswer needed(QuickReadings given) {
        return guarded(given, List.of(Field.POWER, Field.LENGTH), lines -> {
            double powerW =
                    given.value(Field.POWER, words.locale()).orElseThrow().si();
            Asked element = ask("element", Map.of("power", watts(powerW)));
            if (element.refused()) {
                return element.trouble();
            }
            lines.add(line("current", element.text("designCurrent")));
            Optional<Double> rating = rating(given.device(), element.si("designCurrent"));
            if (rating.isEmpty()) {
                return words.get("quick.noDevice");
            }
            lines.add(line("device", Quantities.format(Kind.CURRENT, rating.get(), DIGITS, words.locale())));
            Map<String, String> circuit = given.arguments(words.locale(), Field.LENGTH);
            circuit.put("device", given.device());
            circuit.put("method", given.method());
            circuit.put("rating", amperes(rating.get()));
            Optional<CableSize> size = size(circuit, given.method(), powerW);
            if (size.isEmpty()) {
                return words.get("quick.noSize");
            }
            String area = area(size.get());
            lines.add(
                    line("cable", Quantities.format(Kind.AREA, size.get().sizeMm2() / TO_MM2, DIGITS, words.locale())));
            lines.add(line(
                    "binds", words.get(boundByCapacity(circuit, size.get()) ? "quick.byCapacity" : "quick.byDrop")));
            return follows(given, new Chosen(area, amperes(rating.get())), powerW, lines);
        });
    }

    /** What is not made, or not in the tables, in the words of the page; null where all is. */
    private @Nullable String notMade(QuickReadings given) {
        double rating = given.value(Field.RATING, words.locale()).orElseThrow().si();
        List<Double> ratings =
                rules.devices().find(given.device()).map(DeviceKind::ratings).orElse(List.of());
        if (!ratings.isEmpty() && !ratings.contains(rating)) {
            return words.format(
                    "quick.noRating",
                    Map.of(
                            "rating",
                            given.text(Field.RATING),
                            "device",
                            new RuleTitles(rules, words.locale()).device(given.device()),
                            "ratings",
                            list(ratings) + " A"));
        }
        double areaMm2 =
                TO_MM2 * given.value(Field.SIZE, words.locale()).orElseThrow().si();
        List<Double> sizes = rules.cables().sizes(rules.cables().first()).stream()
                .map(CableSize::sizeMm2)
                .toList();
        return sizes.stream().anyMatch(each -> Math.abs(each - areaMm2) < SAME_SIZE_MM2)
                ? null
                : words.format(
                        "quick.noSuchSize", Map.of("size", given.text(Field.SIZE), "sizes", list(sizes) + " mm\u00b2"));
    }

    private String list(List<Double> numbers) {
        return numbers.stream()
                .map(each -> Decimals.write(BigDecimal.valueOf(each), words.locale()))
                .collect(Collectors.joining(", "));
    }

    /** The smallest rating in which this kind of device is made and which is no smaller than the current. */
    private Optional<Double> rating(String device, double currentA) {
        return rules.devices().find(device).map(DeviceKind::ratings).orElse(List.of()).stream()
                .filter(each -> !LimitType.fallsShort(each, currentA))
                .findFirst();
    }

    /** The smallest size on which the strongest heater is no weaker than this one. */
    private Optional<CableSize> size(Map<String, String> circuit, String method, double powerW) {
        return rules.cables().sizes(rules.cables().first()).stream()
                .filter(each -> each.currentA(method).isPresent())
                .filter(each -> {
                    Map<String, String> with = new LinkedHashMap<>(circuit);
                    with.put("size", area(each));
                    Asked strongest = ask("highest-power", with);
                    return !strongest.refused() && !LimitType.fallsShort(strongest.si("highestPower"), powerW);
                })
                .findFirst();
    }

    private boolean boundByCapacity(Map<String, String> circuit, CableSize size) {
        Map<String, String> with = new LinkedHashMap<>(circuit);
        with.remove("length");
        Asked needed = ask("needed-rating", with);
        return Quantities.parse(Kind.AREA, area(size)).si() <= needed.si("smallestSize");
    }

    /** What follows from a heater on a cable: how far that may run, and how much water the heater warms in winter. */
    private @Nullable String follows(QuickReadings given, Chosen chosen, double powerW, List<QuickAnswer.Line> lines) {
        Map<String, String> run = new LinkedHashMap<>(Map.of("size", chosen.size(), "power", watts(powerW)));
        boolean loop = !given.text(Field.LOOP).isEmpty();
        if (loop) {
            run.putAll(given.arguments(words.locale(), Field.LOOP));
            run.put("rating", chosen.rating());
            run.put("device", given.device());
        }
        Asked longest = ask("max-run", run);
        if (longest.refused()) {
            lines.add(line("run", longest.trouble()));
        } else {
            String key = loop ? "run" : "runByDrop";
            lines.add(line(
                    key,
                    words.format(
                            "quick.run.of", Map.of("value", longest.text("longestRun"), "binds", longest.warnings()))));
        }
        return flow(given, chosen, powerW, lines);
    }

    private @Nullable String flow(QuickReadings given, Chosen chosen, double powerW, List<QuickAnswer.Line> lines) {
        Map<String, String> heat = given.arguments(words.locale(), Field.INTAKE);
        heat.put("power", watts(powerW));
        if (!given.text(Field.SUPPLY).isEmpty()) {
            Map<String, String> supplied = given.arguments(words.locale(), Field.SUPPLY, Field.LENGTH);
            supplied.put("power", watts(powerW));
            supplied.put("size", chosen.size());
            supplied.put("method", given.method());
            Asked delivered = ask("delivered", supplied);
            if (delivered.refused()) {
                return delivered.trouble();
            }
            lines.add(line(
                    "delivered",
                    words.format(
                            "quick.at",
                            Map.of("value", delivered.text("power"), "voltage", delivered.text("terminalVoltage")))));
            heat.put("rated", defaultValue("delivered", "rated") + " V");
            heat.put("supply", delivered.si("terminalVoltage") + " V");
        }
        if (!heat.containsKey("intake")) {
            return words.get("quick.noIntake");
        }
        Asked flow = ask("flow", heat);
        if (flow.refused()) {
            return flow.trouble();
        }
        lines.add(line(
                "flow",
                words.format(
                        "quick.flow.of",
                        Map.of(
                                "value", flow.text("outletFlow"),
                                "outlet",
                                        Quantities.format(
                                                Kind.TEMPERATURE, defaultValue("flow", "outlet"), 2, words.locale()),
                                "intake", given.text(Field.INTAKE)))));
        return null;
    }

    private String text(QuickReadings given, Field field) {
        return given.value(field, words.locale()).orElseThrow().toString();
    }

    /** The circuit that an answer is about, as arguments of formulas. */
    private record Chosen(String size, String rating) {}

    private interface Question {
        @Nullable
        String ask(List<QuickAnswer.Line> lines);
    }

    /** What is missing or cannot be read is said, not thrown. */
    private QuickAnswer guarded(QuickReadings given, List<Field> required, Question question) {
        List<String> missing = new ArrayList<>(required.stream()
                .filter(each -> given.text(each).isEmpty())
                .map(each -> words.get("quick.field." + each.key()))
                .toList());
        if (given.method().isEmpty()) {
            missing.add(words.get("quick.field.method"));
        }
        if (!missing.isEmpty()) {
            return new QuickAnswer(
                    List.of(), words.format("quick.missing", Map.of("fields", String.join(", ", missing))));
        }
        List<QuickAnswer.Line> lines = new ArrayList<>();
        try {
            return new QuickAnswer(lines, question.ask(lines));
        } catch (UnitException e) {
            return new QuickAnswer(
                    List.of(), e.reading() + ": " + e.wrong(words.locale()) + "; " + e.right(words.locale()));
        } catch (ArgumentException e) {
            return new QuickAnswer(List.of(), said(e));
        }
    }

    /** A refused argument by the name of the field in which it was typed; one that was not typed, by its key. */
    private String said(ArgumentException refused) {
        return Stream.of(Field.values())
                .filter(each -> each.key().equals(refused.argument()))
                .map(each -> words.get("quick.field." + each.key()) + ": " + refused.typed() + " " + refused.reason())
                .findFirst()
                .orElse(String.valueOf(refused.getMessage()));
    }

    private QuickAnswer.Line line(String key, String text) {
        return new QuickAnswer.Line(words.get("quick.answer." + key), text);
    }

    private static String watts(double si) {
        return si + " W";
    }

    private static String amperes(double si) {
        return si + " A";
    }

    private static String area(CableSize size) {
        return size.sizeMm2() + " mm²";
    }

    private NamedFormula formula(String name) {
        return service.formula(name)
                .orElseThrow(() -> new ArgumentException(words.format("quick.noFormula", Map.of("name", name))));
    }

    /** The value in SI that a formula takes where none is given. */
    private double defaultValue(String formula, String key) {
        return formula(formula).formula().parameters().stream()
                .filter(each -> each.key().equals(key))
                .map(Parameter::defaultValue)
                .findFirst()
                .orElseThrow();
    }

    private Asked ask(String name, Map<String, String> arguments) {
        return new Asked(formula(name).answer(arguments, words.locale()));
    }

    private final class Asked {
        private final FormulaAnswer answer;

        Asked(FormulaAnswer answer) {
            this.answer = answer;
        }

        boolean refused() {
            return answer.refused();
        }

        String trouble() {
            return answer.trouble().text();
        }

        String warnings() {
            return answer.warnings().stream().map(FormulaAnswer.Note::text).collect(Collectors.joining("; "));
        }

        private FormulaAnswer.Result result(String key) {
            return answer.results().stream()
                    .filter(each -> each.key().equals(key))
                    .findFirst()
                    .orElseThrow();
        }

        double si(String key) {
            return result(key).si();
        }

        String text(String key) {
            FormulaAnswer.Result result = result(key);
            return Quantities.format(result.kind(), result.si(), DIGITS, words.locale());
        }
    }
}
