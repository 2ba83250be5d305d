// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.OptionAssessment;

/** Titles and lines of addresses. */
public final class Titles {
    private Titles() {}

    /** The heater, with a remark if it is the one that is there. */
    public static String option(DocumentTexts words, OptionAssessment option) {
        String title = option.getTitle() == null ? String.valueOf(option.getHeaterId()) : option.getTitle();
        return present(option) ? words.get("option.present", "title", title) : title;
    }

    /** Whether it is the unit that is there. */
    public static boolean present(OptionAssessment option) {
        return Boolean.TRUE.equals(option.getPresent());
    }

    /** An address or contact with one line for each semicolon. */
    public static String lines(@Nullable String text) {
        return text == null ? "" : text.replaceAll("\\s*;\\s*", "\n").strip();
    }
}
