// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twinfeed.diagnosis.inference.Diagnosis;
import twinfeed.diagnosis.inference.ObservationAnswer;
import twinfeed.diagnosis.text.FaultTexts;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;

/**
 * What the supplies of the unit have to do with its fault, for a part renewed without its cause fails again; and what an open
 * element does to power and flow.
 */
final class RelatedFindings {
    private static final List<CheckTopic> LITTLE_WATER =
            List.of(CheckTopic.SUMMER_OUTLET_LOW_POWER, CheckTopic.SUMMER_OUTLET, CheckTopic.TAP_OPENING);
    private static final List<String> BLOCKED = List.of("hoseBlocked", "hoseOffBetter", "reliefDrips", "reliefBurst");
    private static final List<String> CUT_OUTS = List.of("cut-out", "cut-out-manual", "cut-out-once");
    private static final List<String> TRIPPED =
            List.of("deviceFoundOff", "rcdTrips", "overcurrentTrips", "breakerTrips");

    private final Diagnosis diagnosis;
    private final SupplyFindings feeds;
    private final FaultTexts words;
    private final List<String> links = new ArrayList<>();

    private RelatedFindings(Diagnosis diagnosis, SupplyFindings feeds, FaultTexts words) {
        this.diagnosis = diagnosis;
        this.feeds = feeds;
        this.words = words;
    }

    static List<String> of(Diagnosis diagnosis, SupplyFindings feeds, FaultTexts words) {
        RelatedFindings links = new RelatedFindings(diagnosis, feeds, words);
        links.complaints();
        links.runOn();
        links.tap();
        links.cutOut();
        links.isolator();
        links.voltage();
        feeds.failing(List.of(CheckTopic.OPEN_ELEMENT)).ifPresent(links.links::add);
        return links.links;
    }

    private boolean yes(String key) {
        return answered(key, true);
    }

    private boolean answered(String key, boolean yes) {
        return diagnosis.evidence().answers().stream()
                .anyMatch(answer -> answer.key().equals(key) && answer.yes() == yes);
    }

    /** What practice says at once to some complaints, danger first. */
    private void complaints() {
        say("link.leak", yes("leakFromCase") || yes("waterInCase"));
        say("link.smell", yes("smellAtUnit"));
        say("link.hot", yes("tooHot") || yes("hotterWhenTapOpens"));
        say("link.tripped", TRIPPED.stream().anyMatch(this::yes));
        say(
                "link.dead",
                yes("deadNothing")
                        && diagnosis.evidence().underCover(diagnosis.data()).isEmpty());
        say("link.drip", yes("dripsWhenOff"));
    }

    private void say(String key, boolean applies) {
        if (applies) {
            links.add(words.get(key));
        }
    }

    /** Phased shutdown is normal; what runs on for longer is told apart by switching the power off (common practice). */
    private void runOn() {
        if (answered("waterRunsOn", false)) {
            links.add(words.get("link.runOn.normal"));
        }
        if (yes("waterRunsOn")) {
            String test = answered("runsOnPowerOff", false) ? "link.runOn.control" : "link.runOn.test";
            links.add(words.get(yes("runsOnPowerOff") ? "link.runOn.valve" : test));
        }
    }

    private void tap() {
        if (!yes("goesColdWhenTapOpens")) {
            return;
        }
        Optional<String> text = feeds.marginText();
        if (text.isPresent()) {
            links.add(words.format("link.tap", Map.of("finding", text.get())));
        } else if (feeds.closeText().isPresent()) {
            links.add(words.format(
                    "link.tap.close", Map.of("finding", feeds.closeText().get())));
        } else {
            links.add(words.get(
                    diagnosis.evidence().answers().stream().anyMatch(this::marginIsGood)
                            ? "link.tap.good"
                            : "link.tap.unknown"));
        }
    }

    private boolean marginIsGood(ObservationAnswer answer) {
        return answer.key().equals("feedMarginFails") && !answer.yes();
    }

    private void cutOut() {
        boolean suspected = yes("cutOutTripsRepeatedly")
                || CUT_OUTS.contains(diagnosis.posterior().first().part())
                        && diagnosis.evidence().any();
        if (!suspected) {
            return;
        }
        say("link.cutOut.manual", yes("manualCutOutTripped"));
        say("link.cutOut.once", yes("onceCutOutOpen"));
        int before = links.size();
        say("link.cutOut.scale", yes("scaleInCan") || yes("kettling"));
        feeds.failing(LITTLE_WATER)
                .ifPresent(text -> links.add(words.format("link.cutOut.summer", Map.of("finding", text))));
        if (BLOCKED.stream().anyMatch(this::yes)) {
            links.add(words.get("link.cutOut.outlet"));
        }
        if (links.size() == before) {
            links.add(words.get("link.cutOut.find"));
        }
    }

    private void isolator() {
        if (!yes("isolatorHot") && !yes("isolatorOpenCircuit")) {
            return;
        }
        String text =
                feeds.find(CheckTopic.ISOLATOR_RATING).map(Finding::getText).orElse("");
        if (feeds.fails(CheckTopic.ISOLATOR_RATING)) {
            links.add(words.format("link.isolator.rating", Map.of("finding", text)));
        } else if (feeds.passes(CheckTopic.ISOLATOR_RATING)) {
            links.add(words.format("link.isolator.terminals", Map.of("finding", text)));
        } else {
            links.add(words.get("link.isolator.unknown"));
        }
    }

    private void voltage() {
        if ((yes("someHeatButWeak") || yes("halfHeatSlowestSetting")) && yes("feedVoltageLow")) {
            String text =
                    feeds.find(CheckTopic.VOLTAGE_DROP).map(Finding::getText).orElse("");
            links.add(words.format("link.voltage", Map.of("finding", text)));
        }
    }
}
