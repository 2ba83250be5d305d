// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;
import java.util.Locale;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.model.assessment.Supply;
import twinfeed.units.text.Texts;

/**
 * What a calculator says of itself. The form, the command line, JSON and the workbook derive from it. Made by {@link #of}.
 *
 * @param id unique id, lower case letters, digits, dots and hyphens
 * @param version version of the calculator, for the record; of two with one id the newer is used
 * @param texts its messages; must hold {@code title}, for each check {@code check.KEY} and the outcome texts, for each parameter
 *     and formula title and help
 * @param provides quantities that it provides to other calculators
 * @param consumes quantities of others that it consumes
 * @param supply the supply that its checks are about
 * @param checks the checks that it answers, in the order of their findings; one that it leaves open counts as "not checked"
 * @param remedies the kinds of work that it may offer, with the price-book codes that they need
 * @param parameters its own parameters
 * @param formulas the functions that it publishes
 * @param reads what it reads of a survey, as the beginnings of paths, for example {@code survey.electricity}; empty for all of it. It is
 *     not run again where only other readings move or are edited, so a reading that is left out here counts as sure, and editing
 *     it leaves old answers in place
 */
public record CalculatorDescriptor(
        String id,
        String version,
        Texts texts,
        List<SharedQuantity> provides,
        List<SharedQuantity> consumes,
        Supply supply,
        List<Check> checks,
        List<RemedyKind> remedies,
        List<Parameter> parameters,
        List<Formula> formulas,
        List<String> reads) {

    public CalculatorDescriptor {
        provides = List.copyOf(provides);
        consumes = List.copyOf(consumes);
        checks = List.copyOf(checks);
        remedies = List.copyOf(remedies);
        parameters = List.copyOf(parameters);
        formulas = List.copyOf(formulas);
        reads = List.copyOf(reads);
    }

    /**
     * Whether it reads something of a survey.
     *
     * @param path path of a reading from the survey; elements of lists may be named, {@code survey.electricity.loads[oven].power}
     */
    public boolean reads(String path) {
        return reads.isEmpty() || reads.stream().anyMatch(beginning -> isWithin(path, beginning));
    }

    private static boolean isWithin(String path, String beginning) {
        return path.startsWith(beginning)
                && (path.length() == beginning.length() || ".[".indexOf(path.charAt(beginning.length())) >= 0);
    }

    /** One about neither supply alone that offers no work. */
    public CalculatorDescriptor(
            String id,
            String version,
            Texts texts,
            List<SharedQuantity> provides,
            List<SharedQuantity> consumes,
            List<Check> checks,
            List<Parameter> parameters,
            List<Formula> formulas) {
        this(
                id,
                version,
                texts,
                provides,
                consumes,
                Supply.NEITHER,
                checks,
                List.of(),
                parameters,
                formulas,
                List.of());
    }

    /**
     * Begins the descriptor of a calculator by convention: {@code example.EnergyCalculator} has the id {@code energy}, the
     * messages {@code Energy.properties} beside the class, and the version of its bundle.
     */
    public static Builder of(Class<? extends Calculator> type) {
        return new Builder(type);
    }

    /** Adds what goes beyond the conventions. */
    public static final class Builder {
        private final String version;
        private String id;
        private Texts texts;
        private List<SharedQuantity> provides = List.of();
        private List<SharedQuantity> consumes = List.of();
        private Supply supply = Supply.NEITHER;
        private List<Check> checks = List.of();
        private List<RemedyKind> remedies = List.of();
        private List<Parameter> parameters = List.of();
        private List<Formula> formulas = List.of();
        private List<String> reads = List.of();

        private Builder(Class<? extends Calculator> type) {
            String name = type.getSimpleName().replaceFirst("Calculator$", "");
            id = name.toLowerCase(Locale.ROOT);
            texts = new Texts(type, name);
            version = BundleVersion.of(type);
        }

        /** Another id than the class's name. */
        public Builder id(String other) {
            id = other;
            return this;
        }

        /** Messages that lie elsewhere. */
        public Builder texts(Texts other) {
            texts = other;
            return this;
        }

        /** What it provides to other calculators. */
        public Builder provides(SharedQuantity... quantities) {
            provides = List.of(quantities);
            return this;
        }

        /** What it consumes from other calculators. */
        public Builder consumes(SharedQuantity... quantities) {
            consumes = List.of(quantities);
            return this;
        }

        /** What it reads of a survey, where that is not all of it: the beginnings of paths. */
        public Builder reads(String... beginnings) {
            reads = List.of(beginnings);
            return this;
        }

        /** The supply that its checks are about, where it is one of the two. */
        public Builder supply(Supply subject) {
            supply = subject;
            return this;
        }

        /** The kinds of work that it may offer. */
        public Builder remedies(List<RemedyKind> offered) {
            remedies = offered;
            return this;
        }

        /** The checks that it answers. */
        public Builder checks(Check... answered) {
            return checks(List.of(answered));
        }

        /** The checks that it answers. */
        public Builder checks(List<Check> answered) {
            checks = answered;
            return this;
        }

        /** Its parameters. */
        public Builder parameters(Parameter... own) {
            return parameters(List.of(own));
        }

        /** Its parameters. */
        public Builder parameters(List<Parameter> own) {
            parameters = own;
            return this;
        }

        /** The functions that it publishes. */
        public Builder formulas(List<Formula> published) {
            formulas = published;
            return this;
        }

        /** The descriptor. */
        public CalculatorDescriptor build() {
            return new CalculatorDescriptor(
                    id, version, texts, provides, consumes, supply, checks, remedies, parameters, formulas, reads);
        }
    }
}
