// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.engineering.demand.Demand;
import twinfeed.engineering.demand.Diversity;
import twinfeed.engineering.demand.DiversityLoad;
import twinfeed.model.survey.LoadKind;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;

/** The function {@code max-demand}: currents by kind of load, several of a kind joined with a plus sign. */
final class MaximumDemand {
    private static final double MOST_A = 1000;

    private static final Pattern JOINED = Pattern.compile("[+,]");

    static final Formula FORMULA = new Formula("max-demand", parameters(), MaximumDemand::answer);

    private MaximumDemand() {}

    private static String key(LoadKind kind) {
        return kind.getLiteral();
    }

    private static List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>();
        for (LoadKind kind : LoadKind.VALUES) {
            parameters.add(Parameter.word(key(kind), ""));
        }
        parameters.add(Parameter.word("socket", "no", "no", "yes"));
        parameters.add(Parameter.absent("fuse", Kind.CURRENT, 1, MOST_A));
        parameters.add(Parameter.word("rules", RuleSets.DEFAULT));
        return parameters;
    }

    private static Answer answer(Arguments arguments) {
        Optional<RuleSet> rules = RuleSets.find(arguments.word("rules"));
        if (rules.isEmpty()) {
            return Answer.none("unknownRules", Working.none());
        }
        List<DiversityLoad> loads = loads(arguments);
        if (loads.isEmpty()) {
            return Answer.none("noLoads", Working.none());
        }
        DiversityRules diversity = new DiversityRules(rules.get());
        if (!diversity.knows(loads)) {
            return Answer.none("noDiversity", Working.none());
        }
        Demand demand = Diversity.of(loads, diversity.list());
        Working working =
                DemandWorking.of(loads, Map.of(), diversity.list(), rules.get().text("cite.demand"));
        return answer(arguments, demand, working);
    }

    private static Answer answer(Arguments arguments, Demand demand, Working working) {
        List<Answer.Result> results = new ArrayList<>();
        results.add(new Answer.Result("demand", Kind.CURRENT, demand.totalA()));
        results.add(new Answer.Result("connected", Kind.CURRENT, demand.connectedA()));
        if (!arguments.has("fuse")) {
            return Answer.of(working, results.toArray(new Answer.Result[0]));
        }
        double spareA = arguments.si("fuse") - demand.totalA();
        results.add(new Answer.Result("spare", Kind.CURRENT, spareA));
        Answer answer = Answer.of(working, results.toArray(new Answer.Result[0]));
        return spareA < 0 ? answer.warned("overFuse") : answer;
    }

    private static List<DiversityLoad> loads(Arguments arguments) {
        List<DiversityLoad> loads = new ArrayList<>();
        for (LoadKind kind : LoadKind.VALUES) {
            boolean socket = kind == LoadKind.COOKER && "yes".equals(arguments.word("socket"));
            for (String part : JOINED.split(arguments.word(key(kind)))) {
                if (!part.isBlank()) {
                    String id = kind.getLiteral().toLowerCase(Locale.ROOT) + " " + (loads.size() + 1);
                    loads.add(new DiversityLoad(id, kind.getLiteral(), current(kind, part), socket));
                }
            }
        }
        return loads;
    }

    private static double current(LoadKind kind, String text) {
        double currentA = Quantities.parse(Kind.CURRENT, text.strip()).si();
        if (!(currentA >= 0 && currentA <= MOST_A)) {
            throw ArgumentException.outOfRange(key(kind), text.strip(), Kind.CURRENT, 0, MOST_A);
        }
        return currentA;
    }
}
