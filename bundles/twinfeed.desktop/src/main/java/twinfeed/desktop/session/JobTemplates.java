// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;

/**
 * The houses with which a job may begin: an empty one, those that come with the program, and the firm's own, each a job file in one folder.
 * A template holds no reading of a test or a customer: what decides is measured in every house.
 */
public final class JobTemplates {
    private static final List<String> SHIPPED = List.of("terrace", "flat", "tank");

    private final Path folder;
    private final Words words;

    /**
     * With a firm's own templates.
     *
     * @param folder where they are; need not exist
     */
    public JobTemplates(Path folder, Words words) {
        this.folder = folder;
        this.words = words;
    }

    /** All of them, the empty one first. A folder that cannot be read has none. */
    public List<JobTemplate> all() {
        List<JobTemplate> all = new ArrayList<>();
        all.add(new JobTemplate(
                words.get("template.blank"), words.get("template.blank.help"), SurveyFactory.eINSTANCE::createSurvey));
        for (String key : SHIPPED) {
            all.add(new JobTemplate(
                    words.get("template." + key),
                    words.get("template." + key + ".help"),
                    () -> noted(shipped(key), words.get("template." + key))));
        }
        own().forEach(file -> all.add(own(file)));
        return List.copyOf(all);
    }

    private List<Path> own() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(JobFile.ENDING))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    private JobTemplate own(Path file) {
        String title = JobFile.name(file);
        return new JobTemplate(
                title,
                words.format("template.own.help", Map.of("file", file)),
                () -> noted(survey(JobFile.load(file)), title));
    }

    private static Survey shipped(String key) {
        String name = "/twinfeed/desktop/template/" + key + JobFile.ENDING;
        try (InputStream stream = JobTemplates.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks " + name);
            }
            return survey(JobFile.form().read(name, stream.readAllBytes()));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Survey survey(Job job) {
        Survey survey = job.getSurvey();
        return survey == null ? SurveyFactory.eINSTANCE.createSurvey() : EcoreUtil.copy(survey);
    }

    /** Colleagues must see what was not measured in this house. */
    private Survey noted(Survey survey, String title) {
        survey.setNotes(words.format("template.note", Map.of("template", title)));
        return survey;
    }

    /**
     * Keeps the house of a survey as a template: its pipes, cables and loads, without customer, site, day, unit, faults, photographs and
     * readings of tests.
     *
     * @param name what it is called; letters, digits, spaces, dots, hyphens and underscores
     * @return its file
     * @throws IllegalArgumentException if it cannot be called so
     * @throws twinfeed.model.io.InputException if it cannot be written
     */
    public Path keep(Survey survey, String name) {
        if (!nameable(name)) {
            throw new IllegalArgumentException(words.get("template.name.wrong"));
        }
        Job job = JobFile.create();
        job.setSurvey(withoutReadings(survey));
        Path file = folder.resolve(name.strip() + JobFile.ENDING);
        try {
            AtomicFile.makeFolder(folder);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        JobFile.save(job, file);
        return file;
    }

    /** Whether a template can be called so. */
    public static boolean nameable(String name) {
        return name.strip().matches("[\\p{L}\\d][\\p{L}\\d ._-]{0,80}");
    }

    private static Survey withoutReadings(Survey survey) {
        Survey kept = EcoreUtil.copy(survey);
        kept.setTakenBy(null);
        kept.setTakenOn(null);
        kept.setNotes(null);
        kept.setCustomer(null);
        kept.setUnit(null);
        kept.setFaultFinding(null);
        kept.getSymptoms().clear();
        kept.getPhotos().clear();
        if (kept.getSite() != null) {
            String kind = kept.getSite().getKind();
            kept.setSite(SurveyFactory.eINSTANCE.createSite());
            kept.getSite().setKind(kind);
        }
        WaterFeed water = kept.getWater();
        if (water != null) {
            water.setTest(null);
            water.setMainTest(null);
            water.setIntakeReading(null);
            water.setStopValveOpen(null);
            water.setCompanyPressureConfirmed(null);
            water.getDrawOffs().forEach(tap -> tap.setFlow(null));
        }
        if (kept.getElectricity() != null) {
            ElectricalReadings.remove(kept.getElectricity());
        }
        return kept;
    }
}
