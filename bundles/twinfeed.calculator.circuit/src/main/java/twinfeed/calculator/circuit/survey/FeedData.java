// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WayPosition;

/**
 * What stands ahead of the circuit.
 *
 * @param earthing earthing arrangement
 * @param supplyV voltage measured at the origin, V
 * @param fuseA rating of the service fuse, A
 * @param externalOhm Ze, ohm
 * @param faultA larger prospective fault current, A
 * @param electrodeOhm resistance of the electrode and its conductor, ohm
 * @param tailsMm2 tails, mm2
 * @param earthingMm2 earthing conductor, mm2
 * @param bondingMm2 main bonding, mm2
 * @param neutralMm2 supply neutral, mm2
 * @param spareWay whether there is a spare way
 * @param approved whether the device is approved for the consumer unit
 * @param assemblyA conditional fault rating of the consumer unit, A
 * @param present what was said of whether parts are there at all
 * @param spareBehind what the spare way lies behind, absent if nobody looked
 */
public record FeedData(
        @Nullable Earthing earthing,
        @Nullable Double supplyV,
        @Nullable Double fuseA,
        @Nullable Double externalOhm,
        @Nullable Double faultA,
        @Nullable Double electrodeOhm,
        @Nullable Double tailsMm2,
        @Nullable Double earthingMm2,
        @Nullable Double bondingMm2,
        @Nullable Double neutralMm2,
        @Nullable Boolean spareWay,
        @Nullable Boolean approved,
        @Nullable Double assemblyA,
        Present present,
        @Nullable WayPosition spareBehind) {

    /**
     * Whether parts are there at all; absent if nobody looked.
     *
     * @param earthingConductor false: there is none
     * @param bonding false: there is none
     * @param metalServices false: nothing of metal enters the house, so that there is nothing to bond
     */
    public record Present(
            @Nullable Boolean earthingConductor, @Nullable Boolean bonding, @Nullable Boolean metalServices) {}

    /** Of a feed as it was recorded; of one that was not, every reading is absent. */
    public static FeedData of(@Nullable ElectricalFeed recorded) {
        ElectricalFeed feed = recorded == null ? SurveyFactory.eINSTANCE.createElectricalFeed() : recorded;
        return new FeedData(
                feed.isSetEarthing() ? feed.getEarthing() : null,
                SiValues.of(feed.getSupplyVoltage()),
                SiValues.of(feed.getServiceFuse()),
                SiValues.of(feed.getExternalLoop()),
                SiValues.of(feed.getProspectiveFault()),
                SiValues.of(feed.getElectrode()),
                SiValues.mm2(feed.getTails()),
                SiValues.mm2(feed.getEarthingConductor()),
                SiValues.mm2(feed.getMainBonding()),
                SiValues.mm2(feed.getSupplyNeutral()),
                feed.getSpareWay(),
                feed.getDeviceApproved(),
                SiValues.of(feed.getAssemblyFaultRating()),
                new Present(feed.getHasEarthingConductor(), feed.getHasMainBonding(), feed.getMetalServices()),
                feed.isSetSpareWayBehind() ? feed.getSpareWayBehind() : null);
    }

    /** Whether there is no earthing conductor, which is not the same as not looked for. */
    public boolean withoutEarthingConductor() {
        return Boolean.FALSE.equals(present.earthingConductor);
    }

    /** Whether there is no main bonding, which is not the same as not looked for. */
    public boolean withoutBonding() {
        return Boolean.FALSE.equals(present.bonding);
    }

    /** Whether there is nothing to bond: no metal enters the house. */
    public boolean nothingToBond() {
        return Boolean.FALSE.equals(present.metalServices);
    }

    /** Whether a spare way lies behind the main switch only. */
    public boolean spareWayOfItsOwn() {
        return Boolean.TRUE.equals(spareWay) && spareBehind == WayPosition.MAIN_SWITCH;
    }

    public boolean ownElectrode() {
        return earthing == Earthing.TT;
    }
}
