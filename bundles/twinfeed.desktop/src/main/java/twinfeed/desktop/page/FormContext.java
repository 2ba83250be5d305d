// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.util.Map;
import java.util.TreeMap;
import org.eclipse.emf.ecore.EObject;
import twinfeed.desktop.form.Choices;
import twinfeed.desktop.form.FieldDocumentation;
import twinfeed.desktop.form.FieldForm;
import twinfeed.desktop.form.FieldFormat;
import twinfeed.desktop.form.FieldUnit;
import twinfeed.desktop.form.InvalidFieldException;
import twinfeed.desktop.form.Page.Field;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.model.job.Job;

/**
 * What all fields of one job share.
 *
 * @param session the job
 * @param words texts
 * @param writing how readings are written
 * @param offers answers on offer
 * @param documentation what the model says about readings
 * @param unread what was typed and cannot be used yet, by the reading's path in the model: it survives a change of page
 */
record FormContext(
        JobSession session,
        Words words,
        FieldFormat format,
        Choices choices,
        FieldDocumentation documentation,
        Map<String, String> unread) {

    static FormContext of(JobSession session, Words words) {
        return new FormContext(
                session,
                words,
                new FieldFormat(words),
                new Choices(session, words),
                FieldDocumentation.ofModel(words.locale()),
                new TreeMap<>());
    }

    /** Something is being typed: what is judged while it is typed need not wait until the cursor leaves the field. */
    void typing(EObject root, Field field, String text) {
        if (root instanceof Job && field.form() != FieldForm.LINES) {
            try {
                session.completion()
                        .typing(
                                field.path().attribute(),
                                format.read(field.path().attribute(), text));
            } catch (InvalidFieldException unfinished) {
                session.completion().unreadable(field.path().attribute());
            }
        }
    }

    /** What a reading is called, with the mnemonic's mark. */
    String label(ReadingPath path) {
        return words.get("label." + path.key());
    }

    /** What a reading is called, plain. */
    String name(ReadingPath path) {
        return label(path).replace("&", "");
    }

    /** What a reading is, and what holds without it. */
    String help(ReadingPath path) {
        return documentation.help(path.last());
    }

    /** What stands in an empty field: its unit, and what holds where the reading is not given. */
    String hint(ReadingPath path) {
        return java.util.stream.Stream.of(FieldUnit.of(path.attribute()), defaultValue(path))
                .filter(each -> !each.isEmpty())
                .collect(java.util.stream.Collectors.joining("; "));
    }

    /** What holds where the reading is not given; empty if nothing does. */
    String defaultValue(ReadingPath path) {
        String own = words.find("default." + path.key());
        String text = own == null ? documentation.defaultValue(path.last()).orElse("") : own;
        return text.isEmpty() ? "" : words.format("field.default", Map.of("default", text));
    }
}
