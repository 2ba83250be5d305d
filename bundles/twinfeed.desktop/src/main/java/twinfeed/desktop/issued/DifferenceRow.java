// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import twinfeed.desktop.text.Words;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.usecase.quote.QuoteDifference;

/**
 * One place in which two issued quotes differ, in words.
 *
 * @param kind added, removed or changed
 * @param where option and section
 * @param what line and value
 * @param before in the earlier one
 * @param after in the later one
 */
public record DifferenceRow(Mark kind, String where, String what, String before, String after) {

    /** What the use case found, with the names that the quotes themselves give to options, sections and lines. */
    public static List<DifferenceRow> of(List<QuoteDifference> found, Quote before, Quote after, Words words) {
        return found.stream().map(each -> of(each, before, after, words)).toList();
    }

    private static DifferenceRow of(QuoteDifference found, Quote before, Quote after, Words words) {
        Optional<QuoteOption> option = options(before, after)
                .filter(each -> found.option().equals(each.getName()))
                .findFirst();
        Optional<QuoteSection> section = options(before, after)
                .flatMap(each -> each.getSections().stream())
                .filter(each -> found.section().equals(each.getKey()))
                .findFirst();
        String where = join(
                option.map(QuoteOption::getTitle).orElse(found.option()),
                section.map(QuoteSection::getTitle).orElse(found.section()));
        return new DifferenceRow(
                kind(found.kind(), words), where, what(found, before, after, words), found.before(), found.after());
    }

    private static Stream<QuoteOption> options(Quote before, Quote after) {
        return Stream.concat(after.getOptions().stream(), before.getOptions().stream());
    }

    private static String what(QuoteDifference found, Quote before, Quote after, Words words) {
        String field = found.field().isEmpty() ? "" : words.get("compare.field." + found.field());
        if (found.code().isEmpty()) {
            return field.isEmpty() ? words.get("compare.option") : field;
        }
        String list = words.find("compare.list." + found.code());
        String line = list != null
                ? list
                : options(before, after)
                        .flatMap(each -> each.getSections().stream())
                        .flatMap(each -> each.getLines().stream())
                        .filter(each -> found.code().equals(each.getCode()))
                        .map(QuoteLine::getDescription)
                        .findFirst()
                        .orElse(found.code());
        return join(line, field);
    }

    private static String join(String first, String second) {
        return second.isEmpty() ? first : first.isEmpty() ? second : first + ": " + second;
    }

    private static Mark kind(String kind, Words words) {
        String word = words.get("compare.kind." + kind);
        return switch (kind) {
            case "added" -> new Mark("+", word, Tone.GOOD);
            case "removed" -> new Mark("\u2212", word, Tone.BAD);
            default -> new Mark("\u2260", word, Tone.DOUBT);
        };
    }
}
