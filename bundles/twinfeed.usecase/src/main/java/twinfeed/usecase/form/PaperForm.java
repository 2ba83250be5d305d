// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.form;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.safety.SafeIsolation;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Column;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Section;
import twinfeed.document.JobSheet.Table;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.model.check.ReadingRange;
import twinfeed.model.form.FormPage;
import twinfeed.model.form.FormPart;
import twinfeed.model.form.SurveyForm;
import twinfeed.model.job.Job;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.model.text.ModelDocs;
import twinfeed.units.text.Texts;
import twinfeed.usecase.TwinfeedService;
import twinfeed.workbook.form.FormLanguage;

/** A survey on paper, for a clipboard: what the workbook asks too, but for what nobody writes down in a house. */
final class PaperForm {
    private static final Texts TEXTS = new Texts(PaperForm.class, "Form");

    /** Two readings stand beside one another. */
    private static final int BESIDE = 2;

    /** Shares of the width that a reading and its value have together, and a value of its own. */
    private static final int ROOM_OF_A_LINE = 89;

    private static final int ROOM_OF_A_READING = 21;
    private static final int ROOM_OF_A_TEXT = 49;

    /** Shares of a table's width are counted in letters of its heads. */
    private static final int LETTERS_OF_A_SHARE = 4;

    /** The room beside the letters of a cell. */
    private static final int PADDING_LETTERS = 3;

    /** Chosen or looked up in the office. */
    private static final Set<EStructuralFeature> OFFICE = Set.of(
            Literals.SURVEY__RULES,
            Literals.SURVEY__CLIMATE,
            Literals.SURVEY__ANNUAL_MEAN_AIR,
            Literals.SURVEY__MONTHLY_AIR_SPREAD,
            Literals.SURVEY__SOUTHERN,
            Literals.SURVEY__WINTER_INTAKE,
            Literals.SURVEY__PARAMETERS,
            Literals.SURVEY__PHOTOS,
            Literals.CABLE_SEGMENT__CABLE,
            Literals.CABLE_SEGMENT__LAYOUT,
            Literals.CABLE_SEGMENT__HAS_CPC,
            Literals.PIPE_SEGMENT__ROUGHNESS,
            Literals.PRESENT_UNIT__HEATER,
            // Only a unit on a tank or on hot water asks for the main beside it; the workbook has room for that.
            Literals.WATER_FEED__MAIN_TEST,
            Literals.WATER_FEED__MAIN_PIPE,
            // On paper "none" is ticked beside the conductor itself.
            Literals.ELECTRICAL_FEED__HAS_EARTHING_CONDUCTOR,
            Literals.ELECTRICAL_FEED__HAS_MAIN_BONDING,
            // One place for remarks is enough.
            Literals.SITE__NOTE,
            Literals.PRESENT_UNIT__NOTE,
            Literals.CUSTOMER__EMAIL,
            Literals.SYMPTOM__ANSWER,
            Literals.SYMPTOM__BY,
            Literals.SYMPTOM__AT,
            Literals.FITTING__K,
            Literals.PROTECTIVE_DEVICE__LET_THROUGH);

    /** Rows of a blank table. */
    private static final Map<EReference, Integer> ROWS = Map.of(
            Literals.SURVEY__SYMPTOMS, 2,
            Literals.WATER_FEED__SEGMENTS, 4,
            Literals.WATER_FEED__DRAW_OFFS, 2,
            Literals.ELECTRICAL_FEED__LOADS, 3,
            Literals.CIRCUIT__SEGMENTS, 4);

    private final FormLanguage language;
    private final Locale locale;
    private final List<Section> sections = new ArrayList<>();

    PaperForm(FormLanguage language) {
        this.language = language;
        this.locale = language.locale();
    }

    /**
     * The whole form, blank.
     *
     * @param day the day that the file's properties name
     */
    JobSheet blank(LocalDate day) {
        for (FormPage page : SurveyForm.pages()) {
            if (!page.key().equals("faults")) {
                List<FormPart> parts =
                        page.parts().stream().filter(PaperForm::onPaper).toList();
                List<String> labels = new ArrayList<>();
                parts.stream().filter(part -> !part.table()).forEach(part -> part.attributes().stream()
                        .filter(attribute -> !OFFICE.contains(attribute))
                        .forEach(attribute -> labels.add(label(attribute))));
                pairs(page, labels);
                parts.stream().filter(FormPart::table).forEach(this::table);
            }
        }
        return sheet("", day, text("how"));
    }

    /**
     * What a job lacks.
     *
     * @param needed paths of the readings that some check waits for
     * @param reference what the job is called
     */
    JobSheet missing(Job job, Set<String> needed, String reference, LocalDate day) {
        Set<String> told = new LinkedHashSet<>();
        List<String> first = new ArrayList<>();
        for (String path : needed) {
            String label = label(path);
            if (!label.isEmpty() && told.add(path)) {
                first.add(label);
            }
        }
        pairs(text("needed"), first, ROOM_OF_A_READING, ROOM_OF_A_READING);
        for (FormPage page : SurveyForm.pages()) {
            if (!page.key().equals("faults")) {
                List<String> labels = new ArrayList<>();
                page.parts().stream()
                        .filter(part -> onPaper(part) && !part.table())
                        .forEach(part -> unset(job, part, told, labels));
                pairs(page, labels);
            }
        }
        return sheet(reference, day, text(sections.isEmpty() ? "complete" : "howMissing"));
    }

    private JobSheet sheet(String reference, LocalDate day, String how) {
        return new JobSheet(
                text("title"),
                reference,
                List.of(new Said(text("fill"), how)),
                new Said(text("safety"), SafeIsolation.brief(locale)),
                sections,
                List.of(text("field.by"), text("field.instruments"), text("field.date")),
                Firm.of("", "", ""),
                TwinfeedService.VERSION,
                locale,
                day.atStartOfDay().toInstant(ZoneOffset.UTC));
    }

    private String text(String key) {
        return TEXTS.get(locale, key);
    }

    private static boolean onPaper(FormPart part) {
        boolean nested = part.table() && !part.parent().isEmpty();
        return !nested && part.path().size() > 0 && part.path().stream().noneMatch(OFFICE::contains);
    }

    private String label(EAttribute attribute) {
        String thing = "thing." + attribute.getEContainingClass().getName();
        return TEXTS.has(thing) ? text(thing) + ": " + withUnit(attribute) : withUnit(attribute);
    }

    private String withUnit(EAttribute attribute) {
        String unit = ReadingRange.unit(attribute);
        return unit.isEmpty() ? language.label(attribute) : language.label(attribute) + ", " + unit;
    }

    /** Names and addresses, which stand at the left of the first page, and remarks at the right of the last take more room than readings. */
    private void pairs(FormPage page, List<String> labels) {
        int left = page.key().equals("visit") ? ROOM_OF_A_TEXT : ROOM_OF_A_READING;
        int right = page.key().equals("request") ? ROOM_OF_A_TEXT : ROOM_OF_A_READING;
        pairs(language.text("page." + page.key()), labels, left, right);
    }

    /** Readings in two columns, each with room for its value and boxes for why there is none. */
    private void pairs(String title, List<String> labels, int... rooms) {
        if (labels.isEmpty()) {
            return;
        }
        List<Column> columns = new ArrayList<>();
        for (int room : rooms) {
            columns.add(new Column(text("head.reading"), Kind.TEXT, ROOM_OF_A_LINE - room));
            columns.add(new Column(text("head.value"), Kind.BOX, room));
            columns.add(new Column("\u2013", Kind.TICK, 5));
            columns.add(new Column("?", Kind.TICK, 5));
        }
        int half = (labels.size() + 1) / BESIDE;
        List<List<String>> rows = new ArrayList<>();
        for (int at = 0; at < half; at++) {
            String right = at + half < labels.size() ? labels.get(at + half) : "";
            rows.add(List.of(labels.get(at), "", "", "", right, "", "", ""));
        }
        sections.add(new Section(title, Tone.PLAIN, List.of(), new Table(columns, rows)));
    }

    private void table(FormPart part) {
        EReference list = part.path().get(part.path().size() - 1);
        List<Column> columns = new ArrayList<>();
        for (EAttribute attribute : part.attributes()) {
            if (!OFFICE.contains(attribute)) {
                columns.add(head(label(attribute), columns.isEmpty() ? 3 : 2));
            }
        }
        for (EReference child : list.getEReferenceType().getEAllContainments()) {
            columns.add(head(language.label(child), 4));
        }
        List<String> blank = columns.stream().map(column -> "").toList();
        List<List<String>> rows = new ArrayList<>();
        for (int at = 0; at < ROWS.getOrDefault(list, 2); at++) {
            rows.add(blank);
        }
        sections.add(new Section(language.title(part), Tone.PLAIN, List.of(), new Table(columns, rows)));
    }

    /**
     * A column whose head is not cut: long words are divided where their parts meet, and the column is as wide as the longest of what is left.
     *
     * @param least least share of the width
     */
    private Column head(String title, int least) {
        String divided = title;
        for (String word : text("divided").split("\\s+")) {
            divided = divided.replace(word.replace("|", ""), word.replace('|', '\u00ad'));
        }
        int longest = Arrays.stream(divided.split("[\\s\u00ad]+"))
                .mapToInt(String::length)
                .max()
                .orElse(0);
        return new Column(divided, Kind.BOX, Math.max(least * LETTERS_OF_A_SHARE, longest + PADDING_LETTERS));
    }

    /** Readings of a part that is there, not taken and without a value that holds in their place. */
    private void unset(Job job, FormPart part, Set<String> told, List<String> labels) {
        @Nullable EObject owner = job;
        for (EReference step : part.path()) {
            owner = owner == null || !(owner.eGet(step) instanceof EObject next) ? null : next;
        }
        for (EAttribute attribute : part.attributes()) {
            boolean optional =
                    OFFICE.contains(attribute) || ModelDocs.of(attribute).contains("no entry means");
            boolean there = owner != null && owner.eIsSet(attribute);
            boolean begun = owner != null || part.path().size() <= 2;
            String path = part.key() + "." + attribute.getName();
            if (begun && !optional && !there && !attribute.isMany() && told.add(path)) {
                labels.add(label(attribute));
            }
        }
    }

    /** What a path is called, with the element of a list that it is in; empty if it is no reading of a survey. */
    private String label(String path) {
        String plain = path.replaceAll("\\[[^]]*]", "");
        EClass owner = Literals.SURVEY;
        List<String> names = new ArrayList<>();
        if (!plain.startsWith("survey.")) {
            return "";
        }
        for (String name : plain.substring("survey.".length()).split("\\.")) {
            EStructuralFeature feature = owner.getEStructuralFeature(name);
            if (feature == null) {
                return "";
            }
            if (feature instanceof EReference reference) {
                owner = reference.getEReferenceType();
                names.add(language.label(reference));
            } else {
                names.add(withUnit((EAttribute) feature));
            }
        }
        String element = path.contains("[") ? path.substring(path.lastIndexOf('[') + 1, path.lastIndexOf(']')) : "";
        String label = names.stream().skip(Math.max(0, names.size() - 2)).collect(Collectors.joining(": "));
        return element.isEmpty() ? label : label + " (" + element + ")";
    }
}
