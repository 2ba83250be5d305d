// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.Page.Field;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.form.Remark;
import twinfeed.desktop.form.Remarks;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.shape.Tone;

/** A label, a control and, under both, what there is to say about the reading. Takes two columns of its parent. */
final class FieldRow {
    /** Widget data by which tests find a field: the reading's path in the model. */
    static final String FIELD = "twinfeed.field";

    private static final String LABEL = "twinfeed.label";
    private static final int MARGIN = 12;
    private static final int NARROWEST = 110;
    private static final int LABEL_CHARACTERS = 22;

    private final FormContext context;
    private final EObject root;
    private final ReadingPath path;
    private final Label label;
    private final Control control;
    private final Label message;
    private String waiting = "";
    private String fault = "";
    private List<Remark> remarks = List.of();

    private FieldRow(FormContext context, EObject root, Field field, Label label, Control control, Label message) {
        this.context = context;
        this.root = root;
        this.path = field.path();
        this.label = label;
        this.control = control;
        this.message = message;
    }

    /** Makes the label; the control comes next in the parent, so that the label's mnemonic leads to it. */
    static Label label(Composite parent, FormContext context, Field field) {
        Label label = new Label(parent, SWT.WRAP);
        label.setText(context.label(field.path()));
        label.setToolTipText(context.help(field.path()));
        GridData data = new GridData(SWT.FILL, SWT.CENTER, false, false);
        data.widthHint = LABEL_CHARACTERS * averageWidth(label);
        label.setLayoutData(data);
        label.setData(LABEL, data.widthHint);
        return label;
    }

    /** Makes labels narrower where a page is narrow, or letters are large: half of it belongs to the answers. */
    static void narrow(Composite page, int width) {
        for (Control child : page.getChildren()) {
            if (child.getData(LABEL) instanceof Integer wanted && child.getLayoutData() instanceof GridData data) {
                data.widthHint = Math.min(wanted, width / 2 - 2 * MARGIN);
            }
            if (child instanceof Composite inner) {
                narrow(inner, width);
            }
        }
    }

    private static int averageWidth(Label label) {
        GC gc = new GC(label);
        try {
            return (int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth());
        } finally {
            gc.dispose();
        }
    }

    /** Completes a row whose label and control were made. */
    static FieldRow of(Label label, Control control, FormContext context, EObject root, Field field) {
        Composite parent = control.getParent();
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.widthHint = NARROWEST;
        control.setLayoutData(data);
        control.setToolTipText(context.help(field.path()));
        Label message = new Label(parent, SWT.WRAP);
        GridData messageData = Controls.across(parent);
        messageData.exclude = true;
        messageData.horizontalIndent = 8;
        message.setLayoutData(messageData);
        message.setVisible(false);
        FieldRow row = new FieldRow(context, root, field, label, control, message);
        control.setData(FIELD, row.key());
        Controls.describe(control, context.name(field.path()), row::spoken);
        return row;
    }

    /** The reading's path in the model: what tells this field from all others. */
    String key() {
        return path.in(root);
    }

    /** Says why what was typed cannot be the answer; an empty text takes that back. */
    void fault(String text) {
        fault = text;
        if (showMessage()) {
            PageView.relayout(message);
        }
    }

    /** Shows what there is to say; the answer is whether the room that it needs has changed. */
    boolean remark(Remarks all) {
        List<Remark> here = all.on(root, path);
        remarks = here.stream()
                .filter(each -> each.level() != Remark.Level.WANTED)
                .toList();
        mark(Remarks.waiting(here));
        return showMessage();
    }

    /** Puts the cursor into the control if it is the one for a reading. */
    boolean focus(FieldLocation place) {
        return place.root() == root && place.path().equals(path.text()) && control.setFocus();
    }

    /** A quiet sign beside the label; which checks wait is in the tooltip, and spoken. */
    private void mark(String now) {
        if (now.equals(waiting)) {
            return;
        }
        waiting = now;
        String name = context.label(path);
        label.setText(now.isEmpty() ? name : context.words().format("field.wanted", Map.of("label", name)));
        label.setForeground(now.isEmpty() ? null : ThemeColours.of(Tone.DOUBT, label));
        String tip = (now + "\n" + context.help(path)).strip();
        label.setToolTipText(tip);
        control.setToolTipText(tip);
    }

    private boolean showMessage() {
        List<Remark> all = fault.isEmpty() ? remarks : List.of(new Remark(Remark.Level.WRONG, fault));
        message.setForeground(ThemeColours.of(tone(all), message));
        return Controls.show(message, text(all));
    }

    /** The colour for remarks. */
    static Tone tone(List<Remark> remarks) {
        boolean wrong = remarks.stream().anyMatch(each -> each.level() == Remark.Level.WRONG);
        return wrong ? Tone.BAD : Tone.DOUBT;
    }

    /** Remarks with their signs, one a line. */
    static String text(List<Remark> remarks) {
        return remarks.stream().map(FieldRow::signed).collect(Collectors.joining("\n"));
    }

    private static String signed(Remark remark) {
        return switch (remark.level()) {
                    case WRONG -> "\u2717 ";
                    case ODD -> "! ";
                    case WANTED -> "? ";
                }
                + remark.text();
    }

    private String spoken() {
        return (message.getText() + " " + waiting + " " + context.help(path)).strip();
    }
}
