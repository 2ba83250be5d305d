// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.usecase.TwinfeedService;

/** What of a fault-finding stands on the screen, in which order. */
class FaultsReportTest {
    private static final FaultSheet.Next COVER = new FaultSheet.Next(
            "cutOutOpen", "Is the cut-out open?", "cover", "under the cover", 6, 0.5, List.of("Off.", "Lock."));
    private static final FaultSheet.Tick DONE =
            new FaultSheet.Tick("showerOff", "Switch off", "A. Fitter", "10:00", true);
    private static final FaultSheet.Tick OPEN = new FaultSheet.Tick("waterShut", "Shut the water", "", "", false);

    private static FaultSheet.Cause cause(String title, double chance) {
        return new FaultSheet.Cause(title, title, 0.1, chance, "because", List.of());
    }

    private static FaultSheet sheet(
            List<FaultSheet.Cause> causes,
            FaultSheet.@Nullable Next next,
            List<FaultSheet.Tick> ticks,
            String isolationNotice,
            @Nullable RepairAdvice repair) {
        return new FaultSheet(
                "Shower 8.5 kW",
                "part",
                "Most likely the cut-out.",
                causes,
                0,
                next,
                List.of(),
                List.of(),
                ticks,
                isolationNotice,
                List.of(),
                List.of(),
                List.of(),
                repair,
                List.of(),
                0,
                "the program's data",
                List.of("Take care."));
    }

    private static FaultSheet plain(FaultSheet.Cause... causes) {
        return sheet(List.of(causes), null, List.of(DONE, OPEN), "", null);
    }

    private static String text(FaultSheet sheet) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        new FaultsReport(new CliContext(new TwinfeedService(List.of()), Run.DAY, out, out)).print(sheet);
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private static BigDecimal money(String text) {
        return new BigDecimal(text);
    }

    @Test
    void theWholeSheetIsPrintedInItsOrder() {
        FaultSheet sheet = new FaultSheet(
                "Shower 8.5 kW",
                "part",
                "Most likely the cut-out.",
                List.of(cause("cut-out", 0.72), cause("element", 0.28)),
                0,
                COVER,
                List.of(
                        new FaultSheet.Answer("cold", "Does it stay cold?", "yes", "said", "since May"),
                        new FaultSheet.Answer("weak", "Is the flow weak?", "no", "reading", "")),
                List.of(
                        new FaultSheet.Reading("Element", "open", "13 \u03a9", false),
                        new FaultSheet.Reading("Voltage", "231 V", "", true),
                        new FaultSheet.Reading("Flow", "4 L/min", "", null)),
                List.of(DONE, OPEN),
                "The ticks are old.",
                List.of("The flow is low."),
                List.of("Reset."),
                List.of(new FaultSheet.Expected("Flow", "5 L/min")),
                new RepairAdvice(
                        "GBP",
                        List.of(new RepairAdvice.Line("Cut-out", money("40.00"))),
                        money("95.50"),
                        money("12.25"),
                        money("107.75"),
                        5,
                        List.of(
                                new RepairAdvice.Replacement(
                                        "h85", "New 8.5 kW", money("300.00"), money("9.00"), money("309.00"), false),
                                new RepairAdvice.Replacement(
                                        "h95", "New 9.5 kW", money("320.00"), money("9.00"), money("329.00"), true)),
                        14,
                        money("310.00"),
                        "We advise the repair.",
                        List.of("Parts last ten years."),
                        List.of("part-hose", "part-valve")),
                List.of("No guarantee."),
                0,
                "the program's data",
                List.of("Take care."));
        assertEquals(
                """
                Shower 8.5 kW (there now)
                Most likely the cut-out.
                ! The ticks are old.
                Causes, most likely first:
                   72 %  cut-out: because
                   28 %  element: because
                What the supplies have to do with it:
                  - The flow is low.
                Next step (under the cover, 6 min): Is the cut-out open?
                  First, each step ticked with name and time; nothing under the cover is touched until all are:
                  1. Off.
                  2. Lock.
                Reported and seen:
                  Does it stay cold? Yes. [reported or seen] (since May)
                  Is the flow weak? No. [by a reading]
                Readings:
                  [NO] Element: open; sound: 13 \u03a9
                  [ok] Voltage: 231 V
                  [??] Flow: 4 L/min
                Safe isolation:
                  [x] Switch off (A. Fitter; 10:00)
                  [ ] Shut the water
                Steps taken:
                  - Reset.
                Expected after the repair:
                  Flow: 5 L/min
                Repair or replace, without tax; amounts that rest on chances are expected values, not quotes:
                  We advise the repair.
                  Cut-out                                                                                         40.00 GBP
                  Repair, expected                                                                                95.50 GBP
                  Later failures, expected                                                                        12.25 GBP
                  Repair with later failures                                                                     107.75 GBP
                  New 8.5 kW: 300.00 + 9.00 = 309.00 GBP
                  New 9.5 kW: 320.00 + 9.00 = 329.00 GBP (price of a part still open: the true sum is higher)
                  From this age in years the new unit costs no more: 14
                  At this repair price the new unit costs the same                                               310.00 GBP
                  * Parts last ten years.
                  ! Not in the price book, so the sums are too low: part-hose, part-valve
                Notices:
                  - No guarantee.
                source: the program's data
                Take care.
                """,
                text(sheet).replace(System.lineSeparator(), "\n"));
    }

    @Test
    void whatThereIsNothingOfHasNoHead() {
        assertEquals(
                """
                Shower 8.5 kW (there now)
                Most likely the cut-out.
                Causes, most likely first:
                   72 %  cut-out: because
                source: the program's data
                Take care.
                """,
                text(sheet(List.of(cause("cut-out", 0.72)), null, List.of(OPEN), "", null))
                        .replace(System.lineSeparator(), "\n"));
    }

    @Test
    void whereNothingWasReportedNoCauseIsNamed() {
        FaultSheet some = plain(cause("cut-out", 0.72));
        FaultSheet none = new FaultSheet(
                some.heater(),
                "nothing-reported",
                "Nothing was reported.",
                some.causes(),
                0,
                null,
                List.of(),
                List.of(),
                List.of(),
                "",
                List.of(),
                List.of(),
                List.of(),
                null,
                List.of(),
                0,
                some.source(),
                some.cautions());
        assertFalse(text(none).contains("cut-out"), text(none));
    }

    @Test
    void noCauseIsPrintedAsCertainAndNoRemoteOneAtAll() {
        String text = text(plain(cause("cut-out", 1), cause("valve", 0.01), cause("hose", 0.009)));
        assertTrue(text.contains(" 99 %  cut-out"), text);
        assertTrue(text.contains("  1 %  valve"), text);
        assertFalse(text.contains("hose"), text);
    }

    @Test
    void fiveCausesAreEnough() {
        String text = text(plain(
                cause("first", 0.4),
                cause("second", 0.2),
                cause("third", 0.1),
                cause("fourth", 0.1),
                cause("fifth", 0.1),
                cause("sixth", 0.1)));
        assertTrue(text.contains("fifth") && !text.contains("sixth"), text);
    }

    /** Somebody began; the next step is under the cover; or the cover is off already. */
    @Test
    void theIsolationIsAskedWhereItMatters() {
        List<FaultSheet.Tick> open = List.of(OPEN);
        FaultSheet.Next outside = new FaultSheet.Next("weak", "Weak?", "outside", "from outside", 1, 0.5, List.of());
        assertTrue(text(sheet(List.of(), null, List.of(DONE, OPEN), "", null)).contains("Safe isolation:"));
        assertTrue(text(sheet(List.of(), COVER, open, "", null)).contains("Safe isolation:"));
        assertTrue(
                text(sheet(List.of(), null, open, "The ticks are old.", null)).contains("[ ] Shut the water"));
        String spared = text(sheet(List.of(), outside, open, "", null));
        assertFalse(spared.contains("Shut the water") || spared.contains("First, each step"), spared);
    }

    @Test
    void aRepairWithoutBreakEvenSaysNoMoreThanItsSums() {
        RepairAdvice advice = new RepairAdvice(
                "GBP",
                List.of(),
                money("95.50"),
                money("12.25"),
                money("107.75"),
                5,
                List.of(),
                null,
                null,
                "We advise the repair.",
                List.of(),
                List.of());
        String text = text(sheet(List.of(), null, List.of(), "", advice));
        assertTrue(text.contains("107.75 GBP"), text);
        assertFalse(text.contains("costs") || text.contains("Not in the price book"), text);
    }
}
