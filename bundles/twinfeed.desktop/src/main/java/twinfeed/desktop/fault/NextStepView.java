// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.fault;

import java.util.Map;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.FaultSearch;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.document.shape.Tone;

/** The next best step: what to ask or look at, where, how long it takes, and its answer at hand. */
final class NextStepView {
    private final FaultSearch search;
    private final Words words;
    private final Complaints complaints;
    private final Runnable toIsolation;
    private final Composite box;

    NextStepView(Composite parent, FaultSearch search, Words words, Complaints complaints, Runnable toIsolation) {
        this.toIsolation = toIsolation;
        this.search = search;
        this.words = words;
        this.complaints = complaints;
        this.box = Controls.pane(parent);
        box.setLayoutData(Controls.across(parent));
        box.setData("twinfeed.field", "faults.next");
        box.setBackground(ThemeColours.tint(Tone.WATER, parent, 0.12));
        box.setBackgroundMode(SWT.INHERIT_FORCE);
        ((GridLayout) box.getLayout()).marginHeight = 8;
    }

    Composite control() {
        return box;
    }

    void show(FaultSheet sheet) {
        for (Control child : box.getChildren()) {
            child.dispose();
        }
        FaultSheet.@Nullable Next next = sheet.next();
        Controls.heading(box, words.get("faults.next"));
        if (next == null) {
            Controls.wrapped(box).setText(words.get(none(sheet)));
            return;
        }
        Label question = Controls.wrapped(box);
        question.setText(next.question().replace("&", "&&"));
        question.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        Controls.wrapped(box)
                .setText(words.format("faults.next.where", Map.of("how", next.how(), "minutes", next.minutes())));
        if (next.procedure().isEmpty()) {
            answers(next);
        } else {
            isolationFirst(sheet);
        }
    }

    private static String none(FaultSheet sheet) {
        return sheet.conclusion().equals("nothing-reported") ? "faults.next.begin" : "faults.next.none";
    }

    private void answers(FaultSheet.Next next) {
        Composite row = Controls.columns(box, 3);
        row.setLayoutData(new GridData(SWT.BEGINNING, SWT.TOP, false, false));
        new AnswerButtons(row, "next", search, next.observation(), next.question(), words, complaints);
    }

    private void isolationFirst(FaultSheet sheet) {
        long done = sheet.isolation().stream().filter(FaultSheet.Tick::done).count();
        Label first = Controls.wrapped(box);
        first.setText("\u26A0 "
                + words.format(
                        "faults.next.isolation",
                        Map.of(
                                "done", String.valueOf(done),
                                "all", String.valueOf(sheet.isolation().size()))));
        first.setForeground(ThemeColours.of(Tone.BAD, first));
        Button go = new Button(box, SWT.PUSH);
        go.setText(words.get("faults.toIsolation"));
        go.setData("twinfeed.field", "faults.toIsolation");
        go.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> toIsolation.run()));
    }
}
