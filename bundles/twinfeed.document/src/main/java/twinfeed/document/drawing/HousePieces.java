// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentTexts;
import twinfeed.document.Figures;
import twinfeed.document.drawing.DrawnPiece.Field;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.model.work.RenewedPieces;
import twinfeed.units.Quantity;

/** Reads the pieces of a drawing from a survey and what was found. */
final class HousePieces {
    private static final String CIRCUIT = PieceFindings.POWER + ".circuit";

    private final Survey surveyed;
    private final Survey survey;
    private final PieceFindings findings;
    private final RenewedPieces renewed;
    private final ValuesAlong pressures;
    private final ValuesAlong voltages;
    private final DocumentTexts words;

    private HousePieces(
            Survey surveyed,
            Survey survey,
            PieceFindings findings,
            List<Finding> answers,
            RenewedPieces renewed,
            Locale locale) {
        this.surveyed = surveyed;
        this.survey = survey;
        this.findings = findings;
        this.renewed = renewed;
        this.words = DrawingTexts.in(locale);
        Figures figures = new Figures(locale);
        this.pressures = ValuesAlong.pressures(answers, figures);
        this.voltages = ValuesAlong.voltages(answers, figures);
    }

    /**
     * The drawing.
     *
     * @param surveyed the house as it is
     * @param survey the house that is drawn: the same, or a copy with work done
     * @param renewed what is other in it
     */
    static HouseDrawing of(
            Survey surveyed,
            Survey survey,
            @Nullable OptionAssessment option,
            PieceFindings findings,
            List<Finding> answers,
            RenewedPieces renewed,
            Locale locale) {
        HousePieces pieces = new HousePieces(surveyed, survey, findings, answers, renewed, locale);
        boolean measured =
                !pieces.pressures.at(0).isEmpty() || !pieces.voltages.at(0).isEmpty();
        return new HouseDrawing(pieces.water(), pieces.power(), pieces.unit(option), measured);
    }

    private List<DrawnPiece> water() {
        List<DrawnPiece> pieces = new ArrayList<>();
        @Nullable WaterFeed feed = survey.getWater();
        List<PipeSegment> pipes = feed == null ? List.of() : feed.getSegments();
        int ahead = aheadOfNewPump(feed);
        // A pump for the shower alone leaves the main and the taps on it as they are.
        @Nullable WaterFeed start = ahead > 0 ? surveyed.getWater() : feed;
        pieces.add(new DrawnPiece(
                PieceKind.MAIN,
                source(start),
                test(start),
                ahead > 0 ? "" : pressures.at(pipes.size()),
                PieceExtent.NONE,
                new Field(survey, "water.test.staticPressure"),
                findings.answer(null, ahead > 0 ? List.of() : List.of(PieceFindings.WATER)),
                renewed(ahead == 0 && renewed.main())));
        List<DrawOff> taps = start == null ? List.of() : start.getDrawOffs();
        boolean drawn = ahead == 0 && !taps.isEmpty();
        addTaps(pieces, taps, pipes, 0, drawn);
        for (int i = 0; i < pipes.size(); i++) {
            List<String> anchors = i < pipes.size() - 1
                    ? List.of()
                    : drawn ? List.of(PieceFindings.PIPES) : List.of(PieceFindings.PIPES, PieceFindings.TAPS);
            pieces.add(pipe(pipes.get(i), anchors, i < ahead ? "" : pressures.at(pipes.size() - 1 - i)));
            addTaps(pieces, taps, pipes, i + 1, drawn);
            if (i + 1 == ahead) {
                pieces.add(pump(feed, pressures.at(pipes.size() - ahead)));
            }
        }
        return pieces;
    }

    /** How many pipes lie ahead of a pump that the work puts between them; 0 where it puts none there. */
    private int aheadOfNewPump(@Nullable WaterFeed feed) {
        @Nullable WaterFeed before = surveyed.getWater();
        if (feed == null
                || before == null
                || feed.getTest() == null
                || feed.getSource() != WaterSource.PUMPED
                || before.getSource() == WaterSource.PUMPED) {
            return 0;
        }
        return placeAfter(feed.getTest().getGaugeAfter(), feed.getSegments());
    }

    private String source(@Nullable WaterFeed feed) {
        return words.get(feed == null ? "main" : "source." + feed.getSource().getLiteral());
    }

    private DrawnPiece pump(WaterFeed feed, String reading) {
        return new DrawnPiece(
                PieceKind.PIPE,
                source(feed),
                test(feed),
                reading,
                new PieceExtent(0.0, null, 0, false, 0),
                new Field(survey, "water.test.staticPressure"),
                findings.answer(null, List.of(PieceFindings.WATER)),
                renewed(true));
    }

    /**
     * A tap whose tee is nowhere is drawn at the start, where the calculation takes it too.
     *
     * @param judged whether the findings are about these taps
     */
    private void addTaps(
            List<DrawnPiece> pieces, List<DrawOff> taps, List<PipeSegment> pipes, int tee, boolean judged) {
        for (DrawOff tap : taps) {
            if (placeAfter(tap.getTeeAfter(), pipes) == tee) {
                // What is about taps in general stands at the first of them, the one that is opened first.
                List<String> anchors = judged && tap == taps.get(0) ? List.of(PieceFindings.TAPS) : List.of();
                pieces.add(new DrawnPiece(
                        PieceKind.TAP,
                        name(tap.getName(), "tap"),
                        recorded(plain(tap.getFlow())),
                        "",
                        new PieceExtent(null, si(tap.getHeight()), 0, false, tee),
                        new Field(tap, "flow"),
                        findings.answer(tap.getName(), anchors),
                        renewed(tap)));
            }
        }
    }

    /** The number of the place behind a pipe, 0 for the start; also where no pipe is called so. */
    private static int placeAfter(@Nullable String pipe, List<PipeSegment> pipes) {
        for (int i = 0; i < pipes.size(); i++) {
            if (pipe != null && pipe.equals(pipes.get(i).getName())) {
                return i + 1;
            }
        }
        return 0;
    }

    private DrawnPiece pipe(PipeSegment pipe, List<String> anchors, String reading) {
        int fittings = pipe.getFittings().stream().mapToInt(HousePieces::count).sum();
        String size = pipe.getSize() == null ? plain(pipe.getBore()) : pipe.getSize();
        return new DrawnPiece(
                PieceKind.PIPE,
                name(pipe.getName(), "pipe"),
                recorded(size, plain(pipe.getLength())),
                reading,
                new PieceExtent(si(pipe.getLength()), si(pipe.getRise()), fittings, false, 0),
                new Field(pipe, "size"),
                findings.answer(pipe.getName(), anchors),
                renewed(pipe));
    }

    private static int count(Fitting fitting) {
        return fitting.getCount() == null ? 1 : Math.max(0, fitting.getCount());
    }

    private String test(@Nullable WaterFeed feed) {
        return feed == null || feed.getTest() == null
                ? words.get("unknown")
                : recorded(plain(feed.getTest().getStaticPressure()));
    }

    private List<DrawnPiece> power() {
        List<DrawnPiece> pieces = new ArrayList<>();
        @Nullable ElectricalFeed feed = survey.getElectricity();
        @Nullable Circuit circuit = feed == null ? null : feed.getCircuit();
        List<CableSegment> cable = circuit == null ? List.of() : circuit.getSegments();
        pieces.add(new DrawnPiece(
                PieceKind.FUSE,
                words.get("fuse"),
                recorded(feed == null ? "" : plain(feed.getServiceFuse())),
                "",
                PieceExtent.NONE,
                new Field(survey, "electricity.serviceFuse"),
                findings.answer(null, List.of(PieceFindings.POWER)),
                renewed(renewed.fuse())));
        pieces.add(device(circuit == null ? null : circuit.getDevice()));
        pieces.add(residual(circuit == null ? null : circuit.getRcd(), voltages.at(cable.size())));
        for (int i = 0; i < cable.size(); i++) {
            boolean last = i == cable.size() - 1;
            pieces.add(cable(cable.get(i), last, voltages.at(cable.size() - 1 - i)));
        }
        pieces.add(isolator(circuit == null ? null : circuit.getIsolator()));
        return pieces;
    }

    private DrawnPiece device(@Nullable ProtectiveDevice device) {
        return new DrawnPiece(
                PieceKind.DEVICE,
                words.get("device"),
                recorded(device == null ? "" : plain(device.getRating())),
                "",
                PieceExtent.NONE,
                new Field(survey, "electricity.circuit.device.rating"),
                findings.answer(null, List.of(CIRCUIT, CIRCUIT + ".device")),
                renewed(device));
    }

    private DrawnPiece residual(@Nullable ResidualDevice rcd, String reading) {
        String kind = rcd == null || !rcd.isSetKind()
                ? ""
                : words.get("rcd.kind." + rcd.getKind().getLiteral());
        return new DrawnPiece(
                PieceKind.RCD,
                words.get("rcd"),
                recorded(kind, kind.isEmpty() || rcd == null ? "" : plain(rcd.getResidual())),
                reading,
                PieceExtent.NONE,
                new Field(survey, "electricity.circuit.rcd.kind"),
                findings.answer(null, List.of(CIRCUIT + ".rcd")),
                renewed(rcd));
    }

    private DrawnPiece cable(CableSegment cable, boolean last, String reading) {
        boolean loft = Boolean.TRUE.equals(cable.getLoft());
        return new DrawnPiece(
                PieceKind.CABLE,
                name(cable.getName(), "cable"),
                recorded(plain(cable.getSize()), plain(cable.getLength()), method(cable)),
                reading,
                new PieceExtent(si(cable.getLength()), null, 0, loft, 0),
                new Field(cable, "size"),
                findings.answer(cable.getName(), last ? List.of(CIRCUIT + ".segments") : List.of()),
                renewed(cable));
    }

    private String method(CableSegment cable) {
        return cable.getMethod() == null ? "" : words.get("method", Map.of("method", cable.getMethod()));
    }

    private DrawnPiece isolator(@Nullable Isolator isolator) {
        return new DrawnPiece(
                PieceKind.ISOLATOR,
                words.get("isolator"),
                recorded(isolator == null ? "" : plain(isolator.getRating())),
                "",
                PieceExtent.NONE,
                new Field(survey, "electricity.circuit.isolator.rating"),
                findings.answer(null, List.of(CIRCUIT + ".isolator")),
                renewed(isolator));
    }

    private DrawnPiece unit(@Nullable OptionAssessment option) {
        boolean fitted = option != null && !Boolean.TRUE.equals(option.getPresent());
        String known = option == null ? null : option.getTitle();
        return new DrawnPiece(
                PieceKind.UNIT,
                known == null ? words.get("unit") : known,
                "",
                Stream.of(pressures.at(0), voltages.at(0))
                        .filter(value -> !value.isEmpty())
                        .collect(Collectors.joining(", ")),
                PieceExtent.NONE,
                new Field(survey, "unit.heaterId"),
                findings.answer(null, List.of(PieceFindings.UNIT)),
                renewed(fitted));
    }

    private String renewed(@Nullable EObject piece) {
        return renewed.altered(piece) ? words.get("altered") : renewed(renewed.contains(piece));
    }

    private String renewed(boolean other) {
        return other ? words.get("new") : "";
    }

    private String name(@Nullable String name, String key) {
        return name == null || name.isBlank() ? words.get(key) : name;
    }

    private static @Nullable Double si(@Nullable Quantity value) {
        return value == null ? null : Double.valueOf(value.si());
    }

    /** Without its tolerance: a drawing has room for what counts only. */
    private String plain(@Nullable Quantity value) {
        return value == null ? "" : value.toString(words.locale()).replaceAll(" (±|\\+/-|\\+-|u) .*", "");
    }

    private String recorded(@Nullable String... parts) {
        String there = Stream.of(parts)
                .filter(Objects::nonNull)
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining(", "));
        return there.isEmpty() ? words.get("unknown") : there;
    }
}
