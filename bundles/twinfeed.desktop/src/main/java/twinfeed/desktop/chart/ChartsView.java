// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.chart;

import java.util.List;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Links;
import twinfeed.desktop.look.Scroll;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.OptionAssessment;

/** The curves of an option one under the other, and all its margins. Drawn anew only if they are others, and while it is seen. */
public final class ChartsView {
    /** How many charts stand before the margins. */
    private static final int FIRST = 2;

    private final Words words;
    private final BiConsumer<Control, Chart> save;
    private final Scroll scroll;
    private List<Chart> charts = List.of();
    private List<MarginRow> margins = List.of();
    private @Nullable OptionAssessment option;
    private boolean seen;

    /**
     * Nothing to be seen yet.
     *
     * @param save saves a chart that is drawn in a control
     */
    public ChartsView(Composite parent, Words words, BiConsumer<Control, Chart> save) {
        this.words = words;
        this.save = save;
        this.scroll = new Scroll(parent);
        draw();
    }

    /** The whole. */
    public Composite control() {
        return scroll.control();
    }

    /** Shows another option, or the same with other figures; null shows none. */
    public void show(@Nullable OptionAssessment next) {
        option = next;
        if (seen) {
            update();
        }
    }

    /** Comes to be seen, or goes. */
    public void seen(boolean now) {
        seen = now;
        if (seen) {
            update();
            scroll.fit();
        }
    }

    private void update() {
        List<Chart> nextCharts = Chart.of(option);
        List<MarginRow> nextMargins = MarginRow.of(option, words);
        if (!nextCharts.equals(charts) || !nextMargins.equals(margins)) {
            charts = nextCharts;
            margins = nextMargins;
            draw();
        }
    }

    private void draw() {
        Composite content = scroll.content();
        content.setRedraw(false);
        for (Control child : content.getChildren()) {
            child.dispose();
        }
        charts.stream().limit(FIRST).forEach(this::add);
        if (!margins.isEmpty()) {
            ((GridData) Controls.heading(content, words.get("chart.margins")).getLayoutData()).verticalIndent = 8;
            quiet(content, words.get("chart.margins.help"));
            new MarginCanvas(content, margins, words);
        }
        charts.stream().skip(FIRST).forEach(this::add);
        if (charts.isEmpty() && margins.isEmpty()) {
            quiet(content, words.get("chart.none"));
        }
        content.setRedraw(true);
        scroll.fit();
    }

    private void add(Chart chart) {
        Control drawn = new ChartCanvas(scroll.content(), chart, words.locale()).control();
        Link link = Links.of(scroll.content());
        link.setText("<a>" + words.get("picture.chart") + "</a>");
        link.setData("twinfeed.field", "picture.chart");
        Controls.name(link, words.get("picture.chart") + " " + chart.title());
        link.addListener(SWT.Selection, event -> save.accept(drawn, chart));
    }

    private static void quiet(Composite content, String text) {
        Label label = Controls.wrapped(content);
        label.setText(text);
        label.setForeground(ThemeColours.of(Tone.QUIET, label));
    }
}
