// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import org.eclipse.e4.core.contexts.ContextInjectionFactory;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.core.services.translation.TranslationService;
import org.eclipse.e4.ui.di.UIEventTopic;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.MUIElement;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.e4.ui.workbench.modeling.ISaveHandler;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.osgi.service.event.Event;
import twinfeed.desktop.DemoFolder;
import twinfeed.desktop.PlatformFolders;
import twinfeed.desktop.Settings;
import twinfeed.desktop.WindowLanguage;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.Jobs;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.firm.FirmFolder;

/** Lays out what all parts and handlers share, and opens what is to be seen first. */
public final class Startup {
    /** Thorough work begins so much later than the quick answer is there, for that has still to be drawn; who types on has it given up. */
    private static final long PAUSE_MS = 20;

    private static final String STACK = "twinfeed.desktop.stack";

    private final IEclipseContext context;

    /** Made by the platform. */
    @Inject
    public Startup(IEclipseContext context) {
        this.context = context;
    }

    /** Before the window is there. */
    @PostConstruct
    void prepare(
            TwinfeedService service,
            MApplication application,
            @Optional @Named(TranslationService.LOCALE) Locale chosen) {
        Settings settings = Settings.in(PlatformFolders.here());
        Locale locale = WindowLanguage.of(settings.language(), chosen == null ? Locale.getDefault() : chosen);
        // Menus and titles of the platform follow the same language as everything else.
        context.set(TranslationService.LOCALE, locale);
        Locale.setDefault(locale);
        context.set(Words.class, new Words(locale));
        context.set(Settings.class, settings);
        Bounds.of(settings, Display.getCurrent())
                .apply(application.getChildren().get(0));
        context.set(DemoFolder.class, DemoFolder.find());
        context.set(LastAction.class, new LastAction());
        JobServices services = new JobServices(service, Clock.systemDefaultZone(), locale);
        services.papers(WindowLanguage.ofPapers(settings.papers(), locale));
        FirmFolder firm = new FirmFolder(PlatformFolders.here().config().resolve("firm"));
        services.useFirm(firm);
        context.set(FirmFolder.class, firm);
        context.set(JobServices.class, services);
    }

    /** The window is there. */
    @Inject
    @Optional
    void started(
            @UIEventTopic(UIEvents.UILifeCycle.APP_STARTUP_COMPLETE) Event event,
            MApplication application,
            Display display,
            Words words,
            @Optional IApplicationContext start) {
        MWindow window = application.getChildren().get(0);
        IEclipseContext inWindow = window.getContext();
        context.set(
                Threads.class,
                new Threads(
                        new BackgroundWork(words.get("background.quick"), 0),
                        new BackgroundWork(words.get("background.thorough"), PAUSE_MS),
                        new DisplayWork(display)));
        JobParts parts = ContextInjectionFactory.make(JobParts.class, inWindow);
        context.set(JobParts.class, parts);
        context.set(Jobs.class, parts);
        inWindow.set(ISaveHandler.class, ContextInjectionFactory.make(SaveQuestions.class, inWindow));
        if (window.getWidget() instanceof Shell shell) {
            WindowIcons.apply(shell);
            new WindowRequests(shell, parts::open).listen();
            new FileDrop(shell, parts, words).listen();
            shell.addListener(SWT.Dispose, closed -> Bounds.keep(context.get(Settings.class), window));
        }
        bare(inWindow.get(EModelService.class), application);
        parts.begin();
        arguments(start).jobs().forEach(parts::open);
    }

    /** There is one stack of parts: keys that make it smaller or larger than the window would do nothing, and have no name to be read out. */
    private static void bare(EModelService model, MApplication application) {
        MUIElement stack = model.find(STACK, application);
        if (stack != null && stack.getWidget() instanceof CTabFolder folder) {
            folder.setMinimizeVisible(false);
            folder.setMaximizeVisible(false);
        }
    }

    private static Arguments arguments(@org.jspecify.annotations.Nullable IApplicationContext start) {
        Object given = start == null ? null : start.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        return new Arguments(given instanceof String[] texts ? List.of(texts) : List.of());
    }
}
