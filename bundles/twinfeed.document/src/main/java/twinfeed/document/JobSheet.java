// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The sheet that a technician takes to a faulty unit: what is known, what to do next, and room to write by pen. Plain data; who prints
 * it decides only where it stands.
 *
 * @param title its title
 * @param reference what the job is called
 * @param facts customer, site, unit and so on, to stand beside one another
 * @param conclusion what is wrong, most likely, under its heading
 * @param sections the rest, in the order in which it is worked through
 * @param fields what is to be signed
 * @param firm whose sheet it is
 * @param programVersion version of the program
 * @param locale its language
 * @param time time of its making; never the clock's
 */
public record JobSheet(
        String title,
        String reference,
        List<QuoteLetter.Said> facts,
        QuoteLetter.Said conclusion,
        List<Section> sections,
        List<String> fields,
        Firm firm,
        String programVersion,
        Locale locale,
        Instant time) {
    public JobSheet {
        facts = List.copyOf(facts);
        sections = List.copyOf(sections);
        fields = List.copyOf(fields);
    }

    /** How much a section matters. */
    public enum Tone {
        /** As the others. */
        PLAIN,
        /** What to do next. */
        NEXT,
        /** What can hurt. */
        CAUTION,
        /** What hardly anybody reads twice. */
        SMALL
    }

    /**
     * A section.
     *
     * @param title its heading
     * @param tone how much it matters
     * @param sentences what it says before its table, each on a line of its own
     * @param table its table, if it has one
     */
    public record Section(String title, Tone tone, List<String> sentences, @Nullable Table table) {
        public Section {
            sentences = List.copyOf(sentences);
        }
    }

    /** What a column holds. */
    public enum Kind {
        /** Text. */
        TEXT,
        /** A figure, at the right. */
        FIGURE,
        /** A short word or sign, in the middle. */
        SIGN,
        /** A box to be ticked: ticked already where the cell says so. */
        TICK,
        /** A box to be written into; what is known already stands in it. */
        BOX
    }

    /**
     * A column.
     *
     * @param head its head
     * @param kind what it holds
     * @param share its width as a share of the sum of all
     */
    public record Column(String head, Kind kind, int share) {}

    /**
     * A table.
     *
     * @param columns its columns
     * @param rows its rows, a text for each column; in a column of ticks {@link #DONE} or empty
     */
    public record Table(List<Column> columns, List<List<String>> rows) {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** What a cell of a column of ticks says where the step is done. */
    public static final String DONE = "done";

    /** What the sheet is, and of which job. */
    public String heading() {
        return reference.isEmpty() ? title : title + ": " + reference;
    }

    /** What stands at the foot of every page: the firm, and what the sheet is of. */
    public String foot() {
        return firm.name().isEmpty() ? heading() : firm.name() + " · " + heading();
    }

    /** The sign of a box of a column of ticks. */
    public static String box(String cell) {
        return DONE.equals(cell) ? "☑" : "☐";
    }
}
