// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.text.Words;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;

/** The drawing of the house, as it is or with the work done where there is any. */
final class DrawingPane {
    /** Above tabs it takes at most this share of the height, the rest scrolls. */
    private static final double MOST = 0.52;

    private final Composite whole;
    private final Composite states;
    private final Button asItIs;
    private final Button withWork;
    private final ScrolledComposite scroll;
    private final HouseCanvas canvas;

    DrawingPane(Composite parent, Words words, HouseDrawing drawing, Consumer<DrawnPiece> open, Runnable changed) {
        this.whole = Controls.pane(parent);
        whole.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        this.states = Controls.columns(whole, 2);
        states.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        this.asItIs = state(words, "drawing.asItIs", changed);
        this.withWork = state(words, "drawing.withWork", changed);
        asItIs.setSelection(true);
        this.scroll = new ScrolledComposite(whole, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        this.canvas = new HouseCanvas(scroll, words.locale(), words.get("pane.feeds"), drawing, open, this::fit);
        scroll.setContent(canvas.control());
        scroll.addListener(SWT.Resize, event -> fit());
        offer(false);
    }

    private Button state(Words words, String key, Runnable changed) {
        Button button = new Button(states, SWT.RADIO);
        button.setText(words.get(key));
        button.setData("twinfeed.field", key);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (button.getSelection()) {
                changed.run();
            }
        }));
        return button;
    }

    /** Whether the house is to be shown with the work done. */
    boolean withWork() {
        return states.getVisible() && withWork.getSelection();
    }

    /** Offers the two states, or only the house as it is. */
    void offer(boolean work) {
        if (states.getVisible() != work || ((GridData) states.getLayoutData()).exclude == work) {
            states.setVisible(work);
            ((GridData) states.getLayoutData()).exclude = !work;
            whole.layout();
        }
    }

    /** Shows a drawing. */
    void show(HouseDrawing drawing) {
        canvas.show(drawing);
    }

    /** The drawing that is shown. */
    HouseDrawing drawing() {
        return canvas.drawing();
    }

    /** The whole. */
    Composite control() {
        return whole;
    }

    /** What is drawn, without the choice above it. */
    Canvas drawn() {
        return canvas.control();
    }

    /** Where it stands by itself, in a tab, it takes all the room; above other things as much as it needs and they leave. */
    void standing(boolean alone, Control under) {
        GridData data = (GridData) whole.getLayoutData();
        data.grabExcessVerticalSpace = alone;
        data.heightHint = SWT.DEFAULT;
        if (!alone) {
            room(under);
        }
    }

    /** Takes as much of the height of a pane as the drawing needs and may have; the answer is whether that has changed. */
    boolean room(Control under) {
        int width = under.getBounds().width;
        GridData data = (GridData) whole.getLayoutData();
        int bar = scroll.getVerticalBar() == null ? 0 : scroll.getVerticalBar().getSize().x;
        int needed = canvas.height(Math.max(1, width - bar));
        int head = states.getVisible() ? states.computeSize(SWT.DEFAULT, SWT.DEFAULT).y : 0;
        int most = (int) (MOST * under.getBounds().height);
        int height = Math.max(1, Math.min(needed + head, most));
        boolean changed = data.heightHint != height;
        data.heightHint = height;
        return changed;
    }

    private void fit() {
        int width = scroll.getClientArea().width;
        if (width > 0) {
            scroll.setMinHeight(canvas.height(width));
        }
    }
}
