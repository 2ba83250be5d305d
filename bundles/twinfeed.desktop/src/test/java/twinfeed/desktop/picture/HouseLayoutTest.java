// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.desktop.DemoFiles;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.layout.Area;
import twinfeed.document.drawing.layout.HouseLayout;
import twinfeed.document.drawing.layout.HousePicture;
import twinfeed.document.shape.LetterWidths;
import twinfeed.document.shape.Shape;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.TextWidth;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Length;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.TwinfeedService;

/** No text of a drawing stands over another, and everything is on the sheet, however long the names and however many the pieces. */
final class HouseLayoutTest {
    private static final double LETTERS = 13;
    private static final TextWidth WIDTHS = LetterWidths.at(LETTERS, 1);
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;

    @TempDir
    private Path folder;

    private static Area area(Label label) {
        double wide = WIDTHS.of(label.text(), label.size(), label.bold());
        double high = LETTERS * label.size().share();
        // Ascent and descent of Helvetica's lower-case letters with strokes up and down: 0.72 and 0.21 of the size
        // (Adobe's metrics).
        return new Area(label.x() - wide * label.anchor().share(), label.y() - 0.72 * high, wide, 0.93 * high);
    }

    private static HousePicture clear(HouseDrawing drawing, double width, Locale locale, String what) {
        HousePicture picture = new HouseLayout(width, LETTERS, WIDTHS, locale).of(drawing, "Title of it all");
        assertEquals(width, picture.width());
        List<Label> labels = new ArrayList<>();
        for (Shape shape : picture.shapes()) {
            if (shape instanceof Label label) {
                labels.add(label);
            }
        }
        for (int i = 0; i < labels.size(); i++) {
            Area one = area(labels.get(i));
            String text = what + ", " + width + ": " + labels.get(i).text();
            assertTrue(one.x() >= -0.01 && one.x() + one.width() <= width + 0.01, text + " leaves at a side");
            assertTrue(one.y() >= 0 && one.y() + one.height() <= picture.height(), text + " leaves above or below");
            for (int j = 0; j < i; j++) {
                if (one.overlaps(area(labels.get(j)))) {
                    throw new AssertionError(text + " over " + labels.get(j).text());
                }
            }
        }
        return picture;
    }

    private static void everySize(HouseDrawing drawing, Locale locale, String what) {
        for (double width : new double[] {320, 500, 640, 760, 1100, 1700}) {
            HousePicture picture = clear(drawing, width, locale, what);
            for (DrawnPiece piece : drawing.pieces()) {
                assertTrue(
                        picture.targets().stream().anyMatch(target -> target.piece() == piece),
                        what + ": " + piece.name() + " is nowhere");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"alder-beck", "birch-syke", "hazel-ghyll", "rowan-brook", "willow-mere"})
    void demonstration(String name) throws Exception {
        DemoFiles.copyInto(folder);
        TwinfeedService service = DemoFiles.service();
        for (Locale locale : List.of(Locale.UK, Locale.GERMANY)) {
            AssessedJob judged = service.judge(service.open(folder.resolve(name + ".job"), null), null, null, locale);
            Survey survey = judged.opened().job().getSurvey();
            everySize(HouseDrawing.unassessed(survey, locale), locale, name);
            for (OptionAssessment option : judged.record().getOptions()) {
                everySize(HouseDrawing.asItIs(survey, option, locale), locale, name);
                if (HouseDrawing.hasWork(option)) {
                    HouseDrawing done = HouseDrawing.withWork(survey, judged.withWork(option), option, locale);
                    everySize(done, locale, name + " with the work");
                }
            }
        }
    }

    /** The cable in the loft is too thin for the heater: with the work done there is another one, and the pipes ahead of the branch stay. */
    @Test
    void workIsMarkedInWords() throws Exception {
        DemoFiles.copyInto(folder);
        TwinfeedService service = DemoFiles.service();
        PriceBook book = service.book(folder.resolve("prices.csv"));
        AssessedJob judged = service.judge(service.open(folder.resolve("alder-beck.job"), null), book, null, Locale.UK);
        Survey survey = judged.opened().job().getSurvey();
        OptionAssessment option = judged.record().getOptions().get(1);
        HouseDrawing done = HouseDrawing.withWork(survey, judged.withWork(option), option, Locale.UK);
        List<String> renewed = done.pieces().stream()
                .filter(piece -> piece.renewed().equals("new"))
                .map(DrawnPiece::name)
                .toList();
        assertTrue(renewed.contains("loft, under insulation"), renewed.toString());
        assertFalse(renewed.contains("service pipe") || renewed.contains("kitchen tap"), renewed.toString());
        HouseDrawing now = HouseDrawing.asItIs(survey, option, Locale.UK);
        assertTrue(
                now.water().stream().allMatch(piece -> piece.renewed().isEmpty()),
                "nothing is new in the house as it is");
        assertEquals(1, now.pieces().stream().filter(DrawnPiece::binding).count());
        assertTrue(done.pieces().stream().noneMatch(DrawnPiece::binding), "the work has put right what decided");
        HousePicture picture = new HouseLayout(760, LETTERS, WIDTHS, Locale.UK).of(done);
        assertTrue(
                picture.shapes().stream()
                        .anyMatch(shape ->
                                shape instanceof Label label && label.text().matches("[A-Z] new")),
                "a plate says so");
    }

    /** What was measured stands in the drawing: the pressure that is judged at the unit, the voltage that the cable leaves. */
    @Test
    void endsInTheValuesOfTheFindings() throws Exception {
        DemoFiles.copyInto(folder);
        TwinfeedService service = DemoFiles.service();
        AssessedJob judged =
                service.judge(service.open(folder.resolve("rowan-brook.job"), null), null, null, Locale.UK);
        OptionAssessment option = judged.record().getOptions().get(1);
        HouseDrawing drawing = HouseDrawing.asItIs(judged.opened().job().getSurvey(), option, Locale.UK);
        double running = value(option, "pressure.running");
        double drop = value(option, "circuit.voltageDrop");
        assertTrue(
                drawing.unit().reading().contains(String.format(Locale.UK, "/ %.2f bar", running)),
                drawing.unit().reading() + " for " + running);
        // The survey says 240 V at the origin.
        assertTrue(
                drawing.unit().reading().endsWith(String.format(Locale.UK, ", %.0f V", 240 - drop)),
                drawing.unit().reading() + " for a drop of " + drop);
    }

    private static double value(OptionAssessment option, String check) {
        return option.getFindings().stream()
                .filter(finding -> check.equals(finding.getKey()))
                .findFirst()
                .orElseThrow()
                .getValue();
    }

    @Test
    void anyHouse() {
        Random random = new Random(7);
        for (int house = 0; house < 150; house++) {
            Survey survey = house(random);
            everySize(HouseDrawing.unassessed(survey, Locale.UK), Locale.UK, "house " + house);
        }
    }

    @Test
    void houseOfWhichNothingIsKnown() {
        everySize(HouseDrawing.unassessed(MAKE.createSurvey(), Locale.GERMANY), Locale.GERMANY, "blank");
    }

    private static Survey house(Random random) {
        Survey survey = MAKE.createSurvey();
        survey.setWater(MAKE.createWaterFeed());
        int pipes = 1 + random.nextInt(12);
        for (int i = 0; i < pipes; i++) {
            PipeSegment pipe = MAKE.createPipeSegment();
            pipe.setName(name(random, "pipe " + i));
            pipe.setSize(random.nextBoolean() ? "15 mm" : null);
            if (random.nextInt(4) > 0) {
                pipe.setLength(Length.valueOf(random.nextInt(40) + " m"));
                pipe.setRise(Length.valueOf((random.nextInt(70) - 20) / 10.0 + " m"));
            }
            survey.getWater().getSegments().add(pipe);
        }
        for (int i = random.nextInt(6); i > 0; i--) {
            DrawOff tap = MAKE.createDrawOff();
            tap.setName(name(random, "tap " + i));
            int tee = random.nextInt(pipes + 1) - 1;
            tap.setTeeAfter(
                    tee < 0 ? null : survey.getWater().getSegments().get(tee).getName());
            if (random.nextBoolean()) {
                tap.setHeight(Length.valueOf((random.nextInt(60) - 30) / 10.0 + " m"));
            }
            survey.getWater().getDrawOffs().add(tap);
        }
        survey.setElectricity(MAKE.createElectricalFeed());
        Circuit circuit = MAKE.createCircuit();
        survey.getElectricity().setCircuit(circuit);
        for (int i = 1 + random.nextInt(12); i > 0; i--) {
            CableSegment cable = MAKE.createCableSegment();
            cable.setName(name(random, "cable " + i));
            cable.setLength(random.nextBoolean() ? Length.valueOf(random.nextInt(30) + " m") : null);
            cable.setLoft(random.nextBoolean());
            cable.setMethod("C");
            circuit.getSegments().add(cable);
        }
        return survey;
    }

    private static String name(Random random, String plain) {
        return random.nextInt(3) > 0
                ? plain
                : plain + " behind the cupboard under the stairs and along the Wasserversorgungsleitung 水管";
    }
}
