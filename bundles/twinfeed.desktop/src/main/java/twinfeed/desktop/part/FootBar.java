// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.di.UIEventTopic;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Layout;
import org.eclipse.swt.widgets.Listener;
import org.jspecify.annotations.Nullable;
import org.osgi.service.event.Event;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.text.Cautions;
import twinfeed.desktop.text.Words;

/** The foot of the window: the status line, and below it the cautions, which wrap in a narrow window instead of being cut. */
public final class FootBar {
    private static final int MARGIN = 6;

    private @Nullable StatusLine status;
    private @Nullable MPart active;

    /** As wide as the window, as high as the texts need. */
    private static final class Across extends Layout {
        private final StatusLine status;
        private final Label cautions;

        Across(StatusLine status, Label cautions) {
            this.status = status;
            this.cautions = cautions;
        }

        @Override
        protected Point computeSize(Composite bar, int widthHint, int heightHint, boolean flush) {
            int width = Math.max(120, bar.getShell().getClientArea().width - 4 * MARGIN);
            return new Point(
                    width, statusHeight(flush) + cautions.computeSize(inner(width), SWT.DEFAULT, flush).y + MARGIN);
        }

        private int statusHeight(boolean flush) {
            return status.computeSize(SWT.DEFAULT, SWT.DEFAULT, flush).y;
        }

        private static int inner(int width) {
            return Math.max(0, width - 2 * MARGIN);
        }

        @Override
        protected void layout(Composite bar, boolean flush) {
            Point area = bar.getSize();
            int line = statusHeight(flush);
            status.setBounds(MARGIN, 0, inner(area.x), line);
            cautions.setBounds(MARGIN, line + MARGIN / 2, inner(area.x), Math.max(0, area.y - line - MARGIN / 2));
        }
    }

    /** Made by the platform. */
    @PostConstruct
    void create(Composite parent, Words words, LastAction last, JobServices services) {
        Composite bar = new Composite(parent, SWT.NONE);
        StatusLine line = new StatusLine(bar, words, last, services);
        status = line;
        Label label = new Label(bar, SWT.WRAP);
        label.setText("\u26A0 " + Cautions.line(words));
        label.setToolTipText(Cautions.full(words));
        label.setData("twinfeed.field", "cautions");
        Controls.name(label, Cautions.line(words));
        bar.setLayout(new Across(line, label));
        // How many lines are needed depends on the width of the window, which is known only when it is there.
        Listener resized = event -> bar.getDisplay().asyncExec(() -> {
            if (!bar.isDisposed()) {
                bar.requestLayout();
            }
        });
        bar.getShell().addListener(SWT.Resize, resized);
        bar.getShell().addListener(SWT.Show, resized);
        bar.addListener(SWT.Dispose, event -> {
            bar.getShell().removeListener(SWT.Resize, resized);
            bar.getShell().removeListener(SWT.Show, resized);
        });
        line.show(active);
    }

    /** Another page of the window is in front. */
    @Inject
    @Optional
    void activated(@Named(IServiceConstants.ACTIVE_PART) @Optional @Nullable MPart part) {
        active = part;
        StatusLine line = status;
        if (line != null && !line.isDisposed()) {
            line.show(part);
        }
    }

    /** A page was changed or saved. */
    @Inject
    @Optional
    void changed(@UIEventTopic(UIEvents.Dirtyable.TOPIC_DIRTY) Event event) {
        StatusLine line = status;
        if (line != null && !line.isDisposed()) {
            line.refresh();
        }
    }
}
