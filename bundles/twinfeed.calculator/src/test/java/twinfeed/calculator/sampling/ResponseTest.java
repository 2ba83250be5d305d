// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.calculator.sampling.MadeUpTrials.CHECK;
import static twinfeed.calculator.sampling.MadeUpTrials.flow;
import static twinfeed.calculator.sampling.MadeUpTrials.loop;
import static twinfeed.calculator.sampling.MadeUpTrials.moved;
import static twinfeed.calculator.sampling.MadeUpTrials.ofSum;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;

/** What the margin of a check is with its inputs elsewhere, from what each does alone and the methods together. */
class ResponseTest {
    private static Response of(Trials trials) {
        return Response.of(trials).get(0);
    }

    private static Response of(Survey survey, ToDoubleFunction<Survey> value) {
        return of(MadeUpTrials.of(
                survey,
                (house, findings) -> findings.on(CHECK)
                        .compare(value.applyAsDouble(house), 0)
                        .add(),
                CHECK));
    }

    /** 10 L/min within 1 and 0.5 ohm within 0.3 against 10: 0.5 as taken. */
    @Test
    void theMarginsOfASumAreItsSums() {
        Trials trials = ofSum("0.3 ohm", 10);
        Response response = of(trials);
        double[][] columns = columns(trials, new double[] {0, 1, -1, 0.5}, new double[] {0, -1, -1, 1});
        assertArrayEquals(new double[] {0.5, 1.2, -0.8, 1.3}, response.margins(columns, 4), 1e-9);
        assertArrayEquals(new double[] {0.5, 1.2}, response.margins(columns, 2), 1e-9);
        assertTrue(response.regular());
        assertTrue(response.passesNominally());
    }

    /** The columns of flow and loop, in whatever order the inputs stand. */
    private static double[][] columns(Trials trials, double[] flow, double[] loop) {
        double[][] columns = new double[trials.inputs().list().size()][flow.length];
        for (int i = 0; i < columns.length; i++) {
            String path = trials.inputs().list().get(i).path();
            if (path.endsWith("flow")) {
                columns[i] = flow;
            } else if (path.endsWith("externalLoop")) {
                columns[i] = loop;
            }
        }
        return columns;
    }

    /** Both readings at their worst take 1.3 off or add it, and half as much again is 1.95: the margin must be that large to be sure. */
    @ParameterizedTest
    @CsvSource({"8.5, true", "8.6, false", "10.5, false", "12.4, false", "12.5, true"})
    void aCheckIsDecidedWhereNoToleranceReachesItsLimit(double limit, boolean decided) {
        assertEquals(decided, of(ofSum("0.3 ohm", limit)).decided());
    }

    /** The flow moves the margin by 2, the loop by 0.6 or 0.3; a fifth of 2 is 0.4. */
    @Test
    void onlyInputsOfAtLeastAFifthOfTheWidestReachCanBeTheLoudest() {
        Trials trials = ofSum("0.3 ohm", 10);
        Response response = of(trials);
        assertEquals(2, response.wide().length);
        Trials narrow = ofSum("0.15 ohm", 10);
        Response flowOnly = of(narrow);
        assertEquals(1, flowOnly.wide().length);
        int flow = flowOnly.wide()[0];
        assertEquals(
                "survey.water.test.flow",
                narrow.inputs().list().get(flowOnly.input(flow)).path());
        double[][] columns = columns(narrow, new double[] {0.5, -1, 0}, new double[] {1, 1, 1});
        assertArrayEquals(new double[] {0.5, -1}, flowOnly.additions(flow, columns, 2), 1e-9);
    }

    @Test
    void anInputIsKnownByItsNumberAmongAll() {
        Trials trials = MadeUpTrials.of(
                MadeUpTrials.house("0.3 ohm"),
                (house, findings) ->
                        findings.on(CHECK).compare(loop(house), 0.4).add(),
                CHECK);
        Response response = of(trials);
        assertEquals(1, response.wide().length);
        assertEquals(
                "survey.electricity.externalLoop",
                trials.inputs().list().get(response.input(0)).path());
        assertFalse(of(ofSum("0.3 ohm", 10.6)).passesNominally());
    }

    @Test
    void aFifthExactlyIsWideEnough() {
        assertEquals(2, of(ofSum("0.2000000001 ohm", 10)).wide().length);
        assertEquals(0, of(MadeUpTrials.house("0.3 ohm"), house -> 5).wide().length, "nothing depends on a reading");
    }

    @Test
    void aCheckWithoutFiguresInSomeTrialIsNotRegular() {
        Response gap = of(MadeUpTrials.of(
                MadeUpTrials.house("0.3 ohm"),
                (house, findings) -> {
                    if (loop(house) > 0.7) {
                        findings.on(CHECK).outcome(Outcome.PASSES).add();
                    } else {
                        findings.on(CHECK).compare(flow(house), 5).add();
                    }
                },
                CHECK));
        assertFalse(gap.regular());
        assertTrue(gap.decided(), "it passes in every trial");
        Response turned = of(MadeUpTrials.of(
                MadeUpTrials.house("0.3 ohm"),
                (house, findings) -> findings.on(CHECK)
                        .compare(flow(house), 5)
                        .outcome(loop(house) > 0.7 ? Outcome.FAILS : Outcome.PASSES)
                        .add(),
                CHECK));
        assertFalse(turned.regular());
        assertFalse(turned.decided(), "it fails in one");
    }

    /** The worse of two pieces of cable counts: either method alone changes nothing, both together do. */
    @Test
    void piecesOfCableAreMovedTogetherToo() {
        Response worse = of(MadeUpTrials.wired(), house -> moved(house) == 2 ? 1 : -1);
        assertFalse(worse.decided());
        assertArrayEquals(
                new double[] {-1, -1, -1, 1},
                worse.margins(new double[][] {{0, 1, 0, 1}, {0, 0, 1, 1}, {0, 0, 0, 0}}, 4),
                1e-9);
    }

    @Test
    void piecesThatAreWorseTogetherCountAsMuchAsBetterOnes() {
        Response both = of(MadeUpTrials.wired(), house -> moved(house) == 2 ? -1 : 1);
        assertArrayEquals(
                new double[] {1, 1, 1, -1},
                both.margins(new double[][] {{0, 1, 0, 1}, {0, 0, 1, 1}, {0, 0, 0, 0}}, 4),
                1e-9);
    }

    /** Whatever the second piece does, the first alone takes off or adds 2. */
    @Test
    void whatOnePieceDoesAloneIsInTheMargins() {
        Response first = of(
                MadeUpTrials.wired(),
                house -> "103"
                                .equals(house.getElectricity()
                                        .getCircuit()
                                        .getSegments()
                                        .get(0)
                                        .getMethod())
                        ? 3
                        : 1);
        assertEquals(0, first.input(0));
        assertArrayEquals(
                new double[] {1, 3, 1, 3},
                first.margins(new double[][] {{0, 1, 0, 1}, {0, 0, 1, 1}, {0, 0, 0, 0}}, 4),
                1e-9);
        assertArrayEquals(new double[] {0, 2}, first.additions(0, new double[][] {{0, 1}}, 2), 1e-9);
    }

    @Test
    void aCheckWithoutFiguresThatFailsOnlyWithBothPiecesElsewhereIsNotDecided() {
        Response both = of(MadeUpTrials.of(
                MadeUpTrials.wired(),
                (house, findings) -> findings.on(CHECK)
                        .outcome(moved(house) == 2 ? Outcome.FAILS : Outcome.PASSES)
                        .add(),
                CHECK));
        assertFalse(both.decided());
    }

    /** Seven pieces of two methods each stand together in 128 ways, more than are tried. */
    @Test
    void whereNotAllWaysAreTriedOnlyTheAnswerCounts() {
        Survey many = MadeUpTrials.wired();
        many.getElectricity()
                .getCircuit()
                .getSegments()
                .addAll(EcoreUtil.copyAll(many.getElectricity().getCircuit().getSegments()));
        many.getElectricity()
                .getCircuit()
                .getSegments()
                .addAll(EcoreUtil.copyAll(
                        MadeUpTrials.wired().getElectricity().getCircuit().getSegments()));
        many.getElectricity()
                .getCircuit()
                .getSegments()
                .add(EcoreUtil.copy(
                        many.getElectricity().getCircuit().getSegments().get(0)));
        Response most = of(many, house -> moved(house) > 3 ? -1 : 1);
        assertFalse(most.decided(), "one of the ways tried moves four or more");
        double[][] columns = new double[8][1];
        for (int piece = 0; piece < 7; piece++) {
            columns[piece][0] = 1;
        }
        assertArrayEquals(new double[] {1}, most.margins(columns, 1), 1e-9);
    }

    /** A reach of 1 downwards, and half as much again, takes 1.5 off: no more than a margin of 1.5, and one that fails has nothing left over. */
    @Test
    void aMarginThatTheWorstTakesUpExactlyPassesStill() {
        assertTrue(exactly(1.5, Effect.ofPossibilities(new double[] {0, -1})).decided());
        assertFalse(exactly(1.25, Effect.ofPossibilities(new double[] {0, -1})).decided());
        assertFalse(exactly(-1.5, Effect.ofPossibilities(new double[] {0, 1})).decided());
        assertTrue(exactly(-1.75, Effect.ofPossibilities(new double[] {0, 1})).decided());
    }

    private static Response exactly(double margin, Effect effect) {
        Response response = new Response(0, new Trial(new boolean[] {margin >= 0}, new double[] {margin}));
        response.add(0, effect);
        return response;
    }

    @Test
    void anInputOfExactlyAFifthOfTheWidestReachIsWide() {
        Response response = exactly(1, Effect.ofPossibilities(new double[] {0, 5}));
        response.add(1, Effect.ofPossibilities(new double[] {0, 1}));
        response.add(2, Effect.ofPossibilities(new double[] {0, 0.875}));
        assertArrayEquals(new int[] {0, 1}, response.wide());
    }

    /** One piece alone takes 0.5 off 3, both 2 altogether, which is 1 more than each alone: half as much again as 2 is 3. */
    @ParameterizedTest
    @CsvSource({"3.1, true", "2.9, false", "-3.1, true", "-2.9, false"})
    void whatPiecesDoTogetherCountsAmongTheWorst(double nominal, boolean decided) {
        double sign = Math.signum(nominal);
        Response response = of(
                MadeUpTrials.wired(),
                house -> nominal - sign * List.of(0.0, 0.5, 2.0).get((int) moved(house)));
        assertEquals(decided, response.decided());
    }
}
