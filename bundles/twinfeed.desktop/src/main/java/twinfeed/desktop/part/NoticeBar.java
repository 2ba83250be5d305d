// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.shape.Tone;

/** Something a person has to know about the job, with what can be done; takes no room while there is nothing. */
final class NoticeBar {
    private final Composite bar;
    private boolean passing;

    NoticeBar(Composite parent) {
        bar = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 10;
        layout.marginHeight = 4;
        bar.setLayout(layout);
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.exclude = true;
        bar.setLayoutData(data);
        bar.setVisible(false);
        bar.setData("twinfeed.field", "notice");
    }

    /** Whether something is said. */
    boolean shown() {
        return bar.getVisible();
    }

    /** Says something that a person may also just read and go on: it goes away with the next edit. */
    void say(Tone tone, String text, String close) {
        show(tone, text, Map.of(close, () -> {}));
        passing = true;
    }

    /** The survey was changed: what was said in passing has been read. */
    void passOn() {
        if (passing) {
            hide();
        }
    }

    /** Says something that waits for an answer. */
    void show(Tone tone, String text, Map<String, Runnable> answers) {
        clear();
        passing = false;
        ((GridLayout) bar.getLayout()).numColumns = answers.size() + 1;
        bar.setBackground(ThemeColours.tint(tone, bar.getParent(), 0.18));
        Label label = new Label(bar, SWT.WRAP);
        label.setText(text.replace("&", "&&"));
        label.setBackground(bar.getBackground());
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 200;
        label.setLayoutData(data);
        new LinkedHashMap<>(answers).forEach((answer, action) -> {
            Button button = new Button(bar, SWT.PUSH);
            button.setText(answer);
            Controls.name(button, answer + ": " + text);
            button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
                hide();
                action.run();
            }));
        });
        visible(true);
    }

    /** Says nothing any more. */
    void hide() {
        visible(false);
    }

    private void clear() {
        for (Control child : bar.getChildren()) {
            child.dispose();
        }
    }

    private void visible(boolean visible) {
        passing &= visible;
        ((GridData) bar.getLayoutData()).exclude = !visible;
        bar.setVisible(visible);
        bar.getParent().layout();
        // A message of the size of the one before leaves the bar as large as it was, and what is new in it unplaced.
        bar.layout(true);
    }
}
