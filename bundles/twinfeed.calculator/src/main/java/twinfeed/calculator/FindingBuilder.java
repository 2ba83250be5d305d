// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;
import twinfeed.units.Amount;
import twinfeed.units.text.Phrase;

/** Builds one finding; the outcome follows from value and limit unless it is said otherwise. */
public final class FindingBuilder {
    private final String calculator;
    private final Check check;
    private final boolean figuresOnly;
    private final Consumer<Finding> sink;
    private final Map<String, Object> arguments;
    private final List<Series> series;
    private final List<Supplier<List<Remedy>>> offers;
    private List<String> missing = List.of();
    private Outcome outcome = Outcome.NOT_APPLICABLE;
    private Finding.@Nullable Figures figures;
    private Condition condition = Condition.NONE;
    private String variant = "";
    private String source = "";
    private Supplier<Working> working = Working::none;
    private String limitMeaning = "";
    private String limitOrigin = "";

    FindingBuilder(String calculator, Check check, boolean figuresOnly, Consumer<Finding> sink) {
        this.calculator = calculator;
        this.check = check;
        this.figuresOnly = figuresOnly;
        this.sink = sink;
        this.arguments = figuresOnly ? Map.of() : new LinkedHashMap<>();
        this.series = figuresOnly ? List.of() : new ArrayList<>();
        this.offers = figuresOnly ? List.of() : new ArrayList<>();
    }

    /** One that hands its finding to somebody. */
    public FindingBuilder(String calculator, Check check, Consumer<Finding> sink) {
        this(calculator, check, false, sink);
    }

    /** Value against limit, both in SI, by the check's limit type; passes at a margin of 0 or more, see {@link Check#margin}. */
    public FindingBuilder compare(double value, double limit) {
        double margin = check.margin(value, limit);
        figures = new Finding.Figures(value, limit, margin, true);
        outcome = margin >= 0 ? Outcome.PASSES : Outcome.FAILS;
        return this;
    }

    /** A figure in SI that is only reported: passes. */
    public FindingBuilder report(double value) {
        figures = new Finding.Figures(value, value, 0, false);
        outcome = Outcome.PASSES;
        return this;
    }

    /** Says the outcome outright, for questions of yes or no; call it after {@link #compare} to overrule that. */
    public FindingBuilder outcome(Outcome said) {
        outcome = said;
        return this;
    }

    /** Cannot tell, because these readings are missing. */
    public FindingBuilder cannotTell(List<String> missingReadings) {
        outcome = Outcome.CANNOT_TELL;
        missing = List.copyOf(missingReadings);
        return this;
    }

    /** Picks another text of the outcome: {@code check.KEY.OUTCOME.VARIANT}. */
    public FindingBuilder variant(String key) {
        variant = key;
        return this;
    }

    /** The condition that governs. */
    public FindingBuilder condition(Condition governing) {
        condition = governing;
        return this;
    }

    /**
     * A further value for the text: an {@link Amount} whose unit the pattern names, a bare Number, a String, a {@link Phrase}, or a list of
     * these.
     */
    public FindingBuilder argument(String name, Object value) {
        if (!figuresOnly) {
            arguments.put(name, value);
        }
        return this;
    }

    /** Where limit and method come from. */
    public FindingBuilder source(String citation) {
        source = citation;
        return this;
    }

    /**
     * Says which reading the limit of {@link #compare} is: the working begins with it, so that whoever follows the working, a workbook
     * for instance, follows a change of the limit too.
     *
     * @param meaning as in {@link Step#meaning()}
     * @param origin as in {@link Step#origin()}
     */
    public FindingBuilder limitIs(String meaning, String origin) {
        limitMeaning = meaning;
        limitOrigin = origin;
        return this;
    }

    /** The working, made when somebody asks for it; it must not depend on anything that changes. */
    public FindingBuilder working(Supplier<Working> supplier) {
        working = supplier;
        return this;
    }

    /** Adds a curve, worked out only where somebody may look at it. */
    public FindingBuilder series(Supplier<Series> curve) {
        if (!figuresOnly) {
            series.add(curve.get());
        }
        return this;
    }

    /** Adds work that can fix it. */
    public FindingBuilder remedy(Remedy remedy) {
        return remedies(() -> List.of(remedy));
    }

    /**
     * Says what work can fix it, asked for only where somebody looks for work. Say it of a check that passes too: by the tolerances of
     * the readings it may be too close to call, and work is then looked for as for a failure.
     */
    public FindingBuilder remedies(Supplier<List<Remedy>> offered) {
        if (!figuresOnly) {
            offers.add(offered);
        }
        return this;
    }

    /** Ends the finding and hands it in. */
    public void add() {
        sink.accept(new Finding(
                calculator,
                check,
                outcome,
                figures,
                condition,
                variant,
                Map.copyOf(arguments),
                missing,
                source,
                worked(),
                List.copyOf(series),
                offers.isEmpty() ? List.of() : new OfferedRemedies(offers),
                null));
    }

    private Supplier<Working> worked() {
        Finding.Figures said = figures;
        if (limitMeaning.isEmpty() || said == null) {
            return working;
        }
        Supplier<Working> rest = working;
        String meaning = limitMeaning;
        String origin = limitOrigin;
        return () -> rest.get()
                .after(new Step(
                        LimitType.SYMBOL,
                        meaning,
                        check.unit().fromSi(said.limit()),
                        check.unit().symbol(),
                        null,
                        "",
                        origin));
    }
}
