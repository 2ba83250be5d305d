// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Verdict;

/**
 * What a customer reads: the quote on a page, in words. Plain data; who prints it decides only where it stands. Amounts, days and
 * figures come as text for paper and as values for cells.
 *
 * @param reference what the quote is called
 * @param state whether it is a draft, issued and so on
 * @param days its date, and until when it can be accepted
 * @param customer whom it is for
 * @param site where the shower is
 * @param dangers why the shower must not be used as it is, under their heading; absent if nothing is known to be dangerous
 * @param finding what was found, under its heading
 * @param toMeasure what has to be measured before this is more than an estimate; absent if it rests on complete readings
 * @param options the options, at most four; none if nothing can be offered
 * @param rows what is said of each option, one value for each
 * @param none what is said instead where there is no option
 * @param instead where there is no option: why each heater is left out, and what to do next
 * @param acceptance where the customer accepts; absent for a draft or an estimate, which nobody can accept
 * @param prices the lines of all options; absent where there are none
 * @param smallPrint cautions first, which are never cut; then what is left out, assumed, not included, and the terms
 */
public record QuoteLetter(
        String reference,
        String state,
        List<Day> days,
        Said customer,
        Said site,
        @Nullable Part dangers,
        Said finding,
        @Nullable Part toMeasure,
        List<Option> options,
        List<Row> rows,
        String none,
        List<Part> instead,
        @Nullable Acceptance acceptance,
        @Nullable PriceTable prices,
        List<Part> smallPrint) {
    public QuoteLetter {
        days = List.copyOf(days);
        options = List.copyOf(options);
        rows = List.copyOf(rows);
        instead = List.copyOf(instead);
        smallPrint = List.copyOf(smallPrint);
    }

    /**
     * A day.
     *
     * @param label what it is
     * @param day the day, if there is one
     * @param text the day as paper shows it
     */
    public record Day(String label, @Nullable LocalDate day, String text) {}

    /**
     * A text under a heading.
     *
     * @param label its heading
     * @param text the text, lines separated by line feeds
     */
    public record Said(String label, String text) {}

    /**
     * An option.
     *
     * @param number its number in words, for example "Option 2"
     * @param title the heater
     */
    public record Option(String number, String title) {}

    /** What a row says. */
    public enum Kind {
        /** What is done, a line for each work; or why it is not known to suit. */
        WORK,
        /** Whether it suits this house. */
        VERDICT,
        /** A flow. */
        FLOW,
        /** What the electricity of a shower costs. */
        SHOWER,
        /** Price without tax. */
        NET,
        /** Tax. */
        TAX,
        /** What is to be paid. */
        TOTAL,
        /** What is still to be priced. */
        ENQUIRIES,
        /** A stage of the payment. */
        PAYMENT,
        /** Days of waiting. */
        WAITING
    }

    /**
     * A row.
     *
     * @param kind what it says
     * @param stage which stage of the payment it is, from 0; 0 for others
     * @param label what it is called
     * @param values one for each option
     */
    public record Row(Kind kind, int stage, String label, List<Value> values) {
        public Row {
            values = List.copyOf(values);
        }
    }

    /**
     * What a row says of an option.
     *
     * @param text as paper shows it; empty if there is nothing to say
     * @param number the figure, if it is one
     * @param verdict the verdict, if it is one
     */
    public record Value(String text, @Nullable Number number, @Nullable Verdict verdict) {
        static Value of(@Nullable String text) {
            return new Value(text == null ? "" : text, null, null);
        }
    }

    /**
     * A part of the small print.
     *
     * @param title its heading
     * @param entries its sentences, at least one
     * @param whole whether it must never be cut
     */
    public record Part(String title, List<String> entries, boolean whole) {
        public Part {
            entries = List.copyOf(entries);
        }
    }

    /**
     * Where the customer accepts.
     *
     * @param title its heading
     * @param choice what stands before the choice
     * @param options what can be chosen
     * @param fields what is to be filled in: name, signature, date
     */
    public record Acceptance(String title, String choice, List<String> options, List<String> fields) {
        public Acceptance {
            options = List.copyOf(options);
            fields = List.copyOf(fields);
        }
    }

    /**
     * What is charged, line by line.
     *
     * @param title its heading
     * @param heads the options
     * @param lines sections, their lines and the sums
     */
    public record PriceTable(String title, List<String> heads, List<PriceLine> lines) {
        public PriceTable {
            heads = List.copyOf(heads);
            lines = List.copyOf(lines);
        }
    }

    /**
     * A line of the price.
     *
     * @param what what is charged, with its amount of material or labour
     * @param amounts one for each option, empty where the option does not have it; none for the heading of a section
     * @param role what the line is
     */
    public record PriceLine(String what, List<String> amounts, Role role) {
        public PriceLine {
            amounts = List.copyOf(amounts);
        }

        /** What a line of the price is. */
        public enum Role {
            /** Heading of a section. */
            SECTION,
            /** Something that is charged. */
            LINE,
            /** A sum. */
            SUM,
            /** What is to be paid. */
            TOTAL
        }
    }
}
