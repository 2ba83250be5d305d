// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.FormDialog;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.IssueSummary;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.quote.IssuedQuote;

/** Shows what is to be issued, asks whether, where and as what, and says what is frozen by it. */
public final class IssueDialog extends FormDialog {
    private static final int WIDTH = 640;

    private final Words words;
    private final JobSession job;
    private final Revisions revisions;
    private @Nullable Path office;
    private List<IssuedQuote> latest = List.of();
    private @Nullable Path previous;
    private @Nullable Text folder;
    private @Nullable CCombo as;
    private @Nullable Label follows;
    private @Nullable IssueSummaryView summary;
    private @Nullable Label whyUnproven;
    private @Nullable Text typedReason;
    private String reason = "";

    /**
     * Not open yet.
     *
     * @param office folder of the office's quotes; null if none was chosen yet
     * @param job the job whose quote is to be issued
     */
    public IssueDialog(Shell shell, Words words, @Nullable Path office, JobSession job) {
        super(shell, words, words.get("issue.title"), words.get("issue.do"), 3);
        this.words = words;
        this.office = office;
        this.job = job;
        this.revisions = new Revisions(job);
    }

    /** The folder that was chosen. */
    public @Nullable Path office() {
        return office;
    }

    /** File of the quote that is to be revised; null if a new number is wanted. */
    public @Nullable Path previous() {
        return previous;
    }

    /** Why it is issued although an option is not known to suit, as it was typed; empty where none is asked for. */
    public String reason() {
        return reason;
    }

    @Override
    protected void fillAbove(Composite area) {
        IssueSummaryView view = new IssueSummaryView(area, words);
        summary = view;
        Runnable results = job.resulted().listen(this::showSummary);
        area.addListener(SWT.Dispose, event -> results.run());
    }

    @Override
    protected void fill(Composite body) {
        label(body, "issue.office");
        Text where = new Text(body, SWT.BORDER | SWT.READ_ONLY);
        where.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Controls.name(where, words.get("issue.office"));
        folder = where;
        Button change = new Button(body, SWT.PUSH);
        change.setText(words.get("issue.office.choose"));
        change.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choose()));
        label(body, "issue.as");
        CCombo combo = Controls.choice(body);
        combo.setLayoutData(acrossTwo());
        Controls.name(combo, words.get("issue.as"));
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> pick(combo.getSelectionIndex())));
        as = combo;
        reasonField(body);
        Label effect = text(body, "");
        follows = effect;
        text(body, words.get("issue.frozen"));
        Label last = text(body, "\u26A0 " + words.get("issue.noUndo"));
        last.setForeground(ThemeColours.of(Tone.BAD, last));
    }

    /** What is not known to suit is issued for a reason that somebody types; otherwise the field is not there. */
    private void reasonField(Composite body) {
        Label why = new Label(body, SWT.NONE);
        why.setText(words.get("issue.reason"));
        why.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
        whyUnproven = why;
        Text typed = new Text(body, SWT.BORDER);
        typed.setLayoutData(acrossTwo());
        typed.setMessage(words.get("issue.reason.example"));
        typed.setData("twinfeed.field", "issue.reason");
        Controls.name(typed, words.get("issue.reason"));
        typed.addModifyListener(event -> {
            reason = typed.getText().strip();
            enable(IssueSummary.of(job, words));
        });
        typedReason = typed;
    }

    private static GridData acrossTwo() {
        GridData across = new GridData(SWT.FILL, SWT.CENTER, true, false);
        across.horizontalSpan = 2;
        return across;
    }

    private void showReason(boolean unproven) {
        for (Control each : new Control[] {whyUnproven, typedReason}) {
            if (each != null) {
                each.setVisible(unproven);
                ((GridData) each.getLayoutData()).exclude = !unproven;
            }
        }
    }

    private void label(Composite body, String key) {
        new Label(body, SWT.NONE).setText(words.get(key));
    }

    private static Label text(Composite body, String text) {
        Label label = Controls.wrapped(body);
        label.setText(text);
        ((GridData) label.getLayoutData()).widthHint = WIDTH;
        ((GridData) label.getLayoutData()).verticalIndent = 6;
        return label;
    }

    /** What is issued cannot be taken back: Enter cancels. */
    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        Button cancel = getButton(IDialogConstants.CANCEL_ID);
        cancel.getShell().setDefaultButton(cancel);
        showSummary();
    }

    /** What is to be issued as it is now; until all of it is worked out, or where it may not be issued, the key is off. */
    private void showSummary() {
        IssueSummary now = IssueSummary.of(job, words);
        showReason(now.unproven());
        if (summary != null) {
            summary.show(now);
        }
        enable(now);
    }

    private void enable(IssueSummary now) {
        Button issue = getButton(IDialogConstants.OK_ID);
        if (issue != null) {
            boolean reasoned = !now.unproven() || !reason.isEmpty();
            issue.setEnabled(office != null && now.ready() && now.refusals().isEmpty() && reasoned);
        }
    }

    private void choose() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setText(words.get("issue.office"));
        if (office != null) {
            dialog.setFilterPath(office.toString());
        }
        String answer = dialog.open();
        if (answer != null) {
            office = Path.of(answer);
            look();
        }
    }

    /** What there is in the folder. */
    @Override
    protected void look() {
        Path there = office;
        latest = there == null ? List.of() : revisions.in(there);
        if (folder == null || as == null) {
            return;
        }
        folder.setText(there == null ? words.get("issue.office.none") : there.toString());
        as.removeAll();
        as.add(words.get("issue.new"));
        for (IssuedQuote each : latest) {
            as.add(words.format("issue.revision", Map.of("name", each.name(), "customer", each.customer())));
        }
        IssuedQuote proposed = revisions.proposed(latest);
        int index = proposed == null ? 0 : latest.indexOf(proposed) + 1;
        as.select(index);
        pick(index);
        enable(IssueSummary.of(job, words));
    }

    private void pick(int index) {
        previous = index <= 0 ? null : latest.get(index - 1).file();
        if (follows != null) {
            follows.setText(
                    index <= 0
                            ? words.get("issue.new.follows")
                            : words.format(
                                    "issue.revision.follows",
                                    Map.of("name", latest.get(index - 1).name())));
            follows.requestLayout();
        }
    }
}
