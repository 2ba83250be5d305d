// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.chart.Chart;
import twinfeed.desktop.text.Words;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.TwinfeedService;

/**
 * Drawing and charts as files. That they are SVG is checked by an XML parser and by the names of the elements, as the SVG 1.1
 * recommendation of the W3C has them.
 */
final class SvgTest {
    private static final Words WORDS = new Words(Locale.UK);
    private static final String SVG = "http://www.w3.org/2000/svg";

    @TempDir
    private Path folder;

    private Survey survey;
    private OptionAssessment option;

    @BeforeEach
    void judge() throws Exception {
        DemoFiles.copyInto(folder);
        TwinfeedService service = DemoFiles.service();
        AssessedJob judged = service.quickAssess(service.open(folder.resolve("alder-beck.job"), null), Locale.UK);
        survey = judged.opened().job().getSurvey();
        option = judged.record().getOptions().get(1);
    }

    private static Document parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setNamespaceAware(true);
        Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        assertEquals("svg", document.getDocumentElement().getLocalName());
        assertEquals(SVG, document.getDocumentElement().getNamespaceURI());
        return document;
    }

    private static List<Element> all(Document document, String name) {
        NodeList found = document.getElementsByTagNameNS(SVG, name);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            all.add((Element) found.item(i));
        }
        return all;
    }

    private static List<String> texts(Document document) {
        return all(document, "text").stream().map(Element::getTextContent).toList();
    }

    @Test
    void drawingHasEachPieceAndFramesTheOneThatDecides() throws Exception {
        HouseDrawing house = HouseDrawing.asItIs(survey, option, Locale.UK);
        Document drawing = parsed(HouseSvg.of(house, "Alder Beck 3 & <neighbour>", Locale.UK));
        List<String> texts = texts(drawing);
        assertEquals("Alder Beck 3 & <neighbour>", texts.get(0));
        for (DrawnPiece piece : house.pieces()) {
            assertTrue(texts.stream().anyMatch(text -> text.startsWith(piece.name())), piece.name() + " in " + texts);
            if (piece.mark() != null) {
                assertTrue(
                        texts.stream().anyMatch(text -> text.endsWith(piece.verdict())),
                        piece.verdict() + " in " + texts);
            }
        }
        long binding = house.pieces().stream().filter(DrawnPiece::binding).count();
        assertEquals(1, binding);
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("decides")), "in words: " + texts);
        long frames = all(drawing, "rect").stream()
                .filter(each -> each.getAttribute("fill").equals("none"))
                .count();
        assertEquals(binding, frames, "the row that decides is framed");
        assertInside(drawing);
    }

    @Test
    void chartHasItsCurvesAxesAndLegend() throws Exception {
        List<Chart> charts = Chart.of(option);
        assertFalse(charts.isEmpty());
        for (Chart chart : charts) {
            Document drawing = parsed(ChartSvg.of(chart, Locale.UK));
            List<String> texts = texts(drawing);
            assertTrue(texts.contains(chart.title()) && texts.contains(chart.xTitle()), texts.toString());
            chart.curves().forEach(curve -> assertTrue(texts.contains(curve.title()), texts.toString()));
            long lines = chart.curves().stream()
                    .filter(curve -> curve.x().size() > 1)
                    .count();
            assertEquals(2 * lines, all(drawing, "polyline").size(), "in the chart and in the legend");
            assertInside(drawing);
        }
    }

    /** Numbers have the way of writing of the language, those that place things have a point. */
    @Test
    void germanChartHasDecimalCommas() throws Exception {
        String svg = ChartSvg.of(
                new Chart(
                        "Druck",
                        "L/min",
                        "bar",
                        List.of(),
                        List.of(new Chart.Curve("p", List.of(0.0, 1.0), List.of(0.0, 0.5)))),
                Locale.GERMANY);
        assertTrue(texts(parsed(svg)).contains("0,1"), svg);
        assertFalse(svg.contains("x=\"76,0"), svg);
    }

    private static void assertInside(Document drawing) {
        Element root = drawing.getDocumentElement();
        double width = Double.parseDouble(root.getAttribute("width"));
        double height = Double.parseDouble(root.getAttribute("height"));
        for (Element text : all(drawing, "text")) {
            double x = Double.parseDouble(text.getAttribute("x"));
            double y = Double.parseDouble(text.getAttribute("y"));
            assertTrue(x >= 0 && x <= width && y >= 0 && y <= height, text.getTextContent());
        }
    }
}
