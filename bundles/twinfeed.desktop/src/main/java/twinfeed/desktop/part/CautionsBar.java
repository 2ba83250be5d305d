// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import jakarta.annotation.PostConstruct;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Layout;
import org.eclipse.swt.widgets.Listener;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.text.Cautions;
import twinfeed.desktop.text.Words;

/** The cautions at the foot of the window, always to be seen. The line wraps in a narrow window instead of being cut. */
public final class CautionsBar {
    private static final int MARGIN = 6;

    /** As wide as the window, as high as the text needs. */
    private static final class Across extends Layout {
        private final Label label;

        Across(Label label) {
            this.label = label;
        }

        @Override
        protected Point computeSize(Composite bar, int widthHint, int heightHint, boolean flush) {
            int width = Math.max(120, bar.getShell().getClientArea().width - 4 * MARGIN);
            Point size = label.computeSize(width - 2 * MARGIN, SWT.DEFAULT, flush);
            return new Point(width, size.y + MARGIN);
        }

        @Override
        protected void layout(Composite bar, boolean flush) {
            Point area = bar.getSize();
            label.setBounds(MARGIN, MARGIN / 2, Math.max(0, area.x - 2 * MARGIN), area.y - MARGIN / 2);
        }
    }

    /** Made by the platform. */
    @PostConstruct
    void create(Composite parent, Words words) {
        Composite bar = new Composite(parent, SWT.NONE);
        Label label = new Label(bar, SWT.WRAP);
        label.setText("\u26A0 " + Cautions.line(words));
        label.setToolTipText(Cautions.full(words));
        label.setData("twinfeed.field", "cautions");
        Controls.name(label, Cautions.line(words));
        bar.setLayout(new Across(label));
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
    }
}
