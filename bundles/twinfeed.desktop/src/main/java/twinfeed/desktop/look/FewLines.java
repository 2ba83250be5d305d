// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Label;

/** A wrapped text of a few lines at most: what goes beyond ends in an ellipsis, and the tooltip is the whole text. */
public final class FewLines {
    private static final String ELLIPSIS = "\u2026";

    private final Label label;
    private int most;
    private String text = "";

    /**
     * In a label that wraps.
     *
     * @param most how many lines at most
     */
    public FewLines(Label label, int most) {
        this.label = label;
        this.most = most;
        label.addListener(SWT.Resize, event -> {
            if (show()) {
                label.requestLayout();
            }
        });
    }

    /** So many lines at most from now on. */
    public void most(int lines) {
        if (most != lines) {
            most = lines;
            show();
        }
    }

    /** Shows a text, or takes its room away where there is none; whether the layout has to be done again. */
    public boolean show(String whole) {
        text = whole;
        return show();
    }

    private boolean show() {
        String shown = shortened();
        label.setToolTipText(shown.equals(text) ? null : text.replace("&", "&&"));
        return (!label.getText().equals(shown.replace("&", "&&")) || text.isEmpty() == label.getVisible())
                && Controls.show(label, shown);
    }

    private String shortened() {
        int width = label.getSize().x;
        if (width <= 0 || text.isEmpty()) {
            return text;
        }
        TextLayout layout = new TextLayout(label.getDisplay());
        try {
            layout.setFont(label.getFont());
            layout.setWidth(width);
            layout.setText(text);
            if (layout.getLineCount() <= most) {
                return text;
            }
            int end = layout.getLineOffsets()[most];
            String cut = text.substring(0, end).stripTrailing();
            layout.setText(cut + ELLIPSIS);
            while (layout.getLineCount() > most && !cut.isEmpty()) {
                cut = cut.substring(0, cut.length() - 1);
                layout.setText(cut + ELLIPSIS);
            }
            return cut.stripTrailing() + ELLIPSIS;
        } finally {
            layout.dispose();
        }
    }
}
