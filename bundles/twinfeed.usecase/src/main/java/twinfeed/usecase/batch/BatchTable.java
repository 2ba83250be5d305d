// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Site;
import twinfeed.units.text.Texts;
import twinfeed.workbook.batch.ResultWorkbook;
import twinfeed.workbook.batch.ResultWorkbook.Column;
import twinfeed.workbook.batch.ResultWorkbook.Kind;

/** The two tables of a batch: a row for each dwelling, and a row for each that was set aside. */
final class BatchTable {
    private static final Texts TEXTS = new Texts(BatchTable.class, "Batch");
    private static final List<Kind> MONEY = List.of(Kind.MONEY, Kind.MONEY, Kind.MONEY);

    private final ResultWorkbook book;
    private final Locale locale;
    private final List<Heater> heaters;

    /**
     * With the book to write.
     *
     * @param heaters the heaters that have a column of their own
     */
    BatchTable(ResultWorkbook book, List<Heater> heaters, Locale locale) {
        this.book = book;
        this.heaters = List.copyOf(heaters);
        this.locale = locale;
    }

    /** Begins the table of dwellings. */
    void begin(@Nullable String currency) throws IOException {
        List<Column> columns = new ArrayList<>();
        columns.add(column("row", Kind.COUNT, 6));
        columns.add(column("dwelling", Kind.TEXT, 26));
        columns.add(column("inspection", Kind.DATE, 14));
        columns.add(column("urgency", Kind.TEXT, 26));
        columns.add(column("present", Kind.VERDICT, 17));
        heaters.forEach(heater -> columns.add(
                new Column(Objects.requireNonNullElse(heater.getTitle(), heater.getId()), Kind.VERDICT, 17)));
        columns.add(column("offered", Kind.TEXT, 30));
        columns.add(column("work", Kind.TEXT, 60));
        List<String> amounts = List.of("net", "tax", "total");
        for (int at = 0; at < amounts.size(); at++) {
            columns.add(column(amounts.get(at), MONEY.get(at), 12));
        }
        columns.add(column("enquiries", Kind.TEXT, 30));
        columns.add(column("reason", Kind.TEXT, 60));
        columns.add(column("missing", Kind.TEXT, 40));
        book.table(text("dwellings"), text("dwellings.note"), currency, columns);
    }

    private Column column(String key, Kind kind, double width) {
        return new Column(text("column." + key), kind, width);
    }

    private String text(String key) {
        return TEXTS.get(locale, key);
    }

    /** Adds a dwelling. */
    void add(Dwelling dwelling) {
        Assessment assessment = dwelling.judged().record();
        List<@Nullable Object> row = new ArrayList<>();
        row.add(dwelling.row());
        row.add(dwelling.name());
        Site site = dwelling.judged().opened().job().getSurvey().getSite();
        row.add(site == null ? null : site.getLastInspection());
        row.add(text("urgency." + Urgency.of(assessment).key()));
        row.add(assessment.getOptions().stream()
                .filter(BatchTable::present)
                .findFirst()
                .map(BatchTable::verdict)
                .orElse(null));
        for (Heater heater : heaters) {
            row.add(assessment.getOptions().stream()
                    .filter(option -> !present(option) && heater.getId().equals(option.getHeaterId()))
                    .findFirst()
                    .map(BatchTable::verdict)
                    .orElse(null));
        }
        offer(dwelling, assessment, row);
        row.add(missing(assessment));
        book.row(row);
    }

    private static void offer(Dwelling dwelling, Assessment assessment, List<@Nullable Object> row) {
        QuoteOption first =
                dwelling.quote() == null || dwelling.quote().getOptions().isEmpty()
                        ? null
                        : dwelling.quote().getOptions().get(0);
        if (first == null) {
            for (int at = 0; at < 6; at++) {
                row.add(null);
            }
            row.add(dwelling.why());
            return;
        }
        row.add(first.getTitle());
        row.add(works(assessment, first));
        row.add(first.getNet());
        row.add(first.getTax());
        row.add(first.getTotal());
        row.add(String.join("; ", first.getEnquiries()));
        row.add(first.getText());
    }

    private static String works(Assessment assessment, QuoteOption offered) {
        return assessment.getOptions().stream()
                .filter(option -> present(option) == Offers.stays(offered))
                .filter(option -> present(option) || Objects.equals(option.getHeaterId(), offered.getHeaterId()))
                .flatMap(option -> option.getRemedies().stream())
                .map(Remedy::getTitle)
                .collect(Collectors.joining("; "));
    }

    /** The readings that some check lacks. */
    private static String missing(Assessment assessment) {
        return assessment.getOptions().stream()
                .flatMap(option -> option.getFindings().stream())
                .filter(finding -> finding.getOutcome() == Outcome.CANNOT_TELL)
                .map(Finding::getMissing)
                .flatMap(List::stream)
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static boolean present(OptionAssessment option) {
        return Boolean.TRUE.equals(option.getPresent());
    }

    private static Verdict verdict(OptionAssessment option) {
        return option.getVerdict();
    }

    /** The table of the rows set aside; an empty one says that there are none. */
    void refused(List<Refused> refused) throws IOException {
        book.table(
                text("refused"),
                text(refused.isEmpty() ? "refused.none" : "refused.note"),
                null,
                List.of(
                        column("row", Kind.COUNT, 6),
                        column("dwelling", Kind.TEXT, 26),
                        column("why", Kind.TEXT, 110)));
        for (Refused one : refused) {
            List<Object> row = List.of(one.row(), one.dwelling(), one.reason());
            book.row(row);
        }
    }
}
