// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.completion;

import java.util.Optional;
import java.util.Set;
import twinfeed.calculator.safety.SafeIsolation;
import twinfeed.document.DocumentTexts;
import twinfeed.document.OfferedFindings;
import twinfeed.document.Titles;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Step;
import twinfeed.model.quote.QuoteOption;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** The readings to take after the work, the bands in which they are accepted, and room for the measured ones. */
public final class CompletionSheet {
    private static final int LOW = 2;
    private static final int HIGH = 3;
    private static final int UNIT = 4;
    private static final int MEASURED = 5;
    private static final int RESULT = 6;
    private static final int LAST = 7;
    private static final CellStyle MEASURE =
            SheetStyles.BODY.border(CellStyle.Border.BOX).fill(CellStyle.Fill.INPUT);

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final DocumentTexts words;
    private final AcceptanceBands bands;

    /** The sheet's writer. */
    public CompletionSheet(QuoteSheets sheets, SheetWriter page) {
        this.sheets = sheets;
        this.page = page;
        this.words = sheets.words();
        this.bands = new AcceptanceBands(words, sheets.document().survey());
    }

    /** Writes it. */
    public void write() {
        page.setup().landscape().pages(1);
        page.columns(36, 50, 11, 11, 9, 14, 14, 40);
        sheets.head(page, "completion", LAST);
        page.row()
                .text(
                        0,
                        LAST,
                        words.get("completion.safety", "isolation", SafeIsolation.brief(words.locale())),
                        SheetStyles.BODY.fill(CellStyle.Fill.DOUBT));
        if (sheets.quote().getOptions().size() > 1) {
            page.row().text(0, LAST, words.get("completion.printed"), SheetStyles.MUTED);
        }
        int number = 0;
        for (QuoteOption option : sheets.quote().getOptions()) {
            Optional<OptionAssessment> assessed =
                    OfferedFindings.assessed(sheets.document().assessment(), option);
            if (assessed.isPresent()) {
                write(++number, option, assessed.get());
                if (number == 1) {
                    page.setup().printOnly(page.rowIndex(), LAST);
                }
            }
        }
    }

    private void write(int number, QuoteOption option, OptionAssessment assessed) {
        page.gap(8);
        String title = option.getTitle() == null ? Titles.option(words, assessed) : option.getTitle();
        page.row()
                .text(
                        0,
                        LAST,
                        words.get("option.number", "number", String.valueOf(number)) + ": " + title,
                        SheetStyles.BAND);
        sheets.tableHead(page, "completion", LAST + 1, Set.of(LOW, HIGH, MEASURED));
        bands.electrical(assessed).forEach(this::write);
        String intake = "";
        String outlet = "";
        for (AcceptanceBand band : bands.water(assessed)) {
            write(band);
            intake = band.key().equals("intake") ? page.address(MEASURED) : intake;
            outlet = band.key().equals("outlet") ? page.address(MEASURED) : outlet;
        }
        flow(assessed, intake, outlet);
        signature();
    }

    private void write(AcceptanceBand band) {
        label(band.key());
        CellStyle low = SheetStyles.LINE.format(band.low() == null ? "0" : NumberFormats.of(band.low()));
        CellStyle high = SheetStyles.LINE.format(band.high() == null ? "0" : NumberFormats.of(band.high()));
        page.number(LOW, band.low(), low).number(HIGH, band.high(), high);
        page.text(UNIT, band.isQuestion() ? words.get("completion.yesNo") : band.unit(), SheetStyles.LINE);
        page.blank(MEASURED, MEASURE.align(CellStyle.Alignment.RIGHT));
        result(band.low() != null, band.high() != null);
        page.text(LAST, band.basis(), SheetStyles.LINE_MUTED);
    }

    private void label(String key) {
        page.row().text(0, words.get("completion." + key), SheetStyles.LINE).height(20);
        page.text(1, words.get("completion." + key + ".how"), SheetStyles.LINE_MUTED);
    }

    /** Says whether the measured value lies in its band, as soon as there is one. */
    private void result(boolean low, boolean high) {
        if (!low && !high) {
            page.blank(RESULT, SheetStyles.LINE);
            return;
        }
        String measured = page.address(MEASURED);
        String above = measured + ">=" + page.address(LOW);
        String below = measured + "<=" + page.address(HIGH);
        String inside = low && high ? "AND(" + above + "," + below + ")" : low ? above : below;
        String within = words.get("completion.within").replace("\"", "\"\"");
        String outside = words.get("completion.outside").replace("\"", "\"\"");
        String formula = "IF(" + measured + "=\"\",\"\",IF(" + inside + ",\"" + within + "\",\"" + outside + "\"))";
        page.formula(RESULT, formula, "", SheetStyles.LINE);
    }

    /** The flow to expect follows from the temperatures of the day: the same heat warms less water the further it has to. */
    private void flow(OptionAssessment option, String intake, String outlet) {
        Optional<Finding> winter =
                OfferedFindings.about(option, CheckTopic.WINTER_FLOW).filter(finding -> finding.getValue() != null);
        label("flow");
        Optional<Double> cold = winter.flatMap(finding -> step(finding, "T_in"));
        Optional<Double> warm = winter.flatMap(finding -> step(finding, "T_out"));
        if (winter.isPresent() && cold.isPresent() && warm.isPresent() && !OfferedFindings.unknownAfterWork(option)) {
            double flow = winter.get().getValue();
            String day = "IF(OR(" + intake + "=\"\"," + outlet + "=\"\"),1,(" + warm.get() + "-" + cold.get() + ")/("
                    + outlet + "-" + intake + "))";
            bound(LOW, flow, day, 1 - AcceptanceBands.FLOW);
            bound(HIGH, flow, day, 1 + AcceptanceBands.FLOW);
            page.text(
                    LAST,
                    words.get("basis.flow", "share", words.number(AcceptanceBands.FLOW * 100)),
                    SheetStyles.LINE_MUTED);
            page.blank(MEASURED, MEASURE.align(CellStyle.Alignment.RIGHT));
            result(true, true);
        } else {
            page.blank(LOW, SheetStyles.LINE).blank(HIGH, SheetStyles.LINE).blank(RESULT, SheetStyles.LINE);
            page.blank(MEASURED, MEASURE.align(CellStyle.Alignment.RIGHT));
            page.text(LAST, words.get("basis.unknown"), SheetStyles.LINE_MUTED);
        }
        String unit = winter.map(Finding::getUnit).orElse("L/min");
        page.text(UNIT, unit, SheetStyles.LINE);
    }

    private void bound(int column, double flow, String day, double share) {
        page.formula(column, flow + "*" + day + "*" + share, flow * share, SheetStyles.LINE.format("0.0"));
    }

    private static Optional<Double> step(Finding finding, String symbol) {
        return finding.getSteps().stream()
                .filter(step -> symbol.equals(step.getSymbol()))
                .map(Step::getValue)
                .findFirst();
    }

    private void signature() {
        page.gap(6);
        page.row().height(28);
        page.text(
                0,
                words.get("completion.by"),
                MEASURE.lettering(CellStyle.Lettering.SMALL).fill(CellStyle.Fill.PLAIN));
        page.text(
                1,
                words.get("completion.instruments"),
                MEASURE.lettering(CellStyle.Lettering.SMALL).fill(CellStyle.Fill.PLAIN));
        page.text(
                LOW,
                LAST,
                words.get("completion.date"),
                MEASURE.lettering(CellStyle.Lettering.SMALL).fill(CellStyle.Fill.PLAIN));
    }
}
