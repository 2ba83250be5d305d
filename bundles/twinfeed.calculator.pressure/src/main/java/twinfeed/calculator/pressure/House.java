// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Context;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;

/**
 * The house as mapped from its survey, once for all heaters.
 *
 * @param context what the calculator was given
 * @param feed the water feed under the conditions of the grid, absent where a reading is missing or cannot be used
 * @param faults paths of the readings that cannot be used
 */
record House(Context context, @Nullable FeedConditions feed, List<String> faults) {
    /** Reads a survey. */
    static House of(Context context) {
        FeedReader reader = FeedReader.of(context);
        FeedConditions feed = reader.feed()
                .map(known -> new FeedConditions(known, context.grid()))
                .orElse(null);
        return new House(context, feed, reader.faults());
    }

    Survey survey() {
        return context.survey();
    }

    @Nullable
    WaterFeed water() {
        return context.survey().getWater();
    }
}
