// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.help;

import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.guide.FileGuide;
import twinfeed.usecase.guide.FileKind;

/** The checks of all calculators and the kinds of files, and the page of the one that is chosen. */
public final class HelpPart {
    private static final int MARGIN = 12;

    private final HelpPages pages;
    private final FileGuide guide;
    private final Tree tree;
    private final StyledText text;
    private @Nullable JobResult result;
    private @Nullable String option;

    /** Made by the platform. */
    @Inject
    public HelpPart(Composite parent, JobServices services, Words words) {
        this.pages = new HelpPages(services.service().calculators(), words);
        this.guide = new FileGuide(services.service(), words.locale());
        parent.setLayout(new FillLayout());
        SashForm halves = new SashForm(parent, SWT.HORIZONTAL);
        Composite left = Controls.pane(halves);
        Controls.heading(left, words.get("part.help"));
        this.tree = tree(left, words);
        this.text = new StyledText(halves, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setLineSpacing(3);
        text.setData("twinfeed.field", "help.text");
        text.setText(words.get("help.choose"));
        Controls.name(text, words.get("part.help"));
        halves.setWeights(28, 72);
    }

    private Tree tree(Composite left, Words words) {
        Tree made = new Tree(left, SWT.BORDER | SWT.SINGLE);
        made.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        made.setData("twinfeed.field", "help.checks");
        Controls.name(made, words.get("part.help"));
        for (CalculatorDescriptor statement : pages.statements()) {
            TreeItem group = new TreeItem(made, SWT.NONE);
            group.setText(statement.texts().get(words.locale(), "title"));
            group.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
            for (Check check : statement.checks()) {
                TreeItem item = new TreeItem(group, SWT.NONE);
                item.setText(pages.title(statement, check));
                item.setData(check.key());
            }
            group.setExpanded(true);
        }
        files(made, words);
        RowMenu.over(made).copy(words);
        made.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (event.item.getData() instanceof String key) {
                write(key);
            } else if (event.item.getData() instanceof FileKind kind) {
                write(FilePages.of(guide.page(kind)));
            }
        }));
        return made;
    }

    /** The kinds of files that the program reads, behind the checks. */
    private static void files(Tree tree, Words words) {
        TreeItem group = new TreeItem(tree, SWT.NONE);
        group.setText(words.get("help.files"));
        group.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        for (FileKind kind : FileKind.values()) {
            TreeItem item = new TreeItem(group, SWT.NONE);
            item.setText(words.get("help.file." + kind.key()));
            item.setData(kind);
        }
        group.setExpanded(true);
    }

    /** Shows the page of a kind of files; the others stand beside it in the tree. */
    public void show(FileKind kind) {
        for (TreeItem group : tree.getItems()) {
            for (TreeItem item : group.getItems()) {
                if (item.getData() == kind) {
                    tree.setSelection(item);
                    tree.showItem(item);
                    write(FilePages.of(guide.page(kind)));
                }
            }
        }
    }

    /**
     * Shows the page of a check.
     *
     * @param key its key; null leaves what is shown
     * @param job a job's answers, from which examples come; null for none
     * @param chosen key of the option that is looked at; null for the first
     */
    public void show(@Nullable String key, @Nullable JobResult job, @Nullable String chosen) {
        result = job;
        option = chosen;
        for (TreeItem group : tree.getItems()) {
            for (TreeItem item : group.getItems()) {
                if (item.getData().equals(key)) {
                    tree.setSelection(item);
                    tree.showItem(item);
                }
            }
        }
        if (key != null) {
            write(key);
        }
    }

    private void write(String key) {
        pages.of(key, result, option).ifPresent(this::write);
    }

    private void write(HelpPage page) {
        StringBuilder all = new StringBuilder(page.title()).append("\n\n");
        List<StyleRange> styles = new ArrayList<>();
        StyleRange title = new StyleRange(0, page.title().length(), null, null, SWT.BOLD);
        title.font = JFaceResources.getHeaderFont();
        styles.add(title);
        for (HelpPage.Section section : page.sections()) {
            styles.add(new StyleRange(
                    all.length(), section.heading().length(), ThemeColours.of(Tone.WATER, text), null, SWT.BOLD));
            all.append(section.heading()).append('\n');
            section.lines().forEach(line -> all.append(line).append('\n'));
            all.append('\n');
        }
        text.setText(all.toString());
        text.setStyleRanges(styles.toArray(StyleRange[]::new));
        text.setTopIndex(0);
    }

    @Focus
    void focus() {
        tree.setFocus();
    }
}
