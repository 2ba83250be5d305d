// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.repair.RepairAdvice;

/** A sheet as plain text, everything in it, so that a person can read it and a test can compare it. */
final class SheetText {
    private final StringBuilder text = new StringBuilder();

    static String of(FaultSheet sheet) {
        SheetText all = new SheetText();
        all.write(sheet);
        return all.text.toString();
    }

    private void line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private void write(FaultSheet sheet) {
        line("Unit: %s", sheet.heater());
        line("Conclusion: %s", sheet.conclusion());
        line("%s", sheet.summary());
        line("%nCauses, several at once %.3f", sheet.several());
        sheet.causes()
                .forEach(each -> line(
                        "%.3f (before %.3f, %s) %s: %s; %s %s",
                        each.chance(),
                        each.prior(),
                        each.likelihood(),
                        each.part(),
                        each.title(),
                        each.reason(),
                        each.codes()));
        next(sheet.next());
        line("%nAnswers");
        sheet.answers()
                .forEach(each -> line(
                        "%s = %s (%s) %s [%s]",
                        each.observation(), each.answer(), each.origin(), each.question(), each.note()));
        line("%nReadings");
        sheet.readings()
                .forEach(each -> line(
                        "%s: %s | %s | %s",
                        each.title(),
                        each.value(),
                        each.expected(),
                        each.sound() == null ? "cannot be told" : each.sound() ? "sound" : "NOT SOUND"));
        line("%nIsolation: %s", sheet.isolationNotice());
        sheet.isolation()
                .forEach(each -> line(
                        "[%s] %s: %s (%s, %s)",
                        each.done() ? "x" : " ", each.step(), each.title(), each.by(), each.at()));
        list("Links", sheet.links());
        list("Steps", sheet.steps());
        line("%nAfter the repair");
        sheet.expected().forEach(each -> line("%s: %s", each.title(), each.value()));
        repair(sheet.repair());
        list("Notices, " + sheet.unanswered() + " unanswered", sheet.notices());
        line("%nSource: %s", sheet.source());
        list("Cautions", sheet.cautions());
    }

    private void list(String title, List<String> lines) {
        line("%n%s", title);
        lines.forEach(each -> line("- %s", each));
    }

    private void next(FaultSheet.@Nullable Next next) {
        if (next == null) {
            line("%nNo next step");
            return;
        }
        line(
                "%nNext: %s %s (%s, %s), %.1f min, %.3f bit",
                next.observation(), next.question(), next.place(), next.how(), next.minutes(), next.informationBits());
        next.procedure().forEach(each -> line("- %s", each));
    }

    private void repair(@Nullable RepairAdvice advice) {
        if (advice == null) {
            line("%nNo prices");
            return;
        }
        line("%nRepair or replace, %s, %d years", advice.currency(), advice.years());
        advice.lines().forEach(each -> line("%s: %s", each.title(), each.amount()));
        line("repair %s, later %s, total %s", advice.repair(), advice.later(), advice.total());
        advice.replacements()
                .forEach(each -> line(
                        "%s %s: %s, later %s, total %s%s",
                        each.heater(),
                        each.title(),
                        each.price(),
                        each.later(),
                        each.total(),
                        each.enquiry() ? " on enquiry" : ""));
        line("break-even age %s, price %s", advice.breakEvenAge(), advice.breakEvenPrice());
        line("%s", advice.sentence());
        list("Assumptions, missing " + advice.missing(), advice.assumptions());
    }
}
