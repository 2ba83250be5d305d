// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.chart.ChartsView;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Compact;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Links;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.picture.ChartSvg;
import twinfeed.desktop.picture.HouseSvg;
import twinfeed.desktop.picture.PictureSaving;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.FindingGroup;
import twinfeed.desktop.view.LiveField;
import twinfeed.desktop.view.OptionTable;
import twinfeed.document.Figures;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.AssessedJob;

/** What follows for the chosen option: its findings by calculator, and the working of the one that is chosen. */
final class FindingsPane {
    private static final int AFTER = 2;

    /** In a lower pane, counted in lines of text, there is no room for drawing and checks together. */
    private static final int LINES = 36;

    private static final int[] WEIGHTS = {77, 23};
    private static final int[] WEIGHTS_IF_LOW = {82, 18};

    private final JobSession session;
    private final Words words;
    private final Figures figures;
    private final Composite pane;
    private final CLabel heading;
    private final Label state;
    private final DrawingPane feeds;
    private final FindingFilterChoice filter;
    private final Tree tree;
    private final Columns columns;
    private final WorkingPane working;
    private final ChartsView charts;
    private List<List<String>> checks = List.of();
    private final Set<String> folded = new HashSet<>();
    private String chosen = "";

    FindingsPane(
            SashForm parent,
            JobSession session,
            Threads threads,
            Words words,
            Consumer<FieldLocation> open,
            Consumer<String> explain,
            Consumer<List<String>> warn,
            PictureSaving pictures) {
        this.session = session;
        this.words = words;
        this.figures = new Figures(words.locale());
        this.pane = Controls.pane(parent);
        Composite head = Controls.columns(pane, 4);
        head.setLayoutData(Controls.across(pane));
        this.heading = Controls.title(head, words.get("pane.findings"));
        ((GridData) heading.getLayoutData()).horizontalSpan = 1;
        this.filter = new FindingFilterChoice(head, words, this::show);
        Link save = Links.of(head);
        save.setText("<a>" + words.get("picture.drawing.short") + "</a>");
        save.setData("twinfeed.field", "picture.drawing");
        save.setToolTipText(words.get("picture.drawing"));
        Controls.name(save, words.get("picture.drawing"));
        save.addListener(SWT.Selection, event -> pictures.ask(feeds().drawn(), drawing()));
        this.state = Controls.wrapped(pane);
        this.feeds = new DrawingPane(
                pane,
                words,
                HouseDrawing.unassessed(session.survey(), words.locale()),
                piece -> LiveField.of(piece, session.survey()).ifPresent(open),
                this::draw);
        TabFolder tabs = new TabFolder(pane, SWT.TOP);
        Controls.name(tabs, words.get("findings.tabs"));
        tabs.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        tabs.setData("twinfeed.field", "findings.tabs");
        SashForm halves = new SashForm(tabs, SWT.VERTICAL);
        tab(tabs, "findings.checks", halves);
        Composite list = Controls.columns(halves, 2);
        this.tree = tree(list);
        this.columns = Columns.of(tree, 0, 170, 3).counted(1);
        this.working = new WorkingPane(halves, words, () -> explain.accept(chosen), () -> warn.accept(List.of(chosen)));
        RowMenu.over(tree)
                .item(words.get("working.explain"), () -> row() != null, () -> explain.accept(chosen))
                .item(
                        words.get("completion.notice"),
                        () -> WorkingPane.unsafe(row()),
                        () -> warn.accept(List.of(chosen)))
                .copy(words);
        halves.setWeights(WEIGHTS);
        this.charts =
                new ChartsView(tabs, words, (drawn, chart) -> pictures.ask(drawn, ChartSvg.of(chart, words.locale())));
        tab(tabs, "findings.charts", charts.control());
        CustomerPageView page = new CustomerPageView(tabs, session, threads, words);
        tab(tabs, "page.customer", page.control());
        Compact.of(pane, LINES, low -> place(pane, tabs, halves, low));
        pane.addListener(SWT.Resize, event -> room(pane));
        tabs.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            charts.seen(tabs.getSelectionIndex() == 1);
            page.seen(tabs.getSelectionIndex() == 2);
        }));
        Runnable results = session.resulted().listen(this::show);
        Runnable choices = session.chose().listen(this::show);
        Runnable edits = session.computing().listen(this::showState);
        pane.addListener(SWT.Dispose, event -> {
            results.run();
            choices.run();
            edits.run();
        });
        show();
    }

    /** Where there is little room the drawing has a tab of its own, so that the checks are seen. */
    private void place(Composite pane, TabFolder tabs, SashForm halves, boolean low) {
        if (low == (feeds.control().getParent() == pane)) {
            if (low) {
                feeds.control().setParent(tabs);
                tab(tabs, "findings.drawing", feeds.control());
            } else {
                tabs.getItem(tabs.getItemCount() - 1).dispose();
                feeds.control().setParent(pane);
                feeds.control().moveAbove(tabs);
                feeds.control().setVisible(true);
            }
            feeds.standing(low, pane);
        }
        halves.setWeights(low ? WEIGHTS_IF_LOW : WEIGHTS);
        pane.layout(true, true);
    }

    private void room(Composite pane) {
        if (feeds.control().getParent() == pane && feeds.room(pane)) {
            pane.layout();
        }
    }

    private DrawingPane feeds() {
        return feeds;
    }

    /** The drawing as it is shown, as SVG. */
    String drawing() {
        String title = heading.getText().replace("&&", "&");
        String state = words.get(feeds.withWork() ? "drawing.state.withWork" : "drawing.state.asItIs");
        return HouseSvg.of(feeds.drawing(), chosenOption().isEmpty() ? title : title + ", " + state, words.locale());
    }

    /** The control in which it is drawn. */
    Control drawn() {
        return feeds.drawn();
    }

    private void tab(TabFolder tabs, String key, Control control) {
        TabItem item = new TabItem(tabs, SWT.NONE);
        item.setText(words.get(key));
        item.setControl(control);
    }

    /** Key of the check that is chosen; null if none is. */
    @Nullable
    String chosen() {
        return chosen.isEmpty() ? null : chosen;
    }

    private Tree tree(Composite pane) {
        Tree made = new Tree(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        made.setHeaderVisible(true);
        made.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        made.setData("twinfeed.field", "findings");
        Controls.name(made, words.get("pane.findings"));
        column(made, "finding.check", SWT.LEFT);
        column(made, "finding.answer", SWT.LEFT);
        column(made, "finding.afterWork", SWT.LEFT);
        column(made, "finding.value", SWT.RIGHT);
        column(made, "finding.limit", SWT.RIGHT);
        column(made, "finding.margin", SWT.RIGHT);
        made.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choose()));
        made.addListener(SWT.Collapse, event -> folded.add(((TreeItem) event.item).getText()));
        made.addListener(SWT.Expand, event -> folded.remove(((TreeItem) event.item).getText()));
        return made;
    }

    private void column(Tree made, String key, int style) {
        new TreeColumn(made, style).setText(words.get(key));
    }

    /** The finding in the chosen row; null in the row of a group. */
    private @Nullable Finding row() {
        TreeItem[] selection = tree.getSelection();
        return selection.length > 0 && selection[0].getData() instanceof Finding finding ? finding : null;
    }

    private void choose() {
        @Nullable Finding finding = row();
        if (finding != null) {
            chosen = finding.getKey();
            working.show(finding);
        }
    }

    private void showState() {
        JobResult result = session.result();
        String trouble = result == null || result.judged() != null ? "" : result.trouble();
        state.setForeground(ThemeColours.of(trouble.isEmpty() ? Tone.QUIET : Tone.BAD, state));
        String text = trouble.isEmpty()
                ? result == null ? words.get("findings.computing") : ""
                : words.get("findings.trouble") + "\n" + trouble;
        if (Controls.show(state, text)) {
            state.getParent().layout();
        }
        heading.setText(chosenOption()
                .map(each -> headingOf(each, result).replace("&", "&&"))
                .orElse(words.get("pane.findings")));
    }

    private void show() {
        showState();
        Optional<OptionAssessment> option = chosenOption();
        String binding = option.map(OptionAssessment::getBinding).orElse(null);
        tree.setRedraw(false);
        OptionAssessment shown = option.orElse(null);
        filter.count(shown);
        fill(
                FindingGroup.of(
                        shown, filter.chosen(), session.services().service().calculators(), words),
                shown,
                binding);
        reselect(binding);
        columns.fit();
        tree.setRedraw(true);
        draw();
        charts.show(option.orElse(null));
    }

    /** As long as the same checks are answered, only texts change: nothing scrolls away under the eyes of a person. */
    private void fill(List<FindingGroup> groups, @Nullable OptionAssessment option, @Nullable String binding) {
        List<List<String>> asked = groups.stream().map(FindingGroup::checks).toList();
        if (!asked.equals(checks)) {
            checks = asked;
            tree.removeAll();
            for (FindingGroup group : groups) {
                TreeItem item = new TreeItem(tree, SWT.NONE);
                group.findings().forEach(finding -> new TreeItem(item, SWT.NONE));
            }
        }
        OptionAssessment planned = planned(option);
        for (int i = 0; i < groups.size(); i++) {
            group(tree.getItem(i), groups.get(i), planned, binding);
        }
    }

    private Optional<OptionAssessment> chosenOption() {
        return OptionTable.chosen(session.result(), session.chosen());
    }

    private void draw() {
        OptionAssessment option = chosenOption().orElse(null);
        JobResult result = session.result();
        OptionAssessment planned = planned(option);
        feeds.offer(result != null && result.judged() != null && HouseDrawing.hasWork(planned));
        feeds.show(drawing(option, planned));
        room(pane);
    }

    /** The option with the work on it; until that is known, with the work before the change. */
    private @Nullable OptionAssessment planned(@Nullable OptionAssessment option) {
        return OptionTable.same(session.whole(), option);
    }

    private HouseDrawing drawing(@Nullable OptionAssessment option, @Nullable OptionAssessment planned) {
        if (option == null) {
            return HouseDrawing.unassessed(session.survey(), words.locale());
        }
        JobResult whole = session.whole();
        AssessedJob judged = whole == null ? null : whole.judged();
        if (!feeds.withWork() || judged == null || planned == null) {
            return HouseDrawing.asItIs(session.survey(), option, words.locale());
        }
        Survey changed = judged.withWork(planned);
        return HouseDrawing.withWork(judged.opened().job().getSurvey(), changed, planned, words.locale());
    }

    private String headingOf(OptionAssessment option, @Nullable JobResult result) {
        OptionTable rows = new OptionTable(words);
        String verdict = result == null
                ? ""
                : session.current()
                        ? rows.verdict(option, result).toString()
                        : rows.open().toString();
        return words.format("findings.of", Map.of("option", rows.title(option), "verdict", verdict));
    }

    private void group(
            TreeItem item, FindingGroup group, @Nullable OptionAssessment planned, @Nullable String binding) {
        boolean filled = !item.getText().isEmpty();
        item.setText(0, group.title());
        item.setText(1, group.tally(words));
        item.setForeground(1, ThemeColours.of(group.worst(words).tone(), tree));
        item.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        for (int i = 0; i < group.findings().size(); i++) {
            Finding finding = group.findings().get(i);
            finding(item.getItem(i), finding, finding.getKey().equals(binding));
            Finding after = planned == null ? null : FindingGroup.afterWork(planned, finding);
            Mark mark = after == null ? null : Mark.of(after, words.locale());
            item.getItem(i).setText(AFTER, mark == null ? "" : mark.toString());
            if (mark != null) {
                Tone tone = session.planned() ? mark.tone() : Tone.QUIET;
                item.getItem(i).setForeground(AFTER, ThemeColours.of(tone, tree));
            }
        }
        if (!filled) {
            item.setExpanded(!folded.contains(group.title()));
        }
    }

    private void finding(TreeItem item, Finding finding, boolean binding) {
        Mark mark = Mark.of(finding, words.locale());
        item.setData(finding);
        item.setText(
                0, binding ? words.format("finding.binding", Map.of("title", finding.getTitle())) : finding.getTitle());
        item.setText(1, mark.toString());
        item.setText(3, figures.withUnit(finding.getValue(), finding.getUnit()));
        item.setText(4, figures.withUnit(finding.getLimit(), finding.getUnit()));
        item.setText(5, figures.margin(finding.getMargin(), finding.getLimit(), finding.getUnit()));
        item.setForeground(1, ThemeColours.of(mark.tone(), tree));
    }

    private void reselect(@Nullable String binding) {
        TreeItem found = find(chosen);
        if (found == null && binding != null) {
            found = find(binding);
        }
        if (found == null) {
            working.show(null);
            return;
        }
        tree.select(found);
        choose();
    }

    private @Nullable TreeItem find(String key) {
        for (TreeItem group : tree.getItems()) {
            for (TreeItem item : group.getItems()) {
                if (item.getData() instanceof Finding finding
                        && finding.getKey().equals(key)) {
                    return item;
                }
            }
        }
        return null;
    }

    boolean setFocus() {
        return tree.setFocus();
    }
}
