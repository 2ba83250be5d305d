// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;
import twinfeed.model.rows.Row;
import twinfeed.workbook.text.WorkbookException;

/**
 * Reads the first visible sheet of a workbook row by row. The file may come from anywhere: its size is measured before it is unpacked, its
 * XML may neither declare a document type nor reach for anything outside, and a row is handed on before the next one is read.
 */
public final class SheetReader {
    private SheetReader() {}

    /**
     * Reads the rows; empty ones are left out.
     *
     * @param file an .xlsx workbook
     * @param mostRows number of rows beyond which the sheet is refused
     * @param rows takes the rows; what it throws ends the reading
     * @throws WorkbookException if the file or the sheet cannot be used; the message names file and cell
     * @throws IOException if the file cannot be read
     */
    public static void read(Path file, int mostRows, Consumer<Row> rows) throws IOException {
        open(file, (book, name) -> read(book, new Place(name, mostRows), rows));
    }

    /**
     * Reads the rows of all visible sheets, one after the other; numbers have as many decimals as their cells show. Empty rows are left out.
     *
     * @param file an .xlsx workbook
     * @param mostRows number of rows beyond which a sheet is refused
     * @param rows takes the name of the sheet and the row
     * @throws WorkbookException if the file or a sheet cannot be used; the message names file and cell
     * @throws IOException if the file cannot be read
     */
    public static void readAll(Path file, int mostRows, BiConsumer<String, Row> rows) throws IOException {
        open(file, (book, name) -> readAll(book, new Place(name, mostRows), rows));
    }

    /** What is done with an opened book. */
    private interface Reading {
        void of(OPCPackage book, String name)
                throws IOException, OpenXML4JException, SAXException, ParserConfigurationException;
    }

    private static void open(Path file, Reading reading) throws IOException {
        Proportions.check(file);
        String name = String.valueOf(file.getFileName());
        try (OPCPackage book = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
            reading.of(book, name);
        } catch (RefusedException refused) {
            throw refused.reason();
        } catch (WorkbookException refused) {
            throw refused;
        } catch (ConsumerException ended) {
            throw ended.reason();
        } catch (OpenXML4JException
                | SAXException
                | ParserConfigurationException
                | IOException
                | RuntimeException damaged) {
            // The libraries tell of damage in many ways: by numbers that are none, parts that are missing, indices out
            // of range.
            throw new WorkbookException("damaged", Map.of("file", name), damaged);
        } catch (StackOverflowError damaged) {
            throw new WorkbookException("damaged", Map.of("file", name), damaged);
        }
    }

    private static void read(OPCPackage book, Place place, Consumer<Row> rows)
            throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
        XSSFReader reader = new XSSFReader(book);
        ReadOnlySharedStringsTable strings = new ReadOnlySharedStringsTable(book, false);
        boolean from1904 = from1904(reader);
        try (InputStream sheet = firstVisible(reader, place)) {
            CellText texts = new CellText(strings, reader.getStylesTable(), from1904, place, false);
            parse(sheet, new SheetHandler(texts, place, row -> hand(row, rows)));
        }
    }

    private static void readAll(OPCPackage book, Place place, BiConsumer<String, Row> rows)
            throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
        XSSFReader reader = new XSSFReader(book);
        ReadOnlySharedStringsTable strings = new ReadOnlySharedStringsTable(book, false);
        CellText texts = new CellText(strings, reader.getStylesTable(), from1904(reader), place, true);
        Set<String> hidden = hidden(reader);
        XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
        while (sheets.hasNext()) {
            try (InputStream sheet = sheets.next()) {
                String name = sheets.getSheetName();
                if (!hidden.contains(name)) {
                    parse(sheet, new SheetHandler(texts, place, row -> hand(row, each -> rows.accept(name, each))));
                }
            }
        }
    }

    /** What the receiver of a row throws is no damage of the file. */
    private static void hand(Row row, Consumer<Row> rows) {
        try {
            rows.accept(row);
        } catch (RuntimeException ends) {
            throw new ConsumerException(ends);
        }
    }

    /** A hidden sheet is not what a person sees as the first one. */
    private static InputStream firstVisible(XSSFReader reader, Place place)
            throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
        Set<String> hidden = hidden(reader);
        XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
        while (sheets.hasNext()) {
            InputStream sheet = sheets.next();
            if (!hidden.contains(sheets.getSheetName())) {
                return sheet;
            }
            sheet.close();
        }
        throw new WorkbookException("noSheet", Map.of("file", place.file()));
    }

    private static Set<String> hidden(XSSFReader reader)
            throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
        Set<String> hidden = new HashSet<>();
        try (InputStream book = reader.getWorkbookData()) {
            parse(book, new DefaultHandler() {
                @Override
                public void startElement(String uri, String local, String name, org.xml.sax.Attributes attributes) {
                    String state = attributes.getValue("state");
                    if (local.equals("sheet") && state != null && !state.equals("visible")) {
                        hidden.add(String.valueOf(attributes.getValue("name")));
                    }
                }
            });
        }
        return hidden;
    }

    private static void parse(InputStream stream, DefaultHandler handler)
            throws IOException, SAXException, ParserConfigurationException {
        XMLReader parser = XMLHelper.newXMLReader();
        parser.setContentHandler(handler);
        parser.setErrorHandler(handler);
        parser.parse(new InputSource(stream));
    }

    /** Some books count their days from 1904. */
    private static boolean from1904(XSSFReader reader)
            throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
        boolean[] from1904 = {false};
        try (InputStream book = reader.getWorkbookData()) {
            parse(book, new DefaultHandler() {
                @Override
                public void startElement(String uri, String local, String name, org.xml.sax.Attributes attributes) {
                    String value = local.equals("workbookPr") ? attributes.getValue("date1904") : null;
                    from1904[0] |= "1".equals(value) || "true".equals(value);
                }
            });
        }
        return from1904[0];
    }

    /**
     * What is read.
     *
     * @param file name of the file for messages
     * @param mostRows number of rows beyond which it is refused
     */
    record Place(String file, int mostRows) {
        /** Ends the reading. */
        RefusedException refuse(String key, String cell) {
            return new RefusedException(
                    new WorkbookException(key, Map.of("file", file, "cell", cell, "rows", String.valueOf(mostRows))));
        }
    }

    /** Carries what the receiver of a row has thrown through the parser. */
    private static final class ConsumerException extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final RuntimeException reason;

        ConsumerException(RuntimeException reason) {
            super(reason);
            this.reason = reason;
        }

        RuntimeException reason() {
            return reason;
        }
    }

    /** Carries a refusal through the parser. */
    static final class RefusedException extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final WorkbookException reason;

        RefusedException(WorkbookException reason) {
            super(reason);
            this.reason = reason;
        }

        WorkbookException reason() {
            return reason;
        }
    }
}
