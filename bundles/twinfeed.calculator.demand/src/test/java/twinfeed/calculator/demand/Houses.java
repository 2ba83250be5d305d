// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import twinfeed.calculator.SampleHouse;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Current;

/** Invented houses with their loads. */
final class Houses {
    private Houses() {}

    static Heater heater() {
        Heater heater = SampleHouse.heater("9.5 kW", "240 V");
        heater.setId("h95");
        return heater;
    }

    /** Service fuse and main switch as given; a cooker with socket, two rings, lighting and another shower. */
    static Survey house(String fuse, String mainSwitch) {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        ElectricalFeed feed = SurveyFactory.eINSTANCE.createElectricalFeed();
        feed.setServiceFuse(Current.valueOf(fuse));
        feed.setServiceFuseConfirmed(true);
        feed.setMainSwitch(Current.valueOf(mainSwitch));
        survey.setElectricity(feed);
        Load cooker = SampleHouse.load("cooker", LoadKind.COOKER, "32 A");
        cooker.setSocket(true);
        feed.getLoads().add(cooker);
        Load rings = SampleHouse.load("ring", LoadKind.SOCKETS, "32 A");
        rings.setCount(2);
        feed.getLoads().add(rings);
        feed.getLoads().add(SampleHouse.load("lighting", LoadKind.LIGHTING, "6 A"));
        feed.getLoads().add(SampleHouse.load("upstairs shower", LoadKind.SHOWER, "35 A"));
        return survey;
    }
}
