// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.FormDialog;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.JobTemplate;
import twinfeed.desktop.session.NewJobEntries;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/** Asks with which house a job begins, where it is kept and which heaters are on offer; all of it is proposed. */
public final class NewJobDialog extends FormDialog {
    private static final int WIDTH = 520;

    private final Words words;
    private final List<JobTemplate> templates;
    private final Path proposal;
    private final @Nullable Path heaters;
    private NewJobEntries entries = new NewJobEntries("", "");
    private int chosen;
    private @Nullable Text file;
    private @Nullable Text catalogue;
    private @Nullable Label problem;

    /**
     * Not open yet.
     *
     * @param templates the houses on offer, the first of which is chosen; where there is only one, nothing is asked about it
     * @param proposal where the job might be kept
     * @param heaters the catalogue that was used last; null if none was
     */
    public NewJobDialog(Shell shell, Words words, List<JobTemplate> templates, Path proposal, @Nullable Path heaters) {
        super(shell, words, words.get("new.title"), words.get("new.do"), 3);
        this.words = words;
        this.templates = templates;
        this.proposal = proposal;
        this.heaters = heaters;
    }

    /** The house that was chosen. */
    public JobTemplate template() {
        return templates.get(chosen);
    }

    /** What was entered. */
    public NewJobEntries entries() {
        return entries;
    }

    @Override
    protected void fill(Composite body) {
        if (templates.size() > 1) {
            templates(body);
        }
        file = path(body, "new.file", proposal.toString(), SWT.SAVE, "*.job");
        catalogue = path(body, "new.heaters", heaters == null ? "" : heaters.toString(), SWT.OPEN, "*.catalogue");
        Label trouble = Controls.wrapped(body);
        trouble.setForeground(ThemeColours.of(Tone.DOUBT, trouble));
        trouble.setData("twinfeed.field", "new.problem");
        ((GridData) trouble.getLayoutData()).widthHint = WIDTH;
        ((GridData) trouble.getLayoutData()).heightHint = 2 * Controls.lineHeight(trouble);
        problem = trouble;
    }

    private void templates(Composite body) {
        new Label(body, SWT.NONE).setText(words.get("new.template"));
        CCombo combo = Controls.choice(body);
        combo.setItems(templates.stream().map(JobTemplate::title).toArray(String[]::new));
        combo.select(0);
        GridData across = new GridData(SWT.FILL, SWT.CENTER, true, false);
        across.horizontalSpan = 2;
        combo.setLayoutData(across);
        combo.setData("twinfeed.field", "new.template");
        Controls.describe(combo, words.get("new.template"), () -> template().help());
        Label text = Controls.wrapped(body);
        text.setForeground(ThemeColours.of(Tone.QUIET, text));
        GridData data = (GridData) text.getLayoutData();
        data.widthHint = WIDTH;
        data.heightHint = 2 * Controls.lineHeight(text);
        text.setText(template().help());
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            chosen = Math.max(0, combo.getSelectionIndex());
            text.setText(template().help());
        }));
    }

    private Text path(Composite body, String key, String value, int style, String filter) {
        new Label(body, SWT.NONE).setText(words.get(key));
        Text text = new Text(body, SWT.BORDER);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = WIDTH;
        text.setLayoutData(data);
        text.setText(value);
        text.setData("twinfeed.field", key);
        Controls.name(text, words.get(key));
        text.addModifyListener(event -> look());
        Button choose = new Button(body, SWT.PUSH);
        choose.setText(words.get("new.choose"));
        Controls.name(choose, words.get("new.choose") + " " + words.get(key));
        choose.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            FileDialog dialog = new FileDialog(getShell(), style);
            dialog.setText(words.get(key).replace("&", ""));
            dialog.setFilterExtensions(new String[] {filter});
            Path present = Path.of(text.getText().isBlank() ? proposal.toString() : text.getText());
            dialog.setFilterPath(String.valueOf(present.toAbsolutePath().getParent()));
            dialog.setFileName(style == SWT.SAVE ? String.valueOf(present.getFileName()) : "");
            String answer = dialog.open();
            if (answer != null) {
                text.setText(answer);
            }
        }));
        return text;
    }

    @Override
    protected void look() {
        if (file == null || catalogue == null || problem == null) {
            return;
        }
        entries = new NewJobEntries(file.getText(), catalogue.getText());
        String text = entries.problem(words);
        problem.setText(text.replace("&", "&&"));
        Button begin = getButton(IDialogConstants.OK_ID);
        if (begin != null) {
            begin.setEnabled(text.isEmpty());
        }
    }
}
