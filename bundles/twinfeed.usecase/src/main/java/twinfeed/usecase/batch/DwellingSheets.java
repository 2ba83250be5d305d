// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.units.text.Texts;

/** What each sheet says of one dwelling, as rows of cells. */
final class DwellingSheets {
    static final Texts TEXTS = new Texts(DwellingSheets.class, "Batch");

    private final Locale locale;
    private final Supplier<List<String>> labels;

    /** The sheets that have rows of dwellings, in the order of the book. */
    enum Sheet {
        DWELLINGS,
        VISITS,
        REPAIRS,
        OFFERS,
        HEATERS,
        READINGS;

        /** Key of its words. */
        String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * In a language.
     *
     * @param labels what the readings of the list's columns are called, once its head is read
     */
    DwellingSheets(Locale locale, Supplier<List<String>> labels) {
        this.locale = locale;
        this.labels = labels;
    }

    private String text(String key) {
        return TEXTS.get(locale, key);
    }

    /** All that is kept of it. */
    DwellingResult result(Dwelling dwelling, int ownAge) {
        JudgedDwelling judged = JudgedDwelling.of(dwelling, ownAge, locale);
        QuoteOption first = first(dwelling);
        String street = street(dwelling);
        String dangers = Urgency.dangers(dwelling.judged().record()).stream()
                .map(Finding::getTitle)
                .collect(Collectors.joining("; "));
        String toTake = toTake(dwelling);
        return new DwellingResult(
                judged,
                street,
                dwelling.judged().unanswered(),
                first == null ? null : DwellingOffer.of(dwelling, first),
                ResultLine.of(dwelling, judged, dangers, toTake),
                Arrays.stream(Sheet.values())
                        .map(sheet -> switch (sheet) {
                            case DWELLINGS -> List.of(overview(dwelling, judged, dangers));
                            case VISITS -> List.of(visit(judged, street, toTake));
                            case REPAIRS -> new RepairRow(locale).rows(dwelling);
                            case OFFERS -> List.of(offer(dwelling));
                            case HEATERS -> heaters(dwelling);
                            case READINGS -> readings(dwelling);
                        })
                        .toList());
    }

    private static List<@Nullable Object> overview(Dwelling dwelling, JudgedDwelling judged, String dangers) {
        List<@Nullable Object> row = begun(dwelling);
        row.add(judged.urgencyText());
        row.add(dangers);
        row.add(ageOfUnit(dwelling));
        row.add(lastInspection(dwelling));
        row.add(judged.advice());
        row.add(judged.present());
        QuoteOption first = first(dwelling);
        row.add(first == null ? null : first.getVerdict());
        row.add(judged.total());
        row.addAll(origins(dwelling));
        return row;
    }

    /** The age of its unit in years, whether its own or the template's; null where it is not known. */
    static @Nullable Integer ageOfUnit(Dwelling dwelling) {
        PresentUnit unit = survey(dwelling).getUnit();
        return unit == null ? null : unit.getAge();
    }

    /** When its installation was inspected last; null where that is not known. */
    static @Nullable LocalDate lastInspection(Dwelling dwelling) {
        Site site = survey(dwelling).getSite();
        return site == null ? null : site.getLastInspection();
    }

    /** How many of its readings are its own, the template's and missing. */
    static List<Integer> origins(Dwelling dwelling) {
        return Arrays.stream(ReadingOrigin.values())
                .map(origin -> (int) dwelling.readings().stream()
                        .filter(reading -> reading.origin() == origin)
                        .count())
                .toList();
    }

    private static Survey survey(Dwelling dwelling) {
        return dwelling.judged().opened().job().getSurvey();
    }

    private static List<@Nullable Object> begun(Dwelling dwelling) {
        List<@Nullable Object> row = new ArrayList<>();
        row.add(dwelling.row());
        row.add(dwelling.name());
        return row;
    }

    /** Street and place by which the visit to a dwelling is grouped; empty if its address has no house number. */
    private static String street(Dwelling dwelling) {
        Site site = survey(dwelling).getSite();
        String address = site == null || site.getAddress() == null ? dwelling.name() : site.getAddress();
        return Street.of(address);
    }

    /** The number of the visit is put before it when all are known. */
    private List<@Nullable Object> visit(JudgedDwelling judged, String street, String toTake) {
        List<@Nullable Object> row = new ArrayList<>();
        row.add(street.isEmpty() ? text("visits.none") : street);
        row.add(judged.name());
        row.add(judged.urgencyText());
        row.add(Stream.of(judged.advice(), judged.works())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; ")));
        row.add(toTake);
        return row;
    }

    /**
     * What to read there: what some check lacks, and what the list has a column for and nobody has read. The fault-finding's own record is made
     * when the fault is looked for.
     */
    private String toTake(Dwelling dwelling) {
        Map<String, String> wanted = new LinkedHashMap<>();
        dwelling.readings().stream()
                .filter(reading -> reading.origin() != ReadingOrigin.OWN)
                .forEach(reading -> wanted.put(reading.path(), labels.get().get(reading.column())));
        List<OptionAssessment> options = dwelling.judged().record().getOptions();
        for (int option = 0; option < options.size(); option++) {
            List<Finding> findings = options.get(option).getFindings();
            for (int at = 0; at < findings.size(); at++) {
                List<String> paths = dwelling.judged()
                        .assessed()
                        .options()
                        .get(option)
                        .findings()
                        .get(at)
                        .missing();
                if (findings.get(at).getOutcome() == Outcome.CANNOT_TELL) {
                    for (int reading = 0; reading < paths.size(); reading++) {
                        wanted.putIfAbsent(
                                paths.get(reading),
                                findings.get(at).getMissing().get(reading));
                    }
                }
            }
        }
        wanted.keySet().removeIf(path -> path.startsWith("survey.faultFinding."));
        return String.join("; ", wanted.values());
    }

    /** The first offer; absent if nothing can be offered. */
    static @Nullable QuoteOption first(Dwelling dwelling) {
        return dwelling.quote() == null || dwelling.quote().getOptions().isEmpty()
                ? null
                : dwelling.quote().getOptions().get(0);
    }

    private static List<@Nullable Object> offer(Dwelling dwelling) {
        List<@Nullable Object> row = begun(dwelling);
        QuoteOption first = first(dwelling);
        if (first == null) {
            row.addAll(Arrays.asList(null, null, null, null, null, null, null, dwelling.why()));
            return row;
        }
        row.add(first.getTitle());
        row.add(first.getVerdict());
        row.add(works(dwelling, first));
        row.add(first.getNet());
        row.add(first.getTax());
        row.add(first.getTotal());
        row.add(String.join("; ", first.getEnquiries()));
        row.add(first.getText());
        return row;
    }

    /** The works of an offer, in words. */
    static String works(Dwelling dwelling, QuoteOption offered) {
        return remedies(dwelling, offered).stream().map(Remedy::getTitle).collect(Collectors.joining("; "));
    }

    /** The works that an offer contains. */
    static List<Remedy> remedies(Dwelling dwelling, QuoteOption offered) {
        return dwelling.judged().record().getOptions().stream()
                .filter(option -> Boolean.TRUE.equals(option.getPresent()) == Offers.stays(offered))
                .filter(option -> Offers.stays(offered) || Objects.equals(option.getHeaterId(), offered.getHeaterId()))
                .flatMap(option -> option.getRemedies().stream())
                .toList();
    }

    private static List<List<@Nullable Object>> heaters(Dwelling dwelling) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (OptionAssessment option : dwelling.judged().record().getOptions()) {
            if (!Boolean.TRUE.equals(option.getPresent())) {
                List<@Nullable Object> row = begun(dwelling);
                row.add(option.getTitle());
                row.add(option.getVerdict());
                row.add(option.getFindings().stream()
                        .filter(finding -> finding.getKey().equals(option.getBinding()))
                        .map(Finding::getText)
                        .findFirst()
                        .orElse(null));
                row.add(option.getRemedies().stream().map(Remedy::getTitle).collect(Collectors.joining("; ")));
                rows.add(row);
            }
        }
        return rows;
    }

    private List<List<@Nullable Object>> readings(Dwelling dwelling) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (DwellingReading reading : dwelling.readings()) {
            List<@Nullable Object> row = begun(dwelling);
            row.add(labels.get().get(reading.column()));
            row.add(reading.value());
            row.add(text("origin." + reading.origin().key()));
            rows.add(row);
        }
        return rows;
    }
}
