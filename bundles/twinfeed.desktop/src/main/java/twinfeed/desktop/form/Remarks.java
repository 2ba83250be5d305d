// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.check.JobCheck;
import twinfeed.model.check.ModelPath;
import twinfeed.model.check.Problem;

/** What there is to say about the readings of one survey: what cannot be right, what is odd, and what a check waits for. */
public final class Remarks {
    private final Map<String, List<Remark>> byPath = new LinkedHashMap<>();

    private Remarks() {}

    /** The remarks on a job as it is now; what is wanted comes from its newest result. */
    public static Remarks of(JobSession session, Words words) {
        Remarks remarks = new Remarks();
        for (Problem problem : JobCheck.of(
                session.job(), session.catalogue(), session.services().today())) {
            remarks.add(
                    problem.path(),
                    new Remark(
                            problem.isError() ? Remark.Level.WRONG : Remark.Level.ODD,
                            sentence(problem.wrong() + "; " + problem.right())));
        }
        JobResult result = session.result();
        if (result != null && result.judged() != null) {
            remarks.wanted(result.judged().record(), words);
        }
        return remarks;
    }

    private static String sentence(String clause) {
        return clause.isEmpty() ? clause : Character.toUpperCase(clause.charAt(0)) + clause.substring(1);
    }

    private void wanted(Assessment assessment, Words words) {
        Map<String, Set<String>> checks = new LinkedHashMap<>();
        for (OptionAssessment option : assessment.getOptions()) {
            for (Finding finding : option.getFindings()) {
                if (finding.getOutcome() == Outcome.CANNOT_TELL) {
                    finding.getMissingPaths()
                            .forEach(path -> checks.computeIfAbsent(path, each -> new LinkedHashSet<>())
                                    .add(finding.getTitle()));
                }
            }
        }
        checks.forEach((path, titles) -> add(
                path,
                new Remark(
                        Remark.Level.WANTED,
                        words.format(
                                "remark.wanted",
                                Map.of("checks", titles.stream().collect(Collectors.joining(", ")))))));
    }

    private void add(String path, Remark remark) {
        byPath.computeIfAbsent(path, each -> new ArrayList<>()).add(remark);
    }

    /**
     * What there is to say about a reading, the worst first.
     *
     * @param root the object from which the path leads to it
     * @param path the path
     */
    public List<Remark> on(EObject root, ReadingPath path) {
        return at(path.in(root));
    }

    /** What there is to say about an object or a reading by its path in the model. */
    List<Remark> at(String path) {
        return byPath.getOrDefault(path, List.of()).stream()
                .sorted(java.util.Comparator.comparing(Remark::level))
                .toList();
    }

    /** What a reading waits for is a mark with the checks in its tooltip; everything else stands beside it in words. */
    public static String waiting(List<Remark> remarks) {
        return remarks.stream()
                .filter(each -> each.level() == Remark.Level.WANTED)
                .map(Remark::text)
                .collect(Collectors.joining("\n"));
    }

    /** How many readings of a page have a remark of a level. */
    public int count(Page page, EObject root, Remark.Level level) {
        int all = 0;
        for (Page.Section section : page.sections()) {
            all += has(on(root, section), level) ? 1 : 0;
            all += section.items().stream()
                    .mapToInt(item -> count(item, root, level))
                    .sum();
        }
        return all;
    }

    private int count(Page.Item item, EObject root, Remark.Level level) {
        int here = has(on(root, item.path()), level) ? 1 : 0;
        if (item instanceof Page.Several several) {
            for (EObject element : several.path().elements(root)) {
                here += several.items().stream()
                        .mapToInt(each -> count(each, element, level))
                        .sum();
            }
        }
        return here;
    }

    private static boolean has(List<Remark> remarks, Remark.Level level) {
        return remarks.stream().anyMatch(each -> each.level() == level);
    }

    /**
     * What there is to say about a section as a whole: remarks on the object that holds its readings, where that is not there,
     * for example a water test of which nothing was recorded.
     */
    public List<Remark> on(EObject root, Page.Section section) {
        return under(root, section).stream().flatMap(path -> at(path).stream()).toList();
    }

    /** The path in the model of the outermost object that would hold a section's readings and is not there; empty if all are. */
    String lacking(EObject root, Page.Section section) {
        return under(root, section).stream().findFirst().orElse("");
    }

    private static List<String> under(EObject root, Page.Section section) {
        List<String> lacking = new ArrayList<>();
        ReadingPath path = section.items().get(0).path();
        StringBuilder text = new StringBuilder(ModelPath.of(root));
        @Nullable Object here = root;
        for (EStructuralFeature step : path.steps().subList(0, path.steps().size() - 1)) {
            text.append(text.isEmpty() ? "" : ".").append(step.getName());
            here = here instanceof EObject owner ? owner.eGet(step) : null;
            if (here == null) {
                lacking.add(text.toString());
            }
        }
        return lacking;
    }
}
