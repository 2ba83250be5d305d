// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.guide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.model.assessment.AssessmentPackage;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.form.FormPart;
import twinfeed.model.form.SurveyForm;
import twinfeed.model.job.JobPackage;
import twinfeed.model.pricebook.PricebookPackage;
import twinfeed.model.quote.QuotePackage;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.model.text.ModelDocs;
import twinfeed.pricing.texts.StandingTexts;
import twinfeed.units.text.Texts;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;

/**
 * Pages of reference for the files that the program reads, made from the model's own documentation: every attribute
 * with its meaning, its unit or words, and its usual range.
 */
public final class FileGuide {
    private static final Texts TEXTS = new Texts(FileGuide.class, "Guide");

    /** Column of a list of dwellings for what is complained of. */
    static final String SYMPTOMS = "symptoms";

    private final Locale locale;
    private final FieldText fields;
    private final List<String> lines = new ArrayList<>();

    /** With the calculators whose words a job may hold, in a language. */
    public FileGuide(TwinfeedService service, Locale locale) {
        this.locale = locale;
        this.fields = new FieldText(service.calculators(), locale);
    }

    /** The page of a kind of file, line by line. */
    public List<String> page(FileKind kind) {
        lines.clear();
        say(kind.key());
        switch (kind) {
            case JOB -> classes(JobPackage.Literals.JOB);
            case CATALOGUE -> classes(CataloguePackage.Literals.CATALOGUE);
            case PRICE_BOOK -> priceBook();
            case DWELLINGS -> dwellings();
            case FIRM -> FirmFile.keys().forEach(key -> field(key, "", text("firm." + key)));
            case TEXTS -> StandingTexts.shipped(locale).forEach((key, value) -> field(key, "", value));
            case QUOTE -> {
                classes(QuotePackage.Literals.QUOTE);
                classes(AssessmentPackage.Literals.ASSESSMENT);
            }
        }
        return List.copyOf(lines);
    }

    private void say(String key) {
        lines.add(text("title." + key));
        lines.add("");
        lines.add(text("intro." + key));
    }

    private String text(String key) {
        return TEXTS.get(locale, key);
    }

    /** A class and all that it contains, each class once. */
    private void classes(EClass root) {
        Set<EClass> seen = new LinkedHashSet<>();
        collect(root, seen);
        for (EClass type : seen) {
            lines.add("");
            lines.add(type.getName() + " \u2013 " + ModelDocs.printed(type, locale));
            features(type);
        }
    }

    private static void collect(EClass type, Set<EClass> seen) {
        if (seen.add(type)) {
            type.getEAllContainments().forEach(part -> collect(part.getEReferenceType(), seen));
        }
    }

    private void features(EClass type) {
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (feature instanceof EAttribute attribute) {
                field(attribute.getName(), fields.form(attribute), fields.meaning(attribute));
                words(attribute);
            } else if (feature instanceof EReference part) {
                String form = TEXTS.format(
                        locale,
                        part.isMany() ? "part.many" : "part.one",
                        Map.of("type", part.getEReferenceType().getName()));
                field(part.getName(), form, ModelDocs.printed(part, locale));
            }
        }
    }

    private void field(String name, String form, String meaning) {
        lines.add("  " + name + (form.isEmpty() ? "" : "  (" + form + ")"));
        lines.add("      " + meaning);
    }

    private void words(EAttribute attribute) {
        fields.meanings(attribute).forEach(word -> lines.add("        " + word));
    }

    /** The head's keys and the columns are the attributes, written with hyphens. */
    private void priceBook() {
        lines.add("");
        lines.add(text("book.head"));
        for (EStructuralFeature feature : PricebookPackage.Literals.PRICE_BOOK.getEAllStructuralFeatures()) {
            if (feature == PricebookPackage.Literals.PRICE_BOOK__ITEMS) {
                continue;
            }
            String name = singular(hyphened(feature.getName()));
            if (feature instanceof EAttribute attribute) {
                field("# " + name + ":", fields.form(attribute), fields.meaning(attribute));
            } else if (feature instanceof EReference part) {
                String cells = part.getEReferenceType().getEAllAttributes().stream()
                        .map(each -> hyphened(each.getName()))
                        .collect(Collectors.joining(", "));
                field("# " + name + ":", cells, ModelDocs.printed(part, locale));
                part.getEReferenceType()
                        .getEAllAttributes()
                        .forEach(
                                each -> lines.add("        " + hyphened(each.getName()) + ": " + fields.meaning(each)));
            }
        }
        lines.add("");
        lines.add(text("book.columns"));
        for (EAttribute attribute : PricebookPackage.Literals.PRICE_ITEM.getEAllAttributes()) {
            field(hyphened(attribute.getName()), fields.form(attribute), fields.meaning(attribute));
        }
    }

    private static String hyphened(String name) {
        return name.replaceAll("(?<=[a-z])([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    /** A key that may be repeated stands for one at a time. */
    private static String singular(String name) {
        return switch (name) {
            case "tax-rates", "payments", "terms", "exclusions", "translations" -> name.substring(0, name.length() - 1);
            default -> name;
        };
    }

    private void dwellings() {
        field("dwelling", "", text("dwelling"));
        field(SYMPTOMS, fields.form(SurveyPackage.Literals.SYMPTOM__KEY), text("symptoms"));
        words(SurveyPackage.Literals.SYMPTOM__KEY);
        SurveyForm.pages().stream()
                .flatMap(page -> page.parts().stream())
                .filter(part -> !part.path().isEmpty())
                .forEach(part -> part.attributes().forEach(attribute -> {
                    field(column(part) + attribute.getName(), fields.form(attribute), fields.meaning(attribute));
                    if (attribute != SurveyPackage.Literals.SYMPTOM__KEY) {
                        words(attribute);
                    }
                }));
    }

    /** A column's name without the attribute: {@code electricity.circuit.segments[1].}; the number counts from 1, or is a name. */
    static String column(FormPart part) {
        String way = part.path().stream()
                .skip(1)
                .map(step -> step.isMany() ? step.getName() + "[1]" : step.getName())
                .collect(Collectors.joining("."));
        return way.isEmpty() ? "" : way + ".";
    }
}
