// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Translation;
import twinfeed.desktop.WindowLanguage;
import twinfeed.desktop.form.FieldDocumentation;
import twinfeed.model.survey.SurveyPackage;

/** The window says in German all that it says in English. */
final class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(Words.class, "Desktop", SAME);
    }

    @Test
    void menusAndTitlesAreGermanToo() throws Exception {
        Properties english = bundle("bundle");
        Properties german = bundle("bundle_de");
        assertEquals(new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(german.stringPropertyNames()));
        assertTrue(english.size() > 50, "texts: " + english.size());
        assertEquals("Gehe zu", german.getProperty("menu.go").replace("&", ""));
        assertEquals(
                "Zuletzt geöffnete Aufträge", german.getProperty("menu.recent").replace("&", ""));
    }

    private static Properties bundle(String name) throws Exception {
        Properties properties = new Properties();
        try (InputStream stream = Words.class.getResourceAsStream("/OSGI-INF/l10n/" + name + ".properties")) {
            properties.load(stream);
        }
        return properties;
    }

    /** The tooltips are those of the model, so that help and model cannot drift apart; German says each of them too. */
    @Test
    void everyReadingIsExplainedInBothLanguages() {
        FieldDocumentation model = FieldDocumentation.ofModel(Locale.UK);
        FieldDocumentation translated = FieldDocumentation.ofModel(Locale.GERMANY);
        Words english = new Words(Locale.UK);
        int seen = 0;
        for (var classifier : SurveyPackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EClass type) {
                for (EStructuralFeature feature : type.getEStructuralFeatures()) {
                    String key = type.getName() + "." + feature.getName();
                    seen++;
                    assertNotEquals("", model.help(feature), key);
                    assertNotEquals(model.help(feature), translated.help(feature), key);
                    assertEquals(
                            model.defaultValue(feature).orElse(null),
                            english.find("default." + key),
                            "default of " + key);
                }
            }
        }
        assertTrue(seen > 150, "readings: " + seen);
    }

    @Test
    void languageIsTheSystemsUnlessAnotherIsChosen() {
        Locale austria = Locale.forLanguageTag("de-AT");
        assertEquals(austria, WindowLanguage.of("system", austria));
        assertEquals(austria, WindowLanguage.of("de", austria));
        assertEquals(Locale.UK, WindowLanguage.of("en", austria));
        assertEquals(Locale.GERMANY, WindowLanguage.of("de", Locale.UK));
        assertEquals(Locale.UK, WindowLanguage.of("system", Locale.FRANCE), "English where it speaks no French");
        assertEquals(Locale.US, WindowLanguage.of("", Locale.US));
        assertEquals(Locale.UK, WindowLanguage.of("", Locale.ENGLISH), "a system in the locale C");
        assertEquals(Locale.UK, WindowLanguage.of("en", Locale.ROOT));
        assertEquals(Locale.GERMANY, WindowLanguage.of("system", Locale.GERMAN));
    }

    private static final String[] SAME = {
        "application",
        "choice.ResidualDevice.type.A",
        "choice.ResidualDevice.type.AC",
        "choice.ResidualDevice.type.B",
        "choice.ResidualDevice.type.F",
        "compare.field.text",
        "completion.reason",
        "default.CableSegment.ambient",
        "default.CableSegment.grouped",
        "default.CableSegment.insulated",
        "default.DrawOff.height",
        "default.Fitting.count",
        "default.Load.count",
        "default.PipeSegment.rise",
        "default.Survey.winterIntake",
        "default.Survey.targetOutlet",
        "default.WaterTest.gaugeHeight",
        "dialog.ok",
        "entry.import.code",
        "faults.percent",
        "field.wanted",
        "findings.of",
        "issued.accept.option",
        "issued.digest",
        "issued.in",
        "issued.of",
        "job.tab",
        "label.PriceItem.code",
        "list.down",
        "list.up",
        "office.pdf",
        "page.odd",
        "page.wrong",
        "quick.run.of",
        "settings.firm.logo",
        "settings.firm.name",
        "start.title",
    };
}
