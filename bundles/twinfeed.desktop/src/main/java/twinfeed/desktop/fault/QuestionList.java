// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.session.FaultSearch;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.visit.FaultQuestion;

/** Plain questions that are answered in the same place, one under the other. */
final class QuestionList {
    private final List<AnswerButtons> answers = new ArrayList<>();

    QuestionList(
            Composite parent, List<FaultQuestion> questions, FaultSearch search, Words words, Complaints complaints) {
        Composite body = Controls.columns(parent, 4);
        body.setLayoutData(Controls.across(parent));
        ((GridLayout) body.getLayout()).verticalSpacing = 3;
        for (FaultQuestion question : questions) {
            Label label = new Label(body, SWT.WRAP);
            label.setText(question.text().replace("&", "&&"));
            GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
            data.widthHint = 80;
            label.setLayoutData(data);
            label.setToolTipText(words.format("faults.minutes", Map.of("minutes", question.minutes())));
            answers.add(new AnswerButtons(body, "answer", search, question.key(), question.text(), words, complaints));
        }
    }

    void refresh() {
        answers.forEach(AnswerButtons::refresh);
    }

    void enable(boolean possible) {
        answers.forEach(each -> each.enable(possible));
    }
}
