// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;

/**
 * The shower that is there, as a load: what a new one adds is what it draws more.
 *
 * @param id its id in the catalogue, empty if not known
 * @param currentA its design current, A, absent if not known
 */
record PresentLoad(String id, @Nullable Double currentA) {
    static PresentLoad of(Survey survey) {
        PresentUnit unit = survey.getUnit();
        if (unit == null) {
            return new PresentLoad("", null);
        }
        return new PresentLoad(unit.getHeaterId() == null ? "" : unit.getHeaterId(), currentA(unit.getHeater()));
    }

    private static @Nullable Double currentA(@Nullable Heater heater) {
        if (heater == null || heater.getPower() == null || heater.getVoltage() == null) {
            return null;
        }
        return heater.getVoltage().si() > 0
                ? Double.valueOf(heater.getPower().si() / heater.getVoltage().si())
                : null;
    }

    /** Whether a heater adds no load: it is the one that is there, one of its kind, or no stronger one. */
    boolean likeForLike(ShowerCase shower) {
        Heater heater = shower.candidate().heater();
        if (shower.candidate().present() || (!id.isEmpty() && id.equals(heater.getId()))) {
            return true;
        }
        Double showerA = shower.currentA();
        return currentA != null && showerA != null && showerA <= currentA * (1 + 1e-9);
    }
}
