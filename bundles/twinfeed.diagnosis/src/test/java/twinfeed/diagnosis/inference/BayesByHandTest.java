// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.ObservationStage;

/** Chances, pairs and next steps of small invented tables, worked out by hand. */
class BayesByHandTest {
    private static final String HEAD = "# source: the test\n# status: judgement\n# units: none\n"
            + "row,key,part,value,minutes,place,code,reason\n";
    private static final String LIMITS = "limit,doubles,,0.1,,,,r\nlimit,several,,0.4,,,,r\nlimit,settled,,0.5,,,,r\n"
            + "limit,worthwhile,,0.1,,,,r\nlimit,worthwhileAtAll,,0.01,,,,r\nlimit,opening,,12,,,,r\n";
    private static final String FOUR = "part,a,,1,,,-,r\npart,b,,1,,,-,r\npart,supply,,1,,,-,r\npart,none,,1,,,-,r\n"
            + "observation,x,,0.1,1,told,,r\nlikelihood,x,a,0.9,,,,r\n"
            + "observation,y,,0.1,1,told,,r\nlikelihood,y,b,0.9,,,,r\n";

    private static FaultData read(String rows) {
        return FaultData.read(
                "test", new ByteArrayInputStream((HEAD + rows + LIMITS).getBytes(StandardCharsets.UTF_8)));
    }

    private static ObservationAnswer answer(String key, boolean yes) {
        return new ObservationAnswer(key, yes, ObservationAnswer.Origin.SAID);
    }

    /**
     * Both answers yes: singly 0.25 (0.09 + 0.09 + 0.01 + 0.01) = 0.05; of the three equal pairs 0.81, 0.09 and 0.09, so 0.33; with one
     * visit in ten of two faults 0.033 / (0.033 + 0.045).
     */
    @Test
    void twoFaultsAtOnce() {
        Posterior posterior = Posterior.of(read(FOUR), List.of(answer("x", true), answer("y", true)));
        assertEquals(0.033 / 0.078, posterior.several(), 1e-12);
        assertTrue(posterior.severalLikely());
        assertEquals(0.45, posterior.chance("a"), 1e-12);
        assertEquals(new Posterior.Pair("a", "b"), posterior.pair());
        assertFalse(posterior.settled());
        assertEquals(2, posterior.answers().size());
        assertTrue(posterior.answered("x"));
        assertFalse(posterior.answered("z"));
        assertEquals(0, posterior.chance("z"));
    }

    /** With y answered no: a 0.81 against b 0.01, supply and none 0.09 each; the pair of a and the supply 0.81 before the others. */
    @Test
    void oneFaultIsSettled() {
        Posterior posterior = Posterior.of(read(FOUR), List.of(answer("x", true), answer("y", false)));
        assertEquals(0.81, posterior.chance("a"), 1e-12);
        assertTrue(posterior.settled());
        assertFalse(posterior.severalLikely());
        assertEquals(new Posterior.Pair("a", "supply"), posterior.pair());
        assertEquals(
                List.of("a", "supply", "none", "b"),
                posterior.ranked().stream().map(RankedPart::part).toList());
        assertEquals(0.25, posterior.first().prior());
        assertEquals(81, posterior.first().percent(), 1e-9);
        Posterior other = Posterior.of(read(FOUR), List.of(answer("x", false))).with(answer("y", true));
        assertEquals(new Posterior.Pair("b", "supply"), other.pair(), "the likelier of the two comes first");
        assertEquals(2, other.answers().size());
        FaultData late = read("part,supply,,1,,,-,r\npart,b,,1,,,-,r\npart,none,,1,,,-,r\n"
                + "observation,y,,0.1,1,told,,r\nlikelihood,y,b,0.9,,,,r\n");
        assertEquals(
                new Posterior.Pair("b", "supply"),
                Posterior.of(late, List.of(answer("y", true))).pair());
    }

    /** A chance is never printed as certain. */
    @Test
    void ninetyNinePerCentIsTheMostThatIsPrinted() {
        assertEquals(99, new RankedPart("a", 0.1, 0.9999).percent(), 1e-12);
        assertEquals(98, new RankedPart("a", 0.1, 0.98).percent(), 1e-12);
    }

    private static Optional<NextStep> next(String rows, boolean open, boolean powered, String... asked) {
        FaultData data = read(rows);
        return NextStep.choose(data, Posterior.of(data, List.of()), Set.of(asked), open, powered);
    }

    private static String key(Optional<NextStep> step) {
        return step.map(each -> each.observation().key()).orElse("nothing");
    }

    /** By information for a minute: two questions tell the same, the one of half the minutes is asked; less than half a minute counts as that. */
    @Test
    void theQuestionThatTellsMostForItsMinutesIsAskedFirst() {
        String parts = "part,a,,2,,,-,r\npart,supply,,1,,,-,r\npart,none,,1,,,-,r\n";
        String slow = "observation,slow,,0.01,4,told,,r\nlikelihood,slow,a,0.99,,,,r\n";
        String quick = "observation,quick,,0.01,2,told,,r\nlikelihood,quick,a,0.99,,,,r\n";
        String quickest = "observation,quickest,,0.2,0.1,told,,r\nlikelihood,quickest,a,0.8,,,,r\n";
        assertEquals("quick", key(next(parts + slow + quick, false, true)));
        assertEquals("slow", key(next(parts + slow + quick, false, true, "quick")));
        assertEquals("quickest", key(next(parts + slow + quick + quickest, false, true)));
        NextStep step = next(parts + slow + quick, false, true).orElseThrow();
        assertEquals(step.informationBits() / 2, step.rate(), 1e-12);
        NextStep least = next(parts + quickest, false, true).orElseThrow();
        assertEquals(least.informationBits() / 0.5, least.rate(), 1e-12);
        assertFalse(step.opensCover());
        assertEquals("nothing", key(next(parts + slow, false, true, "slow")));
    }

    /** What tells little is left for later, what tells next to nothing for good; the cover costs its 12 min once. */
    @Test
    void theCoverComesOffWhereTheSafeStepsTellLittle() {
        String parts = "part,a,,2,,,-,r\npart,supply,,1,,,-,r\npart,none,,1,,,-,r\n";
        String weak = "observation,weak,,0.35,1,outside,,r\nlikelihood,weak,a,0.65,,,,r\n";
        String blind = "observation,blind,,0.5,1,told,,r\n";
        String inside = "observation,inside,,0.01,3,cover,,r\nlikelihood,inside,a,0.99,,,,r\n";
        NextStep cover = next(parts + weak + blind + inside, false, true).orElseThrow();
        assertEquals(ObservationStage.COVER, cover.observation().place());
        assertTrue(cover.opensCover());
        assertEquals(15, cover.minutes());
        assertEquals(3, next(parts + inside, true, true).orElseThrow().minutes());
        assertEquals("weak", key(next(parts + weak + blind, false, true)));
        assertEquals("nothing", key(next(parts + blind, false, true)));
        String computed = "observation,computed,,0.01,1,feed,,r\nlikelihood,computed,a,0.99,,,,r\n";
        assertEquals("nothing", key(next(parts + computed, false, true)), "nobody is asked what is computed");
        String running = "observation,running,powered,0.01,1,told,,r\nlikelihood,running,a,0.99,,,,r\n";
        assertEquals("running", key(next(parts + running, false, true)));
        assertEquals("nothing", key(next(parts + running, false, false)), "a unit that may not be switched on");
        String later = "observation,later,after:inside,0.01,1,told,,r\nlikelihood,later,a,0.99,,,,r\n";
        assertEquals("inside", key(next(parts + later + inside, false, true)));
    }

    /** What comes first after a complaint is asked, whatever it tells; no longer once something was found under the cover. */
    @Test
    void whatPracticeAsksFirst() {
        FaultData data = read("part,a,,2,,,-,r\npart,supply,,1,,,-,r\npart,none,,1,,,-,r\n"
                + "observation,dead,,0.1,1,told,,r\nobservation,board,,0.5,2,outside,,r\n"
                + "observation,inside,,0.01,3,cover,,r\nfirst,dead,inside,1,,,,r\nfirst,dead,board,2,,,,r\n");
        Posterior dead = Posterior.of(data, List.of(answer("dead", true)));
        assertEquals("board", key(NextStep.first(data, dead, Set.of("dead"), true)), "never the cover");
        assertEquals("nothing", key(NextStep.first(data, dead, Set.of("dead", "board"), true)));
        assertEquals("nothing", key(NextStep.first(data, Posterior.of(data, List.of()), Set.of(), true)));
        assertEquals("nothing", key(NextStep.first(data, dead.with(answer("inside", true)), Set.of("dead"), true)));
        assertEquals("board", key(NextStep.first(data, dead.with(answer("inside", false)), Set.of("dead"), true)));
        NextStep step = NextStep.choose(data, dead, Set.of("dead"), false).orElseThrow();
        assertEquals("board", step.observation().key());
        assertEquals(2, step.minutes());
        assertEquals(0, step.informationBits(), 1e-12);
    }
}
