// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.fault;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Lines;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.document.Figures;
import twinfeed.document.shape.Tone;

/** Repair or replace: the figures side by side over the same years, and what they rest on. */
final class RepairView {
    private final Composite parent;
    private final Words words;
    private final Figures figures;

    RepairView(Composite parent, Words words) {
        this.parent = parent;
        this.words = words;
        this.figures = new Figures(words.locale());
    }

    /**
     * Adds it, or says why there is none.
     *
     * @param none the reason
     */
    void show(FaultSheet sheet, String none) {
        ((GridData) Controls.heading(parent, words.get("repair.heading")).getLayoutData()).verticalIndent = 10;
        @Nullable RepairAdvice advice = sheet.repair();
        if (advice == null) {
            Controls.text(parent, none, Tone.QUIET);
            return;
        }
        Controls.text(parent, advice.sentence(), null);
        Lines repair = new Lines(parent, 2);
        advice.lines().forEach(line -> repair.add(line.title(), money(line.amount(), advice)));
        repair.bold(words.get("repair.sum"), money(advice.repair(), advice));
        compare(advice);
        notes(advice).forEach(note -> Controls.text(parent, note, Tone.QUIET));
        if (!advice.missing().isEmpty()) {
            Controls.text(
                    parent,
                    words.format("repair.missing", Map.of("codes", String.join(", ", advice.missing()))),
                    Tone.DOUBT);
        }
    }

    private void compare(RepairAdvice advice) {
        Lines lines = new Lines(parent, 4)
                .bold(
                        words.format("repair.over", Map.of("years", String.valueOf(advice.years()))),
                        words.get("repair.now"),
                        words.get("repair.later"),
                        words.get("repair.total"))
                .add(
                        words.get("repair.repaired"),
                        money(advice.repair(), advice),
                        money(advice.later(), advice),
                        money(advice.total(), advice));
        for (RepairAdvice.Replacement each : advice.replacements()) {
            String price = money(each.price(), advice);
            lines.add(
                    each.title(),
                    each.enquiry() ? words.format("option.plusEnquiry", Map.of("total", price)) : price,
                    money(each.later(), advice),
                    money(each.total(), advice));
        }
    }

    private List<String> notes(RepairAdvice advice) {
        List<String> notes = new ArrayList<>();
        if (advice.breakEvenAge() != null) {
            notes.add(words.format("repair.age", Map.of("age", String.valueOf(advice.breakEvenAge()))));
        }
        if (advice.breakEvenPrice() != null) {
            notes.add(words.format("repair.price", Map.of("price", money(advice.breakEvenPrice(), advice))));
        }
        notes.add(words.get("repair.basis"));
        notes.add(words.format("repair.rests", Map.of("assumptions", String.join("; ", advice.assumptions()))));
        return notes;
    }

    private String money(@Nullable BigDecimal amount, RepairAdvice advice) {
        return figures.money(amount, advice.currency());
    }
}
