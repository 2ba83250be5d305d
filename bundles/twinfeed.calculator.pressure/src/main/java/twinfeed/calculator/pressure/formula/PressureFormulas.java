// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.PipeTables;
import twinfeed.calculator.pressure.survey.ReadingLimits;
import twinfeed.calculator.pressure.working.FeedWorking;
import twinfeed.calculator.pressure.working.WorkingLines;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.units.Kind;

/** Functions for a quick question about pipes; those about supplies and units are in classes of their own. */
public final class PressureFormulas {
    private static final String[] MATERIALS =
            PipeMaterial.VALUES.stream().map(PipeMaterial::getLiteral).toArray(String[]::new);

    private static final List<Parameter> HEAD_LOSS = List.of(
            Parameter.required("bore", Kind.LENGTH, 0.001, 1),
            Parameter.optional("length", Kind.LENGTH, 0, 0, 10_000),
            Parameter.absent("flow", Kind.FLOW, 0, ReadingLimits.MAX_FLOW_M3_PER_S),
            Parameter.absent("velocity", Kind.VELOCITY, 0, 20),
            Parameter.word("material", "copper", MATERIALS),
            Parameter.absent("roughness", Kind.LENGTH, 0, 0.01),
            Parameter.optional("k", Kind.RATIO, 0, 0, 1000),
            FormulaTerms.TEMPERATURE);

    /** All formulas of this calculator. */
    public static final List<Formula> ALL = all();

    private PressureFormulas() {}

    private static List<Formula> all() {
        List<Formula> formulas = new ArrayList<>();
        formulas.add(new Formula("head-loss", HEAD_LOSS, PressureFormulas::headLoss));
        formulas.add(SupplyFormula.FORMULA);
        formulas.add(NetworkFormula.FORMULA);
        formulas.addAll(UnitFormulas.ALL);
        return formulas;
    }

    private static Answer headLoss(Arguments given) {
        if (given.has("flow") == given.has("velocity")) {
            return Answer.none("flowOrVelocity", new WorkingLines().build());
        }
        double bore = given.si("bore");
        double roughness = given.si("roughness", PipeTables.roughnessM(material(given.word("material"))));
        if (roughness > bore * Pipe.LARGEST_RELATIVE_ROUGHNESS) {
            return Answer.none("tooRough", new WorkingLines().build());
        }
        double area = Math.PI * bore * bore / 4;
        double flow = given.si("flow", given.si("velocity", 0) * area);
        if (flow <= 0) {
            return Answer.none("flowNotPositive", new WorkingLines().build());
        }
        PipeSegment pipe = new PipeSegment(given.si("length"), bore, roughness, given.si("k"), 0);
        return headLoss(pipe, flow, given.si("temperature"));
    }

    private static PipeMaterial material(String word) {
        PipeMaterial material = PipeMaterial.get(word);
        if (material == null) {
            throw new IllegalArgumentException("no material " + word);
        }
        return material;
    }

    private static Answer headLoss(PipeSegment pipe, double flow, double temperatureC) {
        Fluid fluid = Fluid.waterAt(temperatureC);
        double headM = Pipe.headLossM(pipe, fluid, flow);
        double reynolds = Pipe.reynolds(flow, pipe.boreM(), fluid);
        List<Answer.Result> results = new ArrayList<>(List.of(
                new Answer.Result("head", Kind.LENGTH, headM),
                new Answer.Result("pressure", Kind.PRESSURE, fluid.pressureOfHead(headM)),
                new Answer.Result("velocity", Kind.VELOCITY, Pipe.velocity(flow, pipe.boreM())),
                new Answer.Result("reynolds", Kind.RATIO, reynolds)));
        if (pipe.lengthM() > 0) {
            results.add(new Answer.Result(
                    "gradient", Kind.GRADIENT_PRESSURE, Pipe.frictionLossPa(pipe, fluid, flow) / pipe.lengthM()));
        }
        WorkingLines lines = new WorkingLines().input("Q", "pipeFlow", Kind.FLOW.amount(flow), "");
        FeedWorking.addWater(lines, temperatureC);
        FeedWorking.addPipe(lines, new NamedPipe("", pipe), "");
        FeedWorking.addLoss(lines, pipe, "Q", "", "");
        lines.step("head", "head", Kind.PRESSURE.inSi("dp") + " / (rho * 9.80665)", "m", "");
        return Answer.of(lines.build(), results.toArray(Answer.Result[]::new))
                .warned(Pipe.regime(reynolds).name().toLowerCase(Locale.ROOT));
    }
}
