// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Series;
import twinfeed.model.assessment.Step;

/** An assessment as JSON. */
final class AssessmentJson {
    private final JsonGenerator json;
    private final boolean workings;

    AssessmentJson(JsonGenerator json, boolean workings) {
        this.json = json;
        this.workings = workings;
    }

    void write(Assessment record) throws IOException {
        JsonFields.text(json, "program", record.getProgram());
        JsonFields.text(json, "rules", record.getRules());
        JsonFields.text(json, "rulesNote", record.getRulesNote());
        json.writeArrayFieldStart("options");
        for (OptionAssessment option : record.getOptions()) {
            option(option);
        }
        json.writeEndArray();
        JsonFields.texts(
                json,
                "assumptions",
                record.getAssumptions().stream().map(each -> each.getText()).toList());
    }

    private void option(OptionAssessment option) throws IOException {
        json.writeStartObject();
        json.writeStringField("heater", option.getHeaterId());
        json.writeStringField("title", option.getTitle());
        json.writeBooleanField("present", Boolean.TRUE.equals(option.getPresent()));
        JsonFields.number(json, "powerKw", option.getPowerKw());
        json.writeStringField("verdict", option.getVerdict().getLiteral());
        JsonFields.text(json, "binding", option.getBinding());
        json.writeArrayFieldStart("findings");
        for (Finding finding : option.getFindings()) {
            finding(finding);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("remedies");
        for (Remedy remedy : option.getRemedies()) {
            remedy(remedy);
        }
        json.writeEndArray();
        JsonFields.texts(json, "unmended", option.getUnmended());
        json.writeEndObject();
    }

    private void finding(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("key", finding.getKey());
        json.writeStringField("calculator", finding.getCalculator());
        json.writeStringField("title", finding.getTitle());
        json.writeStringField("text", finding.getText());
        json.writeStringField("class", finding.getKind().getLiteral());
        json.writeStringField("outcome", finding.getOutcome().getLiteral());
        JsonFields.number(json, "value", finding.getValue());
        JsonFields.number(json, "limit", finding.getLimit());
        JsonFields.number(json, "margin", finding.getMargin());
        JsonFields.text(json, "unit", finding.getUnit());
        JsonFields.text(json, "condition", finding.getCondition());
        JsonFields.number(json, "chance", finding.getChance());
        JsonFields.number(json, "low", finding.getLow());
        JsonFields.number(json, "high", finding.getHigh());
        JsonFields.text(json, "remeasure", finding.getRemeasure());
        JsonFields.texts(json, "missing", finding.getMissing());
        JsonFields.text(json, "source", finding.getSource());
        if (workings) {
            steps(finding.getSteps());
            series(finding.getSeries());
        }
        json.writeEndObject();
    }

    private void steps(List<Step> steps) throws IOException {
        json.writeArrayFieldStart("working");
        for (Step step : steps) {
            json.writeStartObject();
            JsonFields.step(json, step);
            JsonFields.text(json, "origin", step.getOrigin());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void series(List<Series> series) throws IOException {
        json.writeArrayFieldStart("series");
        for (Series each : series) {
            json.writeStartObject();
            json.writeStringField("key", each.getKey());
            json.writeStringField("title", each.getTitle());
            json.writeStringField("x", each.getXTitle() + " / " + each.getXUnit());
            json.writeStringField("y", each.getYTitle() + " / " + each.getYUnit());
            JsonFields.texts(json, "labels", each.getLabels());
            numbers("xs", each.getX());
            numbers("ys", each.getY());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void numbers(String name, List<Double> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (double value : values) {
            json.writeNumber(value);
        }
        json.writeEndArray();
    }

    private void remedy(Remedy remedy) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", remedy.getId());
        json.writeStringField("kind", remedy.getKey());
        json.writeStringField("title", remedy.getTitle());
        json.writeBooleanField("enquiry", Boolean.TRUE.equals(remedy.getEnquiry()));
        JsonFields.texts(json, "mends", remedy.getMends());
        json.writeArrayFieldStart("items");
        for (var item : remedy.getItems()) {
            json.writeStartObject();
            json.writeStringField("code", item.getCode());
            json.writeStringField("quantity", item.getQuantity().toPlainString());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
