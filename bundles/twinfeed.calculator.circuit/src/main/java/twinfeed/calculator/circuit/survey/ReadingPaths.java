// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

/** Paths of the readings that the circuit's checks need. */
public final class ReadingPaths {
    public static final String POWER = "heater.power";
    public static final String RATED_VOLTAGE = "heater.voltage";

    private static final String FEED = "survey.electricity.";
    public static final String EARTHING = FEED + "earthing";
    public static final String SERVICE_FUSE = FEED + "serviceFuse";
    public static final String EXTERNAL_LOOP = FEED + "externalLoop";
    public static final String FAULT = FEED + "prospectiveFault";
    public static final String ELECTRODE = FEED + "electrode";
    public static final String TAILS = FEED + "tails";
    public static final String EARTHING_CONDUCTOR = FEED + "earthingConductor";
    public static final String BONDING = FEED + "mainBonding";
    public static final String ASSEMBLY_RATING = FEED + "assemblyFaultRating";
    public static final String NEUTRAL = FEED + "supplyNeutral";
    public static final String SPARE_WAY = FEED + "spareWay";
    public static final String APPROVED = FEED + "deviceApproved";

    private static final String CIRCUIT = FEED + "circuit.";
    public static final String MEASURED_LOOP = CIRCUIT + "measuredLoop";
    public static final String DEVICE_KIND = CIRCUIT + "device.kind";
    public static final String DEVICE_RATING = CIRCUIT + "device.rating";
    public static final String DEVICE_BREAKING = CIRCUIT + "device.breakingCapacity";
    public static final String LET_THROUGH = CIRCUIT + "device.letThrough";
    public static final String RCD_KIND = CIRCUIT + "rcd.kind";
    public static final String RCD_TYPE = CIRCUIT + "rcd.type";
    public static final String RCD_RESIDUAL = CIRCUIT + "rcd.residual";
    public static final String RCD_RATING = CIRCUIT + "rcd.rating";
    public static final String RCD_SCOPE = CIRCUIT + "rcd.scope";
    public static final String RCD_LOAD = CIRCUIT + "rcd.load";
    public static final String UPSTREAM_RATING = CIRCUIT + "upstreamRcd.rating";
    public static final String UPSTREAM_LOAD = CIRCUIT + "upstreamRcd.load";
    static final String SEGMENTS = CIRCUIT + "segments";
    public static final String SIZE = SEGMENTS + ".size";
    public static final String LENGTH = SEGMENTS + ".length";
    public static final String METHOD = SEGMENTS + ".method";
    public static final String ISOLATOR_RATING = CIRCUIT + "isolator.rating";
    public static final String ISOLATOR_CONDITION = CIRCUIT + "isolator.condition";

    public static final String OUTSIDE_ZONES = "survey.site.outsideZones";
    public static final String SUPPLEMENTARY = "survey.site.supplementaryBonding";
    public static final String ELECTRONICS = "heater.electronics";

    private ReadingPaths() {}

    /** The path of one segment's reading. */
    public static String ofSegment(String segment, String reading) {
        return SEGMENTS + "[" + segment + "]." + reading;
    }
}
