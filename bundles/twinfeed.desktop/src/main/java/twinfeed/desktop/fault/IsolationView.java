// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.FaultSearch;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.document.shape.Tone;

/** The safe isolation, ticked step by step by somebody with a name. A tick stays; what is next is the only one that can be made. */
final class IsolationView {
    /** May be done at any time before the cover comes off; all others have their order. */
    private static final String ANY_TIME = "waterShut";

    private final FaultSearch search;
    private final Words words;
    private final Complaints complaints;
    private final Composite body;
    private final Label notice;
    private final Button again;
    private final List<Button> boxes = new ArrayList<>();

    IsolationView(Composite parent, FaultSearch search, Words words, Complaints complaints) {
        this.search = search;
        this.words = words;
        this.complaints = complaints;
        this.notice = Controls.wrapped(parent);
        notice.setForeground(ThemeColours.of(Tone.BAD, notice));
        notice.setData("twinfeed.field", "isolation.notice");
        this.body = Controls.columns(parent, 2);
        body.setLayoutData(Controls.across(parent));
        this.again = new Button(parent, SWT.PUSH);
        again.setText(words.get("isolation.again"));
        again.setData("twinfeed.field", "isolation.again");
        again.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> again()));
    }

    private void again() {
        String question = words.get("isolation.again.question");
        if (Dialogs.ask(
                again.getShell(), words, words.get("isolation.again"), question, words.get("isolation.again.do"))) {
            complaints.attempt(search::beginIsolationAgain);
        }
    }

    /** Shows the steps and who ticked them; the answer is whether it has to be laid out again. */
    boolean show(FaultSheet sheet) {
        boolean changed =
                Controls.show(notice, sheet.isolationNotice().isEmpty() ? "" : "\u26A0 " + sheet.isolationNotice());
        if (boxes.size() != sheet.isolation().size()) {
            make(sheet.isolation());
        }
        boolean open = true;
        for (int i = 0; i < boxes.size(); i++) {
            FaultSheet.Tick tick = sheet.isolation().get(i);
            boolean next = !tick.done() && (open || tick.step().equals(ANY_TIME));
            changed |= show(boxes.get(i), tick, next);
            open &= tick.done();
        }
        again.setEnabled(sheet.isolation().stream().anyMatch(FaultSheet.Tick::done));
        return changed;
    }

    /** Puts the cursor onto the step that is next. */
    void setFocus() {
        boxes.stream().filter(Button::isEnabled).findFirst().ifPresent(Button::setFocus);
    }

    private void make(List<FaultSheet.Tick> ticks) {
        for (Control child : body.getChildren()) {
            child.dispose();
        }
        boxes.clear();
        for (FaultSheet.Tick tick : ticks) {
            Button box = new Button(body, SWT.CHECK);
            box.setLayoutData(new GridData(SWT.BEGINNING, SWT.TOP, false, false));
            box.setData("twinfeed.field", "isolation." + tick.step());
            box.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
                complaints.attempt(() -> search.tick(tick.step()));
                box.setSelection(false);
                box.setEnabled(false);
            }));
            Label text = new Label(body, SWT.WRAP);
            text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
            ((GridData) text.getLayoutData()).widthHint = 80;
            box.setData("text", text);
            Controls.describe(box, tick.title(), text::getText);
            boxes.add(box);
        }
    }

    private boolean show(Button box, FaultSheet.Tick tick, boolean next) {
        box.setSelection(tick.done());
        box.setEnabled(next);
        Label text = (Label) box.getData("text");
        String done =
                tick.done() ? "\n" + words.format("isolation.done", Map.of("by", tick.by(), "at", tick.at())) : "";
        Tone tone = tick.done() ? Tone.GOOD : Tone.QUIET;
        text.setForeground(next ? body.getForeground() : ThemeColours.of(tone, text));
        return Controls.setText(text, (boxes.indexOf(box) + 1) + "  " + tick.title() + done);
    }
}
