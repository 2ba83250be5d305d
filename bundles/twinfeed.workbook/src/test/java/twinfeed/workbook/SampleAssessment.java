// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Assumption;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Series;
import twinfeed.model.assessment.Step;
import twinfeed.model.assessment.Verdict;

/** An assessment with invented heaters, whose workings use every part of the grammar of expressions. */
final class SampleAssessment {
    static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private static final AssessmentFactory MAKE = AssessmentFactory.eINSTANCE;
    private static final double[] INTAKE_C = {7, 6.8, 8, 10, 13, 16, 18.5, 19, 17, 14, 10.5, 8.2};

    private SampleAssessment() {}

    static Assessment make() {
        Assessment assessment = MAKE.createAssessment();
        assessment.setRules("sample-rules");
        assessment.setRulesNote("Invented rule set for tests; check the edition in force.");
        assessment.setProgram("0.1.0");
        assessment.getAssumptions().add(assumption("winterIntake", "Winter intake taken as 5 °C (common practice)"));
        assessment.getAssumptions().add(assumption("hardness", "Hardness of the water not measured"));
        assessment.getOptions().add(option("heater-75", "Heater 7.5 kW, one element", 7.5, true, Verdict.SUITS));
        assessment.getOptions().add(option("heater-85", "Heater 8.5 kW, two-element", 8.5, false, Verdict.SUITS));
        assessment
                .getOptions()
                .add(option("heater-95", "Heater 9.5 kW, two-element", 9.5, false, Verdict.SUITS_WITH_WORK));
        assessment
                .getOptions()
                .add(option("heater-105", "Heater 10.5 kW, two-element", 10.5, false, Verdict.DOES_NOT_SUIT));
        return assessment;
    }

    private static Assumption assumption(String key, String text) {
        Assumption assumption = MAKE.createAssumption();
        assumption.setKey(key);
        assumption.setText(text);
        return assumption;
    }

    private static OptionAssessment option(String id, String title, double powerKw, boolean present, Verdict verdict) {
        OptionAssessment option = MAKE.createOptionAssessment();
        option.setHeaterId(id);
        option.setTitle(title);
        option.setPresent(present);
        option.setPowerKw(powerKw);
        option.setVerdict(verdict);
        option.getFindings().add(flow(powerKw));
        option.getFindings().add(drop(powerKw));
        option.getFindings().add(Iteration.finding(powerKw));
        option.getFindings().add(loop());
        option.getFindings().add(voltage());
        option.getFindings().add(doubtful());
        option.getFindings().add(unanswered());
        if (verdict == Verdict.SUITS_WITH_WORK) {
            Remedy remedy = MAKE.createRemedy();
            remedy.setId("cable-10");
            remedy.setTitle("New 10 mm² cable, 15.5 m");
            option.getRemedies().add(remedy);
            option.getAfterWork().add(flow(powerKw * 1.02));
            option.getAfterWork().add(drop(powerKw));
            option.getAfterWork().add(loop());
        }
        return option;
    }

    private static Finding flow(double powerKw) {
        Working.Builder working = Working.start()
                .input("P", "Power delivered", powerKw * 1000, "W", "")
                .input("T_out", "Outlet temperature", 40, "°C", "Survey")
                .input("T_in", "Intake temperature in winter", 5, "°C", "Assumption")
                .input("c", "Heat capacity of water, mean", 4183, "J/(kg K)", "IAPWS-IF97, rounded")
                .input("rho", "Density of the intake water", 999.97, "kg/m³", "IAPWS-IF97, rounded")
                .step("m", "Mass flow", "P / (c * (T_out - T_in))", "kg/s", "")
                .step("q", "Flow at the inlet", "m / rho * 60000", "L/min", "");
        Finding finding = finding("flow.winter", "Flow in winter", FindingClass.PERFORMANCE, working.build(), "L/min");
        finding.setTopic(CheckTopic.WINTER_FLOW);
        figures(finding, working.value("q"), 3.0, working.value("q") - 3.0);
        finding.setCondition("winter design, 5 °C");
        finding.setText("In winter it gives as much water as the figure says, at 40 °C.");
        finding.getSeries().add(monthly(powerKw));
        finding.getSeries()
                .add(curve("supply", "What the supply gives", new double[] {0, 2, 4, 6, 8, 10}, 3.2, -0.0155));
        finding.getSeries().add(curve("need", "What the unit needs", new double[] {0, 2, 4, 6, 8, 10}, 0.0, 0.012));
        finding.getSeries().add(curve("operating", "Operating point", new double[] {working.value("q")}, 3.2, -0.0155));
        finding.getSeries().add(curve("switch", "Switch opens", new double[] {0, 10}, 0.35, 0));
        return finding;
    }

    private static Finding drop(double powerKw) {
        Working.Builder working = Working.start()
                .input("L", "Length of the run", 15.5, "m", "Survey")
                .input("l", "Length in insulation", 0.4, "m", "Survey")
                .input("mv", "Voltage drop of the cable", 7.3, "mV/(A m)", "Invented table")
                .input("P", "Rated power", powerKw * 1000, "W", "Catalogue")
                .input("U", "Rated voltage", 230, "V", "Catalogue")
                .step("Ib", "Design current", "P / U", "A", "")
                .step("limit", "Limit of the drop", "0.05 * U", "V", "Rule set")
                .step("drop", "Voltage drop", "mv * Ib * (L + 0 * l) / 1000", "V", "");
        Finding finding = finding("circuit.voltageDrop", "Voltage drop", FindingClass.COMPLIANCE, working.build(), "V");
        finding.setTopic(CheckTopic.VOLTAGE_DROP);
        figures(finding, working.value("drop"), working.value("limit"), working.value("limit") - working.value("drop"));
        finding.setChance(0.998);
        finding.setRemeasure("Length of the run");
        finding.setText("The cable loses a little of the voltage.");
        finding.setSource("Invented table");
        return finding;
    }

    private static Finding loop() {
        Working.Builder working = Working.start()
                .input("Ze", "External loop impedance", 0.24, "ohm", "Survey")
                .input("R12", "R1+R2", 0.146, "ohm", "Invented table")
                .input("h", "Factor for warm conductors", 1.2, "", "Invented table")
                .step("Zs", "Loop impedance", "Ze + h * R12", "ohm", "");
        Finding finding = finding(
                "circuit.loopImpedance", "Earth fault loop impedance", FindingClass.SAFETY, working.build(), "ohm");
        finding.setTopic(CheckTopic.LOOP_IMPEDANCE);
        figures(finding, working.value("Zs"), 1.09, 1.09 - working.value("Zs"));
        return finding;
    }

    private static Finding voltage() {
        Working.Builder working = Working.start().input("U", "Voltage at the unit", 231.4, "V", "");
        Finding finding = finding(
                "circuit.terminalVoltage", "Voltage at the unit", FindingClass.PERFORMANCE, working.build(), "V");
        finding.setTopic(CheckTopic.TERMINAL_VOLTAGE);
        finding.setValue(231.4);
        finding.setOutcome(Outcome.PASSES);
        return finding;
    }

    private static Finding doubtful() {
        Working.Builder working = Working.start()
                .input("x", "A value", 3.0001, "kPa", "")
                .step(
                        "y",
                        "Everything at once",
                        "max(min(x, 4), sqrt(2)) - -x^2 + exp(-x) * ln(x) - 2^3^0.5 / if(x <= 3, 1, 7)",
                        "kPa",
                        "");
        Finding finding =
                finding("pressure.switch", "Switch margin", FindingClass.INSTRUCTIONS, working.build(), "kPa");
        figures(finding, working.value("y"), 10.0, working.value("y") - 10);
        finding.setOutcome(Outcome.TOO_CLOSE);
        finding.setChance(0.61);
        finding.setRemeasure("Running pressure");
        return finding;
    }

    private static Finding unanswered() {
        Finding finding = finding("circuit.faultLevel", "Fault level", FindingClass.SAFETY, Working.none(), "kA");
        finding.setOutcome(Outcome.CANNOT_TELL);
        finding.getMissing().add("prospective fault current");
        finding.setText("Cannot tell: missing prospective fault current.");
        return finding;
    }

    static Finding finding(String key, String title, FindingClass kind, Working working, String unit) {
        Finding finding = MAKE.createFinding();
        finding.setKey(key);
        finding.setCalculator("sample");
        finding.setTitle(title);
        finding.setKind(kind);
        finding.setUnit(unit);
        working.steps().forEach(step -> finding.getSteps().add(step(step)));
        return finding;
    }

    private static Step step(twinfeed.calculator.formula.Step step) {
        Step copy = MAKE.createStep();
        copy.setSymbol(step.symbol());
        copy.setMeaning(step.meaning());
        copy.setValue(step.value());
        copy.setUnit(step.unit());
        copy.setExpression(step.expression());
        copy.setSource(step.source());
        return copy;
    }

    static void figures(Finding finding, double value, @Nullable Double limit, double margin) {
        finding.setValue(value);
        finding.setLimit(limit);
        finding.setMargin(margin);
        finding.setOutcome(margin >= 0 ? Outcome.PASSES : Outcome.FAILS);
    }

    private static Series monthly(double powerKw) {
        Series series = series("flow.byMonth", "Flow by month");
        series.setXTitle("Month");
        series.setYTitle("Flow");
        series.setYUnit("L/min");
        series.getLabels().addAll(MONTHS);
        for (int month = 0; month < 12; month++) {
            series.getX().add(month + 1.0);
            series.getY().add(powerKw * 1000 / (4183 * (40 - INTAKE_C[month])) * 60);
        }
        return series;
    }

    private static Series curve(String key, String title, double[] flows, double start, double factor) {
        Series series = series(key, title);
        series.setXTitle("Flow");
        series.setXUnit("L/min");
        series.setYTitle("Pressure");
        series.setYUnit("bar");
        for (double flow : flows) {
            series.getX().add(flow);
            series.getY().add(start + factor * flow * flow);
        }
        return series;
    }

    private static Series series(String key, String title) {
        Series series = MAKE.createSeries();
        series.setKey(key);
        series.setTitle(title);
        return series;
    }

    /** An iteration unrolled in rows: friction factor by Colebrook and White, residual beside the last value. */
    private static final class Iteration {
        static Finding finding(double powerKw) {
            Working.Builder working = Working.start()
                    .input("Re", "Reynolds number", 9000 + 100 * powerKw, "", "")
                    .input("e", "Relative roughness", 1.1e-4, "", "Copper tube")
                    .step("f_0", "First guess", "0.316 / Re^0.25", "", "Blasius");
            for (int row = 1; row <= 6; row++) {
                String before = "f_" + (row - 1);
                working.step("f_" + row, "Iteration " + row, colebrook(before), "", "Colebrook and White 1937");
            }
            working.step("residual", "Residual", "f_6 - " + colebrook("f_6"), "", "");
            working.step("dp", "Loss of the pipe", "f_6 * 400 * 0.35", "kPa", "Darcy-Weisbach");
            Finding finding = SampleAssessment.finding(
                    "pipeLoss", "Loss in the pipe", FindingClass.ADVICE, working.build(), "kPa");
            figures(finding, working.value("dp"), working.value("dp"), 0);
            finding.setText("So much pressure is lost in the branch.");
            return finding;
        }

        private static String colebrook(String f) {
            return "(-2 * ln(e / 3.7 + 2.51 / (Re * sqrt(" + f + "))) / ln(10))^-2";
        }
    }
}
