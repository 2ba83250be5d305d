// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each bad file is refused with one line for each fault: file, line, element, reading, what is wrong, what would be right. */
class RefusalTest {
    private static final String HEAD = "<job:Job xmlns:job=\"urn:twinfeed:1:job\" version=\"1\">\n";

    @TempDir
    Path folder;

    @Test
    void missingFile() {
        Path path = folder.resolve("none.job");
        assertRefused(path, path + ": there is no such file; check the folder and the spelling of the name");
    }

    @Test
    void aNameLongerThanALineIsShownByItsEnds() {
        String name = "heaters" + "-of-all-makers".repeat(200) + ".catalogue";
        String message =
                InputProblem.ofFile(name, "there is no such file", "look").toString();
        assertTrue(message.startsWith("heaters-of-all-makers") && message.contains("rs.catalogue: there is"), message);
        assertTrue(message.length() < 350, message);
    }

    @Test
    void folderInPlaceOfFile() {
        assertRefused(folder, folder + ": this is a folder; name a file in it");
    }

    @Test
    void emptyFile() throws IOException {
        assertRefused("", ": the file is empty; take it from a backup, or begin a new one");
        assertRefused("\uFEFF \n", ": the file is empty; take it from a backup, or begin a new one");
    }

    @Test
    void noXml() throws IOException {
        assertLine("Alder Beck 3\nno XML at all", 1, "this is not well-formed XML");
        assertLine(HEAD + "  <survey>\n  </water>\n</job:Job>", 3, "this is not well-formed XML");
        assertLine(HEAD + "  <survey/>\n", 3, "this is not well-formed XML");
        assertLine(HEAD + "  <survey takenBy=\"a\"\n takenBy=\"b\"/>\n</job:Job>", 3, "this is not well-formed XML");
        assertLine(HEAD + "  <survey notes=\"&unknown;\"/>\n</job:Job>", 2, "this is not well-formed XML");
        assertLine(HEAD + "  <survey notes=\"&#1;\"/>\n</job:Job>", 2, "this is not well-formed XML");
        assertLine(HEAD + "</job:Job>\n" + HEAD + "</job:Job>", 3, "this is not well-formed XML");
    }

    @Test
    void bytesThatAreNoUtf8() throws IOException {
        Path path = folder.resolve("latin.job");
        byte[] latin = (HEAD + "<survey\n targetOutlet=\"40 °C\"/></job:Job>").getBytes(StandardCharsets.ISO_8859_1);
        Files.write(path, latin);
        assertRefused(path, path + ", line 3: this line is not UTF-8 text; save the file as UTF-8");
        Files.write(path, (HEAD + "</job:Job>").getBytes(StandardCharsets.UTF_16));
        assertRefused(path, path + ", line 1: this line is not UTF-8 text; save the file as UTF-8");
        Files.write(path, new byte[] {(byte) 0xC3});
        assertRefused(path, path + ", line 1: this line is not UTF-8 text; save the file as UTF-8");
    }

    @Test
    void otherEncodingOrVersionOfXml() throws IOException {
        assertRefused(
                "<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?>\n" + HEAD + "</job:Job>",
                ", line 1: the file says that it is written in ISO-8859-1; save it as UTF-8");
        assertRefused(
                "<?xml version=\"1.1\"?>\n" + HEAD + "</job:Job>",
                ", line 1: the file is XML 1.1; begin it with <?xml version=\"1.0\" encoding=\"UTF-8\"?>");
    }

    @Test
    void utf8WithMarkIsRead() throws IOException {
        Path path = write("\uFEFF<?xml version=\"1.0\" encoding=\"utf-8\"?>" + HEAD + "</job:Job>");
        assertEquals("1", JobFile.load(path).getVersion());
    }

    @Test
    void otherRoot() throws IOException {
        String right = "; open a file that begins with <job:Job xmlns:job=\"urn:twinfeed:1:job\" version=\"1\">";
        assertRefused("<html/>", ", line 1: the file holds <html> and not a Job that this program knows" + right);
        assertRefused(
                "<c:Catalogue xmlns:c=\"urn:twinfeed:1:catalogue\"/>",
                ", line 1: the file holds <Catalogue> and not a Job that this program knows" + right);
        assertRefused(
                "<Job xmlns=\"urn:someone:else\" version=\"1\"/>",
                ", line 1: the file holds <Job> and not a Job that this program knows" + right);
    }

    @Test
    void newerVersion() throws IOException {
        assertRefused(
                "<job:Job xmlns:job=\"urn:twinfeed:2:job\" version=\"2\"><unheardOf/></job:Job>",
                ", line 1: the file has form 2, and this program knows forms up to 1; open it with the newer program that"
                        + " wrote it, or update this one");
    }

    @Test
    void versionMark() throws IOException {
        assertRefused(
                "<job:Job xmlns:job=\"urn:twinfeed:1:job\"/>",
                ", line 1: the version mark is missing; write version=\"1\" in the first tag");
        assertRefused(
                "<job:Job xmlns:job=\"urn:twinfeed:1:job\" version=\"7\"/>",
                ", line 1: the version mark says 7 and the namespace says 1; write version=\"1\" in the first tag");
    }

    @Test
    void unknownElement() throws IOException {
        assertRefused(
                HEAD + "  <survey>\n    <wather/>\n  </survey>\n</job:Job>",
                ", line 3, survey.wather: there is no element <wather> here; did you mean <water>?");
        assertRefused(
                HEAD + "  <survey>\n    <customer><address>a</address></customer>\n  </survey>\n</job:Job>",
                ", line 3, survey.customer.address: address is written as an element; write it as an attribute,"
                        + " address=\"...\"");
        assertRefused(
                HEAD + "  <x:survey xmlns:x=\"urn:x\"/>\n</job:Job>",
                ", line 2, survey: there is no element <survey> here; did you mean <survey>?");
        assertRefused(
                HEAD + "  <quotes/>\n</job:Job>",
                ", line 2, quotes: there is no element <quotes> here; did you mean <quote>?");
        assertRefused(
                HEAD + "  <zzzzz/>\n</job:Job>",
                ", line 2, zzzzz: there is no element <zzzzz> here; remove it; known here: survey, quote, completion");
    }

    @Test
    void unknownAttribute() throws IOException {
        assertRefused(
                HEAD
                        + "  <survey>\n    <water>\n      <test staticPressure=\"3 bar\"\n          runingPressure=\"2 bar\"/>"
                        + "\n    </water>\n  </survey>\n</job:Job>",
                ", line 5, survey.water.test: there is no attribute runingPressure here; did you mean runningPressure?");
        assertRefused(
                HEAD + "  <survey x:takenBy=\"a\" xmlns:x=\"urn:x\"/>\n</job:Job>",
                ", line 2, survey: there is no attribute x:takenBy here; did you mean takenBy?");
        assertRefused(
                HEAD + "  <survey candidates=\"h85\"/>\n</job:Job>",
                ", line 2, survey.candidates \"h85\": candidates is written as an attribute; write it as an element,"
                        + " <candidates>");
        assertRefused(
                HEAD + "  <survey><candidates kind=\"a\">h85</candidates></survey>\n</job:Job>",
                ", line 2, survey.candidates[1]: <candidates> has an attribute; write nothing but its text");
    }

    @Test
    void unknownAttributeOfTheRoot() throws IOException {
        assertRefused(
                "<job:Job xmlns:job=\"urn:twinfeed:1:job\" version=\"1\"\n element=\"a\"/>",
                ", line 2, Job: there is no attribute element here; remove it; known here: version, catalogue");
    }

    @Test
    void unknownAttributeThatIsLikeNone() throws IOException {
        assertRefused(
                HEAD + "  <survey>\n<unit zzzzzz=\"h85\"/></survey>\n</job:Job>",
                ", line 3, survey.unit: there is no attribute zzzzzz here; remove it; known here: heaterId, age,"
                        + " guaranteeUntil, measuredFlow, outletReading, note");
    }

    @Test
    void strayContent() throws IOException {
        assertRefused(
                HEAD + "  <survey>remember the ladder</survey>\n</job:Job>",
                ", line 2, survey \"remember the ladder\": text stands between the elements; write it into an attribute"
                        + " such as note, or remove it");
        assertRefused(
                HEAD + "  <survey><candidates>h<b>85</b></candidates></survey>\n</job:Job>",
                ", line 2, survey.candidates[1]: <b> stands inside a value; write plain text there");
        assertRefused(
                HEAD + "  <survey/>\n  <survey/>\n</job:Job>",
                ", line 3, survey: <survey> stands here more than once; keep one of them");
    }

    @Test
    void valuesThatCannotBeRead() throws IOException {
        assertValue(
                "<water><test staticPressure=\"3.0 baar\"/></water>",
                "survey.water.test.staticPressure \"3.0 baar\": \"baar\" is not a unit of pressure; write it in bar, kPa, mbar,"
                        + " Pa, MPa, hPa, psi, m head, ft head");
        assertValue(
                "<water><test flow=\"12\"/></water>",
                "survey.water.test.flow \"12\": \"12\" has no unit; write flow in L/min, L/s, L/h, m³/h, m³/s, US gpm, imp"
                        + " gpm");
        assertValue(
                "<water><test flow=\"\"/></water>",
                "survey.water.test.flow: nothing is written; write flow like 1.5 L/min");
        assertValue(
                "<unit age=\"eleven\"/>", "survey.unit.age \"eleven\": this is not a whole number; write one like 11");
        assertValue(
                "<customer vulnerable=\"yes\"/>",
                "survey.customer.vulnerable \"yes\": this is neither yes nor no; write true or false, or leave the attribute"
                        + " out if it is not known");
        assertValue(
                "<site lastInspection=\"2026-02-30\"/>",
                "survey.site.lastInspection \"2026-02-30\": this is not a calendar day; write year, month and day like"
                        + " 2026-03-31");
        assertValue(
                "<electricity earthing=\"TNCS\"/>",
                "survey.electricity.earthing \"TNCS\": this is none of the known words (TN-S, TN-C-S, TT); did you mean"
                        + " TN-C-S?");
        assertValue(
                "<water source=\"well\"/>",
                "survey.water.source \"well\": this is none of the known words; write one of mains, tank, pumped, hot");
    }

    @Test
    void decimalThatWouldFillTheMemory() throws IOException {
        assertRefused(
                HEAD + "<quote>\n<options net=\"1e999999999\"/></quote></job:Job>",
                ", line 3, quote.options[1].net \"1e999999999\": this is not a number of up to 30 digits; write one like 12.50,"
                        + " with a point");
        assertRefused(
                HEAD + "<quote>\n<options net=\"12,50\"/></quote></job:Job>",
                ", line 3, quote.options[1].net \"12,50\": this is not a number of up to 30 digits; write one like 12.50, with a"
                        + " point");
    }

    @Test
    void sameIdTwice() throws IOException {
        Path path = folder.resolve("twice.catalogue");
        Files.writeString(
                path,
                "<c:Catalogue xmlns:c=\"urn:twinfeed:1:catalogue\">\n<heaters id=\"h85\"/>\n<heaters\n"
                        + " id=\"h85\"/>\n</c:Catalogue>");
        InputException refused = assertThrows(InputException.class, () -> CatalogueFile.load(path));
        assertEquals(
                path + ", line 4, heaters[h85].id \"h85\": the id is used twice; give each its own id",
                refused.getMessage());
    }

    @Test
    void sameAttributeTwiceIsNoXml() throws IOException {
        assertLine(HEAD + "<survey takenBy=\"a\" takenBy=\"b\"/></job:Job>", 2, "takenBy");
    }

    @Test
    void fileThatIsTooLarge() throws IOException {
        Path path = folder.resolve("large.job");
        byte[] head = (HEAD + "<!--").getBytes(StandardCharsets.UTF_8);
        byte[] large = new byte[FileText.MOST_BYTES + 1];
        java.util.Arrays.fill(large, (byte) 'x');
        System.arraycopy(head, 0, large, 0, head.length);
        Files.write(path, large);
        assertRefused(
                path,
                path
                        + ": the file is larger than 16 MiB; name a smaller one; photographs belong in files of their own");
    }

    @Test
    void largestFileIsRead() throws IOException {
        byte[] head = (HEAD + "<!--").getBytes(StandardCharsets.UTF_8);
        byte[] tail = "--></job:Job>".getBytes(StandardCharsets.UTF_8);
        byte[] largest = new byte[FileText.MOST_BYTES];
        java.util.Arrays.fill(largest, (byte) 'x');
        System.arraycopy(head, 0, largest, 0, head.length);
        System.arraycopy(tail, 0, largest, largest.length - tail.length, tail.length);
        assertEquals("1", JobFile.form().read("largest.job", largest).getVersion());
    }

    @Test
    void allFaultsAtOnce() throws IOException {
        Path path = write(HEAD
                + "  <survey takenOn=\"yesterday\">\n    <wather/>\n    <unit age=\"old\" colour=\"white\"/>\n"
                + "  </survey>\n</job:Job>");
        InputException refused = assertThrows(InputException.class, () -> JobFile.load(path));
        assertEquals(
                List.of("survey.takenOn", "survey.wather", "survey.unit.age", "survey.unit"),
                refused.problems().stream().map(InputProblem::element).toList());
        assertEquals(
                List.of(2, 3, 4, 4),
                refused.problems().stream().map(InputProblem::line).toList());
        assertEquals(4, refused.getMessage().lines().count());
    }

    @Test
    void thousandFaultsAreCutShort() throws IOException {
        Path path = write(HEAD + "<wrong/>".repeat(1000) + "</job:Job>");
        InputException refused = assertThrows(InputException.class, () -> JobFile.load(path));
        assertEquals(50, refused.problems().size());
    }

    @Test
    void messageStaysInItsLine() throws IOException {
        Path path = write(HEAD + "<survey takenOn=\"a&#10;b&#13;c" + "x".repeat(500) + "\"/></job:Job>");
        InputException refused = assertThrows(InputException.class, () -> JobFile.load(path));
        assertEquals(1, refused.getMessage().lines().count());
        assertTrue(refused.getMessage().length() < folder.toString().length() + 300, refused.getMessage());
    }

    @Test
    void catalogueOfAJob() throws IOException {
        Path path = write(HEAD + "</job:Job>");
        var job = JobFile.load(path);
        assertCatalogue(
                job,
                path,
                "",
                "catalogue: the job names no heater catalogue; write catalogue=\"heaters.catalogue\""
                        + " in its first tag");
        String wrong =
                "this is not the file name of a heater catalogue; name a file ending in .catalogue, relative to the job's"
                        + " folder";
        assertCatalogue(job, path, "/etc/passwd", "catalogue \"/etc/passwd\": " + wrong);
        assertCatalogue(job, path, "heaters.xml", "catalogue \"heaters.xml\": " + wrong);
        job.setCatalogue("none.catalogue");
        InputException refused = assertThrows(InputException.class, () -> JobFile.catalogue(job, path));
        assertEquals(
                folder.resolve("none.catalogue")
                        + ": there is no such file; check the folder and the spelling of the name",
                refused.getMessage());
    }

    private static void assertCatalogue(twinfeed.model.job.Job job, Path path, String name, String expected) {
        job.setCatalogue(name);
        InputException refused = assertThrows(InputException.class, () -> JobFile.catalogue(job, path));
        assertEquals(path + ", " + expected, refused.getMessage());
    }

    private Path write(String text) throws IOException {
        Path path = folder.resolve("bad.job");
        Files.writeString(path, text);
        return path;
    }

    private void assertValue(String inSurvey, String expected) throws IOException {
        assertRefused(HEAD + "  <survey>\n    " + inSurvey + "\n  </survey>\n</job:Job>", ", line 3, " + expected);
    }

    private void assertRefused(String text, String expected) throws IOException {
        Path path = write(text);
        assertRefused(path, path + expected);
    }

    private static void assertRefused(Path path, String expected) {
        InputException refused = assertThrows(InputException.class, () -> JobFile.load(path));
        assertEquals(expected, refused.getMessage());
        assertFalse(refused.problems().isEmpty());
    }

    private void assertLine(String text, int line, String part) throws IOException {
        Path path = write(text);
        InputException refused = assertThrows(InputException.class, () -> JobFile.load(path));
        assertEquals(line, refused.problems().get(0).line(), refused.getMessage());
        assertTrue(refused.getMessage().contains(part), refused.getMessage());
        assertEquals(1, refused.getMessage().lines().count(), refused.getMessage());
    }

    /** A thousand faults in one file: the message names the first and counts the rest, the list holds all. */
    @Test
    void aMessageIsNoLongerThanAScreen() {
        List<InputProblem> many = java.util.stream.IntStream.range(0, 1000)
                .mapToObj(i -> new InputProblem(
                        "a.job", i + 1, "x".repeat(500), "y".repeat(500), "z".repeat(900), "z".repeat(900)))
                .toList();
        InputException refused = new InputException(many);
        assertEquals(1000, refused.problems().size());
        String message = String.valueOf(refused.getMessage());
        assertTrue(message.length() < 2048, "length: " + message.length());
        assertTrue(message.endsWith("and 999 more of this kind or another; mend these first"), message);
    }
}
