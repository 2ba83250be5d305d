// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.text;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import twinfeed.diagnosis.data.FaultPart;
import twinfeed.units.text.Texts;

/** Texts of a fault finding in one language. */
public final class FaultTexts {
    /** Names of parts, questions, stages and steps of the isolation, which findings and sheets share. */
    public static final Texts NAMES = new Texts(FaultTexts.class, "Diagnosis");

    private static final Texts SHEET = new Texts(FaultTexts.class, "FaultSheet");

    private final Locale locale;

    /** In one language; English where there are no texts in it. */
    public FaultTexts(Locale locale) {
        this.locale = locale;
    }

    /** The language. */
    public Locale locale() {
        return locale;
    }

    /** A text of the sheet. */
    public String get(String key) {
        return SHEET.get(locale, key);
    }

    /** A text of the sheet with its placeholders filled. */
    public String format(String key, Map<String, ?> values) {
        return SHEET.format(locale, key, values);
    }

    /** Name of a part. */
    public String part(String key) {
        return NAMES.get(locale, "part." + key);
    }

    /** Why a part fails; a reason from a firm's own fault data is printed as the firm wrote it. */
    public String reason(FaultPart part) {
        String key = "reason." + part.key();
        return part.reason().equals(NAMES.find(Locale.ROOT, key)) ? NAMES.get(locale, key) : part.reason();
    }

    /** What the customer reported, in the customer's words; none for what only an engineer sees. */
    public Optional<String> reported(String observation) {
        return NAMES.find(Locale.ROOT, "customer.reported." + observation) == null
                ? Optional.empty()
                : Optional.of(NAMES.get(locale, "customer.reported." + observation));
    }

    /** A part in the customer's words; its name in the trade where there are none. */
    public String customerPart(String part) {
        return NAMES.find(Locale.ROOT, "customer.part." + part) == null
                ? part(part)
                : NAMES.get(locale, "customer.part." + part);
    }

    /** The work of renewing a part in the customer's words; the part's name where there are none. */
    public String renewal(String part) {
        return NAMES.find(Locale.ROOT, "customer.renew." + part) == null
                ? part(part)
                : NAMES.get(locale, "customer.renew." + part);
    }

    /** A text for the customer with its placeholders filled. */
    public String customer(String key, Map<String, ?> values) {
        return NAMES.format(locale, "customer." + key, values);
    }

    /** The question that an observation asks. */
    public String question(String key) {
        return NAMES.get(locale, "question." + key);
    }

    /** A step of the isolation. */
    public String isolation(String key) {
        return NAMES.get(locale, "isolation." + key);
    }

    /** The stage at which an observation is made. */
    public String stage(String key) {
        return NAMES.get(locale, "stage." + key);
    }
}
