// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.window.FileDrop;
import twinfeed.model.survey.Photo;

/** Files that are dropped onto the window, and photographs that are pasted. */
final class DropWindowTest extends DemoWindow {
    @BeforeAll
    static void start() throws Exception {
        copyDemo();
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    private static void drop(Path... files) {
        ui.run(() -> new FileDrop(ui.shell(), window.parts(), window.context().get(Words.class)).take(List.of(files)));
    }

    private static List<Photo> photos() {
        return ui.ask(() -> List.copyOf(job().session().survey().getPhotos()));
    }

    @Test
    @Order(1)
    void windowTakesFilesAndADroppedJobIsOpened() throws Exception {
        DropTarget target = ui.ask(() -> (DropTarget) ui.shell().getData(DND.DROP_TARGET_KEY));
        assertEquals(FileTransfer.getInstance(), ui.ask(() -> target.getTransfer()[0]));
        assertEquals(1, ui.ask(() -> target.getDropListeners().length));
        drop(folder.resolve("alder-beck.job"));
        ui.await("it is open", () -> window.parts().parts().size() == 1);
    }

    @Test
    @Order(2)
    void droppedPicturesBecomePhotographsThatAreShown() throws Exception {
        int before = photos().size();
        Path elsewhere = Files.createDirectory(folder.resolve("camera"));
        Path picture = Files.copy(folder.resolve("netherquill.png"), elsewhere.resolve("IMG 1.png"));
        // Another folder than the job's: the picture is copied beside the job.
        Path outside = Files.copy(picture, Files.createTempDirectory("camera").resolve("IMG 2.png"));
        drop(outside);
        ui.await("it is a photograph", () -> photos().size() == before + 1);
        Photo taken = photos().get(before);
        assertEquals("IMG 2.png", taken.getFile());
        assertTrue(Files.exists(folder.resolve("IMG 2.png")));
        ui.await("the page shows it", () -> job().survey().shown() == 0);
        ui.await("it is seen", () -> !ui.all(
                        Label.class,
                        label -> "photo.picture".equals(label.getData("twinfeed.field")) && label.getImage() != null)
                .isEmpty());
        ui.shoot("26-photos");
        ui.run(() -> job().undo());
        assertEquals(before, photos().size());
        ui.run(() -> job().redo());
        assertEquals(before + 1, photos().size());
    }

    @Test
    @Order(3)
    void pastedPictureIsKeptAsAFileAndAMissingOneIsNamed() throws Exception {
        int before = photos().size();
        ui.run(() -> {
            ImageData data = new ImageData(40, 30, 24, new PaletteData(0xFF0000, 0xFF00, 0xFF));
            Clipboard clipboard = new Clipboard(ui.shell().getDisplay());
            clipboard.setContents(new Object[] {data}, new Transfer[] {ImageTransfer.getInstance()});
            Ui.send(ui.field(Button.class, "photo.paste"), SWT.Selection);
            clipboard.dispose();
        });
        ui.await("it is a photograph", () -> photos().size() == before + 1);
        assertEquals("photo.png", photos().get(before).getFile());
        assertTrue(Files.size(folder.resolve("photo.png")) > 50);
        Files.delete(folder.resolve("photo.png"));
        String field = "survey.photos[" + (before + 1) + "].file";
        ui.run(() -> {
            Text text = ui.all(
                            Text.class,
                            each -> each.isVisible() && each.getText().equals("photo.png"))
                    .get(0);
            text.setText("gone.png");
            Ui.send(text, SWT.DefaultSelection);
        });
        ui.await(
                field + " is said to be missing",
                () -> ui
                        .all(
                                Label.class,
                                label -> label.isVisible() && label.getText().contains("gone.png"))
                        .stream()
                        .anyMatch(label -> label.getText().startsWith("\u2717")));
        ui.run(() -> job().undo());
    }

    @Test
    @Order(4)
    void listOfDwellingsAndPriceBookGoToTheirPages() throws Exception {
        drop(folder.resolve("dwellings.csv"));
        ui.await(
                "the list is chosen",
                () -> ui.field(Text.class, "batch.list").getText().endsWith("dwellings.csv"));
        drop(folder.resolve("prices.csv"));
        ui.await("the book is open", () -> !ui.all(
                        org.eclipse.swt.widgets.Table.class,
                        each -> each.isVisible() && "entries".equals(each.getData("twinfeed.field")))
                .isEmpty());
        assertFalse(ui.ask(() -> window.parts().parts().isEmpty()), "the job stays open");
    }
}
