// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.function.Supplier;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.document.shape.Tone;

/** Pieces that all panes are made of. */
public final class Controls {
    /** Width that a wrapped text asks for; it takes what it is given. */
    private static final int WRAPPED = 80;

    private static final int VISIBLE_ANSWERS = 12;
    private static final String NAME = "twinfeed.name";

    private Controls() {}

    /**
     * A key that does something.
     *
     * @param text what stands on it
     * @param field name by which it is found
     */
    public static Button push(Composite parent, String text, String field, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.setData("twinfeed.field", field);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    /** A composite in columns without margins. */
    public static Composite columns(Composite parent, int columns) {
        Composite composite = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        composite.setLayout(layout);
        return composite;
    }

    /** A pane in one column with small margins. */
    public static Composite pane(Composite parent) {
        Composite composite = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 8;
        layout.marginHeight = 6;
        layout.verticalSpacing = 5;
        composite.setLayout(layout);
        return composite;
    }

    /** A heading over the whole width; one that is longer wraps. */
    public static Label heading(Composite parent, String text) {
        Label label = new Label(parent, SWT.WRAP);
        label.setText(text);
        label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        label.setLayoutData(across(parent));
        return label;
    }

    /** A heading of one line: where it does not fit, an ellipsis shows that, and the whole stands in its tooltip. */
    public static CLabel title(Composite parent, String text) {
        CLabel label = new CLabel(parent, SWT.NONE);
        label.setMargins(0, 0, 0, 0);
        label.setText(text);
        label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        label.setLayoutData(across(parent));
        return label;
    }

    /** A text over the whole width that wraps. */
    public static Label wrapped(Composite parent) {
        Label label = new Label(parent, SWT.WRAP);
        label.setLayoutData(across(parent));
        return label;
    }

    /** A text over the whole width that wraps, in a tone; null takes the colour of plain text. */
    public static void text(Composite parent, String text, @Nullable Tone tone) {
        Label label = wrapped(parent);
        label.setText(text.replace("&", "&&"));
        if (tone != null) {
            label.setForeground(ThemeColours.of(tone, label));
        }
    }

    /** Height of a line of text in a control's font, in pixels. */
    public static int lineHeight(Control control) {
        GC gc = new GC(control);
        try {
            return gc.getFontMetrics().getHeight();
        } finally {
            gc.dispose();
        }
    }

    /** Layout over all columns of a parent in a grid. */
    public static GridData across(Composite parent) {
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.horizontalSpan = ((GridLayout) parent.getLayout()).numColumns;
        data.widthHint = WRAPPED;
        return data;
    }

    /**
     * A control in which one of some answers is picked. The platform's own one is never narrower than its longest answer on some
     * systems, and would lie over its label.
     */
    public static CCombo choice(Composite parent) {
        CCombo choice = new CCombo(parent, SWT.READ_ONLY | SWT.BORDER);
        choice.setVisibleItemCount(VISIBLE_ANSWERS);
        // Turning the wheel over a page must scroll it, not change a reading by the way.
        choice.addListener(SWT.MouseWheel, event -> event.doit = false);
        ChoiceKeys.listen(choice);
        FullChoice.of(choice);
        return choice;
    }

    /** Shows a text, or takes its room away where there is none; the answer is whether it has to be laid out again. */
    public static boolean show(Label label, String text) {
        GridData data = (GridData) label.getLayoutData();
        boolean appears = data.exclude != text.isEmpty();
        data.exclude = text.isEmpty();
        label.setVisible(!data.exclude);
        return setText(label, text) || appears;
    }

    /** Writes a text as it is, not with a letter underlined; the answer is whether it was another one. */
    public static boolean setText(Label label, String text) {
        String written = text.replace("&", "&&");
        boolean changed = !label.getText().equals(written);
        if (changed) {
            label.setText(written);
        }
        return changed;
    }

    /** What a screen reader calls a control. */
    public static void name(Control control, String name) {
        describe(control, name, () -> "");
    }

    /** What a screen reader calls a control, and what it says about it. */
    public static void describe(Control control, String name, Supplier<String> description) {
        String plain = name.replace("&", "");
        control.setData(NAME, plain);
        NativeNames.set(control, plain, description.get());
        // What it says about it may change; it is said when somebody comes to it.
        control.addListener(SWT.FocusIn, event -> NativeNames.set(control, plain, description.get()));
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = plain;
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = description.get();
            }
        });
    }
}
