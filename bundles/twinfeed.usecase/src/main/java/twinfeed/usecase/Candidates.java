// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.refusal.Refusals;

/** The heaters that a job asks about: the unit that is there, then the candidates in the survey's order. */
public final class Candidates {
    private final OpenedJob opened;

    /** Of this job. */
    public Candidates(OpenedJob opened) {
        this.opened = opened;
    }

    /** All of them. */
    public List<Candidate> all() {
        List<Candidate> result = new ArrayList<>();
        presentHeater().ifPresent(heater -> result.add(new Candidate(heater, true)));
        List<String> asked = opened.job().getSurvey().getCandidates();
        for (Heater heater : asked.isEmpty() ? opened.catalogue().getHeaters() : heaters(asked)) {
            result.add(new Candidate(heater, false));
        }
        return result;
    }

    /**
     * All of them, and the heaters of the catalogue that are asked for beside them.
     *
     * @param asked ids, {@link twinfeed.pricing.QuoteRequest#PRESENT} for the unit that is there
     */
    public List<Candidate> with(List<String> asked) {
        List<Candidate> result = new ArrayList<>(all());
        for (String id : asked) {
            boolean known = id.equals(twinfeed.pricing.QuoteRequest.PRESENT)
                    || result.stream()
                            .anyMatch(each ->
                                    !each.present() && id.equals(each.heater().getId()));
            if (!known) {
                result.add(new Candidate(heater(id, "--heater"), false));
            }
        }
        return result;
    }

    /**
     * The unit that is there, and one other heater of the catalogue.
     *
     * @throws InputException if the catalogue has no such heater; the nearest is named
     */
    public List<Candidate> only(String id) {
        List<Candidate> result = new ArrayList<>();
        presentHeater().ifPresent(heater -> result.add(new Candidate(heater, true)));
        result.add(new Candidate(heater(id, "--heater"), false));
        return result;
    }

    /** The unit that is there alone; none where none is there. */
    public List<Candidate> present() {
        return all().stream().filter(Candidate::present).toList();
    }

    /**
     * A copy of the survey in which the unit that is there has its data, with which calculators compare; the survey may only name it.
     *
     * @param candidates heaters of the job, the unit that is there perhaps among them
     */
    public static Survey withPresentHeater(Survey survey, List<Candidate> candidates) {
        Survey copy = EcoreUtil.copy(survey);
        candidates.stream().filter(Candidate::present).findFirst().ifPresent(candidate -> copy.getUnit()
                .setHeater(EcoreUtil.copy(candidate.heater())));
        return copy;
    }

    private List<Heater> heaters(List<String> ids) {
        return ids.stream()
                .distinct()
                .map(id -> heater(id, "survey.candidates"))
                .toList();
    }

    private Optional<Heater> presentHeater() {
        @Nullable PresentUnit unit = opened.job().getSurvey().getUnit();
        if (unit == null) {
            return Optional.empty();
        }
        if (unit.getHeater() != null) {
            return Optional.of(unit.getHeater());
        }
        return Optional.ofNullable(unit.getHeaterId()).map(id -> heater(id, "survey.unit.heaterId"));
    }

    private Heater heater(String id, String element) {
        Catalogue catalogue = opened.catalogue();
        return catalogue.getHeaters().stream()
                .filter(heater -> id.equals(heater.getId()))
                .findFirst()
                .orElseThrow(() -> new InputException(new InputProblem(
                        opened.file().toString(),
                        0,
                        element,
                        id,
                        Refusals.wrong("heater"),
                        Refusals.oneOf(
                                "name",
                                id,
                                catalogue.getHeaters().stream()
                                        .map(Heater::getId)
                                        .toList()))));
    }
}
