// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Links;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;
import twinfeed.document.Figures;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.Step;
import twinfeed.model.check.FailedSafety;

/** The finding in a sentence, its governing condition and source, and its working line by line. */
final class WorkingPane {
    /** Least width of the title, in heights of a line. */
    private static final int TITLE = 8;

    private final Words words;
    private final Figures figures;
    private final Composite pane;
    private final Composite head;
    private final CLabel heading;
    private final Link explain;
    private final Link warn;
    private final Label sentence;
    private final Label basis;
    private final Table steps;
    private final Columns columns;
    private @Nullable Finding current;
    private boolean shown;

    WorkingPane(Composite parent, Words words, Runnable explain, Runnable warn) {
        this.words = words;
        this.figures = new Figures(words.locale());
        this.pane = Controls.pane(parent);
        Composite head = Controls.columns(pane, 3);
        head.setLayoutData(Controls.across(pane));
        this.heading = Controls.title(head, words.get("pane.working"));
        ((GridData) heading.getLayoutData()).horizontalSpan = 1;
        this.warn = link(head, "completion.notice", warn);
        this.explain = link(head, "working.explain", explain);
        this.head = head;
        head.addListener(SWT.Resize, event -> roomForTitle());
        this.sentence = Controls.wrapped(pane);
        this.basis = Controls.wrapped(pane);
        basis.setForeground(ThemeColours.of(Tone.QUIET, basis));
        this.steps = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        steps.setHeaderVisible(true);
        steps.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        steps.setData("twinfeed.field", "working");
        Controls.name(steps, words.get("pane.working"));
        column("step.symbol", SWT.LEFT);
        column("step.meaning", SWT.LEFT);
        column("step.value", SWT.RIGHT);
        column("step.expression", SWT.LEFT);
        column("step.source", SWT.LEFT);
        this.columns = Columns.of(steps, 1, 120, 4);
        RowMenu.over(steps).copy(words);
        show(null);
    }

    /** The title is not pushed out by what F1 and the menu over the checks do too. */
    private void roomForTitle() {
        int links = explain.computeSize(SWT.DEFAULT, SWT.DEFAULT).x
                + (warn.getVisible() ? warn.computeSize(SWT.DEFAULT, SWT.DEFAULT).x : 0);
        boolean room = head.getSize().x - links > TITLE * Controls.lineHeight(head);
        GridData data = (GridData) explain.getLayoutData();
        if (data.exclude == room) {
            data.exclude = !room;
            explain.setVisible(room && heading.getText().length() > 0);
            head.layout();
        }
    }

    private Link link(Composite head, String key, Runnable action) {
        Link link = Links.of(head);
        link.setText("<a>" + words.get(key).replace("&", "") + "</a>");
        Controls.name(link, words.get(key));
        link.setLayoutData(new GridData());
        link.setData("twinfeed.field", "working." + key.replaceFirst(".*\\.", ""));
        link.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return link;
    }

    private void column(String key, int style) {
        new TableColumn(steps, style).setText(words.get(key));
    }

    /** Shows a finding; null shows nothing. What is shown already stays as it is, scrolled to where it is. */
    void show(@Nullable Finding finding) {
        if (shown && EcoreUtil.equals(finding, current)) {
            return;
        }
        shown = true;
        current = finding;
        steps.removeAll();
        heading.setText(
                finding == null
                        ? words.get("pane.working")
                        : words.format("working.of", Map.of("title", finding.getTitle()))
                                .replace("&", "&&"));
        Controls.show(sentence, finding == null ? words.get("working.none") : text(finding.getText()));
        explain.setVisible(finding != null && !((GridData) explain.getLayoutData()).exclude);
        warn.setVisible(unsafe(finding));
        roomForTitle();
        Controls.show(basis, finding == null ? "" : basis(finding));
        if (finding != null) {
            finding.getSteps().forEach(this::step);
        }
        columns.fit();
        pane.layout();
    }

    /** Whether somebody has to be warned of what was found. */
    static boolean unsafe(@Nullable Finding finding) {
        return finding != null && FailedSafety.is(finding);
    }

    private String basis(Finding finding) {
        List<String> parts = new ArrayList<>();
        add(parts, "working.condition", finding.getCondition());
        add(parts, "working.source", finding.getSource());
        if (finding.getChance() != null) {
            parts.add(words.format("working.chance", Map.of("percent", Math.round(finding.getChance() * 100))));
        }
        add(parts, "working.missing", finding.getMissing().isEmpty() ? null : String.join(", ", finding.getMissing()));
        return String.join("\n", parts);
    }

    private void add(List<String> parts, String key, @Nullable String text) {
        if (text != null && !text.isEmpty()) {
            parts.add(words.format(key, Map.of("text", text)));
        }
    }

    private void step(Step step) {
        TableItem item = new TableItem(steps, SWT.NONE);
        item.setText(0, text(step.getSymbol()));
        item.setText(1, text(step.getMeaning()));
        item.setText(2, figures.withUnit(step.getValue(), step.getUnit()));
        item.setText(3, text(step.getExpression()));
        item.setText(4, text(step.getSource()));
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }
}
