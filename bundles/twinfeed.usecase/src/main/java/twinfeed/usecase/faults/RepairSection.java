// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.faults;

import java.util.ArrayList;
import java.util.List;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.document.DocumentTexts;
import twinfeed.document.JobSheet.Column;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Section;
import twinfeed.document.JobSheet.Table;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.PrintFormat;

/** Repair or replace on the job sheet, with its figures. */
final class RepairSection {
    private final RepairAdvice advice;
    private final DocumentTexts words;
    private final PrintFormat paper;

    RepairSection(RepairAdvice advice, DocumentTexts words) {
        this.advice = advice;
        this.words = words;
        this.paper = new PrintFormat(words, advice.currency());
    }

    List<Section> write() {
        List<String> sentences = new ArrayList<>();
        sentences.add(advice.sentence());
        sentences.add(words.get("job.repair.note", "years", String.valueOf(advice.years())));
        Integer age = advice.breakEvenAge();
        if (age != null) {
            sentences.add(words.get("job.repair.age", "age", age.toString()));
        }
        if (advice.breakEvenPrice() != null) {
            sentences.add(words.get("job.repair.even", "price", paper.amount(advice.breakEvenPrice())));
        }
        if (!advice.missing().isEmpty()) {
            sentences.add(words.get("job.repair.missing", "codes", String.join(", ", advice.missing())));
        }
        return List.of(new Section(words.get("job.repair"), Tone.PLAIN, sentences, table()));
    }

    private Table table() {
        List<List<String>> rows = new ArrayList<>();
        advice.lines().forEach(line -> rows.add(List.of(line.title(), paper.amount(line.amount()), "", "")));
        rows.add(List.of(
                words.get("job.repair.sum"),
                paper.amount(advice.repair()),
                paper.amount(advice.later()),
                paper.amount(advice.total())));
        for (RepairAdvice.Replacement each : advice.replacements()) {
            rows.add(List.of(
                    each.enquiry() ? words.get("job.repair.enquiry", "title", each.title()) : each.title(),
                    paper.amount(each.price()),
                    paper.amount(each.later()),
                    paper.amount(each.total())));
        }
        return new Table(
                List.of(
                        new Column(words.get("job.repair.what"), Kind.TEXT, 52),
                        new Column(words.get("job.repair.price"), Kind.FIGURE, 16),
                        new Column(words.get("job.repair.later"), Kind.FIGURE, 16),
                        new Column(words.get("job.repair.total"), Kind.FIGURE, 16)),
                rows);
    }
}
