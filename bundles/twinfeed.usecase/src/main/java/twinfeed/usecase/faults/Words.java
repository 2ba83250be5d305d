// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.faults;

import java.util.Locale;
import java.util.Map;
import twinfeed.calculator.Texts;
import twinfeed.calculator.faults.FaultPart;
import twinfeed.calculator.faults.FaultsCalculator;

/** Texts of the job sheet in one language. */
final class Words {
    private static final Texts TEXTS = new Texts(Words.class, "FaultSheet");
    private final Locale locale;

    Words(Locale locale) {
        this.locale = locale;
    }

    Locale locale() {
        return locale;
    }

    String get(String key) {
        return TEXTS.get(locale, key);
    }

    String format(String key, Map<String, ?> values) {
        return TEXTS.format(locale, key, values);
    }

    String part(String key) {
        return FaultsCalculator.TEXTS.get(locale, "part." + key);
    }

    /** Why a part fails; what a firm's own fault data say is told in the words of the firm. */
    String reason(FaultPart part) {
        String key = "reason." + part.key();
        return part.reason().equals(FaultsCalculator.TEXTS.find(Locale.ROOT, key))
                ? FaultsCalculator.TEXTS.get(locale, key)
                : part.reason();
    }

    String question(String key) {
        return FaultsCalculator.TEXTS.get(locale, "question." + key);
    }

    String isolation(String key) {
        return FaultsCalculator.TEXTS.get(locale, "isolation." + key);
    }

    String place(String key) {
        return FaultsCalculator.TEXTS.get(locale, "place." + key);
    }
}
