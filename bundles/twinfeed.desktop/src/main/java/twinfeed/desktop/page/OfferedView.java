// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.Page.Offered;
import twinfeed.desktop.form.Remarks;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.shape.Tone;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage;

/** The catalogue's heaters, ticked where they are to be checked for this house. */
final class OfferedView implements ItemView {
    private static final int MOST_ROWS = 14;

    private final FormContext context;
    private final Offered offered;
    private final Table table;
    private final Label none;
    private final Label message;

    OfferedView(Composite parent, FormContext context, Offered offered) {
        this.context = context;
        this.offered = offered;
        this.table = new Table(parent, SWT.BORDER | SWT.CHECK | SWT.FULL_SELECTION);
        table.setData(FieldRow.FIELD, "survey." + offered.path().text());
        table.setHeaderVisible(true);
        table.setToolTipText(context.help(offered.path()));
        Controls.name(table, context.name(offered.path()));
        column("heater.title");
        column("heater.power");
        fill();
        Columns.of(table, 0, 120, 2).fit();
        RowMenu.over(table).copy(context.words());
        GridData data = Controls.across(parent);
        data.heightHint =
                table.getHeaderHeight() + Math.min(MOST_ROWS, heaters().size()) * table.getItemHeight();
        table.setLayoutData(data);
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (event.detail == SWT.CHECK) {
                commit();
            }
        }));
        none = Controls.wrapped(parent);
        message = Controls.wrapped(parent);
        refresh();
    }

    private void column(String key) {
        new TableColumn(table, SWT.LEFT).setText(context.words().get(key));
    }

    private List<Heater> heaters() {
        return context.session().catalogue().getHeaters();
    }

    private Survey survey() {
        return context.session().survey();
    }

    private void fill() {
        for (Heater heater : heaters()) {
            TableItem item = new TableItem(table, SWT.NONE);
            String title = heater.getTitle() == null ? heater.getId() : heater.getTitle();
            item.setText(
                    0,
                    heater.getWithdrawnOn() == null
                            ? title
                            : context.words().format("heater.withdrawn", Map.of("title", title)));
            item.setText(1, context.format().show(heater.getPower()));
        }
    }

    @Override
    public void refresh() {
        List<String> chosen = survey().getCandidates();
        for (int i = 0; i < table.getItemCount(); i++) {
            table.getItem(i).setChecked(chosen.contains(heaters().get(i).getId()));
        }
        if (Controls.show(none, chosen.isEmpty() ? context.words().get("candidates.none") : "")) {
            PageView.relayout(none);
        }
    }

    @Override
    public boolean remark(Remarks remarks) {
        var all = remarks.on(survey(), offered.path());
        message.setForeground(ThemeColours.of(all.isEmpty() ? Tone.QUIET : FieldRow.tone(all), message));
        return Controls.show(message, FieldRow.text(all));
    }

    @Override
    public boolean commit() {
        List<String> chosen = new ArrayList<>();
        // Ids that the catalogue does not know stay: the person sees a remark and decides.
        survey().getCandidates().stream()
                .filter(id -> heaters().stream().noneMatch(heater -> id.equals(heater.getId())))
                .forEach(chosen::add);
        for (int i = 0; i < table.getItemCount(); i++) {
            if (table.getItem(i).getChecked()) {
                chosen.add(heaters().get(i).getId());
            }
        }
        context.session().edits().setAll(survey(), SurveyPackage.Literals.SURVEY__CANDIDATES, chosen);
        return true;
    }

    @Override
    public boolean revert() {
        return false;
    }

    @Override
    public boolean focus(FieldLocation place) {
        return place.path().equals(offered.path().text()) && table.setFocus();
    }
}
