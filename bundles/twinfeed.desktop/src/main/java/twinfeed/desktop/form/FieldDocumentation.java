// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.model.text.ModelDocs;

/**
 * What the model itself says about its readings: meaning, unit, range, and what holds where a reading is not given. Read from
 * the model's own definition, so that help and model cannot drift apart.
 */
public final class FieldDocumentation {
    private static final Pattern FALLBACK = Pattern.compile("no entry means ([^;.]+)");

    private final Locale locale;

    private FieldDocumentation(Locale locale) {
        this.locale = locale;
    }

    /** The documentation of the whole model in a language. */
    public static FieldDocumentation ofModel(Locale locale) {
        return new FieldDocumentation(locale);
    }

    /** What a reading is; empty if the model does not say. */
    public String help(EStructuralFeature feature) {
        return ModelDocs.printed(feature, locale);
    }

    /** What holds where the reading is not given, if the model says so. */
    public Optional<String> defaultValue(EStructuralFeature feature) {
        Matcher matcher = FALLBACK.matcher(ModelDocs.printed(feature, Locale.ROOT));
        return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
    }
}
