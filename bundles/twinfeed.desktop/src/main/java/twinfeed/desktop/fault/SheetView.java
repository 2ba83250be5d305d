// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.fault;

import java.util.List;
import java.util.Map;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Lines;
import twinfeed.desktop.look.Scroll;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.FaultResult;
import twinfeed.desktop.session.FaultSearch;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.CauseRow;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.document.shape.Tone;

/** What follows from the answers: the conclusion, the next step, the causes, and what to do with them. */
final class SheetView {
    private final FaultSearch search;
    private final Words words;
    private final Scroll scroll;
    private final Label heading;
    private final Label state;
    private final Label summary;
    private final NextStepView next;
    private final Label causesHeading;
    private final CauseBars causes;
    private final Label others;
    private final Composite rest;
    private final Label unsafe;
    private @Nullable FaultSheet shown;
    private String noRepairShown = "";

    SheetView(Composite parent, FaultSearch search, Words words, Runnable toIsolation) {
        this.search = search;
        this.words = words;
        this.scroll = new Scroll(parent);
        Composite content = scroll.content();
        this.heading = Controls.heading(content, words.get("pane.faults"));
        this.state = Controls.wrapped(content);
        state.setForeground(ThemeColours.of(Tone.QUIET, state));
        this.unsafe = Controls.wrapped(content);
        unsafe.setForeground(ThemeColours.of(Tone.BAD, unsafe));
        unsafe.setData("twinfeed.field", "faults.unsafe");
        this.summary = Controls.wrapped(content);
        summary.setData("twinfeed.field", "faults.summary");
        Complaints complaints = new Complaints(content, scroll::fit);
        this.next = new NextStepView(content, search, words, complaints, toIsolation);
        this.causesHeading = Controls.heading(content, words.get("faults.causes"));
        this.causes = new CauseBars(content, words);
        this.others = Controls.wrapped(content);
        others.setForeground(ThemeColours.of(Tone.QUIET, others));
        this.rest = Controls.columns(content, 1);
        rest.setLayoutData(Controls.across(content));
    }

    Scroll scroll() {
        return scroll;
    }

    /** Shows what is known now; laid out again only where something has changed, which takes long. */
    void show() {
        FaultResult result = search.result();
        boolean trouble =
                search.current() && result != null && !result.trouble().isEmpty();
        state.setForeground(ThemeColours.of(trouble ? Tone.BAD : Tone.QUIET, state));
        boolean changed = Controls.show(state, trouble && result != null ? result.trouble() : progress());
        String noRepair = noRepair();
        if (result != null
                && result.sheet() != null
                && (!result.sheet().equals(shown) || !noRepair.equals(noRepairShown))) {
            noRepairShown = noRepair;
            scroll.control().setRedraw(false);
            show(result.sheet());
            scroll.control().setRedraw(true);
            changed = true;
        }
        boolean there = shown != null && !trouble;
        String notice = there && shown != null ? shown.isolationNotice() : "";
        changed |= Controls.show(unsafe, notice.isEmpty() ? "" : "\u26A0 " + notice);
        for (Control each : new Control[] {summary, causes.control(), causesHeading, others, rest, next.control()}) {
            GridData data = (GridData) each.getLayoutData();
            boolean hidden = !there || (each == others && others.getText().isEmpty());
            changed |= data.exclude != hidden;
            data.exclude = hidden;
            each.setVisible(!hidden);
        }
        if (changed) {
            scroll.fit();
        }
    }

    /** Why repair and replacement are not compared, where they are not. */
    private String noRepair() {
        if (search.pricing()) {
            return words.get("faults.pricing");
        }
        return words.get(search.hasPrices() ? "repair.none" : "repair.noPrices");
    }

    private String progress() {
        if (!search.current()) {
            return words.get("findings.computing");
        }
        return search.pricing() ? words.get("faults.pricing") : "";
    }

    private void show(FaultSheet sheet) {
        shown = sheet;
        heading.setText(
                words.format("faults.of", Map.of("unit", sheet.heater())).replace("&", "&&"));
        String sign =
                switch (sheet.conclusion()) {
                    case "several" -> "\u2042 ";
                    case "none-of-these" -> "? ";
                    case "nothing-reported" -> "";
                    default -> "\u25B6 ";
                };
        summary.setText((sign + sheet.summary()).replace("&", "&&"));
        boolean odd = sheet.conclusion().equals("several") || sheet.conclusion().equals("none-of-these");
        summary.setForeground(odd ? ThemeColours.of(Tone.DOUBT, summary) : null);
        summary.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        next.show(sheet);
        causes.show(CauseRow.of(sheet, words));
        int remote = CauseRow.remote(sheet);
        others.setText(
                remote == 0 ? "" : words.format("faults.causes.remote", Map.of("count", String.valueOf(remote))));
        for (Control child : rest.getChildren()) {
            child.dispose();
        }
        sections(sheet);
    }

    private void sections(FaultSheet sheet) {
        texts("faults.notices", sheet.notices(), Tone.DOUBT);
        texts("faults.links", sheet.links(), null);
        if (!sheet.readings().isEmpty()) {
            section("faults.readings");
            Lines lines = new Lines(rest, 4)
                    .bold("", words.get("faults.read"), words.get("faults.sound"), words.get("faults.judged"));
            sheet.readings().forEach(each -> reading(lines, each));
        }
        new RepairView(rest, words).show(sheet, noRepairShown);
        if (!sheet.expected().isEmpty()) {
            section("faults.expected");
            Lines lines = new Lines(rest, 1);
            sheet.expected().forEach(each -> lines.add(each.title() + ": " + each.value()));
        }
        texts("faults.steps", sheet.steps(), null);
        texts("faults.cautions", sheet.cautions(), null);
        Controls.text(rest, words.format("faults.source", Map.of("source", sheet.source())), Tone.QUIET);
    }

    private void reading(Lines lines, FaultSheet.Reading reading) {
        Boolean sound = reading.sound();
        String word = sound == null ? "?" : sound ? "\u2713" : "\u2717";
        String key = sound == null ? "unknown" : sound ? "yes" : "no";
        lines.toned(
                sound == null ? Tone.DOUBT : sound ? Tone.GOOD : Tone.BAD,
                reading.title(),
                reading.value(),
                reading.expected(),
                word + " " + words.get("faults.sound." + key));
    }

    private void texts(String heading, List<String> texts, @Nullable Tone tone) {
        if (!texts.isEmpty()) {
            section(heading);
            texts.forEach(each -> Controls.text(rest, each, tone));
        }
    }

    private void section(String key) {
        ((GridData) Controls.heading(rest, words.get(key)).getLayoutData()).verticalIndent = 10;
    }
}
