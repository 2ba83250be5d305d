// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.StringLength;

class QuantityPropertiesTest {
    private static final String SEED = "20261125";

    /** A kind and one of its spellings. */
    record Spelled(Kind kind, String spelling) {

        /** The unit as it is typed; the unit 1 is not. */
        String typed() {
            return spelling.equals("1") ? "" : spelling;
        }
    }

    @Provide
    Arbitrary<Spelled> spelled() {
        return Arbitraries.of(Kind.class)
                .flatMap(kind -> Arbitraries.of(kind.spellings()).map(spelling -> new Spelled(kind, spelling)));
    }

    @Property(seed = SEED)
    void typedTextReadsBackEqual(
            @ForAll("spelled") Spelled spelled,
            @ForAll @BigRange(min = "0", max = "100000") @Scale(4) BigDecimal magnitude,
            @ForAll Spread spread) {
        String text = (magnitude.toPlainString() + " " + spelled.typed()).strip()
                + switch (spread) {
                    case NONE -> "";
                    case RECTANGULAR -> " ± 0.5";
                    case NORMAL -> " u 0.25";
                };
        Quantity quantity = Quantities.parse(spelled.kind(), text);
        assertEquals(text, quantity.toString());
        assertEquals(quantity, Quantities.parse(spelled.kind(), quantity.toString()));
        assertEquals(spread != Spread.NONE, quantity.hasTolerance());
        assertEquals(spread == Spread.NORMAL, quantity.normal());
    }

    @Property(seed = SEED)
    void everyLocaleReadsItsOwnText(
            @ForAll("spelled") Spelled spelled,
            @ForAll @BigRange(min = "-100", max = "100000") @Scale(3) BigDecimal magnitude,
            @ForAll("locales") Locale locale) {
        String text = magnitude.toPlainString() + spelled.typed();
        Quantity quantity = Quantities.parse(spelled.kind(), kelvinOrMore(spelled, text));
        Quantity read = Quantities.parse(spelled.kind(), quantity.toString(locale), locale);
        assertEquals(quantity.si(), read.si());
        assertEquals(quantity.toString(locale), read.toString(locale));
    }

    /** However a unit was typed, with a tolerance or without, it is shown by its symbol. */
    @Property(seed = SEED)
    void unitsAreShownByTheirSymbols(@ForAll("spelled") Spelled spelled, @ForAll Spread spread) {
        Assume.that(
                spelled.kind().understands(spelled.typed()) && !spelled.typed().equals("1"));
        String symbol = spelled.kind().find(spelled.typed()).orElseThrow().symbol();
        String tolerance = spread == Spread.NONE ? "" : spread == Spread.NORMAL ? " u 0.25" : " ± 0.5";
        String text = "7 " + spelled.typed() + tolerance;
        assertEquals(
                "7 " + symbol + tolerance,
                Quantities.parse(spelled.kind(), text).toString(Locale.UK));
    }

    /** Every locale of the JDK: many digits and separators that nobody thought of. */
    @Provide
    Arbitrary<Locale> locales() {
        return Arbitraries.of(Locale.getAvailableLocales());
    }

    @Property(seed = SEED)
    void computedTextReadsBackToTheSameDouble(
            @ForAll Kind kind,
            @ForAll @DoubleRange(min = 1e-9, max = 1e9) @Scale(12) double si,
            @ForAll @DoubleRange(min = 0, max = 1e3) @Scale(12) double halfWidthSi) {
        Quantity value = Quantities.ofSi(kind, si);
        Quantity quantity = value.withHalfWidthSi(halfWidthSi);
        Quantity read = Quantities.parse(kind, quantity.toString());
        assertEquals(si, read.si());
        assertEquals(halfWidthSi, read.halfWidthSi());
        assertEquals(quantity, read);
        assertEquals(value, Quantities.parse(kind, value.toString()));
    }

    @Property(seed = SEED)
    void anyDoubleCanBeWritten(@ForAll Kind kind, @ForAll("bits") long bits) {
        double si = Double.longBitsToDouble(bits);
        Assume.that(Double.isFinite(si) && si >= kind.lowest());
        Quantity quantity = Quantities.ofSi(kind, si);
        assertEquals(quantity, Quantities.parse(kind, quantity.toString()));
        assertEquals(si + 0.0, quantity.si());
    }

    /** Bit patterns spread evenly, so that every order of magnitude comes up, and the extremes of them. */
    @Provide
    Arbitrary<Long> bits() {
        return Arbitraries.longs()
                .withDistribution(RandomDistribution.uniform())
                .edgeCases(config -> config.add(
                        0L,
                        Double.doubleToLongBits(-0.0),
                        Double.doubleToLongBits(Double.MIN_VALUE),
                        Double.doubleToLongBits(Double.MIN_NORMAL),
                        Double.doubleToLongBits(Double.MAX_VALUE)));
    }

    /** The double nearest to the exact product, or its neighbour where 34 digits decide otherwise. */
    @Property(seed = SEED)
    void conversionLosesNothing(
            @ForAll @BigRange(min = "-1000000", max = "1000000") @Scale(6) BigDecimal magnitude,
            @ForAll @IntRange(min = 0, max = 4) int which) {
        String unit = new String[] {"L/min", "L/s", "m³/h", "US gpm", "L/h"}[which];
        String[] divisors = {"60000", "1000", "3600", "60000000000000", "3600000"};
        BigInteger dividend = which == 3 ? new BigInteger("3785411784") : BigInteger.ONE;
        double exact = magnitude
                .multiply(new BigDecimal(dividend))
                .divide(new BigDecimal(divisors[which]), new java.math.MathContext(60))
                .doubleValue();
        assertEquals(exact, Flow.valueOf(magnitude.toPlainString() + " " + unit).si());
    }

    @Property(seed = SEED)
    void thereAndBackIsTheSame(
            @ForAll("spelled") Spelled spelled, @ForAll @DoubleRange(min = 0, max = 1e6) @Scale(9) double magnitude) {
        double si = Typed.si(spelled.kind(), magnitude, spelled.spelling());
        double back = Quantities.toUnit(spelled.kind(), si, spelled.spelling());
        double offset = spelled.kind() == Kind.TEMPERATURE ? 1e-10 : 0;
        assertEquals(magnitude, back, 2 * Math.ulp(magnitude) + offset);
    }

    /** Whatever the case of its letters, a spelling is read as its unit or as none, and m never as M. */
    @Property(seed = SEED)
    void caseNeverLeadsToAnotherUnit(@ForAll("spelled") Spelled spelled, @ForAll long capitals) {
        String typed = recased(spelled.spelling(), capitals);
        TradeUnit meant = spelled.kind().find(spelled.spelling()).orElseThrow();
        Optional<TradeUnit> found = spelled.kind().find(typed);
        boolean exact = spelled.kind().spellings().contains(typed);
        assertTrue(found.isEmpty() || exact || found.get() == meant, typed);
    }

    private static String recased(String spelling, long capitals) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < spelling.length(); i++) {
            char c = spelling.charAt(i);
            out.append((capitals >> i & 1) == 0 ? Character.toLowerCase(c) : Character.toUpperCase(c));
        }
        return out.toString();
    }

    @Property(seed = SEED)
    void anythingElseIsRefusedByAUnitException(
            @ForAll Kind kind, @ForAll("scribbles") String text, @ForAll("locales") Locale locale) {
        try {
            Quantity quantity = Quantities.parse(kind, text, locale);
            assertEquals(quantity, Quantities.parse(kind, quantity.toString()));
        } catch (UnitException refused) {
            assertEquals(kind, refused.kind());
            assertTrue(refused.getMessage().contains("; "));
        }
    }

    @Provide
    Arbitrary<String> scribbles() {
        Arbitrary<String> likely = Arbitraries.strings()
                .withChars("0123456789.,-+eE %±u/ mMbarkPaCFK°²'")
                .ofMaxLength(20);
        return Arbitraries.oneOf(likely, Arbitraries.strings().ofMaxLength(20));
    }

    @Property(seed = SEED)
    void anyTextIsASpellingOrNone(@ForAll Kind kind, @ForAll @StringLength(max = 12) String text) {
        Optional<TradeUnit> found = kind.find(text);
        assertTrue(found.isEmpty() || kind.units().units().contains(found.get()));
    }

    private static String kelvinOrMore(Spelled spelled, String text) {
        return spelled.kind() == Kind.TEMPERATURE && text.startsWith("-") ? text.substring(1) : text;
    }
}
