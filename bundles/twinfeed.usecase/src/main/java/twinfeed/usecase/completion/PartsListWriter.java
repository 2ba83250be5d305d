// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Survey;
import twinfeed.units.text.NumberText;

/** What to take from the shelf for an accepted quote: its parts by their generic names, like ones added up. */
public final class PartsListWriter {
    /** Sections of a quote that hold goods. */
    private static final Set<String> GOODS = Set.of("unit", "remedial", "making-good");

    /** What is a visit or a task is done and not taken from a shelf. */
    private static final String TASK = "task-";

    private static final String VISIT = "visit";

    /**
     * A part.
     *
     * @param code its price-book code
     * @param description what it is, generic
     * @param quantity how much
     * @param unit in what
     */
    public record Part(String code, String description, BigDecimal quantity, String unit) {
        Part plus(BigDecimal more) {
            return new Part(code, description, quantity.add(more), unit);
        }
    }

    private PartsListWriter() {}

    /** The parts of an option, in the order of the quote. */
    public static List<Part> parts(QuoteOption option) {
        Map<String, Part> all = new LinkedHashMap<>();
        option.getSections().stream()
                .filter(section -> GOODS.contains(section.getKey()))
                .flatMap(section -> section.getLines().stream())
                .filter(PartsListWriter::goods)
                .forEach(line -> all.merge(
                        line.getCode(),
                        new Part(line.getCode(), line.getDescription(), line.getQuantity(), line.getUnit()),
                        (before, now) -> before.plus(now.quantity())));
        return List.copyOf(all.values());
    }

    private static boolean goods(QuoteLine line) {
        return line.getCode() != null
                && !line.getCode().startsWith(TASK)
                && !VISIT.equals(line.getUnit())
                && line.getQuantity() != null
                && line.getQuantity().signum() > 0;
    }

    /**
     * The list as a page.
     *
     * @param quote number and revision of the quote
     * @param survey the house
     * @param option the accepted option
     * @param firm whose list it is
     * @param programVersion version of the program
     * @param day its day
     * @param locale its language
     */
    public static JobSheet write(
            String quote,
            Survey survey,
            QuoteOption option,
            Firm firm,
            String programVersion,
            LocalDate day,
            Locale locale) {
        PageParts page = new PageParts(locale);
        NumberText numbers = new NumberText(locale);
        page.table(
                "parts.list",
                List.of(),
                List.of(
                        page.column("", Kind.TICK, 6),
                        page.column("parts.quantity", Kind.FIGURE, 12),
                        page.column("parts.unit", Kind.TEXT, 8),
                        page.column("parts.description", Kind.TEXT, 52),
                        page.column("parts.code", Kind.TEXT, 22)),
                parts(option).stream()
                        .map(each -> List.of(
                                "", numbers.exact(each.quantity()), each.unit(), each.description(), each.code()))
                        .toList());
        page.sentences("parts.enquiries", Tone.NEXT, List.copyOf(option.getEnquiries()));
        return page.page(
                page.get("parts.title"),
                quote,
                page.facts(survey, page.fact("fact.option", option.getTitle()), page.fact("fact.day", page.day(day))),
                new Said(page.get("parts.state"), page.get("parts.state.text", Map.of("quote", quote))),
                List.of(page.get("field.packed"), page.get("field.checked")),
                firm,
                programVersion,
                day);
    }
}
