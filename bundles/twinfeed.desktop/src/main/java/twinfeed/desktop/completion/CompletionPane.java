// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.completion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Lines;
import twinfeed.desktop.look.Scroll;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.CompletionResult;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.CompletionRow;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;

/**
 * What follows from the readings after the work: each beside its band, judged while it is typed, and the pages that are printed. Computes
 * only while it is to be seen.
 */
public final class CompletionPane {
    private final JobSession session;
    private final Words words;
    private final Scroll scroll;
    private final Label state;
    private final Label trouble;
    private final Composite body;
    private final Button record;
    private final Button customer;
    private final Button notice;

    /** What is printed, when its button is pressed. */
    public interface Printing {
        /** The record of the finished work. */
        void record();

        /** The page for the customer. */
        void customer();

        /** The notice of an unsafe unit, for all that makes it so. */
        void notice();
    }

    /** Makes the pane. */
    public CompletionPane(Composite parent, JobSession session, Words words, Printing printing) {
        this.session = session;
        this.words = words;
        this.scroll = new Scroll(parent);
        Composite content = scroll.content();
        Controls.heading(content, words.get("pane.completion"));
        this.state = Controls.wrapped(content);
        state.setData("twinfeed.field", "completion.state");
        this.trouble = Controls.wrapped(content);
        trouble.setForeground(ThemeColours.of(Tone.BAD, trouble));
        trouble.setData("twinfeed.field", "completion.trouble");
        Composite buttons = Controls.columns(content, 3);
        buttons.setLayoutData(Controls.across(content));
        this.record = Controls.push(buttons, words.get("completion.record"), "completion.record", printing::record);
        this.customer =
                Controls.push(buttons, words.get("completion.customer"), "completion.customer", printing::customer);
        this.notice = Controls.push(buttons, words.get("completion.notice"), "completion.notice", printing::notice);
        this.body = Controls.columns(content, 1);
        body.setLayoutData(Controls.across(content));
        Controls.text(content, words.get("completion.data"), Tone.QUIET);
        List<Runnable> ends = new ArrayList<>();
        ends.add(session.completion().resulted().listen(this::show));
        ends.add(session.services().changed().listen(session.completion()::refresh));
        scroll.control().addListener(SWT.Dispose, event -> ends.forEach(Runnable::run));
        show();
    }

    /** Comes to be seen, or goes. */
    public void visible(boolean visible) {
        scroll.control().setVisible(visible);
        session.completion().watch(visible);
        if (visible) {
            show();
        }
    }

    private void show() {
        CompletionResult result = session.completion().result();
        @Nullable CompletionSheet sheet = result == null ? null : result.sheet();
        for (Control child : body.getChildren()) {
            child.dispose();
        }
        Controls.show(trouble, result == null ? "" : result.trouble());
        Controls.show(
                state,
                sheet == null
                        ? result == null ? words.get("findings.computing") : ""
                        : words.get("completion.state." + sheet.state()));
        record.setEnabled(sheet != null);
        customer.setEnabled(sheet != null);
        notice.setEnabled(result != null && !result.reasons().isEmpty());
        if (result != null && sheet != null) {
            state.setForeground(ThemeColours.of(CompletionRow.tone(sheet), state));
            unsafe(result.reasons());
            readings(sheet);
            works(sheet);
        }
        scroll.fit();
    }

    private void unsafe(List<Reason> reasons) {
        if (!reasons.isEmpty()) {
            section("completion.unsafe");
            reasons.forEach(each -> Controls.text(
                    body,
                    words.format("completion.reason", Map.of("title", each.title(), "text", each.text())),
                    Tone.BAD));
        }
    }

    private void readings(CompletionSheet sheet) {
        section("completion.readings");
        Lines lines = new Lines(body, 4)
                .bold(
                        "",
                        words.get("completion.value"),
                        words.get("completion.expected"),
                        words.get("completion.judged"));
        CompletionRow.of(sheet, words)
                .forEach(row -> lines.toned(row.tone(), row.title(), row.value(), row.expected(), row.judged()));
    }

    /** The certificate's data rest on these works: whoever did not do one must see that it is taken for done. */
    private void works(CompletionSheet sheet) {
        if (!sheet.works().isEmpty()) {
            section("completion.works");
            sheet.works().forEach(each -> Controls.text(body, "\u2022 " + each, null));
        }
    }

    private void section(String key) {
        ((GridData) Controls.heading(body, words.get(key)).getLayoutData()).verticalIndent = 10;
    }

    /** The whole. */
    public Composite control() {
        return scroll.control();
    }

    /** Puts the cursor onto what follows. */
    public boolean setFocus() {
        return record.setFocus() || scroll.control().setFocus();
    }
}
