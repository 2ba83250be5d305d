// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobPackage;

/** Older files are brought to the present form, document to document. The older forms here are made up for these tests. */
class MigrationTest {
    private static final String OLD =
            "<job:Job xmlns:job=\"urn:twinfeed:0:job\" version=\"0\" catalogue=\"heaters.catalogue\">"
                    + "\n  <survey targetOutlet=\"40 °C ± 1 K\"><candidates>h95</candidates>\n"
                    + "<water><test static=\"3.0 bar\"/></water></survey>\n</job:Job>";

    /** In this made-up older form the static pressure was called static. */
    private static final Migration RENAMING = new Migration() {
        @Override
        public int from() {
            return 0;
        }

        @Override
        public void migrate(Document document) {
            NodeList tests = document.getElementsByTagName("test");
            for (int i = 0; i < tests.getLength(); i++) {
                Element test = (Element) tests.item(i);
                test.setAttribute("staticPressure", test.getAttribute("static"));
                test.removeAttribute("static");
            }
        }
    };

    @ParameterizedTest
    @MethodSource("twinfeed.model.io.RoundTripTest#classes")
    void formZeroOfEveryClassIsReadAsItIs(org.eclipse.emf.ecore.EClass type) {
        EObject object = Samples.full(type);
        ModelFile<EObject> form = ModelFile.of(type, EObject.class);
        byte[] present = form.bytes("present", object);
        String older = new String(present, StandardCharsets.UTF_8)
                .replace("urn:twinfeed:1:", "urn:twinfeed:0:")
                .replaceFirst("version=\"1\" ", "version=\"0\" ");
        byte[] migrated = form.bytes("again", form.read("older", older.getBytes(StandardCharsets.UTF_8)));
        assertArrayEquals(present, migrated);
    }

    @Test
    void namespaceWithoutPrefix() {
        byte[] older = "<Job xmlns=\"urn:twinfeed:0:job\" version=\"0\" catalogue=\"a.catalogue\"/>"
                .getBytes(StandardCharsets.UTF_8);
        Job job = JobFile.form().read("older", older);
        assertEquals("1", job.getVersion());
        assertEquals("a.catalogue", job.getCatalogue());
    }

    @Test
    void stepChangesTheDocument() {
        Job job = form(RENAMING).read("old.job", OLD.getBytes(StandardCharsets.UTF_8));
        assertEquals("1", job.getVersion());
        assertEquals(
                300_000,
                job.getSurvey().getWater().getTest().getStaticPressure().si());
        assertEquals("40 °C ± 1 K", job.getSurvey().getTargetOutlet().toString());
        assertEquals(List.of("h95"), job.getSurvey().getCandidates());
    }

    @Test
    void faultsOfAMigratedFileNameTheElement() {
        InputException refused = assertThrows(InputException.class, () -> form(new Unchanged(0))
                .read("old.job", OLD.getBytes(StandardCharsets.UTF_8)));
        assertTrue(
                refused.getMessage().startsWith("old.job, survey.water.test: there is no attribute static here"),
                refused.getMessage());
        String unread = OLD.replace("3.0 bar", "3.0 baar");
        refused = assertThrows(
                InputException.class, () -> form(RENAMING).read("old.job", unread.getBytes(StandardCharsets.UTF_8)));
        assertTrue(
                refused.getMessage().startsWith("old.job, survey.water.test.staticPressure \"3.0 baar\": \"baar\""),
                refused.getMessage());
    }

    @Test
    void brokenOlderFileNamesItsLine() {
        byte[] broken = OLD.replace("</water>", "").getBytes(StandardCharsets.UTF_8);
        InputException refused =
                assertThrows(InputException.class, () -> form(new Unchanged(0)).read("old.job", broken));
        assertTrue(
                refused.getMessage().startsWith("old.job, line 3: this is not well-formed XML"), refused.getMessage());
    }

    @Test
    void withoutAStepItIsRefused() {
        InputException refused =
                assertThrows(InputException.class, () -> form().read("old.job", OLD.getBytes(StandardCharsets.UTF_8)));
        assertEquals(
                "old.job: the file has form 0, and there is no way from it to form 1; open and save it with the program that"
                        + " wrote it",
                refused.getMessage());
    }

    @Test
    void twoStepsFromOneFormAreAMistake() {
        assertThrows(IllegalArgumentException.class, () -> new Migrations(List.of(RENAMING, new Unchanged(0))));
    }

    @Test
    void savedFileHasThePresentForm() throws IOException {
        Job job = form(RENAMING).read("old.job", OLD.getBytes(StandardCharsets.UTF_8));
        String text = new String(JobFile.form().bytes("new.job", job), StandardCharsets.UTF_8);
        assertTrue(text.contains("xmlns:job=\"urn:twinfeed:1:job\" version=\"1\""), text);
    }

    private static ModelFile<Job> form(Migration... steps) {
        return new ModelFile<>(JobPackage.Literals.JOB, Job.class, new Migrations(List.of(steps)));
    }
}
