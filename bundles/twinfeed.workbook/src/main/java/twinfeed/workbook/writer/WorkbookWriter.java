// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.opc.internal.PackagePropertiesPart;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import twinfeed.document.Palette;

/**
 * A workbook being written. Styles, names, page set-up, charts and pictures go through POI's ordinary model; rows are written as they
 * come and put in their place at the end. Not for threads.
 */
public final class WorkbookWriter implements AutoCloseable {
    /** The part that POI writes for the table of texts. */
    private static final String STRINGS = "xl/sharedStrings.xml";

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final List<SheetWriter> pages = new ArrayList<>();
    private final CellStyles looks;
    private final SharedStrings strings = new SharedStrings();
    private final Map<String, byte[]> parts = new TreeMap<>();
    private final boolean inMemory;
    private final Locale locale;

    /**
     * Starts a book.
     *
     * @param palette its colours
     * @param locale its language
     * @param rowsInMemory whether rows are kept in memory, which is quicker; otherwise they lie in temporary files until the book is
     *     written, and memory stays the same however many rows there are
     */
    public WorkbookWriter(Palette palette, Locale locale, boolean rowsInMemory) {
        this.locale = locale;
        inMemory = rowsInMemory;
        looks = new CellStyles(workbook, palette);
    }

    /**
     * Adds a page at the end.
     *
     * @throws IOException if there is no room for temporary files
     */
    public SheetWriter page(String name) throws IOException {
        RowWriter rows = inMemory ? RowWriter.inMemory(strings) : RowWriter.inFile();
        SheetWriter page = new SheetWriter(this, workbook.createSheet(name), rows);
        pages.add(page);
        return page;
    }

    /** The styles of this workbook's cells. */
    public CellStyles looks() {
        return looks;
    }

    /** The language of this book. */
    Locale locale() {
        return locale;
    }

    /** POI's book underneath. */
    public XSSFWorkbook under() {
        return workbook;
    }

    /** Names a cell; the name must be new and one that spreadsheets take. */
    public void name(String name, String address) {
        XSSFName cellName = workbook.createName();
        cellName.setNameName(name);
        cellName.setRefersToFormula(address);
    }

    /** Gives a part that POI writes another content. */
    void replace(String part, byte[] content) {
        parts.put(part, content);
    }

    /** Says what the book is. The time is the document's, never the clock's. */
    public void describe(String title, String subject, String creator, String application, Instant time) {
        POIXMLProperties properties = workbook.getProperties();
        PackagePropertiesPart core = properties.getCoreProperties().getUnderlyingProperties();
        core.setTitleProperty(title);
        core.setSubjectProperty(subject);
        core.setCreatorProperty(creator);
        core.setLastModifiedByProperty(creator);
        core.setCreatedProperty(Optional.of(Date.from(time)));
        core.setModifiedProperty(Optional.of(Date.from(time)));
        properties.getExtendedProperties().setApplication(application);
        properties.getExtendedProperties().setCompany(creator);
    }

    /** Writes the book once; the stream is flushed and left open. */
    public void write(OutputStream out) throws IOException {
        SortedZip zip = new SortedZip();
        for (SheetWriter page : pages) {
            page.end();
            String part = page.sheet().getPackagePart().getPartName().getName();
            zip.rows(part.substring(1), page.rows());
        }
        workbook.write(zip);
        zip.replace(STRINGS, strings.part());
        parts.forEach(zip::replace);
        zip.pack(out);
    }

    @Override
    public void close() throws IOException {
        for (SheetWriter page : pages) {
            page.rows().close();
        }
        // Closing a package saves it once more.
        workbook.getPackage().revert();
    }
}
