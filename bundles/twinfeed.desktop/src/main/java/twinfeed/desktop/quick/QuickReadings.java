// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.quick;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.form.BareNumber;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Kind;
import twinfeed.units.Length;
import twinfeed.units.Power;
import twinfeed.units.Quantities;
import twinfeed.units.Quantity;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;
import twinfeed.units.Voltage;

/** What was typed and chosen for a quick question. A field that was left empty is a reading that was not taken. */
public final class QuickReadings {
    /** A reading that is typed with its unit, or as a bare number in the unit of the field. */
    public enum Field {
        /** Rating of the breaker or fuse. */
        RATING("rating", Kind.CURRENT),
        /** Cross-section of the cable. */
        SIZE("size", Kind.AREA),
        /** Length of the cable. */
        LENGTH("length", Kind.LENGTH),
        /** Power of the heater that is asked for. */
        POWER("power", Kind.POWER),
        /** Voltage at the origin. */
        SUPPLY("supply", Kind.VOLTAGE),
        /** External earth fault loop impedance. */
        LOOP("ze", Kind.RESISTANCE),
        /** Temperature of the cold water in winter. */
        INTAKE("intake", Kind.TEMPERATURE);

        private final String key;
        private final Kind kind;

        Field(String key, Kind kind) {
            this.key = key;
            this.kind = kind;
        }

        /** Name of the reading in the formulas, and end of the key of its label. */
        public String key() {
            return key;
        }

        /** What kind of quantity it is. */
        public Kind kind() {
            return kind;
        }
    }

    private final Map<Field, String> typed = new EnumMap<>(Field.class);
    private String device = "";
    private String method = "";

    /** Takes a reading as it was typed. */
    public void type(Field field, String text) {
        typed.put(field, BareNumber.withUnit(field.kind, text));
    }

    /** The kind of breaker or fuse, by the rule set's key. */
    public void device(String key) {
        device = key;
    }

    /** The reference method, by the rule set's key. */
    public void method(String key) {
        method = key;
    }

    String device() {
        return device;
    }

    String method() {
        return method;
    }

    /** A reading with its unit; empty if it was not taken. */
    public String text(Field field) {
        return typed.getOrDefault(field, "");
    }

    /**
     * A reading.
     *
     * @param locale how numbers are written
     * @throws twinfeed.units.UnitException if what was typed is no quantity of its kind
     */
    public Optional<Quantity> value(Field field, Locale locale) {
        String text = text(field);
        return text.isEmpty() ? Optional.empty() : Optional.of(Quantities.parse(field.kind, text, locale));
    }

    /**
     * These readings as arguments of a formula; those that were not taken are left out.
     *
     * @throws twinfeed.units.UnitException if what was typed is no quantity of its kind
     */
    Map<String, String> arguments(Locale locale, Field... fields) {
        Map<String, String> arguments = new LinkedHashMap<>();
        for (Field field : fields) {
            value(field, locale).ifPresent(value -> arguments.put(field.key, value.toString()));
        }
        return arguments;
    }

    /**
     * A survey with these readings in it, and nothing else.
     *
     * @throws twinfeed.units.UnitException if what was typed is no quantity of its kind
     */
    public Survey survey(Locale locale) {
        SurveyFactory make = SurveyFactory.eINSTANCE;
        Survey survey = make.createSurvey();
        survey.setRequestedPower((Power) value(Field.POWER, locale).orElse(null));
        survey.setWinterIntake((Temperature) value(Field.INTAKE, locale).orElse(null));
        ElectricalFeed feed = make.createElectricalFeed();
        feed.setSupplyVoltage((Voltage) value(Field.SUPPLY, locale).orElse(null));
        feed.setExternalLoop((Resistance) value(Field.LOOP, locale).orElse(null));
        Circuit circuit = make.createCircuit();
        circuit.setDevice(device(make, (Current) value(Field.RATING, locale).orElse(null)));
        CableSegment cable = make.createCableSegment();
        cable.setSize((Area) value(Field.SIZE, locale).orElse(null));
        cable.setLength((Length) value(Field.LENGTH, locale).orElse(null));
        cable.setMethod(method.isEmpty() ? null : method);
        circuit.getSegments().add(cable);
        feed.setCircuit(circuit);
        survey.setElectricity(feed);
        return survey;
    }

    /** The kind is preset in the page, so that without a rating it is no reading. */
    private @Nullable ProtectiveDevice device(SurveyFactory make, @Nullable Current rating) {
        if (rating == null) {
            return null;
        }
        ProtectiveDevice made = make.createProtectiveDevice();
        made.setKind(device.isEmpty() ? null : device);
        made.setRating(rating);
        return made;
    }
}
