// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Remedy;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;

/**
 * The strongest other shower of the house that a priority unit could be put between.
 *
 * @param place where it stands among the loads of the survey, -1 if there is none
 * @param currentA its current, A
 */
record SecondShower(int place, double currentA) {
    static SecondShower of(@Nullable ElectricalFeed feed, double nominalV) {
        SecondShower strongest = new SecondShower(-1, 0);
        if (feed == null) {
            return strongest;
        }
        for (int at = 0; at < feed.getLoads().size(); at++) {
            Load load = feed.getLoads().get(at);
            Double currentA = HouseLoads.currentA(load, nominalV);
            boolean single = load.getCount() == null || load.getCount() == 1;
            boolean shower = !HouseLoads.managed(load) && load.isSetKind() && load.getKind() == LoadKind.SHOWER;
            if (shower && single && currentA != null && currentA > strongest.currentA) {
                strongest = new SecondShower(at, currentA);
            }
        }
        return strongest;
    }

    boolean exists() {
        return place >= 0;
    }

    Remedy priority(double showerA) {
        return DemandRemedies.priority(place, currentA, showerA);
    }
}
