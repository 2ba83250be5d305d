// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.form;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.io.InputException;
import twinfeed.usecase.Demo;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;

/** Forms are written and read back without any calculator. */
class SurveyFormsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 1);

    private final TwinfeedService service = new TwinfeedService(List.of());
    private final SurveyForms forms = new SurveyForms(service);

    @TempDir
    private Path folder = Path.of("");

    private String refused(Path form, Path out, @Nullable String catalogue) {
        return String.valueOf(assertThrows(InputException.class, () -> forms.read(form, out, catalogue))
                .getMessage());
    }

    @Test
    void aFormOfAJobIsReadBackIntoTheSameReadings() throws IOException {
        var job = service.open(Demo.FOLDER.resolve("alder-beck.job"), null);
        Path form = folder.resolve("form.xlsx");
        forms.write(job, Locale.ENGLISH, form);
        Path catalogue = Demo.FOLDER.resolve(job.job().getCatalogue());
        Files.copy(catalogue, folder.resolve(job.job().getCatalogue()));
        Path out = folder.resolve("again.job");
        forms.read(form, out, null);
        assertTrue(Files.size(out) > 1000);
        String taken = refused(form, out, null);
        assertTrue(taken.contains("a form never replaces one"), taken);
    }

    @Test
    void aFormThatNamesNoCatalogueIsRefusedUnlessOneIsNamed() {
        Path form = folder.resolve("blank.xlsx");
        forms.write(null, Locale.ENGLISH, form);
        Path out = folder.resolve("new.job");
        String none = refused(form, out, null);
        assertTrue(none.contains("names no heater catalogue"), none);
        assertFalse(Files.exists(out));
        Path missing = folder.resolve("none.xlsx");
        assertThrows(InputException.class, () -> forms.read(missing, out, null));
    }

    @Test
    void whatIsNoWorkbookIsRefused() throws IOException {
        Path form = Files.writeString(folder.resolve("text.xlsx"), "this is no workbook");
        assertThrows(UnusableException.class, () -> forms.read(form, folder.resolve("new.job"), null));
    }

    @Test
    void paperAsksForAllOrForWhatIsMissing() throws IOException {
        Path blank = folder.resolve("blank.pdf");
        forms.print(null, Locale.ENGLISH, DAY, blank);
        Path missing = folder.resolve("missing.pdf");
        forms.print(service.open(Demo.FOLDER.resolve("birch-syke.job"), null), Locale.GERMAN, DAY, missing);
        for (Path page : List.of(blank, missing)) {
            assertTrue(new String(Files.readAllBytes(page), 0, 5, java.nio.charset.StandardCharsets.ISO_8859_1)
                    .startsWith("%PDF-"));
        }
    }
}
