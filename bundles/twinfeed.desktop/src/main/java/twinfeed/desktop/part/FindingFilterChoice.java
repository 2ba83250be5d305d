// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.FindingFilter;
import twinfeed.model.assessment.OptionAssessment;

/** The control in which it is chosen which findings are listed; it says how many there are of each. */
final class FindingFilterChoice {
    private static final int WIDTH = 130;

    private final Words words;
    private final CCombo combo;

    /** Takes two columns of a parent in a grid. */
    FindingFilterChoice(Composite parent, Words words, Runnable changed) {
        this.words = words;
        new Label(parent, SWT.NONE).setText(words.get("findings.filter"));
        this.combo = Controls.choice(parent);
        GridData data = new GridData(SWT.END, SWT.CENTER, false, false);
        data.widthHint = WIDTH;
        combo.setLayoutData(data);
        combo.setData("twinfeed.field", "findings.filter");
        Controls.name(combo, words.get("findings.filter"));
        count(null);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed.run()));
    }

    FindingFilter chosen() {
        return FindingFilter.values()[Math.max(0, combo.getSelectionIndex())];
    }

    /** Counts the findings of an option. */
    void count(@Nullable OptionAssessment option) {
        String[] texts = Stream.of(FindingFilter.values())
                .map(filter -> words.format("findings.filter." + filter.key(), Map.of("count", count(option, filter))))
                .toArray(String[]::new);
        if (!Arrays.equals(texts, combo.getItems())) {
            int chosen = chosen().ordinal();
            combo.setItems(texts);
            combo.select(chosen);
        }
    }

    private static long count(@Nullable OptionAssessment option, FindingFilter filter) {
        return option == null
                ? 0
                : option.getFindings().stream().filter(filter::accepts).count();
    }
}
