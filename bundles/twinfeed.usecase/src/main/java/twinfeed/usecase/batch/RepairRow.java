// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.check.DangerSigns;
import twinfeed.model.survey.Symptom;

/** What is said of a dwelling where something is complained of: the likely cause, and repair beside a new unit. */
final class RepairRow {
    private final Locale locale;

    RepairRow(Locale locale) {
        this.locale = locale;
    }

    private String text(String key) {
        return DwellingSheets.TEXTS.get(locale, key);
    }

    /** One row where something is complained of, none else. */
    List<List<@Nullable Object>> rows(Dwelling dwelling) {
        List<Symptom> symptoms = complaints(dwelling);
        if (symptoms.isEmpty()) {
            return List.of();
        }
        FaultSheet faults = dwelling.faults();
        RepairAdvice repair = faults == null ? null : faults.repair();
        List<@Nullable Object> row = new ArrayList<>();
        row.add(dwelling.row());
        row.add(dwelling.name());
        row.add(symptoms.stream().map(symptom -> question(symptom, faults)).collect(Collectors.joining("; ")));
        row.add(faults == null ? "" : faults.summary());
        row.add(advice(dwelling));
        row.add(repair == null ? null : repair.repair());
        row.add(
                repair == null || repair.replacements().isEmpty()
                        ? null
                        : repair.replacements().get(0).price());
        row.add(repair == null ? "" : repair.sentence());
        return List.of(row);
    }

    private static List<Symptom> complaints(Dwelling dwelling) {
        return dwelling.judged().opened().job().getSurvey().getSymptoms().stream()
                .filter(DangerSigns::reported)
                .toList();
    }

    /** How many things are complained of. */
    static int count(Dwelling dwelling) {
        return complaints(dwelling).size();
    }

    private static String question(Symptom symptom, @Nullable FaultSheet faults) {
        String key = String.valueOf(symptom.getKey());
        return faults == null
                ? key
                : faults.answers().stream()
                        .filter(answer -> answer.observation().equals(key))
                        .map(FaultSheet.Answer::question)
                        .findFirst()
                        .orElse(key);
    }

    /** In a few words what to do about the complaint; empty if there is none. */
    String advice(Dwelling dwelling) {
        FaultSheet faults = dwelling.faults();
        if (complaints(dwelling).isEmpty()) {
            return "";
        }
        if (faults == null) {
            return text("repair.noUnit");
        }
        if (faults.conclusion().equals("supply")) {
            return text("repair.supply");
        }
        RepairAdvice repair = faults.repair();
        if (repair == null || faults.causes().isEmpty()) {
            return text("repair.find");
        }
        boolean worthIt = repair.replacements().isEmpty()
                || repair.total().compareTo(repair.replacements().get(0).total()) <= 0;
        return DwellingSheets.TEXTS.format(
                locale,
                worthIt ? "repair.yes" : "repair.no",
                Map.of("cause", faults.causes().get(0).title()));
    }
}
