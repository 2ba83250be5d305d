// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

/** Paths of the readings that the circuit's checks need. */
final class Paths {
    static final String POWER = "heater.power";
    static final String RATED_VOLTAGE = "heater.voltage";

    private static final String FEED = "survey.electricity.";
    static final String EARTHING = FEED + "earthing";
    static final String SERVICE_FUSE = FEED + "serviceFuse";
    static final String EXTERNAL_LOOP = FEED + "externalLoop";
    static final String FAULT = FEED + "prospectiveFault";
    static final String ELECTRODE = FEED + "electrode";
    static final String TAILS = FEED + "tails";
    static final String EARTHING_CONDUCTOR = FEED + "earthingConductor";
    static final String BONDING = FEED + "mainBonding";
    static final String NEUTRAL = FEED + "supplyNeutral";
    static final String SPARE_WAY = FEED + "spareWay";
    static final String APPROVED = FEED + "deviceApproved";

    private static final String CIRCUIT = FEED + "circuit.";
    static final String DEVICE_KIND = CIRCUIT + "device.kind";
    static final String DEVICE_RATING = CIRCUIT + "device.rating";
    static final String DEVICE_BREAKING = CIRCUIT + "device.breakingCapacity";
    static final String LET_THROUGH = CIRCUIT + "device.letThrough";
    static final String RCD_KIND = CIRCUIT + "rcd.kind";
    static final String RCD_TYPE = CIRCUIT + "rcd.type";
    static final String RCD_RESIDUAL = CIRCUIT + "rcd.residual";
    static final String RCD_RATING = CIRCUIT + "rcd.rating";
    static final String RCD_SCOPE = CIRCUIT + "rcd.scope";
    static final String RCD_LOAD = CIRCUIT + "rcd.load";
    static final String SEGMENTS = CIRCUIT + "segments";
    static final String SIZE = SEGMENTS + ".size";
    static final String LENGTH = SEGMENTS + ".length";
    static final String METHOD = SEGMENTS + ".method";
    static final String ISOLATOR_RATING = CIRCUIT + "isolator.rating";
    static final String ISOLATOR_CONDITION = CIRCUIT + "isolator.condition";

    static final String OUTSIDE_ZONES = "survey.site.outsideZones";
    static final String SUPPLEMENTARY = "survey.site.supplementaryBonding";
    static final String ELECTRONICS = "heater.electronics";

    private Paths() {}

    /** The path of one segment's reading. */
    static String ofSegment(String segment, String reading) {
        return SEGMENTS + "[" + segment + "]." + reading;
    }
}
