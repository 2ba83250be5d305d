// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.io.NearestName;
import twinfeed.model.survey.PresentUnit;

/** The heaters that a job asks about: the unit that is there, then the candidates in the survey's order. */
final class Candidates {
    private final OpenedJob opened;

    Candidates(OpenedJob opened) {
        this.opened = opened;
    }

    /** All of them. */
    List<Candidate> all() {
        List<Candidate> result = new ArrayList<>();
        present().ifPresent(heater -> result.add(new Candidate(heater, true)));
        List<String> wished = opened.job().getSurvey().getCandidates();
        for (Heater heater : wished.isEmpty() ? opened.catalogue().getHeaters() : heaters(wished)) {
            result.add(new Candidate(heater, false));
        }
        return result;
    }

    /**
     * All of them, and the heaters of the catalogue that are asked for beside them.
     *
     * @param asked ids, {@link twinfeed.pricing.QuoteRequest#PRESENT} for the unit that is there
     */
    List<Candidate> with(List<String> asked) {
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

    /** The unit that is there, and one other heater of the catalogue. */
    List<Candidate> only(String id) {
        List<Candidate> result = new ArrayList<>();
        present().ifPresent(heater -> result.add(new Candidate(heater, true)));
        result.add(new Candidate(heater(id, "--heater"), false));
        return result;
    }

    private List<Heater> heaters(List<String> ids) {
        return ids.stream()
                .distinct()
                .map(id -> heater(id, "survey.candidates"))
                .toList();
    }

    private Optional<Heater> present() {
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
                        "the catalogue has no such heater",
                        known(id, catalogue))));
    }

    private static String known(String id, Catalogue catalogue) {
        List<String> ids = catalogue.getHeaters().stream().map(Heater::getId).toList();
        return NearestName.advice(id, ids, "name one of " + String.join(", ", ids));
    }
}
