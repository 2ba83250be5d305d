// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.quote.CustomerPage;
import twinfeed.usecase.quote.CustomerPage.Kind;
import twinfeed.usecase.quote.CustomerPage.Line;

/** What the customer will read, in the words of the PDF, as it would be printed now. Worked out out of the way, and while it is seen. */
final class CustomerPageView {
    private static final int MARGIN = 14;

    private final JobSession session;
    private final Threads threads;
    private final Words words;
    private final StyledText text;
    private @Nullable JobResult shown;
    private boolean seen;

    CustomerPageView(Composite parent, JobSession session, Threads threads, Words words) {
        this.session = session;
        this.threads = threads;
        this.words = words;
        this.text = new StyledText(parent, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | SWT.READ_ONLY);
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setData("twinfeed.field", "customerPage");
        Controls.name(text, words.get("page.customer"));
        Runnable results = session.resulted().listen(this::update);
        text.addListener(SWT.Dispose, event -> results.run());
    }

    /** The whole. */
    Control control() {
        return text;
    }

    /** Comes to be seen, or goes. */
    void seen(boolean now) {
        seen = now;
        update();
    }

    private void update() {
        JobResult result = session.result();
        if (!seen || text.isDisposed() || result == shown) {
            return;
        }
        shown = result;
        if (result == null || result.quote() == null || result.judged() == null) {
            text.setText(words.format("page.customer.none", Map.of("reason", nothing(result)))
                    .strip());
            return;
        }
        threads.quick().execute(() -> {
            List<Line> lines = lines(result);
            threads.display().execute(() -> {
                if (!text.isDisposed() && session.result() == result) {
                    show(lines);
                }
            });
        });
    }

    private String nothing(@Nullable JobResult result) {
        if (result == null || !result.complete()) {
            return words.get("findings.computing");
        }
        boolean noBook = result.trouble().isEmpty() && session.services().prices(session.survey()) == null;
        return noBook ? words.get("quote.noBook") : result.trouble();
    }

    private List<Line> lines(JobResult result) {
        try {
            return session.page(result).map(CustomerPage::lines).orElse(List.of());
        } catch (RuntimeException refused) {
            return List.of(new Line(Kind.TEXT, String.valueOf(refused.getMessage()), List.of()));
        }
    }

    /** Where a person has scrolled to stays, as far as there is so much text. */
    private void show(List<Line> lines) {
        int top = text.getTopIndex();
        StringBuilder all = new StringBuilder();
        List<StyleRange> styles = new ArrayList<>();
        Kind before = Kind.TEXT;
        for (Line line : lines) {
            boolean begins = line.kind() == Kind.HEADING || (line.kind() == Kind.DANGER && before != Kind.DANGER);
            if (begins && all.length() > 0) {
                all.append('\n');
            }
            before = line.kind();
            int start = all.length();
            all.append(written(line)).append('\n');
            style(line, start, all.length() - start, styles);
        }
        text.setRedraw(false);
        text.setText(all.toString());
        text.setStyleRanges(styles.toArray(StyleRange[]::new));
        if (top > 0) {
            text.setTopIndex(Math.min(top, text.getLineCount() - 1));
        }
        text.setRedraw(true);
    }

    /** Of a row what it is called, then what it says of each option, a line each where there are several. */
    private static String written(Line line) {
        List<String> values =
                line.values().stream().filter(value -> !value.isBlank()).toList();
        if (values.isEmpty()) {
            return line.what();
        }
        String first = line.what().isEmpty() ? "" : line.what() + ":";
        if (values.size() == 1) {
            return (first + " " + values.get(0).replace("\n", "\n    ")).strip();
        }
        StringBuilder several = new StringBuilder(first);
        for (int i = 0; i < line.values().size(); i++) {
            if (!line.values().get(i).isBlank()) {
                several.append(several.length() == 0 ? "" : "\n")
                        .append("    ")
                        .append(i + 1)
                        .append(". ")
                        .append(line.values().get(i).replace("\n", "\n        "));
            }
        }
        return several.toString();
    }

    private void style(Line line, int start, int length, List<StyleRange> styles) {
        boolean bold = line.kind() == Kind.HEADING || line.kind() == Kind.SUM || line.kind() == Kind.DANGER;
        if (bold || line.kind() == Kind.ROW) {
            int part = line.kind() == Kind.ROW ? Math.min(length, line.what().length() + 1) : length;
            StyleRange style = new StyleRange(
                    start, part, line.kind() == Kind.DANGER ? ThemeColours.of(Tone.BAD, text) : null, null);
            style.fontStyle = SWT.BOLD;
            styles.add(style);
        }
    }
}
