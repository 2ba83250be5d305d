// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import jakarta.inject.Inject;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.e4.core.commands.ECommandService;
import org.eclipse.e4.core.commands.EHandlerService;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import twinfeed.desktop.Settings;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Links;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.Jobs;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/** What is seen before a job is open: the demonstration, new and existing jobs, recent ones. */
public final class StartPart {
    private static final int WIDEST = 640;

    private final Words words;
    private final Settings settings;
    private final ECommandService commands;
    private final EHandlerService handlers;
    private final ScrolledComposite scroll;
    private final Composite content;
    private final Composite recent;
    private final org.eclipse.e4.core.contexts.IEclipseContext context;

    /** Made by the platform. */
    @Inject
    public StartPart(
            Composite parent,
            Words words,
            Settings settings,
            ECommandService commands,
            EHandlerService handlers,
            org.eclipse.e4.core.contexts.IEclipseContext context) {
        this.words = words;
        this.settings = settings;
        this.commands = commands;
        this.handlers = handlers;
        this.context = context;
        parent.setLayout(new org.eclipse.swt.layout.FillLayout());
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        content = new Composite(scroll, SWT.NONE);
        scroll.setContent(content);
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 40;
        layout.marginHeight = 32;
        layout.verticalSpacing = 10;
        content.setLayout(layout);
        title();
        button("start.quick", "start.quick.help", "twinfeed.desktop.command.quick");
        button("start.demo", "start.demo.help", "twinfeed.desktop.command.demo");
        button("start.new", "start.new.help", "twinfeed.desktop.command.new");
        button("start.open", "start.open.help", "twinfeed.desktop.command.open");
        button("start.office", "start.office.help", "twinfeed.desktop.command.issued");
        GridData gap =
                (GridData) Controls.heading(content, words.get("start.recent")).getLayoutData();
        gap.verticalIndent = 16;
        recent = Controls.columns(content, 1);
        recent.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        scroll.addListener(SWT.Resize, event -> fit());
        showRecent();
    }

    private void title() {
        Label title = new Label(content, SWT.NONE);
        title.setText(words.get("start.title"));
        title.setFont(JFaceResources.getHeaderFont());
        Label lead = Controls.wrapped(content);
        lead.setText(words.get("start.lead"));
        GridData data = new GridData(SWT.LEFT, SWT.TOP, false, false);
        data.widthHint = WIDEST;
        lead.setLayoutData(data);
    }

    private void button(String key, String help, String command) {
        Button button = new Button(content, SWT.PUSH);
        button.setText(words.get(key));
        button.setData("twinfeed.field", key);
        GridData data = new GridData(SWT.LEFT, SWT.TOP, false, false);
        data.widthHint = Math.max(260, button.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
        data.verticalIndent = 8;
        button.setLayoutData(data);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(
                event -> handlers.executeHandler(commands.createCommand(command, null))));
        Label label = Controls.wrapped(content);
        label.setText(words.get(help));
        label.setForeground(ThemeColours.of(Tone.QUIET, label));
        Controls.describe(button, words.get(key), () -> words.get(help));
    }

    private void showRecent() {
        if (recent.isDisposed()) {
            return;
        }
        for (Control child : recent.getChildren()) {
            child.dispose();
        }
        List<Path> files = settings.recent();
        for (Path file : files) {
            Link link = Links.of(recent);
            link.setText("<a>" + file.getFileName() + "</a>   " + (file.getParent() == null ? "" : file.getParent()));
            link.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> open(file)));
            Controls.name(link, file.toString());
            RowMenu.over(link)
                    .item(words.get("menu.open"), () -> true, () -> open(file))
                    .item(words.get("menu.forget"), () -> true, () -> {
                        settings.forget(file);
                        showRecent();
                    });
        }
        if (files.isEmpty()) {
            Label none = Controls.wrapped(recent);
            none.setText(words.get("start.recent.none"));
            none.setForeground(ThemeColours.of(Tone.QUIET, none));
        }
        fit();
    }

    private void open(Path file) {
        Jobs jobs = context.get(Jobs.class);
        if (jobs != null) {
            jobs.open(file);
        }
    }

    private void fit() {
        int width = scroll.getClientArea().width;
        if (width > 0) {
            content.layout(true, true);
            scroll.setMinSize(content.computeSize(Math.max(width, 320), SWT.DEFAULT));
        }
    }

    @Focus
    void focus() {
        showRecent();
        content.setFocus();
    }
}
