// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.Arrays;
import twinfeed.model.survey.Survey;

/**
 * Intake temperature by month: a published table where the climate has one, otherwise the mains-temperature model from air
 * temperatures that the survey gives.
 */
final class MonthlyIntake {
    private final Survey survey;
    private final IntakeModel model;

    MonthlyIntake(Survey survey, IntakeModel model) {
        this.survey = survey;
        this.model = model;
    }

    /**
     * The months, degC.
     *
     * @throws IllegalArgumentException if the climate is unknown or the model lacks its air temperatures; loading a job
     *     refuses both before
     */
    double[] temperaturesC(String climate) {
        if (!climate.equals(Climates.MODEL)) {
            return Climates.months(climate)
                    .orElseThrow(() -> new IllegalArgumentException("unknown climate \"" + climate + "\"; known are "
                            + String.join(", ", Climates.ids()) + ", " + Climates.MODEL));
        }
        if (survey.getAnnualMeanAir() == null || survey.getMonthlyAirSpread() == null) {
            throw new IllegalArgumentException(
                    "climate \"model\" needs annualMeanAir and monthlyAirSpread in the survey");
        }
        double mean = survey.getAnnualMeanAir().si();
        double spread = survey.getMonthlyAirSpread().si();
        boolean southern = Boolean.TRUE.equals(survey.getSouthern());
        double[] months = new double[12];
        Arrays.setAll(months, month -> model.temperatureC(mean, spread, month + 1, southern));
        return months;
    }
}
