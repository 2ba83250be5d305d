// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.fault;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.session.FaultSearch;
import twinfeed.desktop.text.Words;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Symptom;

/** Yes, no, not known: one press answers, and pressing the same again takes the answer back. */
final class AnswerButtons {
    private final FaultSearch search;
    private final String key;
    private final Complaints complaints;
    private final Map<FaultAnswer, Button> buttons = new LinkedHashMap<>();

    /**
     * The answers to one question.
     *
     * @param id what tells these buttons from others for the same question
     */
    AnswerButtons(
            Composite parent, String id, FaultSearch search, String key, String question, Words words, Complaints to) {
        this.search = search;
        this.key = key;
        this.complaints = to;
        for (FaultAnswer answer : FaultAnswer.VALUES) {
            // The platform's groups would let no answer be taken back.
            Button button = new Button(parent, SWT.RADIO | SWT.NO_RADIO_GROUP);
            String text = words.get("choice.FaultAnswer." + answer.getLiteral());
            button.setText(text);
            button.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
            button.setData("twinfeed.field", id + "." + key + "." + answer.getLiteral());
            Controls.name(button, question + " " + text);
            button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> press(answer)));
            buttons.put(answer, button);
        }
        refresh();
    }

    private Optional<FaultAnswer> given() {
        return search.recorded(key).map(AnswerButtons::answer);
    }

    /** A symptom that was noted without an answer is one that was seen. */
    private static FaultAnswer answer(Symptom symptom) {
        return symptom.isSetAnswer() ? symptom.getAnswer() : FaultAnswer.YES;
    }

    private void press(FaultAnswer answer) {
        complaints.attempt(() -> {
            if (given().filter(answer::equals).isPresent()) {
                search.clear(key);
            } else {
                search.answer(key, answer.getLiteral());
            }
        });
        refresh();
    }

    void refresh() {
        FaultAnswer given = given().orElse(null);
        buttons.forEach((answer, button) -> {
            if (!button.isDisposed()) {
                button.setSelection(answer == given);
            }
        });
    }

    void enable(boolean possible) {
        buttons.values().forEach(button -> button.setEnabled(possible));
    }
}
