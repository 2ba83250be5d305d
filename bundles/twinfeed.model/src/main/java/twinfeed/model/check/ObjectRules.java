// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.function.BiConsumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterTest;

/** Checks an object and all that it contains, each by the rules of its class, in the order of the file. */
final class ObjectRules {
    private static final Map<Class<?>, BiConsumer<EObject, Problems>> BY_CLASS = new HashMap<>();

    static {
        rule(WaterFeed.class, WaterRules::feed);
        rule(WaterTest.class, WaterRules::test);
        rule(ElectricalFeed.class, ElectricalRules::feed);
        rule(Circuit.class, ElectricalRules::circuit);
        rule(CableSegment.class, ElectricalRules::segment);
        rule(ResidualDevice.class, ElectricalRules::rcd);
        rule(Isolator.class, ElectricalRules::isolator);
        rule(Load.class, ElectricalRules::load);
        rule(Heater.class, HeaterRules::heater);
        rule(Photo.class, SurveyRules::photo);
        rule(ParameterValue.class, SurveyRules::parameter);
    }

    private ObjectRules() {}

    private static <T extends EObject> void rule(Class<T> type, BiConsumer<T, Problems> rule) {
        BY_CLASS.put(type, (object, problems) -> rule.accept(type.cast(object), problems));
    }

    static void checkAll(EObject root, Problems problems) {
        checkOne(root, problems);
        for (Iterator<EObject> all = EcoreUtil.getAllProperContents(root, false); all.hasNext(); ) {
            checkOne(all.next(), problems);
        }
    }

    private static void checkOne(EObject object, Problems problems) {
        RangeRules.check(object, problems);
        BiConsumer<EObject, Problems> rule = BY_CLASS.get(object.eClass().getInstanceClass());
        if (rule != null) {
            rule.accept(object, problems);
        }
    }
}
