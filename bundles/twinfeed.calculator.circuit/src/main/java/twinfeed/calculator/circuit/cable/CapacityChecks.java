// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.MissingData;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.circuit.survey.DeviceData;
import twinfeed.calculator.circuit.survey.MethodTitle;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.RunSegment;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.Method;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.units.text.Texts;

/** The cable's current-carrying capacity against its protective device, by the worst segment. */
public final class CapacityChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;
    private final Texts texts;
    private final double loftC;

    public CapacityChecks(CircuitSurvey survey, CircuitRemedies remedies, Texts texts, double loftC) {
        this.survey = survey;
        this.texts = texts;
        this.loftC = loftC;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.CAPACITY, CircuitChecks.LOFT_AMBIENT, CircuitChecks.HIDDEN_METHOD);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        capacity(shower, findings);
        hiddenMethod(shower, findings);
        hotLoft(findings);
    }

    private void capacity(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.CAPACITY;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        List<CableSegment> placed = survey.run().placed();
        Double ratingA = survey.device().ratingA();
        if (placed == null || ratingA == null) {
            unknown(findings, check);
            return;
        }
        int governing = Cable.governingSegment(placed);
        capacity(shower, findings, survey.run().segments().get(governing), placed.get(governing), ratingA);
    }

    private void capacity(
            ShowerCase shower, Findings findings, RunSegment piece, CableSegment segment, double ratingA) {
        FindingBuilder finding = findings.on(CircuitChecks.CAPACITY)
                .compare(segment.capacityA(), ratingA)
                .variant(variant(shower, segment, ratingA))
                .condition(Condition.of(piece.name()))
                .argument("size", CodeNumbers.number(size(piece)))
                .argument("method", piece.place().word())
                .argument("methodTitle", methodTitle(piece))
                .argument(
                        "designCurrent",
                        shower.load() == null ? 0 : shower.load().designA())
                .source(survey.cite("capacity"))
                .limitIs("deviceRating", survey.device().ratingOrigin())
                .working(() -> working(segment));
        finding.remedies(() -> remedies.forCapacity(shower, ratingA));
        finding.add();
    }

    private static double size(RunSegment piece) {
        return piece.sizeMm2() == null ? 0 : piece.sizeMm2();
    }

    private Object methodTitle(RunSegment piece) {
        Method method = piece.place().method();
        return method == null ? "" : MethodTitle.of(texts, survey.rules(), method);
    }

    /** A load that cannot rise may be left without overload protection, but only as a designer's recorded decision. */
    private String variant(ShowerCase shower, CableSegment segment, double ratingA) {
        ShowerLoad load = shower.load();
        boolean carries = load != null && !LimitType.fallsShort(segment.capacityA(), load.designA());
        if (LimitType.fallsShort(segment.capacityA(), ratingA)) {
            return carries ? "recordedDecision" : "";
        }
        return survey.device().cableFactor() < 1 ? "rewirable" : "";
    }

    /** What survey or tables lack; a value that is in no table is named as such. */
    private void unknown(Findings findings, Check check) {
        DeviceData device = survey.device();
        if (device.ratingA() == null) {
            findings.on(check).cannotTell(List.of(ReadingPaths.DEVICE_RATING)).add();
            return;
        }
        MissingData.add(findings, check, survey.run().placingGap());
    }

    private Working working(CableSegment segment) {
        return Working.start()
                .input(
                        "It",
                        "tabulatedCapacity",
                        segment.tabulatedA(),
                        "A",
                        survey.rules().tableSource("capacity"))
                .input("Ca", "ambientFactor", segment.ca(), "", survey.rules().tableSource("ambient"))
                .input("Cg", "groupingFactor", segment.cg(), "", survey.rules().tableSource("grouping"))
                .input(
                        "Ci",
                        "insulationFactor",
                        segment.ci(),
                        "",
                        survey.rules().tableSource("insulation"))
                .input("Cf", "deviceFactor", segment.cf(), "", survey.rules().tableSource("devices"))
                .step("Iz", "capacity", "It * Ca * Cg * Ci * Cf", "A", survey.cite("capacity"))
                .build();
    }

    /** What the pieces that lie free in a loft carry on a hot day: said beside the usual ambient temperature, never a failure. */
    private void hotLoft(Findings findings) {
        Check check = CircuitChecks.LOFT_AMBIENT;
        Double ratingA = survey.device().ratingA();
        CableSegment least = null;
        String name = "";
        for (RunSegment segment : survey.run().segments()) {
            Method method = segment.place().method();
            Double hot = segment.place().hotCa();
            CableSegment placed = method == null || hot == null
                    ? null
                    : segment.placed(method, survey.run().deviceFactor(), hot);
            if (placed != null && (least == null || placed.capacityA() < least.capacityA())) {
                least = placed;
                name = segment.name();
            }
        }
        if (least == null || ratingA == null || survey.run().old()) {
            findings.on(check).add();
            return;
        }
        CableSegment governing = least;
        findings.on(check)
                .report(governing.capacityA())
                .variant(LimitType.fallsShort(governing.capacityA(), ratingA) ? "short" : "")
                .condition(Condition.of(name))
                .argument("rating", ratingA)
                .argument("temperature", loftC)
                .source(survey.cite("capacity"))
                .working(() -> working(governing))
                .add();
    }

    /** The capacity if what nobody saw lies in the worst way that is plausible. */
    private void hiddenMethod(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.HIDDEN_METHOD;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        Double ratingA = survey.device().ratingA();
        if (survey.run().placed() == null || ratingA == null) {
            unknown(findings, check);
            return;
        }
        if (survey.run().segments().stream().allMatch(segment -> segment.place().seen())) {
            findings.on(check).variant("seen").add();
            return;
        }
        Worst worst = worst();
        FindingBuilder finding = findings.on(check)
                .compare(worst.segment.capacityA(), ratingA)
                .condition(Condition.of(worst.name))
                .argument("method", worst.method.key())
                .argument("methodTitle", MethodTitle.of(texts, survey.rules(), worst.method))
                .source(survey.cite("capacity"))
                .limitIs("deviceRating", survey.device().ratingOrigin())
                .working(() -> working(worst.segment));
        // Where the stated methods carry too little already, that check offers the same.
        if (!LimitType.fallsShort(statedCapacityA(), ratingA)) {
            finding.remedies(() -> remedies.forCapacity(shower, ratingA));
        }
        finding.add();
    }

    private double statedCapacityA() {
        List<CableSegment> placed = survey.run().placed();
        return placed == null ? 0 : placed.get(Cable.governingSegment(placed)).capacityA();
    }

    /** A segment under the worst method that it may have. */
    private record Worst(String name, Method method, CableSegment segment) {}

    private Worst worst() {
        Worst worst = null;
        for (RunSegment segment : survey.run().segments()) {
            for (Method method : plausible(segment)) {
                CableSegment placed = segment.placed(method, survey.run().deviceFactor());
                if (placed != null && (worst == null || placed.capacityA() < worst.segment.capacityA())) {
                    worst = new Worst(segment.name(), method, placed);
                }
            }
        }
        if (worst == null) {
            throw new IllegalStateException("a placed run with an unseen segment has one to judge");
        }
        return worst;
    }

    /** The methods that an unseen piece may have; none for a piece that was seen. */
    private List<Method> plausible(RunSegment segment) {
        List<Method> methods = new ArrayList<>();
        @Nullable Method said = segment.place().method();
        if (said != null && !segment.place().seen()) {
            methods.add(said);
            said.plausible().forEach(key -> survey.rules().method(key).ifPresent(methods::add));
        }
        return methods;
    }
}
