// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import twinfeed.desktop.text.Words;

/** The row over a long table: what is searched as one types, which lines are shown, and how many of them there are. */
public final class SearchRow {
    private static final int COUNT_WIDTH = 110;
    private static final int FILTER_WIDTH = 240;

    private final Words words;
    private final Text search;
    private final CCombo filter;
    private final Label count;

    /**
     * A row with nothing to choose among yet, see {@link #offer}.
     *
     * @param list what is searched: its hint is the message {@code LIST.search}, its fields are called {@code LIST.search} and
     *     {@code LIST.filter}
     * @param changed told when something else is searched for or chosen
     */
    public SearchRow(Composite pane, Words words, String list, Runnable changed) {
        this.words = words;
        Composite row = Controls.columns(pane, 4);
        row.setLayoutData(Controls.across(pane));
        this.search = new Text(row, SWT.BORDER | SWT.SEARCH | SWT.ICON_CANCEL);
        search.setMessage(words.get(list + ".search"));
        search.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        search.setData("twinfeed.field", list + ".search");
        Controls.name(search, words.get(list + ".search"));
        search.addListener(SWT.Modify, event -> changed.run());
        new Label(row, SWT.NONE).setText(words.get("search.filter"));
        this.filter = Controls.choice(row);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, false, false);
        wide.widthHint = FILTER_WIDTH;
        filter.setLayoutData(wide);
        filter.setData("twinfeed.field", list + ".filter");
        Controls.name(filter, words.get("search.filter"));
        filter.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed.run()));
        this.count = new Label(row, SWT.RIGHT);
        GridData right = new GridData(SWT.END, SWT.CENTER, false, false);
        right.widthHint = COUNT_WIDTH;
        count.setLayoutData(right);
    }

    /** Offers these filters; the one that was chosen, by its number, stays so. */
    public void offer(List<String> filters) {
        String[] texts = filters.toArray(String[]::new);
        if (!Arrays.equals(texts, filter.getItems())) {
            int chosen = which();
            filter.setItems(texts);
            filter.select(chosen);
        }
    }

    /** What is searched for. */
    public String text() {
        return search.getText();
    }

    /** The number of the filter that is chosen, from 0; 0 before there are any. */
    public int which() {
        return Math.max(0, filter.getSelectionIndex());
    }

    /** Searches for nothing and shows what the first filter lets through. */
    public void showAll() {
        search.setText("");
        filter.select(0);
    }

    /** Says how many lines are shown. */
    public void count(int shown, int all) {
        count.setText(words.format("search.count", Map.of("shown", shown, "all", all)));
    }
}
