// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Concentration;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Pressure;

/** An invented water feed: pipes, fittings, taps and a two-point test as houses have them, in good order and bad. */
final class RandomWater {
    private static final String SERVICE = "service pipe";
    private static final String RISING = "rising main";

    private final Pick pick;
    private final WaterFeed water = SurveyFactory.eINSTANCE.createWaterFeed();

    private RandomWater(Pick pick) {
        this.pick = pick;
    }

    static WaterFeed of(Pick pick) {
        return new RandomWater(pick).feed();
    }

    private WaterFeed feed() {
        water.setSource(WaterSource.MAINS);
        water.setLowestHandset(Length.valueOf(pick.reading(-0.5, 0.3, "m")));
        water.setHardness(Concentration.valueOf(pick.reading(20, 350, "mg/L")));
        water.setSharedServicePipe(pick.is(10));
        water.setBackflowProtection(pick.is(15) ? "none" : "double-check-valve");
        water.setHandsetReachesWc(pick.is(15));
        water.setTest(test());
        pipes();
        if (pick.is(75)) {
            tap("kitchen tap", "6 L/min", "12 L/min", -2, 0.9);
        }
        if (pick.is(30)) {
            tap("wash basin", "3 L/min", "5 L/min", 0.2, 0.9);
        }
        return water;
    }

    private WaterTest test() {
        WaterTest test = SurveyFactory.eINSTANCE.createWaterTest();
        Pressure before = Pressure.valueOf(pick.reading(1.5, pick.is(8) ? 12 : 5, "bar"));
        test.setStaticPressure(before);
        test.setRunningPressure(
                Pressure.ofSi(before.si() * (0.4 + 0.55 * pick.random().nextDouble())));
        test.setFlow(Flow.valueOf(pick.reading(8, 20, "L/min")));
        test.setGaugeAfter(SERVICE);
        test.setGaugeHeight(Length.valueOf(pick.reading(0, 1, "m")));
        test.setAtPeak(pick.is(50));
        return test;
    }

    private void pipes() {
        PipeMaterial material =
                pick.of(PipeMaterial.PE, PipeMaterial.PE, PipeMaterial.PE, PipeMaterial.COPPER, PipeMaterial.LEAD);
        PipeSegment service = pipe(SERVICE, material, material == PipeMaterial.PE ? "20.4 mm" : "15 mm", 5, 20, 0.5);
        fit(service, "stop-valve", 1);
        PipeSegment rising = pipe(RISING, PipeMaterial.COPPER, pick.of("13.6 mm", "20.2 mm"), 2, 10, 2.5);
        fit(rising, "elbow-soldered", 1 + pick.random().nextInt(5));
        if (pick.is(30)) {
            fit(rising, "isolating-valve", 1);
        }
        PipeSegment branch =
                pipe("shower branch", PipeMaterial.COPPER, pick.of("8.8 mm", "13.6 mm", "13.6 mm"), 1, 6, 1.2);
        fit(branch, "elbow-soldered", 1 + pick.random().nextInt(5));
        fit(branch, pick.is(20) ? "strainer-fouled" : "strainer", 1);
        fit(branch, pick.is(20) ? "isolating-valve" : "full-bore-valve", 1);
    }

    private PipeSegment pipe(String name, PipeMaterial material, String bore, double from, double to, double riseM) {
        PipeSegment pipe = SurveyFactory.eINSTANCE.createPipeSegment();
        pipe.setName(name);
        pipe.setMaterial(material);
        pipe.setBore(Length.valueOf(bore));
        pipe.setLength(Length.valueOf(pick.reading(from, to, "m")));
        pipe.setRise(Length.valueOf(pick.reading(0, riseM, "m")));
        water.getSegments().add(pipe);
        return pipe;
    }

    private static void fit(PipeSegment pipe, String kind, int count) {
        Fitting fitting = SurveyFactory.eINSTANCE.createFitting();
        fitting.setKind(kind);
        fitting.setCount(count);
        pipe.getFittings().add(fitting);
    }

    private void tap(String name, String least, String most, double lowM, double highM) {
        DrawOff tap = SurveyFactory.eINSTANCE.createDrawOff();
        tap.setName(name);
        tap.setFlow(Flow.valueOf(pick.of(least, most)));
        tap.setTeeAfter(pick.of(SERVICE, RISING, RISING));
        tap.setHeight(Length.valueOf(pick.reading(lowM, highM, "m")));
        water.getDrawOffs().add(tap);
    }
}
