// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.inputs;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.units.Quantity;
import twinfeed.units.UnitException;

/** The cells of readings, by the path of the reading, and how formulas get a figure in another unit from them. */
public final class ReadingCells {
    private static final double NEAR = 1e-12;

    private record Cell(String address, double si, @Nullable Kind kind, String unit) {}

    private final Map<String, Cell> cells = new HashMap<>();
    private final Set<String> ambiguous = new HashSet<>();
    private final Map<Unit, Double> ones = new HashMap<>();

    private record Unit(Kind kind, String name) {}

    /**
     * Adds a reading; two of one path (pipes of one name) cannot be told apart and count as none.
     *
     * @param unit the unit in which its number stands in the cell
     */
    public void add(String path, String address, Quantity reading, String unit) {
        add(path, new Cell(address, reading.si(), reading.kind(), unit));
    }

    /** Adds a plain number. */
    public void add(String path, String address, double number) {
        add(path, new Cell(address, number, null, ""));
    }

    private void add(String path, Cell cell) {
        if (cells.putIfAbsent(path, cell) != null) {
            ambiguous.add(path);
        }
    }

    /** Whether the survey has such a reading. */
    public boolean has(String path) {
        return cells.containsKey(path);
    }

    /** The formula that gives a figure from its reading; absent if there is no such reading or it says something else. */
    public @Nullable String formula(String path, double value, String unit) {
        Cell cell = ambiguous.contains(path) ? null : cells.get(path);
        if (cell == null) {
            return null;
        }
        if (cell.kind() == null) {
            return cell.si() == value ? cell.address() : null;
        }
        if (cell.kind() == Kind.TEMPERATURE) {
            return near(cell.si(), value) && "°C".equals(unit) ? celsius(cell) : null;
        }
        try {
            double to = one(cell.kind(), unit);
            return near(cell.si() / to, value) ? scaled(cell.address(), one(cell.kind(), cell.unit()) / to) : null;
        } catch (UnitException otherKind) {
            return null;
        }
    }

    /** How much one of a unit is in SI; every line of a working asks, and few units are asked for. */
    private double one(Kind kind, String unit) {
        return ones.computeIfAbsent(new Unit(kind, unit), asked -> Quantities.parse(asked.kind(), "1 " + asked.name())
                .si());
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) <= NEAR * Math.abs(other);
    }

    private static @Nullable String celsius(Cell cell) {
        return switch (cell.unit()) {
            case "°C", "degC", "C" -> cell.address();
            case "K" -> "(" + cell.address() + "-273.15)";
            case "°F", "degF", "F" -> "((" + cell.address() + "-32)/1.8)";
            default -> null;
        };
    }

    private static String scaled(String address, double factor) {
        if (near(factor, 1)) {
            return address;
        }
        double rounded = Math.rint(factor);
        if (near(rounded, factor)) {
            return "(" + address + "*" + (long) rounded + ")";
        }
        double inverse = Math.rint(1 / factor);
        return near(inverse * factor, 1)
                ? "(" + address + "/" + (long) inverse + ")"
                : "(" + address + "*" + factor + ")";
    }
}
