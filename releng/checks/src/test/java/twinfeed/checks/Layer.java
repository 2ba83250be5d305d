// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a bundle may use: the layer table of DEVELOPERS.md.
 *
 * @param bundle its name
 * @param atLeast classes that the test has to have seen in it; guards against a test that looks into an empty folder
 * @param ours bundles of this project that it may use
 * @param libraries beginnings of the packages of others that it may use, the JDK's aside
 */
record Layer(String bundle, int atLeast, Set<String> ours, List<String> libraries) {
    private static final List<String> EMF = List.of("org.eclipse.emf.common", "org.eclipse.emf.ecore");
    private static final Set<String> BASE = Set.of("twinfeed.calculator", "twinfeed.model", "twinfeed.units");

    static final List<Layer> TABLE = List.of(
            new Layer("twinfeed.units", 20, Set.of(), List.of()),
            new Layer("twinfeed.model", 60, Set.of("twinfeed.units"), with(EMF, "org.apache.commons.csv")),
            new Layer("twinfeed.engineering", 30, Set.of(), List.of("org.hipparchus")),
            new Layer(
                    "twinfeed.calculator", 50, Set.of("twinfeed.model", "twinfeed.units"), with(EMF, "org.hipparchus")),
            plugIn("flow"),
            plugIn("pressure"),
            plugIn("circuit"),
            plugIn("demand"),
            new Layer(
                    "twinfeed.calculator.faults", 3, and(and(BASE, "twinfeed.engineering"), "twinfeed.diagnosis"), EMF),
            new Layer(
                    "twinfeed.diagnosis",
                    30,
                    and(and(BASE, "twinfeed.engineering"), "twinfeed.pricing"),
                    with(EMF, "org.joda.money")),
            new Layer("twinfeed.pricing", 30, Set.of("twinfeed.model", "twinfeed.units"), with(EMF, "org.joda.money")),
            new Layer(
                    "twinfeed.quotes",
                    15,
                    Set.of("twinfeed.model", "twinfeed.units"),
                    with(EMF, "com.fasterxml.jackson.core")),
            new Layer("twinfeed.document", 20, BASE, EMF),
            // Of the model only what a document shows of it, so neither EMF nor the calculators.
            new Layer(
                    "twinfeed.pdf",
                    10,
                    Set.of("twinfeed.document", "twinfeed.model"),
                    List.of("org.apache.fop", "org.apache.xmlgraphics")),
            new Layer(
                    "twinfeed.workbook",
                    30,
                    and(BASE, "twinfeed.document"),
                    with(
                            EMF,
                            "org.apache.poi",
                            "org.apache.xmlbeans",
                            "org.openxmlformats",
                            "org.apache.commons.compress")),
            new Layer(
                    "twinfeed.usecase",
                    10,
                    Set.of(
                            "twinfeed.calculator",
                            "twinfeed.diagnosis",
                            "twinfeed.document",
                            "twinfeed.engineering",
                            "twinfeed.model",
                            "twinfeed.pdf",
                            "twinfeed.pricing",
                            "twinfeed.quotes",
                            "twinfeed.units",
                            "twinfeed.workbook"),
                    with(EMF, "com.fasterxml.jackson.core", "org.joda.money", "org.osgi.framework")),
            new Layer(
                    "twinfeed.cli",
                    10,
                    Set.of(
                            "twinfeed.usecase",
                            "twinfeed.diagnosis",
                            "twinfeed.calculator",
                            "twinfeed.model",
                            "twinfeed.units"),
                    with(
                            EMF,
                            "picocli",
                            "com.fasterxml.jackson.core",
                            "org.eclipse.equinox.app",
                            "org.osgi.framework")),
            new Layer(
                    "twinfeed.desktop",
                    30,
                    Set.of(
                            "twinfeed.usecase",
                            "twinfeed.diagnosis",
                            // The drawing of the house, which window, workbook and PDF show alike.
                            "twinfeed.document",
                            "twinfeed.calculator",
                            "twinfeed.model",
                            "twinfeed.units"),
                    with(
                            EMF,
                            "org.eclipse.emf.edit",
                            "org.eclipse.swt",
                            "org.eclipse.jface",
                            "org.eclipse.e4",
                            "org.eclipse.core",
                            "org.osgi.framework",
                            "org.osgi.service.event",
                            "org.eclipse.equinox.app",
                            "org.eclipse.osgi.service.datalocation",
                            "jakarta.")));

    private static Layer plugIn(String name) {
        return new Layer(
                "twinfeed.calculator." + name,
                3,
                Set.of("twinfeed.calculator", "twinfeed.model", "twinfeed.units", "twinfeed.engineering"),
                EMF);
    }

    private static Set<String> and(Set<String> some, String more) {
        Set<String> all = new java.util.HashSet<>(some);
        all.add(more);
        return all;
    }

    private static List<String> with(List<String> some, String... more) {
        List<String> all = new ArrayList<>(some);
        all.addAll(List.of(more));
        return all;
    }

    static Layer of(String bundle) {
        return TABLE.stream()
                .filter(layer -> layer.bundle.equals(bundle))
                .findFirst()
                .orElseThrow(() -> new AssertionError(bundle + " has no line in the layer table"));
    }

    boolean allowsLibrary(String packageName) {
        return libraries.stream().anyMatch(packageName::startsWith);
    }

    /** The whole table as DEVELOPERS.md prints it, one line for each bundle. */
    static String table() {
        return TABLE.stream().map(Layer::row).collect(Collectors.joining("\n"));
    }

    private String row() {
        String bundles = list(ours.stream().map(name -> name.substring("twinfeed.".length())));
        return "| " + bundle.substring("twinfeed.".length()) + " | " + bundles + " | " + list(libraries.stream())
                + " |";
    }

    private static String list(Stream<String> names) {
        String all = names.sorted().collect(Collectors.joining(", "));
        return all.isEmpty() ? "none" : all;
    }
}
