// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Layout;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Announcement;
import twinfeed.desktop.session.Editor;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.JobStatus;

/**
 * One line about the page in front: on the left where it stands, on the right how the last action went. What does not fit is shortened
 * with an ellipsis, and its tooltip is the whole text.
 */
final class StatusLine extends Composite {
    private static final int GAP = 24;
    /** Of a narrow line the last action gets at most this share. */
    private static final double SHARE_OF_ACTION = 0.3;

    private final Words words;
    private final LastAction last;
    private final CLabel state;
    private final CLabel action;
    private final List<Runnable> ofPage = new ArrayList<>();
    private @Nullable MPart page;
    private String announced = "";

    StatusLine(Composite parent, Words words, LastAction last, JobServices services) {
        super(parent, SWT.NONE);
        this.words = words;
        this.last = last;
        this.state = label("status.state");
        this.action = label("status.action");
        setData("twinfeed.field", "status");
        Announcement.statusBar(this, this::text);
        setLayout(new Sides());
        Runnable actions = last.changed().listen(this::acted);
        Runnable prices = services.changed().listen(this::refresh);
        addListener(SWT.Dispose, event -> {
            actions.run();
            prices.run();
            leave();
        });
    }

    private CLabel label(String field) {
        CLabel label = new CLabel(this, SWT.NONE);
        label.setMargins(0, 2, 0, 0);
        label.setData("twinfeed.field", field);
        return label;
    }

    /** The state on the left, the last action behind it. */
    private final class Sides extends Layout {
        @Override
        protected Point computeSize(Composite line, int widthHint, int heightHint, boolean flush) {
            Point left = state.computeSize(SWT.DEFAULT, SWT.DEFAULT, flush);
            Point right = action.computeSize(SWT.DEFAULT, SWT.DEFAULT, flush);
            return new Point(left.x + GAP + right.x, Math.max(left.y, right.y));
        }

        @Override
        protected void layout(Composite line, boolean flush) {
            Point area = line.getSize();
            int left = state.computeSize(SWT.DEFAULT, SWT.DEFAULT, flush).x;
            int right = action.getText().isEmpty() ? 0 : action.computeSize(SWT.DEFAULT, SWT.DEFAULT, flush).x + GAP;
            if (left + right > area.x) {
                right = Math.min(right, Math.max((int) (area.x * SHARE_OF_ACTION), area.x - left));
                left = area.x - right;
            }
            place(state, 0, left, area.y);
            place(action, left + GAP, Math.max(0, right - GAP), area.y);
        }

        private static void place(CLabel label, int x, int width, int height) {
            label.setBounds(x, 0, width, height);
            boolean cut = label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x > width;
            label.setToolTipText(cut ? label.getText() : null);
        }
    }

    /** Shows where a page stands; null shows nothing. */
    void show(@Nullable MPart part) {
        leave();
        if (page != null && part != page) {
            last.forget();
        }
        page = part;
        @Nullable JobSession job = job();
        if (job != null) {
            ofPage.add(job.resulted().listen(this::refresh));
            ofPage.add(job.edits().changed().listen(this::refresh));
        }
        refresh();
        // A page that was just made is in front before it has its object.
        if (part != null && part.getObject() == null) {
            getDisplay().asyncExec(() -> {
                if (!isDisposed() && page == part && part.getObject() != null) {
                    show(part);
                }
            });
        }
    }

    private void leave() {
        ofPage.forEach(Runnable::run);
        ofPage.clear();
    }

    private @Nullable JobSession job() {
        return page != null && page.getObject() instanceof JobPart job ? job.session() : null;
    }

    /** Shows it as it is now. */
    void refresh() {
        if (!isDisposed()) {
            put(state, String.join("  \u00b7  ", phrases()));
            put(action, last.text());
            layout();
        }
    }

    private List<String> phrases() {
        @Nullable JobSession job = job();
        if (job != null) {
            return new JobStatus(job, words).phrases();
        }
        if (page == null || page.getLocalizedLabel() == null) {
            return List.of();
        }
        String name = page.getLocalizedLabel();
        boolean edits = page.getObject() instanceof Editor;
        return List.of(
                edits ? words.format(page.isDirty() ? "status.changed" : "status.saved", Map.of("name", name)) : name);
    }

    private static void put(CLabel label, String text) {
        String shown = text.replace("&", "&&");
        if (!shown.equals(label.getText())) {
            label.setText(shown);
        }
    }

    private void acted() {
        refresh();
        if (!last.text().equals(announced)) {
            announced = last.text();
            Announcement.say(this, announced);
        }
    }

    private String text() {
        return (state.getText() + ". " + action.getText()).replace("&&", "&").strip();
    }
}
