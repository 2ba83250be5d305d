// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.FeedProfile;
import twinfeed.calculator.SampleHouse;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Series;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterSource;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Pressure;

/** An invented house with three pipes, four taps, a cable through the loft, and what was found in it. */
public final class DrawnHouse {
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;
    private static final AssessmentFactory ASSESS = AssessmentFactory.eINSTANCE;

    public final Survey survey = SampleHouse.fed("240 V");
    public final OptionAssessment option = ASSESS.createOptionAssessment();

    public DrawnHouse() {
        water();
        power();
        option.setHeaterId("h95");
        option.setTitle("Heater 9.5 kW");
        option.setVerdict(Verdict.SUITS_WITH_WORK);
        option.setBinding("circuit.cableCapacity");
        option.getFindings().addAll(now());
    }

    private void water() {
        survey.getWater().setSource(WaterSource.MAINS);
        survey.getWater().setTest(SampleHouse.waterTest("3.2 bar ± 0.1 bar", "2.4 bar", "12 L/min"));
        survey.getWater().getTest().setGaugeAfter("service pipe");
        PipeSegment service = SampleHouse.pipe("service pipe", PipeMaterial.COPPER, "20 mm", "9 m", "0.4 m");
        PipeSegment riser = SampleHouse.pipe("riser", PipeMaterial.COPPER, "13.6 mm", "6 m", "2.7 m", "elbow", "elbow");
        Fitting tees = MAKE.createFitting();
        tees.setKind("tee");
        tees.setCount(2);
        riser.getFittings().add(tees);
        riser.setSize("15 mm");
        PipeSegment branch =
                SampleHouse.pipe("shower branch", PipeMaterial.COPPER, "13.6 mm", "3.5 m", "1.1 m", "elbow");
        survey.getWater().getSegments().addAll(List.of(service, riser, branch));
        survey.getWater()
                .getDrawOffs()
                .addAll(List.of(
                        SampleHouse.tap("kitchen tap", "8 L/min", "service pipe", "1.0 m"),
                        SampleHouse.tap("wash basin", "5 L/min", "riser", "0.8 m"),
                        SampleHouse.tap("WC", "4 L/min", "riser", "0.6 m"),
                        SampleHouse.tap("garden tap", "10 L/min", "nowhere", "-0.3 m")));
    }

    private void power() {
        Circuit circuit = MAKE.createCircuit();
        survey.getElectricity().setServiceFuse(Current.valueOf("80 A"));
        survey.getElectricity().setCircuit(circuit);
        circuit.setDevice(SampleHouse.device("breaker-b", "40 A"));
        ResidualDevice rcd = MAKE.createResidualDevice();
        rcd.setKind(RcdKind.RCBO);
        rcd.setResidual(Current.valueOf("30 mA"));
        circuit.setRcd(rcd);
        CableSegment hall = SampleHouse.cable("hall", "10 mm2", "5 m", "C", Confidence.SEEN);
        CableSegment loft = SampleHouse.cable("loft, under insulation", "6 mm2", "8 m", "103", Confidence.SEEN);
        loft.setLoft(true);
        CableSegment drop = SampleHouse.cable("drop", "6 mm2", "2.5 m", "B", Confidence.SEEN);
        circuit.getSegments().addAll(List.of(hall, loft, drop));
        Isolator isolator = MAKE.createIsolator();
        isolator.setRating(Current.valueOf("45 A"));
        circuit.setIsolator(isolator);
    }

    private static Finding finding(
            String key, String title, Outcome outcome, FindingClass kind, String needs, Object... figures) {
        Finding finding = ASSESS.createFinding();
        finding.setKey(key);
        finding.setTitle(title);
        finding.setOutcome(outcome);
        finding.setKind(kind);
        finding.getNeeds().addAll(List.of(needs.split(" ")));
        if (figures.length > 0) {
            finding.setValue((Double) figures[0]);
            finding.setLimit((Double) figures[1]);
            finding.setMargin((Double) figures[2]);
            finding.setUnit((String) figures[3]);
        }
        return finding;
    }

    private static Series series(String key, String unit, Double... values) {
        Series series = ASSESS.createSeries();
        series.setKey(key);
        series.setYUnit(unit);
        series.getY().addAll(List.of(values));
        return series;
    }

    /** Running pressure at the unit, with the pressures at rest and while it runs, from the gauge to the unit. */
    private static Finding running(Series atRest, Series running) {
        double there = running.getY().get(running.getY().size() - 1);
        Finding finding = finding(
                "pressure.running",
                "Running pressure at the unit",
                Outcome.PASSES,
                FindingClass.INSTRUCTIONS,
                "survey.water.test.staticPressure survey.water.segments.length heater.minimumRunningPressure",
                there,
                0.7,
                there - 0.7,
                "bar");
        finding.setTopic(CheckTopic.RUNNING_PRESSURE);
        finding.getSeries().addAll(List.of(atRest, running));
        return finding;
    }

    /** 0.1 bar less for each metre that a pipe rises, and what the pipes take. */
    private static Finding fromTheMain() {
        return running(
                series(FeedProfile.STATIC_PRESSURE, "bar", 3.16, 2.89, 2.78),
                series(FeedProfile.RUNNING_PRESSURE, "bar", 2.6, 2.2, 1.9));
    }

    private static Finding fromThePump() {
        return running(
                series(FeedProfile.STATIC_PRESSURE, "bar", 3.0, 2.89),
                series(FeedProfile.RUNNING_PRESSURE, "bar", 2.9, 2.6));
    }

    private static Finding drop(Outcome outcome, double margin, Double... volts) {
        Finding drop = finding(
                "circuit.voltageDrop",
                "Voltage drop",
                outcome,
                FindingClass.COMPLIANCE,
                "heater.power survey.electricity.circuit.segments.length",
                12.0 - margin,
                12.0,
                margin,
                "V");
        drop.setTopic(CheckTopic.VOLTAGE_DROP);
        drop.getSeries().add(series(FeedProfile.VOLTAGE, "V", volts));
        return drop;
    }

    private static Finding cable(Outcome outcome, double margin) {
        Finding cable = finding(
                "circuit.cableCapacity",
                "Current-carrying capacity",
                outcome,
                FindingClass.SAFETY,
                "survey.electricity.circuit.segments.size",
                40.0 + margin,
                40.0,
                margin,
                "A");
        cable.setSubject("loft, under insulation");
        return cable;
    }

    /** The findings of the house as it is. */
    private static List<Finding> now() {
        Finding tap = finding(
                "pressure.tap",
                "A tap is opened",
                Outcome.TOO_CLOSE,
                FindingClass.INSTRUCTIONS,
                "survey.water.drawOffs.flow",
                0.71,
                0.7,
                0.01,
                "bar");
        Finding main = finding(
                "pressure.static",
                "Static pressure",
                Outcome.FAILS,
                FindingClass.ADVICE,
                "survey.water.test.staticPressure",
                3.2,
                3.0,
                -0.2,
                "bar");
        Finding fuse = finding(
                "demand.serviceFuse",
                "Demand of the house",
                Outcome.PASSES,
                FindingClass.COMPLIANCE,
                "survey.electricity.serviceFuse",
                62.0,
                80.0,
                18.0,
                "A");
        Finding rcd = finding(
                "circuit.rcd",
                "Trip time",
                Outcome.CANNOT_TELL,
                FindingClass.SAFETY,
                "survey.electricity.circuit.rcd.tripTime");
        Finding isolator = finding(
                "circuit.isolator",
                "Rating of the isolator",
                Outcome.PASSES,
                FindingClass.INSTRUCTIONS,
                "survey.electricity.circuit.isolator.rating",
                45.0,
                39.6,
                5.4,
                "A");
        Finding breaker = finding(
                "circuit.device",
                "Rating of the breaker",
                Outcome.PASSES,
                FindingClass.INSTRUCTIONS,
                "survey.electricity.circuit.device.rating",
                40.0,
                39.6,
                0.4,
                "A");
        Finding hose = finding(
                "pressure.hose", "Hose", Outcome.NOT_APPLICABLE, FindingClass.ADVICE, "survey.water.drawOffs.height");
        return List.of(
                fromTheMain(),
                tap,
                main,
                fuse,
                breaker,
                rcd,
                drop(Outcome.FAILS, -0.6, 240.0, 237.2, 229.4, 227.4),
                cable(Outcome.FAILS, -8.0),
                isolator,
                hose);
    }

    /** The same house with the loft cable and the drop renewed, a larger isolator, the branch with other fittings; the option as after it. */
    public Survey changed() {
        Survey changed = EcoreUtil.copy(survey);
        Circuit circuit = changed.getElectricity().getCircuit();
        CableSegment loft = SampleHouse.cable("loft, under insulation", "10 mm2", "8 m", "103", Confidence.SEEN);
        loft.setLoft(true);
        circuit.getSegments().set(1, loft);
        circuit.getSegments().get(2).setSize(Area.valueOf("10 mm2"));
        circuit.getSegments().get(0).setMethod("A");
        circuit.getIsolator().setRating(Current.valueOf("50 A"));
        Remedy work = ASSESS.createRemedy();
        work.setId("cable");
        work.setTitle("New cable");
        option.getRemedies().add(work);
        option.getAfterWork()
                .addAll(List.of(
                        fromTheMain(),
                        drop(Outcome.PASSES, 4.6, 240.0, 237.2, 233.6, 232.6),
                        cable(Outcome.PASSES, 3.0)));
        return changed;
    }

    /** The same house with a tank and a pump for the shower alone, behind the last tap. */
    public Survey pumped() {
        Survey changed = EcoreUtil.copy(survey);
        changed.getWater().setSource(WaterSource.PUMPED);
        changed.getWater().getTest().setStaticPressure(Pressure.valueOf("3 bar"));
        changed.getWater().getTest().setGaugeAfter("riser");
        option.getAfterWork().addAll(now());
        option.getAfterWork().remove(2);
        option.getAfterWork().set(0, fromThePump());
        return changed;
    }

    /** Everything of a drawing, a piece a line. */
    static String text(HouseDrawing drawing) {
        StringBuilder text = new StringBuilder();
        drawing.pieces().forEach(piece -> text.append(line(piece)).append('\n'));
        return text.append(drawing.measured() ? "measured" : "not measured")
                .append('\n')
                .append(drawing.spoken())
                .append('\n')
                .toString();
    }

    private static String line(DrawnPiece piece) {
        PieceExtent extent = piece.extent();
        @Nullable PieceAnswer answer = piece.answer();
        return String.join(
                " | ",
                piece.kind().name(),
                piece.title(),
                piece.detail(),
                piece.reading(),
                extent.lengthM() + " m, rises " + extent.riseM() + " m, " + extent.fittings() + " fittings, loft "
                        + extent.loft() + ", tee " + extent.tee(),
                piece.place().path(),
                answer == null
                        ? "no answer"
                        : answer.mark() + " " + answer.mark().tone() + " " + answer.check() + " " + answer.margin()
                                + (answer.binding() ? " binding" : ""),
                piece.verdict());
    }
}
