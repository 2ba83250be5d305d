// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentTexts;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.Quantity;
import twinfeed.units.text.Texts;

/**
 * The two feeds of a house as they run to the unit, piece by piece. A piece of which nothing is recorded is shown all the same:
 * that it is not known is worth seeing.
 *
 * @param water from the main on
 * @param power from the service fuse on
 * @param unit where both end
 */
public record HouseDrawing(List<DrawnPiece> water, List<DrawnPiece> power, DrawnPiece unit) {
    public HouseDrawing {
        water = List.copyOf(water);
        power = List.copyOf(power);
    }

    /** The picture of a survey, with what was found for one heater. */
    public static HouseDrawing of(Survey survey, PieceFindings findings, @Nullable String unit, Locale locale) {
        Painter painter = new Painter(survey, findings, new DocumentTexts(locale, TEXTS));
        return new HouseDrawing(painter.water(), painter.power(), painter.unit(unit));
    }

    /** The names of pipes and cables, by which findings name the piece that governs. */
    public static Set<String> names(Survey survey) {
        Set<String> names = new LinkedHashSet<>();
        if (survey.getWater() != null) {
            survey.getWater().getSegments().forEach(pipe -> names.add(pipe.getName()));
        }
        if (survey.getElectricity() != null && survey.getElectricity().getCircuit() != null) {
            survey.getElectricity().getCircuit().getSegments().forEach(cable -> names.add(cable.getName()));
        }
        return names;
    }

    private static final Texts TEXTS = new Texts(HouseDrawing.class, "Drawing");

    private static final String CIRCUIT = PieceFindings.POWER + ".circuit";

    private record Painter(Survey survey, PieceFindings findings, DocumentTexts words) {
        List<DrawnPiece> water() {
            List<DrawnPiece> pieces = new ArrayList<>();
            @Nullable WaterFeed feed = survey.getWater();
            pieces.add(piece("main", test(feed), "water.test.staticPressure", PieceFindings.WATER));
            if (feed != null) {
                List<PipeSegment> pipes = feed.getSegments();
                for (int i = 0; i < pipes.size(); i++) {
                    pieces.add(pipe(pipes.get(i), i == pipes.size() - 1));
                }
            }
            return pieces;
        }

        private DrawnPiece pipe(PipeSegment pipe, boolean last) {
            return findings.piece(
                    name(pipe.getName(), "pipe"),
                    joined(pipe.getSize(), plain(pipe.getLength())),
                    pipe,
                    "size",
                    pipe.getName(),
                    last ? List.of(PieceFindings.PIPES, PieceFindings.TAPS) : List.of());
        }

        private String test(@Nullable WaterFeed feed) {
            return feed == null || feed.getTest() == null
                    ? words.get("unknown")
                    : plain(feed.getTest().getStaticPressure());
        }

        List<DrawnPiece> power() {
            List<DrawnPiece> pieces = new ArrayList<>();
            @Nullable ElectricalFeed feed = survey.getElectricity();
            @Nullable Circuit circuit = feed == null ? null : feed.getCircuit();
            String fuse = feed == null ? "" : plain(feed.getServiceFuse());
            pieces.add(piece("fuse", fuse, "electricity.serviceFuse", PieceFindings.POWER));
            pieces.add(device(circuit == null ? null : circuit.getDevice()));
            pieces.add(residual(circuit == null ? null : circuit.getRcd()));
            if (circuit != null) {
                List<CableSegment> cable = circuit.getSegments();
                for (int i = 0; i < cable.size(); i++) {
                    pieces.add(cable(cable.get(i), i == cable.size() - 1));
                }
            }
            pieces.add(isolator(circuit == null ? null : circuit.getIsolator()));
            return pieces;
        }

        private DrawnPiece device(@Nullable ProtectiveDevice device) {
            String detail = device == null ? words.get("unknown") : plain(device.getRating());
            return findings.piece(
                    words.get("device"),
                    detail,
                    survey,
                    "electricity.circuit.device.rating",
                    null,
                    List.of(CIRCUIT, CIRCUIT + ".device"));
        }

        private DrawnPiece residual(@Nullable ResidualDevice rcd) {
            String detail = rcd == null || !rcd.isSetKind()
                    ? words.get("unknown")
                    : joined(words.get("rcd.kind." + rcd.getKind().getLiteral()), plain(rcd.getResidual()));
            return piece("rcd", detail, "electricity.circuit.rcd.kind", CIRCUIT + ".rcd");
        }

        private DrawnPiece cable(CableSegment cable, boolean last) {
            return findings.piece(
                    name(cable.getName(), "cable"),
                    joined(plain(cable.getSize()), plain(cable.getLength()), cable.getMethod()),
                    cable,
                    "size",
                    cable.getName(),
                    last ? List.of(CIRCUIT + ".segments") : List.of());
        }

        private DrawnPiece isolator(@Nullable Isolator isolator) {
            String detail = isolator == null ? words.get("unknown") : plain(isolator.getRating());
            return piece("isolator", detail, "electricity.circuit.isolator.rating", CIRCUIT + ".isolator");
        }

        DrawnPiece unit(@Nullable String known) {
            String title = known == null ? words.get("unit") : known;
            return findings.piece(title, "", survey, "unit.heaterId", null, List.of(PieceFindings.UNIT));
        }

        private DrawnPiece piece(String key, String detail, String path, String anchor) {
            return findings.piece(words.get(key), detail, survey, path, null, List.of(anchor));
        }

        private String name(@Nullable String name, String key) {
            return name == null || name.isBlank() ? words.get(key) : name;
        }

        /** Without its tolerance: a drawing has room for what counts only. */
        private String plain(@Nullable Quantity value) {
            return (value == null ? "" : value.toString(words.locale())).replaceAll(" (±|\\+/-|\\+-|u) .*", "");
        }

        private static String joined(@Nullable String... parts) {
            List<String> there = new ArrayList<>();
            for (String part : parts) {
                if (part != null && !part.isBlank()) {
                    there.add(part);
                }
            }
            return String.join(", ", there);
        }
    }
}
