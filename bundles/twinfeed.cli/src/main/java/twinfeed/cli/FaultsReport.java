// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.PrintStream;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.visit.FaultSheet;

/** Prints the job sheet of a fault-finding for a person. */
final class FaultsReport {
    private static final int MOST_CAUSES = 5;
    private static final double LEAST_CHANCE = 0.01;

    /** Nothing is printed as certain. */
    private static final double MOST_PRINTED = 0.99;

    private final CliContext context;
    private final PrintStream out;

    FaultsReport(CliContext context) {
        this.context = context;
        this.out = context.out();
    }

    void print(FaultSheet sheet) {
        out.println(sheet.heater() + " (" + context.text("present") + ")");
        out.println(sheet.summary());
        isolationNotice(sheet);
        causes(sheet);
        list("faults.links", sheet.links());
        next(sheet.next());
        head("faults.answers", sheet.answers().isEmpty());
        sheet.answers().forEach(this::answer);
        head("faults.readings", sheet.readings().isEmpty());
        sheet.readings().forEach(this::reading);
        head("faults.safeIsolation", !isolationAsked(sheet));
        if (isolationAsked(sheet)) {
            sheet.isolation().forEach(this::tick);
        }
        list("faults.steps", sheet.steps());
        head("faults.expected", sheet.expected().isEmpty());
        sheet.expected().forEach(each -> out.println("  " + each.title() + ": " + each.value()));
        repair(sheet.repair());
        list("faults.notices", sheet.notices());
        out.println(context.text("source") + " " + sheet.source());
        sheet.cautions().forEach(out::println);
    }

    private void isolationNotice(FaultSheet sheet) {
        if (!sheet.isolationNotice().isEmpty()) {
            out.println("! " + sheet.isolationNotice());
        }
    }

    /** The ticks are printed where somebody began, or where the cover is or was off. */
    private static boolean isolationAsked(FaultSheet sheet) {
        FaultSheet.Next next = sheet.next();
        return !sheet.isolationNotice().isEmpty()
                || sheet.isolation().stream().anyMatch(FaultSheet.Tick::done)
                || (next != null && !next.procedure().isEmpty());
    }

    private void causes(FaultSheet sheet) {
        if (sheet.conclusion().equals("nothing-reported")) {
            return;
        }
        out.println(context.text("faults.causes"));
        sheet.causes().stream()
                .filter(cause -> cause.chance() >= LEAST_CHANCE)
                .limit(MOST_CAUSES)
                .forEach(cause -> out.println("  "
                        + CliContext.right(context.numbers().fixed(100 * Math.min(cause.chance(), MOST_PRINTED), 0), 3)
                        + " %  " + cause.title() + ": " + cause.reason()));
    }

    private void next(FaultSheet.@Nullable Next next) {
        if (next == null) {
            return;
        }
        out.println(context.text("faults.next") + " (" + next.how() + ", "
                + context.numbers().fixed(next.minutes(), 0) + " min): " + next.question());
        if (!next.procedure().isEmpty()) {
            out.println("  " + context.text("faults.first"));
            for (int i = 0; i < next.procedure().size(); i++) {
                out.println("  " + (i + 1) + ". " + next.procedure().get(i));
            }
        }
    }

    private void answer(FaultSheet.Answer answer) {
        out.println("  " + answer.question() + " " + context.text("faults.answer." + answer.answer()) + " ["
                + context.text("faults.origin." + answer.origin()) + "]"
                + (answer.note().isEmpty() ? "" : " (" + answer.note() + ")"));
    }

    private void reading(FaultSheet.Reading reading) {
        Boolean sound = reading.sound();
        String sign = sound == null ? "[??]" : sound ? "[ok]" : "[NO]";
        out.println("  " + sign + " " + reading.title() + ": " + reading.value()
                + (reading.expected().isEmpty() ? "" : "; " + context.text("faults.sound") + " " + reading.expected()));
    }

    private void tick(FaultSheet.Tick tick) {
        out.println("  [" + (tick.done() ? "x" : " ") + "] " + tick.title()
                + (tick.done() ? " (" + tick.by() + "; " + tick.at() + ")" : ""));
    }

    private void list(String head, List<String> lines) {
        head(head, lines.isEmpty());
        lines.forEach(line -> out.println("  - " + line));
    }

    private void head(String key, boolean empty) {
        if (!empty) {
            out.println(context.text(key));
        }
    }

    private void repair(@Nullable RepairAdvice advice) {
        if (advice == null) {
            return;
        }
        out.println(context.text("faults.repair"));
        out.println("  " + advice.sentence());
        advice.lines().forEach(line -> amount(line.title(), line.amount(), advice.currency()));
        amount(context.text("faults.repairSum"), advice.repair(), advice.currency());
        amount(context.text("faults.later"), advice.later(), advice.currency());
        amount(context.text("faults.total"), advice.total(), advice.currency());
        advice.replacements()
                .forEach(each -> out.println("  " + each.title() + ": "
                        + context.numbers().pointed(each.price()) + " + "
                        + context.numbers().pointed(each.later()) + " = "
                        + context.numbers().pointed(each.total()) + " " + advice.currency()
                        + (each.enquiry() ? " (" + context.text("faults.enquiry") + ")" : "")));
        breakEven(advice);
        advice.assumptions().forEach(each -> out.println("  * " + each));
        if (!advice.missing().isEmpty()) {
            out.println("  ! " + context.text("faults.missing") + " " + String.join(", ", advice.missing()));
        }
    }

    private void breakEven(RepairAdvice advice) {
        if (advice.breakEvenAge() != null) {
            out.println("  " + context.text("faults.breakEvenAge") + " " + advice.breakEvenAge());
        }
        if (advice.breakEvenPrice() != null) {
            amount(context.text("faults.breakEvenPrice"), advice.breakEvenPrice(), advice.currency());
        }
    }

    private void amount(String title, java.math.BigDecimal amount, String currency) {
        out.println("  " + CliContext.left(title, 90) + " " + context.amount(amount) + " " + currency);
    }
}
