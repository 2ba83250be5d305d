// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleTitles;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.units.Quantity;

/**
 * What a certificate asks of supply and circuit beside the test results, after the model forms of the wiring rules (from memory); what
 * nobody looked at, and what no survey holds, stays empty, to be written by pen.
 */
final class InstallationData {
    private final PageParts parts;
    private final Locale locale;
    private final RuleTitles titles;
    private final List<List<String>> rows = new ArrayList<>();

    InstallationData(PageParts parts, RuleSet rules) {
        this.parts = parts;
        this.locale = parts.locale();
        this.titles = new RuleTitles(rules, locale);
    }

    List<List<String>> rows(Survey house) {
        rows.clear();
        ElectricalFeed feed = house.getElectricity();
        if (feed != null) {
            supply(feed);
            byPen("data.bondedTo", "data.earthingContinuity", "data.demand", "data.board");
            row("data.protection", parts.get("data.disconnection"));
            if (feed.getCircuit() != null) {
                circuit(feed.getCircuit());
            }
        }
        byPen("data.standards", "data.liveInsulation", "data.existing", "data.nextInspection", "data.position");
        return List.copyOf(rows);
    }

    private void supply(ElectricalFeed feed) {
        row("data.earthing", feed.isSetEarthing() ? feed.getEarthing().getLiteral() : "");
        row("data.voltage", text(feed.getSupplyVoltage()));
        byPen("data.supplyKind");
        row("data.serviceFuse", text(feed.getServiceFuse()));
        row("data.mainSwitch", text(feed.getMainSwitch()));
        row("data.tails", text(feed.getTails()));
        row("data.earthingConductor", orNone(feed.getEarthingConductor(), feed.getHasEarthingConductor()));
        row(
                "data.bonding",
                Boolean.FALSE.equals(feed.getMetalServices())
                        ? parts.get("data.nothingToBond")
                        : orNone(feed.getMainBonding(), feed.getHasMainBonding()));
    }

    private void circuit(Circuit circuit) {
        ProtectiveDevice device = circuit.getDevice();
        row("data.device", device == null ? "" : joined(kind(device.getKind()), text(device.getRating())));
        row("data.breaking", device == null ? "" : text(device.getBreakingCapacity()));
        row("data.residual", residual(circuit.getRcd()));
        row(
                "data.cable",
                circuit.getSegments().stream().map(this::cable).distinct().collect(Collectors.joining("; ")));
        double length = circuit.getSegments().stream()
                .map(CableSegment::getLength)
                .filter(each -> each != null)
                .mapToDouble(Quantity::si)
                .sum();
        row("data.length", length > 0 ? twinfeed.units.Quantities.format(length, "m", 1, locale) : "");
        row(
                "data.methods",
                circuit.getSegments().stream()
                        .map(each -> method(each.getMethod()))
                        .filter(each -> !each.isEmpty())
                        .distinct()
                        .collect(Collectors.joining("; ")));
    }

    private String residual(@Nullable ResidualDevice device) {
        if (device == null) {
            return "";
        }
        if (device.isSetKind() && device.getKind() == RcdKind.NONE) {
            return parts.get("data.none");
        }
        String type = device.getType() == null ? "" : parts.get("data.type") + " " + device.getType();
        return joined(
                device.isSetKind()
                        ? parts.get("data.residual." + device.getKind().getLiteral())
                        : "",
                type,
                text(device.getResidual()));
    }

    private String cable(CableSegment segment) {
        String cpc = text(segment.getCpc());
        return cpc.isEmpty() ? text(segment.getSize()) : text(segment.getSize()) + " / " + cpc;
    }

    private String method(@Nullable String key) {
        return key == null ? "" : titles.method(key);
    }

    private String kind(@Nullable String key) {
        return key == null ? "" : titles.device(key);
    }

    private String orNone(@Nullable Quantity size, @Nullable Boolean there) {
        return Boolean.FALSE.equals(there) ? parts.get("data.none") : text(size);
    }

    private String text(@Nullable Quantity quantity) {
        return quantity == null ? "" : quantity.toString(locale);
    }

    private static String joined(String... texts) {
        return java.util.Arrays.stream(texts).filter(each -> !each.isEmpty()).collect(Collectors.joining(", "));
    }

    private void byPen(String... keys) {
        for (String key : keys) {
            row(key, "");
        }
    }

    private void row(String key, String value) {
        rows.add(List.of(parts.get(key), value));
    }
}
