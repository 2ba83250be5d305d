// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.part.JobPrint;
import twinfeed.desktop.part.JobPrint.Paper;
import twinfeed.desktop.print.Printers;

/** Papers go to the printer as the files that are written otherwise; without a printer that is said. */
final class PrintWindowTest extends DemoWindow {

    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        openWithOneCandidate();
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    /** A printer that keeps what it gets. */
    private static final class Kept implements Printers {
        private final List<String> names;
        private final List<byte[]> files = new ArrayList<>();
        private final List<Boolean> firstPages = new ArrayList<>();

        Kept(String... names) {
            this.names = List.of(names);
        }

        @Override
        public List<String> names() {
            return names;
        }

        @Override
        public boolean firstPageAlone() {
            return true;
        }

        @Override
        public void print(Path file, String printer, boolean firstPage) throws IOException {
            if (!names.contains(printer)) {
                throw new IOException("there is no printer " + printer);
            }
            files.add(Files.readAllBytes(file));
            firstPages.add(firstPage);
        }
    }

    private static String said() {
        return ui.ask(() -> ui.field(CLabel.class, "status.action").getText());
    }

    private static byte[] printed(Paper paper) {
        Kept printer = new Kept("Hall");
        ui.run(() -> new JobPrint(job(), ui.shell(), WORDS, printer).print(paper, "Hall"));
        assertEquals(1, printer.files.size(), said());
        assertEquals(paper == Paper.CUSTOMER, printer.firstPages.get(0));
        assertTrue(said().startsWith(WORDS.format("print.done", Map.of("printer", "Hall", "paper", ""))), said());
        return printer.files.get(0);
    }

    @Test
    @Order(1)
    void withoutAPrinterThatIsSaid() {
        ui.run(() -> new JobPrint(job(), ui.shell(), WORDS, new Kept()).ask());
        assertTrue(said().equals(WORDS.get("print.noPrinter")), said());
        ui.shoot("77-no-printer");
    }

    @Test
    @Order(2)
    void quoteAndJobSheetArePdfs() {
        for (Paper paper : List.of(Paper.CUSTOMER, Paper.JOB_SHEET)) {
            String pdf = new String(printed(paper), StandardCharsets.ISO_8859_1);
            // ISO 32000-1, 7.5.2 and 7.5.5: a PDF file begins with %PDF- and ends with %%EOF.
            assertTrue(pdf.startsWith("%PDF-") && pdf.stripTrailing().endsWith("%%EOF"), paper.toString());
        }
    }

    @Test
    @Order(3)
    void drawingIsFineEnoughForPaper() {
        ImageData picture = new ImageData(new ByteArrayInputStream(printed(Paper.DRAWING)));
        assertTrue(picture.width > 2000, "dots across a page: " + picture.width);
        int ink = 0;
        for (int x = 0; x < picture.width; x += 3) {
            for (int y = 0; y < picture.height; y += 3) {
                ink += picture.palette.getRGB(picture.getPixel(x, y)).red < 128 ? 1 : 0;
            }
        }
        assertTrue(ink > 1000, "something is drawn: " + ink);
    }

    @Test
    @Order(4)
    void refusalOfTheSystemIsSaid() {
        ui.run(() -> new JobPrint(job(), ui.shell(), WORDS, new Kept("Hall")).print(Paper.DRAWING, "Attic"));
        assertEquals("Not printed: there is no printer Attic", said());
    }

    @Test
    @Order(5)
    void paperIsPickedInADialogue() throws Exception {
        Kept printer = new Kept("Hall");
        Display display = ui.ask(() -> ui.shell().getDisplay());
        display.asyncExec(() -> new JobPrint(job(), ui.shell(), WORDS, printer).ask());
        ui.await("it is asked", () -> !answers().isEmpty());
        ui.shoot("78-print");
        List<String> offered =
                ui.ask(() -> answers().stream().map(Button::getText).toList());
        assertEquals(4, offered.size(), offered.toString());
        ui.run(() -> {
            Button drawing = answers().get(3);
            drawing.setSelection(true);
            Ui.send(drawing, SWT.Selection);
            Shell dialogue = drawing.getShell();
            Ui.send(print(dialogue), SWT.Selection);
        });
        ui.await("it is printed", () -> printer.files.size() == 1);
    }

    private static List<Button> answers() {
        return ui.all(
                Button.class,
                each -> (each.getStyle() & SWT.RADIO) != 0
                        && each.isVisible()
                        && each.getShell().getText().equals("Print"));
    }

    private static Button print(Shell dialogue) {
        return ui.all(
                        Button.class,
                        each -> each.getShell() == dialogue && each.getText().equals("Print"))
                .get(0);
    }
}
