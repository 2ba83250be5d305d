// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.util.CellReference;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;
import twinfeed.model.rows.Row;

/** Takes the events of a sheet's XML and hands on its rows. */
final class SheetHandler extends DefaultHandler {
    private static final int MOST_COLUMNS = 200;

    /** No cell of a spreadsheet program holds more letters. */
    private static final int LONGEST = 32_767;

    private final CellText texts;
    private final SheetReader.Place place;
    private final Consumer<Row> rows;
    private final List<String> cells = new ArrayList<>();
    private final StringBuilder value = new StringBuilder();
    private int rowNumber;
    private int rowsSeen;
    private int column = -1;
    private String type = "";
    private int style = -1;
    private boolean formula;
    private boolean inValue;
    private boolean inPhonetic;

    SheetHandler(CellText texts, SheetReader.Place place, Consumer<Row> rows) {
        this.texts = texts;
        this.place = place;
        this.rows = rows;
    }

    @Override
    public void startElement(String uri, String local, String name, Attributes attributes) {
        switch (local) {
            case "row" -> startRow(attributes.getValue("r"));
            case "c" -> startCell(attributes);
            case "f" -> formula = true;
            case "rPh" -> inPhonetic = true;
            case "v", "t" -> inValue = !inPhonetic;
            case "mergeCell" -> throw place.refuse("mergedCells", String.valueOf(attributes.getValue("ref")));
            default -> {
                // Nothing that a list needs.
            }
        }
    }

    private void startRow(@Nullable String number) {
        rowNumber = number == null ? rowNumber + 1 : Integer.parseInt(number);
        if (++rowsSeen > place.mostRows()) {
            throw place.refuse("tooManyRows", "A" + rowNumber);
        }
        cells.clear();
        column = -1;
    }

    private void startCell(Attributes attributes) {
        String address = attributes.getValue("r");
        column = address == null ? column + 1 : new CellReference(address).getCol();
        if (column < 0 || column >= MOST_COLUMNS) {
            throw place.refuse("tooManyColumns", address());
        }
        type = attributes.getValue("t") == null ? "n" : attributes.getValue("t");
        style = attributes.getValue("s") == null ? -1 : Integer.parseInt(attributes.getValue("s"));
        formula = false;
        value.setLength(0);
    }

    @Override
    public void characters(char[] letters, int start, int length) {
        if (inValue) {
            if (value.length() + length > LONGEST) {
                throw place.refuse("tooLongText", address());
            }
            value.append(letters, start, length);
        }
    }

    @Override
    public void endElement(String uri, String local, String name) {
        switch (local) {
            case "v", "t" -> inValue = false;
            case "rPh" -> inPhonetic = false;
            case "c" -> endCell();
            case "row" -> endRow();
            default -> {
                // Nothing that a list needs.
            }
        }
    }

    private void endCell() {
        if (formula && value.isEmpty() && !type.equals("str")) {
            throw place.refuse("formulaWithoutValue", address());
        }
        String text = value.isEmpty() ? "" : texts.of(type, style, value.toString(), address());
        while (cells.size() <= column) {
            cells.add("");
        }
        cells.set(column, text);
    }

    private void endRow() {
        int last = cells.size();
        while (last > 0 && cells.get(last - 1).isBlank()) {
            last--;
        }
        if (last > 0) {
            rows.accept(new Row(rowNumber, cells.subList(0, last)));
        }
    }

    private String address() {
        return CellReference.convertNumToColString(Math.max(0, column)) + rowNumber;
    }
}
