// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.eclipse.e4.ui.workbench.modeling.EPartService.PartState;
import org.eclipse.swt.widgets.Shell;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.DemoFolder;
import twinfeed.desktop.PlatformFolders;
import twinfeed.desktop.Settings;
import twinfeed.desktop.batch.BatchPart;
import twinfeed.desktop.entry.CataloguePart;
import twinfeed.desktop.entry.PriceBookPart;
import twinfeed.desktop.help.HelpPart;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobServices.Prices;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.JobTemplates;
import twinfeed.desktop.session.Jobs;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.session.NewJob;
import twinfeed.desktop.session.NewJobEntries;
import twinfeed.desktop.session.OpenJob;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.ProblemText;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.guide.FileKind;

/** The open jobs: each is a part of the window. */
public final class JobParts implements Jobs {
    /** Id of the part descriptor of a job. */
    public static final String DESCRIPTOR = "twinfeed.desktop.job";

    /** Id of the part that explains checks. */
    public static final String HELP = "twinfeed.desktop.help";

    /** Id of the part that lists issued quotes. */
    public static final String ISSUED = "twinfeed.desktop.issued";

    /** Id of the part for a quick question. */
    public static final String QUICK = "twinfeed.desktop.quick";

    /** Id of the part for a list of dwellings. */
    public static final String BATCH = "twinfeed.desktop.batch";

    /** Id of the part in which price books are edited. */
    public static final String PRICES = "twinfeed.desktop.prices";

    /** Id of the page of settings. */
    public static final String SETTINGS = "twinfeed.desktop.settings";

    /** Id of the part in which heater catalogues are edited. */
    public static final String HEATERS = "twinfeed.desktop.heaters";

    private final EPartService service;
    private final JobServices services;
    private final Settings settings;
    private final DemoFolder demo;
    private final Words words;
    private final Shell shell;
    private final Threads threads;
    private final LastAction last;
    private final Set<Path> reading = new HashSet<>();

    /** Made once, by {@link Startup}. */
    @Inject
    public JobParts(
            EPartService service,
            JobServices services,
            Settings settings,
            DemoFolder demo,
            Words words,
            Threads threads,
            LastAction last,
            @Named(IServiceConstants.ACTIVE_SHELL) Shell shell) {
        this.service = service;
        this.services = services;
        this.settings = settings;
        this.demo = demo;
        this.words = words;
        this.shell = shell;
        this.threads = threads;
        this.last = last;
    }

    /** Puts the remembered price book in force, and the demonstration's for surveys of the demonstration. */
    void begin() {
        settings.prices().ifPresent(book -> usePrices(book, "prices.rememberedRefused", () -> {}));
        demo.book()
                .ifPresent(book -> work(
                        () -> {
                            Prices read = new Prices(book, services.service().book(book));
                            threads.display().execute(() -> services.demonstrationPrices(read));
                        },
                        "prices.demonstrationRefused",
                        book));
    }

    private void usePrices(Path book, String refusal, Runnable then) {
        work(
                () -> {
                    Prices read = new Prices(book, services.service().book(book));
                    threads.display().execute(() -> {
                        services.usePrices(read);
                        then.run();
                    });
                },
                refusal,
                book);
    }

    /** Reads or writes out of the way; what cannot be done is told. */
    private void work(Runnable work, String refusal, Path file) {
        threads.quick().execute(() -> {
            try {
                work.run();
            } catch (RuntimeException refused) {
                threads.display().execute(() -> complain(refusal, file, refused));
            }
        });
    }

    /** From now on quotes use this price book, also after the next start. */
    public void choosePrices(Path book) {
        usePrices(book, "prices.refused", () -> settings.prices(book));
    }

    @Override
    public void open(Path file) {
        open(file, "status.done.opened");
    }

    /**
     * Opens a job.
     *
     * @param done key of the sentence that says so
     */
    private void open(Path file, String done) {
        Path whole = file.toAbsolutePath().normalize();
        Optional<MPart> open = parts().stream()
                .filter(part -> part.getObject() instanceof JobPart job
                        && job.session().file().toAbsolutePath().normalize().equals(whole))
                .findFirst();
        if (open.isPresent()) {
            service.activate(open.get(), true);
        } else if (reading.add(whole)) {
            read(whole, done);
        }
    }

    /** Reads out of the way: the window answers while a file comes from a slow disk. */
    private void read(Path file, String done) {
        threads.quick().execute(() -> {
            try {
                FileFingerprint mark = FileFingerprint.of(file);
                OpenJob job = new OpenJob(services.service().open(file, null), mark, false);
                threads.display().execute(() -> {
                    reading.remove(file);
                    show(job);
                    opened(done, file);
                    remember(file);
                });
            } catch (RuntimeException refused) {
                threads.display().execute(() -> {
                    reading.remove(file);
                    complain("open.refused", file, refused);
                    if (!Files.exists(file)) {
                        settings.forget(file);
                    }
                });
            }
        });
    }

    private void show(OpenJob job) {
        MPart part = service.createPart(DESCRIPTOR);
        part.getTransientData().put(OpenJob.class.getName(), job);
        service.showPart(part, PartState.ACTIVATE);
    }

    /** The page has come to the front by now; what it has to say of itself comes first. */
    private void opened(String done, Path file) {
        if (last.text().isEmpty()) {
            last.say(words.format(done, java.util.Map.of("file", file)));
        }
    }

    @Override
    public void remember(Path file) {
        settings.remember(file);
    }

    @Override
    public void readAgain(JobSession job) {
        hide(job);
        open(job.file());
    }

    @Override
    public void takeOldChanges(JobSession job) {
        Path file = job.file();
        work(
                () -> {
                    OpenedJob opened = services.service().open(file, null);
                    OpenedJob changed =
                            new OpenedJob(opened.file(), job.backup().job(), opened.catalogue(), opened.warnings());
                    FileFingerprint mark = FileFingerprint.of(file);
                    threads.display().execute(() -> {
                        hide(job);
                        show(new OpenJob(changed, mark, true));
                    });
                },
                "open.refused",
                job.backup().path());
    }

    @Override
    public void showIssued() {
        service.showPart(ISSUED, PartState.ACTIVATE);
    }

    @Override
    public void explain(@Nullable String check, @Nullable JobSession job) {
        MPart part = service.showPart(HELP, PartState.ACTIVATE);
        if (part != null && part.getObject() instanceof HelpPart help) {
            help.show(check, job == null ? null : job.result(), job == null ? null : job.chosen());
        }
    }

    /** Shows what each kind of file may hold. */
    public void explainFiles() {
        MPart part = service.showPart(HELP, PartState.ACTIVATE);
        if (part != null && part.getObject() instanceof HelpPart help) {
            help.show(FileKind.JOB);
        }
    }

    /** Opens a list of dwellings on its page. */
    void openBatch(Path list) {
        if (service.showPart(BATCH, PartState.ACTIVATE).getObject() instanceof BatchPart batch) {
            batch.set("batch.list", list.toString());
        }
    }

    /** Opens a price book in its editor. */
    void openPrices(Path book) {
        if (service.showPart(PRICES, PartState.ACTIVATE).getObject() instanceof PriceBookPart editor) {
            editor.open(book);
        }
    }

    /** Opens a catalogue in its editor. */
    void openHeaters(Path catalogue) {
        if (service.showPart(HEATERS, PartState.ACTIVATE).getObject() instanceof CataloguePart editor) {
            editor.open(catalogue);
        }
    }

    /** Adds pictures to the job that is looked at; the answer is whether there is one. */
    boolean takePhotos(List<Path> pictures) {
        @Nullable MPart active = service.getActivePart();
        List<MPart> jobs = parts();
        @Nullable
        MPart shown = active != null && active.getObject() instanceof JobPart
                ? active
                : jobs.size() == 1 ? jobs.get(0) : null;
        if (shown == null || !(shown.getObject() instanceof JobPart job)) {
            return false;
        }
        service.activate(shown, true);
        job.takePhotos(pictures);
        return true;
    }

    /** Shows the page for a list of dwellings. */
    public void showBatch() {
        service.showPart(BATCH, PartState.ACTIVATE);
    }

    /** Shows the editor of price books. */
    public void showPrices() {
        service.showPart(PRICES, PartState.ACTIVATE);
    }

    /** Shows the page of settings. */
    public void showSettings() {
        service.showPart(SETTINGS, PartState.ACTIVATE);
    }

    /** Shows the editor of heater catalogues. */
    public void showHeaters() {
        service.showPart(HEATERS, PartState.ACTIVATE);
    }

    /** Shows the page for a quick question. */
    public void showQuick() {
        service.showPart(QUICK, PartState.ACTIVATE);
    }

    private void hide(JobSession job) {
        parts().stream()
                .filter(part -> part.getObject() instanceof JobPart each && each.session() == job)
                .findFirst()
                .ifPresent(part -> {
                    part.setDirty(false);
                    service.hidePart(part, true);
                });
    }

    /** Opens the demonstration job; a copy of the reader's own is made by saving under another name. */
    public void openDemo() {
        demo.job()
                .ifPresentOrElse(
                        this::open, () -> Dialogs.say(shell, words, words.get("application"), words.get("demo.none")));
    }

    /**
     * Makes an empty job, and opens it.
     *
     * @param file where it is to be
     * @param catalogue the heaters on offer
     */
    public void create(Path file, Path catalogue) {
        create(file, catalogue, SurveyFactory.eINSTANCE::createSurvey);
    }

    @Override
    public void create(Path file, Path catalogue, Supplier<Survey> survey) {
        String rules = settings.rules();
        work(
                () -> {
                    try {
                        Survey begun = survey.get();
                        if (begun.getRules() == null && !rules.isEmpty()) {
                            begun.setRules(rules);
                        }
                        NewJob.write(file, catalogue, begun);
                    } catch (IllegalArgumentException otherDrive) {
                        throw new IllegalArgumentException(words.get("save.otherDrive"), otherDrive);
                    }
                    threads.display().execute(() -> {
                        settings.catalogue(catalogue);
                        open(file, "status.done.created");
                    });
                },
                "new.refused",
                file);
    }

    /** The houses with which a job may begin. */
    public JobTemplates templates() {
        return new JobTemplates(PlatformFolders.here().data().resolve("templates"), words);
    }

    /** Where a new job might be kept: in the folder for jobs, or beside the one that was worked on last. */
    public Path proposal() {
        return NewJobEntries.proposal(jobFolder(), services.today());
    }

    /** The folder in which jobs are looked for: the one that was chosen for them, or that of the job that was worked on last. */
    public Path jobFolder() {
        return settings.jobs()
                .filter(Files::isDirectory)
                .or(() -> settings.recent().stream()
                        .map(Path::getParent)
                        .filter(each -> each != null && Files.isWritable(each))
                        .findFirst())
                .orElse(Path.of(System.getProperty("user.home", ".")));
    }

    /** The catalogue that was chosen last, else the demonstration's. */
    public Optional<Path> lastCatalogue() {
        return settings.catalogue().or(demo::catalogue);
    }

    /** All parts that show a job. */
    public List<MPart> parts() {
        Collection<MPart> all = service.getParts();
        return all.stream().filter(part -> part.getObject() instanceof JobPart).toList();
    }

    private void complain(String key, Path file, RuntimeException refused) {
        Dialogs.complain(
                shell,
                words,
                words.format(key, java.util.Map.of("file", file, "reason", ProblemText.reason(refused, words))));
    }
}
