// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.book;

import java.io.BufferedWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.opc.internal.PackagePropertiesPart;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.streaming.SheetDataWriter;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook being written. Cells go through POI's streaming model, because building a bean for each cell costs more than all else
 * together; looks, names, charts and pictures go through the ordinary one underneath. Not for threads.
 */
public final class Book extends SXSSFWorkbook {
    private final Looks looks;
    private final boolean inMemory;

    /**
     * Starts a book.
     *
     * @param palette its colours
     * @param rowsInMemory whether the rows are kept in memory, which is quicker; otherwise all but the last rows of a sheet lie in a
     *     temporary file, and memory stays the same however many rows there are
     */
    public Book(Palette palette, boolean rowsInMemory) {
        super(new XSSFWorkbook(), rowsInMemory ? -1 : 100);
        inMemory = rowsInMemory;
        // Formulas are ours and refer to names that are defined later; parsing each one twice is waste.
        getXSSFWorkbook().setCellFormulaValidation(false);
        looks = new Looks(getXSSFWorkbook(), palette);
    }

    /** The looks of this book's cells. */
    public Looks looks() {
        return looks;
    }

    /** The sheet underneath, for charts and pictures. */
    public XSSFSheet under(SXSSFSheet sheet) {
        return getXSSFWorkbook().getSheetAt(getSheetIndex(sheet));
    }

    /** Says what the book is. The time is the document's, never the clock's. */
    public void describe(String title, String subject, String creator, String application, Instant time) {
        POIXMLProperties properties = getXSSFWorkbook().getProperties();
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

    @Override
    protected SheetDataWriter createSheetDataWriter() throws IOException {
        return inMemory ? new MemoryRows(new ByteArrayOutputStream(16384)) : super.createSheetDataWriter();
    }

    /** Writes the book; the stream is left open. */
    @Override
    public void write(OutputStream out) throws IOException {
        flushSheets();
        SortedZip zip = new SortedZip();
        getXSSFWorkbook().write(zip);
        for (int index = 0; index < getNumberOfSheets(); index++) {
            SXSSFSheet sheet = getSheetAt(index);
            String part = under(sheet).getPackagePart().getPartName().getName();
            zip.rows(part.substring(1), sheet::getWorksheetXMLInputStream);
        }
        zip.pack(out);
    }

    @Override
    public void close() throws IOException {
        if (inMemory) {
            // Rows in memory have no temporary file that could be removed.
            getXSSFWorkbook().close();
        } else {
            super.close();
        }
    }

    private static final class MemoryRows extends SheetDataWriter {
        private final ByteArrayOutputStream bytes;

        MemoryRows(ByteArrayOutputStream bytes) throws IOException {
            super(new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8), 8192));
            this.bytes = bytes;
        }

        @Override
        public InputStream getWorksheetXMLInputStream() {
            return new ByteArrayInputStream(bytes.toByteArray());
        }
    }
}
