// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.document.shape.Tone;

/**
 * Texts side by side, line under line, for a page that scrolls as a whole: the first column wraps and takes what the others
 * leave, the others stand to the right.
 */
public final class Lines {
    private static final int WRAPPED = 80;

    private final Composite body;
    private final int columns;

    /**
     * Without any line yet.
     *
     * @param columns how many texts a line has, 1 or more
     */
    public Lines(Composite parent, int columns) {
        this.columns = columns;
        this.body = Controls.columns(parent, columns);
        body.setLayoutData(Controls.across(parent));
        ((GridLayout) body.getLayout()).horizontalSpacing = 14;
        ((GridLayout) body.getLayout()).verticalSpacing = 3;
    }

    /** Adds a line. */
    public Lines add(String... texts) {
        return add(null, false, texts);
    }

    /** Adds a heading or a sum. */
    public Lines bold(String... texts) {
        return add(null, true, texts);
    }

    /** Adds a line whose last text has a tone. */
    public Lines toned(Tone tone, String... texts) {
        return add(tone, false, texts);
    }

    private Lines add(@Nullable Tone tone, boolean bold, String... texts) {
        for (int i = 0; i < columns; i++) {
            Label label = new Label(body, i == 0 ? SWT.WRAP : SWT.RIGHT);
            label.setText(i < texts.length ? texts[i].replace("&", "&&") : "");
            GridData data = new GridData(i == 0 ? SWT.FILL : SWT.END, SWT.TOP, i == 0, false);
            data.widthHint = i == 0 ? WRAPPED : SWT.DEFAULT;
            label.setLayoutData(data);
            if (bold) {
                label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
            }
            if (tone != null && i == columns - 1) {
                label.setForeground(ThemeColours.of(tone, label));
            }
        }
        return this;
    }
}
