// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.Survey;
import twinfeed.model.work.WorkDone;
import twinfeed.units.Current;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;

/** The drawing of the house on paper: as it is, and with the work done, in the workbook read by POI as DrawingML. */
final class QuoteDrawingTest {
    private static final Path DEMO = Demo.FOLDER;

    private final TwinfeedService service = TwinfeedService.onClassPath();

    @TempDir
    private Path folder;

    private AssessedJob judged;
    private Quote quote;

    @BeforeEach
    void assess() {
        PriceBook book = service.book(DEMO.resolve("prices.csv"));
        judged = service.judge(service.open(DEMO.resolve("alder-beck.job"), null), book, null, Locale.UK);
        quote = QuotingService.draft(judged, book, LocalDate.of(2026, 11, 25), FirmFile.none(), Locale.UK, List.of());
    }

    private List<String> texts(XSSFShapeGroup group) {
        return group.iterator().hasNext()
                ? java.util.stream.StreamSupport.stream(group.spliterator(), false)
                        .filter(XSSFSimpleShape.class::isInstance)
                        .map(shape -> ((XSSFSimpleShape) shape).getText())
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.toList())
                : List.of();
    }

    @Test
    void workbookHasBothAsNativeShapes() throws Exception {
        Path file = folder.resolve("quote.xlsx");
        QuotingService.write(judged, quote, FirmFile.none(), Locale.UK, OutputPaths.workbook(file));
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            XSSFSheet sheet = book.getSheet("Drawing");
            List<XSSFShapeGroup> groups = sheet.createDrawingPatriarch().getShapes().stream()
                    .map(XSSFShapeGroup.class::cast)
                    .toList();
            assertEquals(2, groups.size(), "as it is and with the work done");
            assertTrue(
                    texts(groups.get(0)).contains("kitchen tap"),
                    texts(groups.get(0)).toString());
            assertTrue(
                    texts(groups.get(0)).contains("2.75 / 1.63 bar"),
                    texts(groups.get(0)).toString());
            assertTrue(texts(groups.get(0)).stream().noneMatch(text -> text.matches("[0-9A-Z]+ new")));
            assertTrue(texts(groups.get(1)).stream().anyMatch(text -> text.matches("[0-9A-Z]+ new")));
        }
    }

    /** What the window marks as new is new on paper too, whichever heater is offered first. */
    @Test
    void paperMarksAsNewWhatTheWindowMarks() {
        Survey survey = judged.opened().job().getSurvey();
        Survey changed = EcoreUtil.copy(survey);
        Isolator isolator = changed.getElectricity().getCircuit().getIsolator();
        Circuit circuit = changed.getElectricity().getCircuit();
        isolator.setRating(Current.valueOf(isolator.getRating().toString()));
        circuit.getDevice()
                .setRating(Current.valueOf(circuit.getDevice().getRating().toString()));
        OptionAssessment option = judged.record().getOptions().get(1);
        List<String> window = titles(HouseDrawing.withWork(survey, changed, option, Locale.UK));
        assertEquals(
                3, window.stream().filter(title -> title.endsWith(" (new)")).count(), window.toString());
        WorkDone done = WorkDone.of(survey, changed);
        WorkDone read = new WorkDone(EcoreUtil.copy(done.supplies()), done.renewed());
        assertEquals(window, titles(HouseDrawing.withWork(survey, read, option, Locale.UK)));
        for (OptionAssessment each : judged.record().getOptions()) {
            assertEquals(
                    titles(HouseDrawing.withWork(survey, judged.withWork(each), each, Locale.UK)),
                    titles(HouseDrawing.withWork(survey, WorkDone.of(survey, judged.withWork(each)), each, Locale.UK)));
        }
    }

    /** Water out of a tank is not kept fit to drink: the pump stands in the shower's own pipe, and main and tap stay as they were. */
    @Test
    void pumpStandsBehindTheLastTap() {
        AssessedJob weak = service.judge(
                service.open(DEMO.resolve("hazel-ghyll.job"), null),
                service.book(DEMO.resolve("prices.csv")),
                null,
                Locale.UK);
        Survey survey = weak.opened().job().getSurvey();
        OptionAssessment option = weak.record().getOptions().get(0);
        HouseDrawing drawing = HouseDrawing.withWork(survey, weak.withWork(option), option, Locale.UK);
        assertEquals(
                List.of("Main", "service pipe", "wash basin", "Tank with pump (new)", "shower branch"),
                drawing.water().stream().map(DrawnPiece::title).toList());
        assertEquals(
                List.of("", "", "", "3.00 / 2.85 bar", "2.75 / 2.52 bar"),
                drawing.water().stream().map(DrawnPiece::reading).toList());
        assertEquals("2.0 bar", drawing.water().get(0).detail());
    }

    private static List<String> titles(HouseDrawing drawing) {
        return drawing.pieces().stream().map(DrawnPiece::title).toList();
    }

    /** A part of the same name is written by POI first; what is packed is what spreadsheet programs read. */
    @Test
    void sameQuoteGivesTheSameBytes() throws Exception {
        Path one = folder.resolve("one.xlsx");
        Path other = folder.resolve("other.xlsx");
        QuotingService.write(judged, quote, FirmFile.none(), Locale.UK, OutputPaths.workbook(one));
        QuotingService.write(judged, quote, FirmFile.none(), Locale.UK, OutputPaths.workbook(other));
        assertEquals(-1, Files.mismatch(one, other));
    }

    /** With photograph and logo, in the language with the longer words too. */
    @Test
    void workbooksAreSmall() throws Exception {
        PriceBook book = service.book(DEMO.resolve("prices.csv"));
        for (Locale locale : List.of(Locale.UK, Locale.GERMANY)) {
            AssessedJob said = service.judge(service.open(DEMO.resolve("alder-beck.job"), null), book, null, locale);
            FirmFile firm = FirmFile.beside(DEMO.resolve("prices.csv"));
            Quote draft = QuotingService.draft(said, book, LocalDate.of(2026, 11, 25), firm, locale, List.of());
            Path file = folder.resolve(locale.getLanguage() + ".xlsx");
            QuotingService.write(said, draft, firm, locale, OutputPaths.workbook(file));
            assertTrue(Files.size(file) < 240_000, locale + ": " + Files.size(file) + " bytes");
        }
    }
}
