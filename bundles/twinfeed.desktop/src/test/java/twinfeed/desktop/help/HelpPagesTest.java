// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.LimitType;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.text.Words;
import twinfeed.model.assessment.FindingClass;
import twinfeed.units.Kind;
import twinfeed.units.text.Texts;
import twinfeed.usecase.TwinfeedService;

/** Every check has a page, whoever wrote its calculator. */
final class HelpPagesTest {
    private final Words words = new Words(Locale.UK);

    @TempDir
    Path folder;

    /** A calculator of somebody else. */
    private static final class Third implements Calculator {
        @Override
        public CalculatorDescriptor descriptor() {
            Check check = Check.of(
                    "third.reach", FindingClass.ADVICE, LimitType.AT_MOST, Kind.LENGTH, "survey.water.lowestHandset");
            return new CalculatorDescriptor(
                    "third",
                    "7.1",
                    new Texts(Third.class, "Third"),
                    List.of(),
                    List.of(),
                    List.of(check),
                    List.of(),
                    List.of());
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {};
        }
    }

    @Test
    void everyCheckHasAPageWithoutALackingText() throws Exception {
        DemoFiles.copyInto(folder);
        TwinfeedService service = DemoFiles.service();
        JobResult result = new JobResult(
                1,
                true,
                service.quickAssess(service.open(folder.resolve("alder-beck.job"), null), Locale.UK),
                null,
                "");
        HelpPages pages = new HelpPages(service.calculators(), words);
        int checks = 0;
        for (CalculatorDescriptor statement : pages.statements()) {
            for (Check check : statement.checks()) {
                checks++;
                HelpPage page = pages.of(check.key(), result, null).orElseThrow();
                String text = page.text();
                assertFalse(text.matches("(?s).*(\\[[a-z]+\\.[A-Za-z.]+]|[{}‹›]|(survey|heater)\\.[a-z]).*"), text);
                assertTrue(page.sections().size() >= 6, check.key());
                assertTrue(
                        page.sections().stream()
                                .noneMatch(section -> section.lines().isEmpty()),
                        check.key());
            }
        }
        assertTrue(checks > 40, "checks: " + checks);
    }

    @Test
    void formulaAndSourceComeFromTheAnswerOfAJob() throws Exception {
        DemoFiles.copyInto(folder);
        TwinfeedService service = DemoFiles.service();
        JobResult result = new JobResult(
                1,
                true,
                service.quickAssess(service.open(folder.resolve("alder-beck.job"), null), Locale.UK),
                null,
                "");
        HelpPages pages = new HelpPages(service.calculators(), words);
        String text =
                pages.of("circuit.voltageDrop", result, null).orElseThrow().text();
        assertTrue(text.contains("BS 7671"), text);
        assertTrue(text.contains(" = "), text);
        String alone = pages.of("circuit.voltageDrop", null, null).orElseThrow().text();
        assertTrue(alone.contains(words.get("help.formula.none")), alone);
    }

    @Test
    void checkOfAThirdPartyHasItsPageToo() throws Exception {
        List<Calculator> all = new ArrayList<>(DemoFiles.service().calculators());
        all.add(new Third());
        HelpPage page = new HelpPages(all, words).of("third.reach", null, null).orElseThrow();
        assertEquals("Reach of the hose", page.title());
        assertTrue(page.text().contains("stays at or under its limit, in m"), page.text());
        assertTrue(page.text().contains("Reaches too far: … m."), page.text());
        assertTrue(page.text().contains("Whether the hose reaches into the basin."), page.text());
        assertTrue(page.text().contains("Fit a shorter hose."), page.text());
        assertTrue(page.text().contains("version 7.1"), page.text());
    }

    @Test
    void whatIsNoCheckHasNoPage() throws Exception {
        assertTrue(new HelpPages(DemoFiles.service().calculators(), words)
                .of("no.such", null, null)
                .isEmpty());
    }
}
