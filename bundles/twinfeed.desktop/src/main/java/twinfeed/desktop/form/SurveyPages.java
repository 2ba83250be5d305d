// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import twinfeed.desktop.form.Page.Field;
import twinfeed.desktop.form.Page.Item;
import twinfeed.desktop.form.Page.Offered;
import twinfeed.desktop.form.Page.Section;
import twinfeed.desktop.form.Page.Several;
import twinfeed.model.job.JobPackage;
import twinfeed.model.survey.SurveyPackage;

/**
 * The pages of a survey in the order in which a person walks the house: the people, the unit, the water from main to unit, the
 * electricity from service fuse to unit, and what is asked for; at the end what is measured after the work.
 */
public final class SurveyPages {
    /** Key of the page of the fault-finding. */
    public static final String FAULTS = "faults";

    /** Key of the page after the work. */
    public static final String COMPLETION = "completion";

    private final EClass owner;

    private SurveyPages(EClass owner) {
        this.owner = owner;
    }

    /** All pages. */
    public static List<Page> all() {
        SurveyPages survey = new SurveyPages(SurveyPackage.Literals.SURVEY);
        return List.of(
                survey.house(),
                survey.unit(),
                survey.faults(),
                survey.waterTest(),
                survey.pipes(),
                survey.supply(),
                survey.circuit(),
                survey.loads(),
                survey.request(),
                new SurveyPages(JobPackage.Literals.JOB).completion());
    }

    private Page house() {
        return page(
                "house",
                section("visit", fields("takenBy takenOn")),
                section(
                        "customer",
                        fields("customer.name customer.address= customer.phone customer.email customer.vulnerable")),
                section(
                        "site",
                        fields("site.name site.address= site.kind site.reference site.loftAccess site.texturedCoating"
                                + " site.outsideZones site.supplementaryBonding site.extraneousParts"
                                + " site.lastInspection site.note=")),
                section("notes", fields("notes= publicNotes=")),
                folded("photos", several("photos", "file caption", "file caption subject")));
    }

    private Page unit() {
        return page(
                "unit",
                section(
                        "present",
                        fields("unit.heaterId? unit.age unit.guaranteeUntil unit.measuredFlow unit.outletReading"
                                + " unit.note=")),
                folded("plate", plate()));
    }

    private List<Item> plate() {
        List<Item> items = new ArrayList<>(under(
                "unit.heater.",
                "id title power voltage minimumRunningPressure runningPressureFlow maximumStaticPressure"
                        + " activationFlow switchPlace makePressure breakPressure inletLoss inletLossFlow"
                        + " downstreamPressure downstreamFlow throttleMinimum stabilised stabilisedMinimum maximumIntake"
                        + " tankFeedAllowed pumpedFeedAllowed preheatedAllowed cutOutTemperature electronics maximumDevice"
                        + " minimumConductor maximumConductor maximumHardness coilResistance powerToleranceUp"
                        + " powerToleranceDown ingress guaranteeYears recalledOn withdrawnOn priceItem note="));
        items.addAll(several("unit.heater.elements", "power", "power"));
        return items;
    }

    private Page faults() {
        String done = "faultFinding.";
        return page(
                FAULTS,
                section("outside", under(done, "flowHottest flowColdest runningPressure shutOffTime")),
                section("elements", several(done + "elements", "name resistance", "name resistance open")),
                section("deadTests", under(done, "coil coilOpen cutOutCloses switchCloses")),
                section("steps", several(done + "steps", "what by", "what= by at")),
                folded("answers", fixed("symptoms", "key answer", "note= by at")));
    }

    private Page waterTest() {
        return page(
                "waterTest",
                section(
                        "source",
                        fields("water.source water.hottestFeed water.intakeReading water.hardness water.lowestHandset"
                                + " water.sharedServicePipe water.backflowProtection? water.handsetReachesWc")),
                section(
                        "test",
                        fields("water.test.staticPressure water.test.runningPressure water.test.flow"
                                + " water.test.gaugeAfter? water.test.gaugeHeight water.test.atPeak"
                                + " water.test.takenAt water.stopValveOpen water.companyPressureConfirmed")),
                folded(
                        "main",
                        fields("water.mainTest.staticPressure water.mainTest.runningPressure water.mainTest.flow"
                                + " water.mainTest.gaugeHeight water.mainPipe.length water.mainPipe.rise")),
                folded("season", fields("climate? winterIntake annualMeanAir monthlyAirSpread southern")));
    }

    private Page pipes() {
        SurveyPages pipe = new SurveyPages(SurveyPackage.Literals.PIPE_SEGMENT);
        SurveyPages tap = new SurveyPages(SurveyPackage.Literals.DRAW_OFF);
        return page(
                "pipes",
                section("pipes", list("water.segments", "name size length", pipe.pipe())),
                section("drawOffs", list("water.drawOffs", "name flow", tap.tap(pipe.pipe()))));
    }

    private List<Item> pipe() {
        List<Item> items = new ArrayList<>(fields("name material size bore length rise roughness"));
        items.addAll(several("fittings", "kind count", "kind? count k"));
        return items;
    }

    private List<Item> tap(List<Item> pipe) {
        List<Item> items = new ArrayList<>(fields("name flow teeAfter? height"));
        items.addAll(list("segments", "name size length", pipe));
        return items;
    }

    private Page supply() {
        return page(
                "supply",
                section(
                        "origin",
                        fields("electricity.earthing electricity.supplyVoltage electricity.serviceFuse"
                                + " electricity.serviceFuseConfirmed electricity.externalLoop electricity.prospectiveFault"
                                + " electricity.electrode electricity.mainSwitch")),
                section(
                        "conductors",
                        fields("electricity.tails electricity.earthingConductor electricity.hasEarthingConductor"
                                + " electricity.mainBonding electricity.hasMainBonding electricity.metalServices"
                                + " electricity.supplyNeutral")),
                section(
                        "board",
                        fields("electricity.spareWay electricity.spareWayBehind electricity.deviceApproved"
                                + " electricity.assemblyFaultRating")),
                folded("rules", fields("rules?")));
    }

    private Page circuit() {
        SurveyPages cable = new SurveyPages(SurveyPackage.Literals.CABLE_SEGMENT);
        String circuit = "electricity.circuit.";
        return page(
                "circuit",
                section("device", under(circuit + "device.", "kind? rating breakingCapacity letThrough")),
                section("rcd", under(circuit + "rcd.", "kind type? residual rating tripTime timeDelayed scope load")),
                folded("upstreamRcd", under(circuit + "upstreamRcd.", "residual rating timeDelayed scope load")),
                section(
                        "cable",
                        list(
                                circuit + "segments",
                                "name size length method",
                                cable.fields(
                                        "name cable? oldCable size cpc hasCpc length method? confidence loft ambient"
                                                + " grouped layout insulated"))),
                section(
                        "isolator",
                        under(circuit + "isolator.", "kind? rating namedDevice condition maximumConductor")),
                section("readings", under(circuit, "measuredLoop measuredLine insulationResistance unitDisconnected")));
    }

    private Page loads() {
        return page(
                "loads",
                section(
                        "loads",
                        several("electricity.loads", "name kind", "name kind current power count socket managed")));
    }

    private Page request() {
        return page(
                "request",
                section("request", fields("targetOutlet requestedPower")),
                section("candidates", List.of(new Offered(path("candidates")))),
                folded("parameters", several("parameters", "calculator key value", "calculator key value")));
    }

    /** In the order in which it is taken: dead, then live, then with water. */
    private Page completion() {
        String done = "completion.";
        return page(
                COMPLETION,
                section("completionWho", fields("completion.by completion.doneOn completion.instruments")),
                section("completionDead", under(done, "cpcContinuous line bonding insulation elements")),
                section(
                        "completionLive",
                        under(
                                done,
                                "polaritySupply polarity externalLoop loop prospectiveFault residualTime residualButton"
                                        + " loadedVoltage")),
                section("completionWater", under(done, "runningPressure flow intake outlet tight shutsDown")),
                section(
                        "completionWork",
                        fields("completion.heaterId? completion.work= completion.settings= completion.departures="
                                + " completion.notes=")));
    }

    private Page page(String key, Section... sections) {
        return new Page(key, owner, List.of(sections));
    }

    private static Section section(String key, List<Item> items) {
        return new Section(key, false, items);
    }

    private static Section folded(String key, List<Item> items) {
        return new Section(key, true, items);
    }

    private List<Item> several(String list, String columns, String fields) {
        return list(list, columns, new SurveyPages(element(list)).fields(fields));
    }

    /** Elements that come from somewhere else; here only what is said of them is changed. */
    private List<Item> fixed(String list, String columns, String fields) {
        return list(list, columns, new SurveyPages(element(list)).fields(fields), false);
    }

    private List<Item> list(String list, String columns, List<Item> items) {
        return list(list, columns, items, true);
    }

    private List<Item> list(String list, String columns, List<Item> items, boolean grows) {
        EClass element = element(list);
        List<ReadingPath> shown = new ArrayList<>();
        for (String column : columns.split(" ")) {
            shown.add(ReadingPath.of(element, column));
        }
        return List.of(new Several(path(list), shown, items, grows));
    }

    private EClass element(String list) {
        return ((EReference) path(list).last()).getEReferenceType();
    }

    private List<Item> under(String prefix, String names) {
        return fields(prefix + String.join(" " + prefix, names.split(" ")));
    }

    /** Paths separated by spaces; behind one, {@code =} asks for several lines and {@code ?} offers known answers. */
    private List<Item> fields(String paths) {
        List<Item> items = new ArrayList<>();
        for (String each : paths.split(" +")) {
            ReadingPath path = path(each.replaceAll("[=?]$", ""));
            FieldForm form = each.endsWith("=")
                    ? FieldForm.LINES
                    : each.endsWith("?") ? FieldForm.KNOWN : FieldForm.of(path.attribute());
            items.add(new Field(path, form));
        }
        return items;
    }

    private ReadingPath path(String text) {
        return ReadingPath.of(owner, text);
    }
}
