// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Context;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.survey.FeedReader;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.model.usual.UsualValues;

/**
 * The house as mapped from its survey, once for all heaters.
 *
 * @param context what the calculator was given
 * @param surveyedFeed the water feed as it was when the readings were taken; the feed itself where no work was done
 * @param feed the water feed with the works done, under the conditions of the grid, absent where a reading is missing or cannot be used
 * @param faults paths of the readings that cannot be used
 */
public record SurveyedHouse(
        Context context, @Nullable FeedConditions surveyedFeed, @Nullable FeedConditions feed, List<String> faults) {
    private static final double MOST_HANDSET_M = 10;

    /** Reads a survey. */
    public static SurveyedHouse of(Context context) {
        FeedReader surveyed = FeedReader.ofSurveyed(context);
        FeedConditions surveyedFeed = conditions(context, surveyed);
        if (context.surveyed() == context.survey()) {
            return new SurveyedHouse(context, surveyedFeed, surveyedFeed, surveyed.faults());
        }
        FeedReader changed = FeedReader.ofChanged(context, surveyed.feed().orElse(null));
        return new SurveyedHouse(context, surveyedFeed, conditions(context, changed), changed.faults());
    }

    private static @Nullable FeedConditions conditions(Context context, FeedReader reader) {
        return reader.feed()
                .map(known -> new FeedConditions(known, context.grid()))
                .orElse(null);
    }

    /** Where the water comes from; the main, where nobody says. */
    WaterSource source() {
        WaterFeed water = water();
        return water == null ? WaterSource.MAINS : water.getSource();
    }

    /** Pressure to which a reducing valve is set, Pa. */
    double reducedPa() {
        return context.parameters().si("reduced");
    }

    /** By what share the supply is taken to be weaker at its busiest. */
    double peakShare() {
        return context.parameters().si("peak");
    }

    /** Outlet temperature that must not be passed while a tap opens, degC. */
    double hottestC() {
        return context.parameters().si(vulnerable() ? "hottest-frail" : "hottest");
    }

    /** Time from the moment at which the cut-out's temperature is passed until it acts, s. */
    double cutOutDelayS() {
        return context.parameters().si("cut-out-delay");
    }

    /** Outlet temperature from which a warning is strong, degC. */
    double strongC() {
        return context.parameters().si("strong");
    }

    /** The target outlet temperature, degC; the flow calculator records the default. */
    double targetC() {
        return UsualValues.targetOutletC(survey());
    }

    /** Whether children, elderly or frail people use the shower. */
    boolean vulnerable() {
        return survey().getCustomer() != null
                && Boolean.TRUE.equals(survey().getCustomer().getVulnerable());
    }

    /** Height of the lowest handset position over the unit, m, or null where nobody says or it cannot be. */
    @Nullable
    Double lowestHandsetM() {
        WaterFeed water = water();
        return water == null
                        || water.getLowestHandset() == null
                        || Math.abs(water.getLowestHandset().si()) > MOST_HANDSET_M
                ? null
                : Double.valueOf(water.getLowestHandset().si());
    }

    Survey survey() {
        return context.survey();
    }

    @Nullable
    WaterFeed water() {
        return context.survey().getWater();
    }
}
