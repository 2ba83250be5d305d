// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.engine.Climates;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.check.CatalogueCheck;
import twinfeed.model.check.JobCheck;
import twinfeed.model.check.Problem;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.choices.ChoicesInJob;
import twinfeed.usecase.refusal.Refusals;

/** Opens a job with its catalogue and refuses what cannot be calculated with, all problems at once. */
final class JobOpening {
    private final List<Calculator> calculators;
    private final List<InputProblem> errors = new ArrayList<>();
    private final List<InputProblem> warnings = new ArrayList<>();

    /** With the calculators that take part, whose words a survey may hold. */
    JobOpening(List<Calculator> calculators) {
        this.calculators = calculators;
    }

    /** Opens it; with today's date, days that are still to come are odd. */
    OpenedJob open(Path file, @Nullable Path catalogueFile, @Nullable LocalDate today) {
        JobFile.Read read = JobFile.read(file);
        Job job = read.job();
        Catalogue catalogue = catalogueFile == null ? JobFile.catalogue(job, file) : CatalogueFile.load(catalogueFile);
        String catalogueName = catalogueFile == null ? String.valueOf(job.getCatalogue()) : catalogueFile.toString();
        sort(CatalogueCheck.of(catalogue), catalogueName);
        sort(JobCheck.of(job, catalogue, today), file.toString());
        choices(job, file);
        if (errors.isEmpty()) {
            data(job.getSurvey(), file);
        }
        if (!errors.isEmpty()) {
            throw new InputException(errors);
        }
        photos(job.getSurvey(), file);
        return new OpenedJob(file, job, catalogue, warnings, read.fingerprint());
    }

    /**
     * Checks a job that was made from an opened one.
     *
     * @throws InputException if it cannot be calculated with, all problems at once
     */
    OpenedJob checked(OpenedJob pattern, Job job) {
        Path file = pattern.file();
        sort(JobCheck.of(job, pattern.catalogue()), file.toString());
        choices(job, file);
        if (errors.isEmpty()) {
            data(job.getSurvey(), file);
        }
        if (!errors.isEmpty()) {
            throw new InputException(errors);
        }
        return new OpenedJob(file, job, pattern.catalogue(), warnings);
    }

    /** What was decided of the quote by hand must be applicable before anything is worked out. */
    private void choices(Job job, Path file) {
        try {
            ChoicesInJob.of(job);
        } catch (IllegalArgumentException odd) {
            errors.add(new InputProblem(
                    file.toString(), 0, "quote", "", String.valueOf(odd.getMessage()), Refusals.right("choices")));
        }
    }

    /** A picture that is not there stops nothing, but is not left out in silence. */
    private void photos(Survey survey, Path file) {
        JobPhotos photos = new JobPhotos(file);
        for (Photo photo : survey.getPhotos()) {
            String name = String.valueOf(photo.getFile());
            String wrong = photos.problem(name);
            if (!wrong.isEmpty()) {
                warnings.add(new InputProblem(
                        file.toString(),
                        0,
                        "survey.photos",
                        name,
                        Refusals.text("photo.leftOut", wrong),
                        Refusals.right("photo.leftOut")));
            }
        }
    }

    private void sort(List<Problem> problems, String name) {
        for (Problem problem : problems) {
            if (problem.isError()) {
                errors.add(problem.in(name));
            } else {
                warnings.add(problem.in(name));
            }
        }
    }

    /** Ids that only the calculators' data know. */
    private void data(Survey survey, Path file) {
        new KnownWords(file.toString(), calculators, errors).check(survey);
        String rules = survey.getRules();
        if (rules != null && RuleSets.find(rules).isEmpty()) {
            errors.add(new InputProblem(
                    file.toString(),
                    0,
                    "survey.rules",
                    rules,
                    Refusals.wrong("rules"),
                    Refusals.oneOf("name", rules, RuleSets.ids())));
        }
        String climate = survey.getClimate();
        if (climate != null
                && !climate.equals(Climates.MODEL)
                && Climates.months(climate).isEmpty()) {
            List<String> known = new ArrayList<>(Climates.ids());
            known.add(Climates.MODEL);
            errors.add(new InputProblem(
                    file.toString(),
                    0,
                    "survey.climate",
                    climate,
                    Refusals.wrong("climate"),
                    Refusals.oneOf("name", climate, known)));
        }
        air(survey, file);
        winter(survey, file);
        if (Climates.MODEL.equals(climate)
                && (survey.getAnnualMeanAir() == null || survey.getMonthlyAirSpread() == null)) {
            errors.add(Refusals.of(file, "survey.climate", climate, "climate.air"));
        }
    }

    /** Air temperatures that nothing would use are a conflict: somebody meant this house's climate by them. */
    private void air(Survey survey, Path file) {
        boolean mean = survey.getAnnualMeanAir() != null;
        boolean spread = survey.getMonthlyAirSpread() != null;
        String climate = survey.getClimate();
        if (climate != null && !climate.equals(Climates.MODEL) && (mean || spread)) {
            errors.add(Refusals.of(file, "survey.climate", climate, "climate.both", Climates.MODEL));
        } else if (climate == null && mean != spread) {
            String given = mean ? "annualMeanAir" : "monthlyAirSpread";
            errors.add(Refusals.of(
                    file,
                    "survey." + given,
                    String.valueOf(mean ? survey.getAnnualMeanAir() : survey.getMonthlyAirSpread()),
                    "climate.half",
                    mean ? "monthlyAirSpread" : "annualMeanAir"));
        }
    }

    /** A winter design intake that is warmer than the warmest month is a slip or another house's. */
    private void winter(Survey survey, Path file) {
        String climate = survey.getClimate() == null ? Climates.usual(survey.getWater()) : survey.getClimate();
        if (survey.getWinterIntake() == null || survey.getAnnualMeanAir() != null) {
            return;
        }
        Climates.months(climate).ifPresent(months -> {
            double warmestC = Arrays.stream(months).max().orElse(Double.POSITIVE_INFINITY);
            if (survey.getWinterIntake().si() > warmestC) {
                warnings.add(Refusals.of(
                        file, "survey.winterIntake", survey.getWinterIntake().toString(), "climate.winter", warmestC));
            }
        });
    }
}
