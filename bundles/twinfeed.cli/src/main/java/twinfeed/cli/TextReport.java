// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twinfeed.calculator.Check;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Step;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.units.Quantities;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FormulaAnswer;
import twinfeed.usecase.LineQuantity;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.quote.DangerSentences;

/** Prints answers for a person, cautions at the end of each. */
final class TextReport {
    private final CliContext context;
    private final PrintStream out;

    TextReport(CliContext context) {
        this.context = context;
        this.out = context.out();
    }

    /** Every finding of every option. */
    void assessment(AssessedJob judged, boolean workings) {
        Assessment record = judged.record();
        record.getOptions().forEach(option -> {
            head(option);
            option.getFindings().forEach(finding -> finding(finding, workings));
            works(option);
            out.println();
        });
        close(record);
    }

    /** A line or two for each option. */
    void options(AssessedJob judged) {
        Assessment record = judged.record();
        record.getOptions().forEach(option -> {
            head(option);
            option.getFindings().stream()
                    .filter(finding ->
                            finding.getOutcome() != Outcome.PASSES && finding.getOutcome() != Outcome.NOT_APPLICABLE)
                    .forEach(finding -> finding(finding, false));
            works(option);
            out.println();
        });
        close(record);
    }

    private void head(OptionAssessment option) {
        out.println(option.getTitle()
                + (Boolean.TRUE.equals(option.getPresent()) ? " (" + context.text("present") + ")" : "")
                + ": " + context.text("verdict." + option.getVerdict().getLiteral()));
    }

    private void finding(Finding finding, boolean workings) {
        out.println("  " + sign(finding) + " " + finding.getTitle() + ": " + finding.getText());
        String figures = figures(finding);
        if (!figures.isEmpty()) {
            out.println("      " + figures);
        }
        if (workings) {
            finding.getSteps().forEach(step -> out.println("      " + line(step)));
        }
        if (finding.getSource() != null) {
            out.println("      " + context.text("source") + " " + finding.getSource());
        }
    }

    /**
     * Outcome in a sign beside the words, never in colour alone. A check of performance that falls short rules nothing out and is no "NO",
     * nor is advice, such as the likeliest cause of a fault; the signs are those of the window.
     */
    private static String sign(Finding finding) {
        return switch (finding.getOutcome()) {
            case PASSES -> "[ok]";
            case FAILS ->
                Check.deciding(finding.getKind()) ? "[NO]" : finding.getKind() == FindingClass.ADVICE ? "[ >]" : "[ !]";
            case TOO_CLOSE -> "[~?]";
            case CANNOT_TELL, NOT_CHECKED -> "[??]";
            case NOT_APPLICABLE -> "[--]";
        };
    }

    private String figures(Finding finding) {
        if (finding.getValue() == null) {
            return "";
        }
        StringBuilder text =
                new StringBuilder(number(finding.getValue())).append(' ').append(finding.getUnit());
        if (finding.getLimit() != null) {
            text.append(", ").append(context.text("limit")).append(' ').append(number(finding.getLimit()));
            text.append(", ").append(context.text("margin")).append(' ').append(number(finding.getMargin()));
        }
        if (finding.getCondition() != null) {
            text.append(" (").append(finding.getCondition()).append(')');
        }
        return text.toString();
    }

    private void works(OptionAssessment option) {
        option.getRemedies().forEach(remedy -> out.println("  " + context.text("work") + " " + remedy.getTitle()));
        if (!option.getUnmended().isEmpty()) {
            out.println("  " + context.text("unmended") + " " + String.join(", ", option.getUnmended()));
        }
    }

    private void close(Assessment record) {
        if (!record.getAssumptions().isEmpty()) {
            out.println(context.text("assumptions"));
            record.getAssumptions().forEach(assumption -> out.println("  - " + assumption.getText()));
        }
        out.println(record.getRules() + ": " + record.getRulesNote());
        out.println(context.cautions());
    }

    /** The quote in short, dangers and the answer first; the workbook has all of it. */
    void quote(AssessedJob judged, Quote quote, OutputPaths written) {
        Assessment assessment = judged.record();
        dangers(assessment, DangerSentences.of(judged.opened().job().getSurvey(), context.locale()));
        if (quote.getSummary() != null) {
            out.println(quote.getSummary());
            out.println();
        }
        for (QuoteOption option : quote.getOptions()) {
            out.println(option.getTitle() + ": "
                    + context.text("verdict." + option.getVerdict().getLiteral()));
            option.getSections().forEach(section -> section.getLines()
                    .forEach(line ->
                            out.println("  " + CliContext.right(LineQuantity.of(line, context.locale()), 14) + "  "
                                    + CliContext.left(line.getDescription(), 58) + " "
                                    + context.amount(line.getNet()))));
            sum("net", option.getNet(), quote);
            sum("tax", option.getTax(), quote);
            sum("total", option.getTotal(), quote);
            out.println();
        }
        notOffered(assessment, quote);
        judged.unpriced().forEach(out::println);
        if (quote.getBookNote() != null) {
            out.println(quote.getBookNote());
        }
        out.println(context.cautions());
        written(written);
    }

    /** Every safety check that the shower fails as it is, how to print the notice of it, and what was reported that can be a danger. */
    private void dangers(Assessment assessment, List<String> reported) {
        List<String> dangers = DangerSentences.failed(assessment);
        if (dangers.isEmpty() && reported.isEmpty()) {
            return;
        }
        out.println(context.text("quote.danger"));
        Stream.concat(dangers.stream(), reported.stream()).forEach(danger -> out.println("  [NO] " + danger));
        out.println(context.text("quote.notice"));
        out.println();
    }

    /** The heaters that were checked and are not offered, with their verdict; the paper gives the reason. */
    private void notOffered(Assessment assessment, Quote quote) {
        Set<String> offered =
                quote.getOptions().stream().map(QuoteOption::getHeaterId).collect(Collectors.toSet());
        List<OptionAssessment> others = assessment.getOptions().stream()
                .filter(option -> !Boolean.TRUE.equals(option.getPresent()))
                .filter(option -> !offered.contains(option.getHeaterId()))
                .toList();
        others.forEach(option -> out.println(context.text("quote.notOffered") + " " + option.getTitle() + ": "
                + context.text("verdict." + option.getVerdict().getLiteral())));
        if (!others.isEmpty()) {
            out.println();
        }
    }

    /** Names the files that were written. */
    void written(OutputPaths files) {
        files.files().forEach(file -> out.println(context.text("written") + " " + file));
    }

    private void sum(String key, java.math.BigDecimal amount, Quote quote) {
        out.println("  " + CliContext.left(context.text(key), 74) + " " + context.amount(amount) + " "
                + quote.getCurrency());
    }

    /**
     * The answer of a formula.
     *
     * @param digits significant digits of its results; the lines of the working keep five, so that they can be followed
     */
    void answer(FormulaAnswer answer, int digits) {
        answer.results()
                .forEach(result ->
                        out.println(result.title() + " = " + Quantities.format(result.kind(), result.si(), digits)));
        if (answer.refused()) {
            out.println(answer.trouble().text());
        }
        answer.warnings().forEach(warning -> out.println(warning.text()));
        answer.steps().forEach(step -> out.println("  " + line(step)));
        out.println(context.cautions());
    }

    private String line(Step step) {
        String expression = step.getExpression();
        String source = step.getSource();
        return step.getSymbol() + " = " + (expression == null ? "" : expression + " = ") + number(step.getValue())
                + (step.getUnit().isEmpty() ? "" : " " + step.getUnit()) + "  " + step.getMeaning()
                + (source == null || source.isEmpty() ? "" : " [" + source + "]");
    }

    /** Five significant digits, never in powers of ten for the sizes that occur. */
    private String number(double value) {
        if (value == 0) {
            return "0";
        }
        java.math.BigDecimal rounded = new java.math.BigDecimal(value).round(new java.math.MathContext(5));
        String plain = context.numbers().exact(rounded);
        return plain.length() > 14 ? rounded.toString() : plain;
    }
}
