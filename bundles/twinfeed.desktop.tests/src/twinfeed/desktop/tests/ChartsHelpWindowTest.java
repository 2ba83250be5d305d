// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.chart.Chart;
import twinfeed.desktop.chart.ChartCanvas;
import twinfeed.desktop.chart.MarginCanvas;
import twinfeed.desktop.chart.MarginRow;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.OptionTable;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.survey.SurveyPackage;

/** Charts below the drawing, and the page that explains a finding. */
final class ChartsHelpWindowTest extends DemoWindow {
    @BeforeAll
    static void start() throws Exception {
        copyDemo();
        window.open(folder);
        window.settled();
    }

    private static OptionAssessment option() {
        return OptionTable.chosen(job().session().result(), job().session().chosen())
                .orElseThrow();
    }

    @Test
    @Order(1)
    void chartsShowTheYearTheFeedAndTheMargins() throws Exception {
        tab(1);
        ui.shoot("40-charts");
        assertTrue(ui.ask(() -> ui.all(
                                Canvas.class,
                                canvas -> "chart".equals(canvas.getData("twinfeed.field")) && canvas.isVisible()))
                        .size()
                >= 3);
        List<Chart> charts = ui.ask(() -> Chart.of(option()));
        Chart year = charts.stream()
                .filter(chart -> chart.labels().size() == 12)
                .findFirst()
                .orElseThrow();
        assertEquals(12, year.curves().get(0).y().size(), "a point for each month");
        Chart feed = charts.stream()
                .filter(chart ->
                        chart.curves().stream().anyMatch(curve -> curve.x().size() == 1))
                .findFirst()
                .orElseThrow();
        assertTrue(feed.curves().size() >= 2, "supply curve, switch line, operating point");
        List<MarginRow> margins = ui.ask(() -> MarginRow.of(option(), new Words(Locale.UK)));
        assertTrue(margins.stream().anyMatch(row -> row.high() > row.low()), "some margin has an interval");
        assertTrue(margins.stream().allMatch(row -> row.low() <= row.high()));
        ui.run(() -> ui.field(Canvas.class, "margins").setFocus());
        ui.run(() -> scrollTo(ui.field(Canvas.class, "margins")));
        ui.shoot("41-margins");
    }

    /** What is drawn is written to files: SVG by its first lines, PNG by its signature (RFC 2083, section 3.1) and size. */
    @Test
    @Order(1)
    void drawingIsSavedAsSvgAndPng() throws Exception {
        Path svg = folder.resolve("drawing.svg");
        Path png = folder.resolve("drawing.png");
        ui.run(() -> job().saveDrawing(svg));
        ui.run(() -> job().saveDrawing(png));
        ui.await("both are there", () -> Files.isRegularFile(svg) && Files.isRegularFile(png));
        assertTrue(Files.readString(svg).contains("<svg xmlns=\"http://www.w3.org/2000/svg\""));
        assertTrue(Files.readString(svg).contains("suits with work"), "with heater and verdict");
        byte[] bytes = Files.readAllBytes(png);
        assertArrayEquals(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}, java.util.Arrays.copyOf(bytes, 8));
        ImageData pixels = new ImageData(png.toString());
        Point size = ui.ask(() -> ui.field(Canvas.class, "feeds").getSize());
        assertEquals(size.x, pixels.width);
        assertEquals(size.y, pixels.height);
        ui.await("it is said", () -> ui.all(Label.class, Label::isVisible).stream()
                .anyMatch(label -> label.getText().startsWith(begin("completion.done"))));
    }

    /** The page follows what is typed: notes for the customer stand on it as soon as everything is worked out. */
    @Test
    @Order(1)
    void customersPageIsReadAndFollowsTheSurvey() throws Exception {
        tab(2);
        ui.await("the page is there", () -> page().contains("Netherquill Lettings"));
        assertTrue(ui.ask(ChartsHelpWindowTest::page).contains("£"), "with prices");
        ui.shoot("42-customers-page");
        ReadingPath notes = ReadingPath.of(SurveyPackage.Literals.SURVEY, "publicNotes");
        ui.run(() -> job().session()
                .edits()
                .set(job().session().survey(), notes.steps(), "The hall carpet is lifted by the tenant."));
        ui.await("it follows", () -> page().contains("The hall carpet is lifted by the tenant."));
        ui.run(() -> job().session().edits().undo());
        window.settled();
    }

    private static String page() {
        return ui.field(StyledText.class, "customerPage").getText();
    }

    private static void scrollTo(Control control) {
        var parent = control.getParent();
        while (!(parent instanceof org.eclipse.swt.custom.ScrolledComposite scroll)) {
            parent = parent.getParent();
        }
        scroll.setOrigin(0, control.getLocation().y - 60);
    }

    /** On a dark ground and with letters of twice the size everything is drawn, and in light colours. */
    @Test
    @Order(2)
    void chartsCanBeReadOnDarkGroundAndAtTwiceTheSize() throws Exception {
        List<Long> light = ui.ask(() -> {
            Shell shell = new Shell(ui.shell().getDisplay());
            shell.setLayout(new GridLayout(1, false));
            Color ground = new Color(30, 32, 36);
            Color letters = new Color(230, 230, 230);
            shell.setBackground(ground);
            Font font = large(shell);
            Words words = new Words(Locale.UK);
            List<Canvas> drawn = new ArrayList<>();
            for (Chart chart : Chart.of(option()).subList(1, 2)) {
                ChartCanvas canvas = new ChartCanvas(shell, chart, Locale.UK);
                canvas.control().setFont(font);
                canvas.fit();
                drawn.add(canvas.control());
            }
            MarginCanvas margins =
                    new MarginCanvas(shell, MarginRow.of(option(), words).subList(0, 12), words);
            margins.control().setFont(font);
            margins.fit();
            drawn.add(margins.control());
            drawn.forEach(canvas -> {
                canvas.setBackground(ground);
                canvas.setForeground(letters);
            });
            shell.setBounds(0, 0, 1400, 1200);
            shell.open();
            shell.layout();
            shell.forceActive();
            return drawn.stream().map(ChartsHelpWindowTest::lightDots).toList();
        });
        ui.shoot("42-charts-dark-large");
        ui.run(() -> ui.all(Shell.class, shell -> shell.getSize().x == 1400).forEach(Shell::dispose));
        assertTrue(light.stream().allMatch(dots -> dots > 500), "light dots: " + light);
    }

    private static Font large(Shell shell) {
        FontData[] data = shell.getFont().getFontData();
        data[0].setHeight(2 * data[0].getHeight());
        Font font = new Font(shell.getDisplay(), data[0]);
        shell.addListener(SWT.Dispose, event -> font.dispose());
        return font;
    }

    private static long lightDots(Canvas canvas) {
        Image image = new Image(canvas.getDisplay(), canvas.getSize().x, canvas.getSize().y);
        GC gc = new GC(image);
        canvas.print(gc);
        gc.dispose();
        var data = image.getImageData();
        image.dispose();
        long dots = 0;
        for (int y = 0; y < data.height; y++) {
            for (int x = 0; x < data.width; x++) {
                var rgb = data.palette.getRGB(data.getPixel(x, y));
                dots += rgb.red + rgb.green + rgb.blue > 450 ? 1 : 0;
            }
        }
        return dots;
    }

    @Test
    @Order(3)
    void findingIsExplainedFromItsLink() throws Exception {
        ui.run(() -> {
            TabFolder tabs = ui.field(TabFolder.class, "findings.tabs");
            tabs.setSelection(0);
            Ui.send(tabs, SWT.Selection);
            Tree findings = ui.field(Tree.class, "findings");
            TreeItem item = java.util.Arrays.stream(findings.getItems())
                    .flatMap(group -> java.util.Arrays.stream(group.getItems()))
                    .filter(each -> each.getText().startsWith("Capacity of the cable"))
                    .findFirst()
                    .orElseThrow();
            findings.setSelection(item);
            Ui.send(findings, SWT.Selection);
            Ui.send(ui.field(Link.class, "working.explain"), SWT.Selection);
        });
        ui.await("the page is there", () -> !ui.all(
                        StyledText.class,
                        text -> "help.text".equals(text.getData("twinfeed.field")) && text.isVisible())
                .isEmpty());
        String text = ui.ask(() -> ui.field(StyledText.class, "help.text").getText());
        assertTrue(text.startsWith("Capacity of the cable"), text);
        assertTrue(text.contains("It * Ca") || text.contains("It*Ca"), text);
        assertTrue(text.contains("BS 7671"), "names its source");
        assertEquals("Capacity of the cable", ui.ask(() -> ui.field(Tree.class, "help.checks")
                .getSelection()[0]
                .getText()));
        ui.shoot("43-help");
        ui.run(() -> {
            Tree tree = ui.field(Tree.class, "help.checks");
            TreeItem list = java.util.Arrays.stream(tree.getItems())
                    .flatMap(group -> java.util.Arrays.stream(group.getItems()))
                    .filter(each -> each.getText().equals("A list of dwellings"))
                    .findFirst()
                    .orElseThrow();
            tree.setSelection(list);
            Event event = new Event();
            event.item = list;
            tree.notifyListeners(SWT.Selection, event);
        });
        String files = ui.ask(() -> ui.field(StyledText.class, "help.text").getText());
        assertTrue(files.startsWith("A list of dwellings, *.csv or *.xlsx"), files);
        assertTrue(files.contains("water.test.flow") && files.contains("symptoms"), files);
        ui.shoot("44-files-explained");
    }
}
