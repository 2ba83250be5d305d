// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.quick;

import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.e4.core.commands.ECommandService;
import org.eclipse.e4.core.commands.EHandlerService;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import twinfeed.calculator.engine.SourceText;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.calculator.rules.RuleTitles;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.quick.QuickReadings.Field;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.model.survey.Survey;
import twinfeed.units.UnitException;

/** The page for a quick question: fields above, answers below at once, and a key that makes it a job. */
public final class QuickPart {
    private static final String MAKE_JOB = "twinfeed.desktop.command.quickJob";
    private static final String START = "breaker-b";
    private static final String WINTER = "5 \u00B0C";
    private static final Set<Field> STRONGEST_ONLY = Set.of(Field.RATING, Field.SIZE);
    private static final int FIELD_WIDTH = 320;

    private final Words words;
    private final QuickQuestion question;
    private final Composite pane;
    private final Button strongest;
    private final Map<Field, Label> labels = new EnumMap<>(Field.class);
    private final Map<Field, Text> texts = new EnumMap<>(Field.class);
    private final List<String> devices;
    private final List<String> methods;
    private final CCombo device;
    private final CCombo method;
    private final Table answers;
    private final Columns columns;
    private final Label trouble;

    /** Made by the platform. */
    @Inject
    public QuickPart(
            Composite parent, JobServices services, ECommandService commands, EHandlerService handlers, Words words) {
        this.words = words;
        this.question = new QuickQuestion(services.service(), words);
        RuleSet rules = RuleSets.standard();
        RuleTitles titles = new RuleTitles(rules, words.locale());
        this.devices = rules.devices().keys();
        this.methods = new ArrayList<>(rules.methods());
        parent.setLayout(new org.eclipse.swt.layout.FillLayout());
        this.pane = Controls.pane(parent);
        Controls.heading(pane, words.get("quick.title"));
        Controls.text(
                pane,
                words.format(
                        "quick.lead",
                        Map.of("rules", SourceText.in(words.locale()).of(rules.title()))),
                Tone.QUIET);
        this.strongest = way("quick.strongest");
        strongest.setSelection(true);
        way("quick.needed");
        Composite form = Controls.columns(pane, 2);
        this.device = choice(
                form, "quick.field.device", devices.stream().map(titles::device).toList());
        device.select(Math.max(0, devices.indexOf(START)));
        field(form, Field.RATING);
        field(form, Field.POWER);
        field(form, Field.SIZE);
        this.method = choice(
                form,
                "quick.field.method",
                methods.stream()
                        .map(key -> key + " \u2013 " + titles.method(key))
                        .toList());
        field(form, Field.LENGTH);
        field(form, Field.SUPPLY);
        field(form, Field.LOOP);
        field(form, Field.INTAKE).setText(WINTER);
        this.answers = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        answers.setHeaderVisible(true);
        answers.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        answers.setData("twinfeed.field", "quick.answers");
        Controls.name(answers, words.get("quick.answers"));
        new TableColumn(answers, SWT.LEFT).setText(words.get("quick.answer"));
        new TableColumn(answers, SWT.LEFT).setText(words.get("quick.value"));
        this.columns = Columns.of(answers, 1, 200, 2);
        RowMenu.over(answers).copy(words);
        this.trouble = Controls.wrapped(pane);
        trouble.setData("twinfeed.field", "quick.trouble");
        Controls.text(pane, words.get("quick.ends"), Tone.QUIET);
        Button make = new Button(pane, SWT.PUSH);
        make.setText(words.get("quick.job"));
        make.setData("twinfeed.field", "quick.job");
        make.addSelectionListener(SelectionListener.widgetSelectedAdapter(
                event -> handlers.executeHandler(commands.createCommand(MAKE_JOB, null))));
        turn();
    }

    private Button way(String key) {
        Button button = new Button(pane, SWT.RADIO);
        button.setText(words.get(key));
        button.setData("twinfeed.field", key);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> turn()));
        return button;
    }

    private CCombo choice(Composite form, String key, List<String> items) {
        Label label = new Label(form, SWT.NONE);
        label.setText(words.get(key));
        CCombo combo = Controls.choice(form);
        combo.setItems(items.toArray(String[]::new));
        // The longest answer is seen whole; the other fields become as wide.
        GridData wide = width();
        wide.widthHint = Math.max(FIELD_WIDTH, combo.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
        combo.setLayoutData(wide);
        combo.setData("twinfeed.field", key);
        Controls.name(combo, words.get(key));
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> answer()));
        return combo;
    }

    private Text field(Composite form, Field field) {
        String key = "quick.field." + field.key();
        Label label = new Label(form, SWT.NONE);
        label.setText(words.get(key));
        label.setLayoutData(new GridData());
        Text text = new Text(form, SWT.BORDER);
        text.setLayoutData(width());
        text.setMessage(field.kind().displayUnit());
        text.setData("twinfeed.field", key);
        Controls.name(text, words.get(key));
        text.addListener(SWT.Modify, event -> answer());
        text.addListener(SWT.FocusOut, event -> showUnit(field));
        labels.put(field, label);
        texts.put(field, text);
        return text;
    }

    private static GridData width() {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, false, false);
        data.widthHint = FIELD_WIDTH;
        return data;
    }

    /** A bare number was taken in the unit of its field; it is shown so. */
    private void showUnit(Field field) {
        Text text = texts.get(field);
        String whole = readings().text(field);
        if (text != null && !text.getText().equals(whole)) {
            text.setText(whole);
        }
    }

    /** The other question asks for other readings. */
    private void turn() {
        boolean circuit = strongest.getSelection();
        texts.forEach((field, text) -> {
            boolean seen = field == Field.POWER ? !circuit : circuit || !STRONGEST_ONLY.contains(field);
            show(text, seen);
            Label label = labels.get(field);
            if (label != null) {
                show(label, seen);
            }
        });
        pane.layout(true, true);
        answer();
    }

    private static void show(Control control, boolean seen) {
        control.setVisible(seen);
        ((GridData) control.getLayoutData()).exclude = !seen;
    }

    private QuickReadings readings() {
        QuickReadings readings = new QuickReadings();
        readings.device(device.getSelectionIndex() < 0 ? "" : devices.get(device.getSelectionIndex()));
        readings.method(method.getSelectionIndex() < 0 ? "" : methods.get(method.getSelectionIndex()));
        texts.forEach((field, text) -> {
            if (!((GridData) text.getLayoutData()).exclude) {
                readings.type(field, text.getText());
            }
        });
        return readings;
    }

    private void answer() {
        // While the page is being made, not all of it is there.
        if (trouble == null || answers == null) {
            return;
        }
        QuickAnswer answer = strongest.getSelection() ? question.strongest(readings()) : question.needed(readings());
        answers.removeAll();
        for (QuickAnswer.Line line : answer.lines()) {
            new TableItem(answers, SWT.NONE).setText(new String[] {line.label(), line.text()});
        }
        columns.fit();
        say(answer.trouble() == null ? "" : answer.trouble(), answer.lines().isEmpty() ? Tone.DOUBT : Tone.BAD);
    }

    private void say(String text, Tone tone) {
        trouble.setForeground(ThemeColours.of(tone, trouble));
        if (Controls.show(trouble, text)) {
            pane.layout();
        }
    }

    /** The readings as a survey; empty, and the reason is shown, if one of them cannot be read. */
    public Optional<Survey> survey() {
        try {
            return Optional.of(readings().survey(words.locale()));
        } catch (UnitException e) {
            say(
                    words.format("quick.job.refused", Map.of("reason", String.valueOf(e.message(words.locale())))),
                    Tone.BAD);
            return Optional.empty();
        }
    }

    @Focus
    void focus() {
        strongest.setFocus();
    }
}
