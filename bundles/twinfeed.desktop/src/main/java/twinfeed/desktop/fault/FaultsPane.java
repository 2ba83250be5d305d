// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.fault;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Scroll;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.FaultResult;
import twinfeed.desktop.session.FaultSearch;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.visit.FaultQuestion;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.faults.FaultFindingService;

/**
 * Fault-finding: on the left what is asked, with the cover on first, then the safe isolation, then what is found under the cover;
 * on the right what follows. Computes only while it is to be seen.
 */
public final class FaultsPane {
    private final FaultSearch search;
    private final Words words;
    private final SashForm halves;
    private final Scroll questions;
    private final Text by;
    private final List<QuestionList> safe = new ArrayList<>();
    private final QuestionList underCover;
    private final Label locked;
    private final Label isolationHeading;
    private final IsolationView isolation;
    private final SheetView sheet;

    /** Makes the pane. */
    public FaultsPane(Composite parent, JobSession session, Words words) {
        this.search = session.faults();
        this.words = words;
        this.halves = new SashForm(parent, SWT.HORIZONTAL);
        this.questions = new Scroll(halves);
        Composite content = questions.content();
        Controls.heading(content, words.get("faults.questions"));
        this.by = by(content);
        Complaints complaints = new Complaints(content, questions::fit);
        List<FaultQuestion> all = FaultFindingService.questions(session.locale());
        safe.add(list(content, "told", all, complaints));
        safe.add(list(content, "outside", all, complaints));
        this.isolationHeading = heading(content, "faults.safeIsolation");
        this.isolation = new IsolationView(content, search, words, complaints);
        heading(content, "faults.place.cover");
        this.locked = Controls.wrapped(content);
        locked.setForeground(ThemeColours.of(Tone.DOUBT, locked));
        this.underCover = list(all, "cover", content, complaints);
        this.sheet = new SheetView(halves, search, words, this::toIsolation);
        halves.setWeights(50, 50);
        listen(session);
        show();
    }

    private void listen(JobSession session) {
        List<Runnable> ends = new ArrayList<>();
        ends.add(session.edits().changed().listen(this::refresh));
        ends.add(search.asking().listen(sheet::show));
        ends.add(search.resulted().listen(this::show));
        ends.add(session.resulted().listen(() -> {
            if (halves.getVisible()) {
                sheet.show();
            }
        }));
        halves.addListener(SWT.Dispose, event -> ends.forEach(Runnable::run));
    }

    private Text by(Composite content) {
        Composite row = Controls.columns(content, 2);
        row.setLayoutData(Controls.across(content));
        Label label = new Label(row, SWT.NONE);
        label.setText(words.get("faults.by"));
        Text text = new Text(row, SWT.BORDER);
        text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        text.setData("twinfeed.field", "faults.by");
        text.setText(search.by());
        text.setToolTipText(words.get("faults.by.help"));
        Controls.describe(text, words.get("faults.by"), () -> words.get("faults.by.help"));
        text.addFocusListener(FocusListener.focusLostAdapter(event -> search.by(text.getText())));
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> search.by(text.getText())));
        text.addModifyListener(event -> search.by(text.getText()));
        return text;
    }

    private QuestionList list(Composite content, String place, List<FaultQuestion> all, Complaints complaints) {
        heading(content, "faults.place." + place);
        return list(all, place, content, complaints);
    }

    private QuestionList list(List<FaultQuestion> all, String place, Composite content, Complaints complaints) {
        List<FaultQuestion> here =
                all.stream().filter(each -> each.place().equals(place)).toList();
        return new QuestionList(content, here, search, words, complaints);
    }

    private Label heading(Composite content, String key) {
        Label label = Controls.heading(content, words.get(key));
        ((GridData) label.getLayoutData()).verticalIndent = 10;
        return label;
    }

    /** Comes to be seen, or goes. */
    public void visible(boolean visible) {
        halves.setVisible(visible);
        search.watch(visible);
        if (visible) {
            refresh();
            sheet.show();
            questions.fit();
        }
    }

    private void toIsolation() {
        isolationHeading.getDisplay().asyncExec(() -> {
            questions.to(isolationHeading);
            isolation.setFocus();
        });
    }

    /** The whole. */
    public Composite control() {
        return halves;
    }

    private void refresh() {
        if (!by.isFocusControl() && !by.getText().strip().equals(search.by())) {
            by.setText(search.by());
        }
        safe.forEach(QuestionList::refresh);
        underCover.refresh();
    }

    private void show() {
        FaultResult result = search.result();
        @Nullable FaultSheet known = result == null ? null : result.sheet();
        boolean complete = search.coverMayComeOff();
        boolean changed = known != null && isolation.show(known);
        underCover.enable(complete);
        changed |= Controls.show(locked, complete ? "" : words.get("faults.locked"));
        if (changed) {
            questions.fit();
        }
        sheet.show();
    }

    /** Puts the cursor into the questions. */
    public boolean setFocus() {
        return by.setFocus();
    }

    /** Puts the cursor onto what follows. */
    public boolean setFocusOnSheet() {
        return sheet.scroll().control().setFocus();
    }
}
