// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import twinfeed.desktop.form.Choice;
import twinfeed.desktop.form.Page.Questions;
import twinfeed.desktop.form.Place;
import twinfeed.desktop.form.Remarks;
import twinfeed.desktop.look.Controls;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.model.survey.Symptom;

/** Plain questions, each with its answer beside it; a question that nobody asked has none. */
final class QuestionsView implements ItemView {
    private final FormContext context;
    private final Questions questions;
    private final Map<String, CCombo> answers = new LinkedHashMap<>();

    QuestionsView(Composite parent, FormContext context, Questions questions) {
        this.context = context;
        this.questions = questions;
        for (Choice question : context.offers().of(SurveyPackage.Literals.SYMPTOM__KEY, null)) {
            if (question.value() instanceof String key) {
                row(parent, key, question.text());
            }
        }
        refresh();
    }

    private void row(Composite parent, String key, String question) {
        Label label = new Label(parent, SWT.WRAP);
        label.setText(question.replace("&", "&&"));
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 80;
        label.setLayoutData(data);
        CCombo combo = Controls.choice(parent);
        combo.add(context.words().get("answer.notAsked"));
        for (FaultAnswer answer : FaultAnswer.VALUES) {
            combo.add(context.words().get("choice.FaultAnswer." + answer.getLiteral()));
        }
        combo.setData(FieldRow.FIELD, "survey.symptoms." + key);
        combo.addSelectionListener(
                SelectionListener.widgetSelectedAdapter(event -> answer(key, combo.getSelectionIndex())));
        Controls.name(combo, question);
        answers.put(key, combo);
    }

    private Survey survey() {
        return context.session().survey();
    }

    private Optional<Symptom> recorded(String key) {
        return survey().getSymptoms().stream()
                .filter(symptom -> key.equals(symptom.getKey()))
                .findFirst();
    }

    private void answer(String key, int index) {
        Optional<Symptom> recorded = recorded(key);
        if (index == 0) {
            recorded.ifPresent(context.session().edits()::remove);
            return;
        }
        FaultAnswer answer = FaultAnswer.VALUES.get(index - 1);
        if (recorded.isPresent()) {
            context.session().edits().set(recorded.get(), List.of(SurveyPackage.Literals.SYMPTOM__ANSWER), answer);
            return;
        }
        Symptom symptom = SurveyFactory.eINSTANCE.createSymptom();
        symptom.setKey(key);
        symptom.setAnswer(answer);
        context.session().edits().add(survey(), questions.path().steps(), symptom);
    }

    @Override
    public void refresh() {
        answers.forEach((key, combo) -> {
            int index = recorded(key).map(QuestionsView::index).orElse(0);
            if (combo.getSelectionIndex() != index) {
                combo.select(index);
            }
        });
    }

    private static int index(Symptom symptom) {
        return 1 + FaultAnswer.VALUES.indexOf(symptom.isSetAnswer() ? symptom.getAnswer() : FaultAnswer.YES);
    }

    @Override
    public boolean remark(Remarks remarks) {
        return false;
    }

    @Override
    public boolean commit() {
        return true;
    }

    @Override
    public boolean revert() {
        return false;
    }

    @Override
    public boolean focus(Place place) {
        return false;
    }
}
