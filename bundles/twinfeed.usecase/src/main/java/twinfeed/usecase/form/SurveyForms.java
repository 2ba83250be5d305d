// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.form;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.check.JobCheck;
import twinfeed.model.check.Problem;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Site;
import twinfeed.pdf.JobSheetPdf;
import twinfeed.usecase.ListProblem;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputFiles;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.refusal.Refusals;
import twinfeed.workbook.form.FormLanguage;
import twinfeed.workbook.form.SurveyFormReader;
import twinfeed.workbook.form.SurveyFormWorkbook;
import twinfeed.workbook.text.WorkbookException;

/** Writes surveys as workbooks to be filled in on site, and reads them back into jobs. */
public final class SurveyForms {
    private final TwinfeedService service;

    /** With the use cases. */
    public SurveyForms(TwinfeedService service) {
        this.service = service;
    }

    /**
     * Writes a form; the file appears whole or not at all.
     *
     * @param known the job in hand, or null for a blank form
     * @param locale language of the form
     * @param out the workbook to write
     * @throws InputException if it cannot be written
     */
    public void write(@Nullable OpenedJob known, Locale locale, Path out) {
        Job job = known == null ? blank() : known.job();
        FormLanguage language = language(locale, job.getSurvey().getRules(), known == null ? null : known.catalogue());
        new OutputFiles()
                .add(
                        out,
                        bytes -> SurveyFormWorkbook.write(
                                job, language, Firm.DEFAULT_ACCENT, TwinfeedService.VERSION, bytes))
                .write();
    }

    /**
     * Writes a form on paper as PDF; the file appears whole or not at all.
     *
     * @param known the job whose missing readings are asked, or null for a blank form
     * @param locale language of the form
     * @param day the day that the file names as that of its making
     * @param out the PDF to write
     * @throws InputException if it cannot be written
     */
    public void print(@Nullable OpenedJob known, Locale locale, LocalDate day, Path out) {
        PaperForm paper = new PaperForm(language(locale, null, known == null ? null : known.catalogue()));
        JobSheet sheet = known == null
                ? paper.blank(day)
                : paper.missing(known.job(), needed(known, locale), reference(known), day);
        new OutputFiles().add(out, bytes -> JobSheetPdf.writeForm(sheet, bytes)).write();
    }

    /** Paths of the readings that some check of some heater waits for. */
    private Set<String> needed(OpenedJob known, Locale locale) {
        Set<String> paths = new LinkedHashSet<>();
        service.quickAssess(known, locale).assessed().options().stream()
                .flatMap(option -> option.findings().stream())
                .forEach(finding -> paths.addAll(finding.missing()));
        return paths;
    }

    private static String reference(OpenedJob known) {
        Site site = known.job().getSurvey().getSite();
        return site == null || site.getName() == null
                ? String.valueOf(known.file().getFileName())
                : site.getName();
    }

    private static Job blank() {
        Job job = JobFile.create();
        job.setSurvey(twinfeed.model.survey.SurveyFactory.eINSTANCE.createSurvey());
        return job;
    }

    private FormLanguage language(Locale locale, @Nullable String rules, @Nullable Catalogue catalogue) {
        return new FormLanguage(locale, new SurveyWords(service.calculators(), locale, rules, catalogue));
    }

    /**
     * Reads a form into a new job. Its readings are checked as those of any job, and what is wrong names sheet and cell.
     *
     * @param form the workbook
     * @param out the job to write, where no file may be yet
     * @param catalogue name of the heater catalogue beside the job, for a form that names none; null for none
     * @param today today's date, after which no house can have been surveyed
     * @return what is odd in the job, in words, but does not stop it
     * @throws InputException if a cell cannot be used, all problems at once, or the job cannot be written; nothing is written then
     */
    public List<String> read(Path form, Path out, @Nullable String catalogue, LocalDate today) {
        if (Files.exists(out)) {
            throw new InputException(Refusals.ofFile(out, "form.exists"));
        }
        SurveyFormReader.Read read = read(form, catalogue(catalogue, out));
        Job job = read.job();
        if (job.getCatalogue() == null) {
            job.setCatalogue(catalogue);
        }
        List<InputProblem> problems = new ArrayList<>(read.problems());
        List<String> warnings = new ArrayList<>();
        Set<String> said = new HashSet<>();
        @Nullable Catalogue heaters = job.getCatalogue() == null ? null : catalogue(job.getCatalogue(), out);
        for (Problem problem : JobCheck.of(job, heaters, today)) {
            InputProblem plain = problem.in(form.toString());
            InputProblem placed = placed(plain, read);
            if (problem.isError()) {
                problems.add(placed);
            } else {
                warnings.add(placed.toString());
                said.add(plain.toString());
            }
        }
        if (problems.isEmpty()) {
            words(form, job, read, heaters).stream()
                    .filter(warning -> !said.contains(warning))
                    .forEach(warnings::add);
        }
        if (job.getCatalogue() == null) {
            problems.add(Refusals.ofFile(form, "form.catalogue"));
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        JobFile.save(job, out, FileFingerprint.NONE);
        return warnings;
    }

    private SurveyFormReader.Read read(Path form, @Nullable Catalogue catalogue) {
        InputBytes.check(form);
        try {
            return SurveyFormReader.read(form, locale -> language(locale, null, catalogue));
        } catch (WorkbookException refused) {
            throw ListProblem.of(form, refused);
        } catch (IOException unreadable) {
            throw Refusals.exception(unreadable, form, "list.unreadable");
        }
    }

    /** The catalogue that a job names, if it can be had beside it. */
    private static @Nullable Catalogue catalogue(@Nullable String name, Path out) {
        if (name == null) {
            return null;
        }
        Path file = out.toAbsolutePath().resolveSibling(name).normalize();
        return Files.exists(file) ? CatalogueFile.load(file) : null;
    }

    /** Words that only rule sets and calculators know; the answer is what is odd, at no cell. */
    private List<String> words(Path form, Job job, SurveyFormReader.Read read, @Nullable Catalogue heaters) {
        OpenedJob pattern = new OpenedJob(
                form, job, heaters == null ? CatalogueFactory.eINSTANCE.createCatalogue() : heaters, List.of());
        try {
            return service.checked(pattern, heaters == null ? withoutHeaters(job) : job).warnings().stream()
                    .map(InputProblem::toString)
                    .toList();
        } catch (InputException refused) {
            throw new InputException(refused.problems().stream()
                    .map(problem -> placed(problem, read))
                    .toList());
        }
    }

    /** Ids of heaters cannot be judged without their catalogue. */
    private static Job withoutHeaters(Job job) {
        Job copy = org.eclipse.emf.ecore.util.EcoreUtil.copy(job);
        copy.getSurvey().getCandidates().clear();
        if (copy.getSurvey().getUnit() != null) {
            copy.getSurvey().getUnit().setHeaterId(null);
        }
        return copy;
    }

    private static InputProblem placed(InputProblem problem, SurveyFormReader.Read read) {
        String cell = read.cells().get(problem.element());
        return cell == null
                ? problem
                : new InputProblem(
                        problem.file(),
                        0,
                        cell + ", " + problem.element(),
                        problem.reading(),
                        problem.wrong(),
                        problem.right());
    }
}
