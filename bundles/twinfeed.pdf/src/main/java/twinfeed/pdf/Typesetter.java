// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.apache.fop.apps.EnvironmentalProfileFactory;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.Fop;
import org.apache.fop.apps.FopConfParser;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.area.AreaTreeHandler;
import org.apache.fop.area.PageViewport;
import org.apache.fop.events.model.EventSeverity;
import org.apache.xmlgraphics.io.Resource;
import org.apache.xmlgraphics.io.ResourceResolver;
import org.apache.xmlgraphics.util.MimeConstants;
import org.xml.sax.SAXException;

/**
 * Sets XSL-FO with FOP. Reads nothing but the typefaces of this bundle: no network, no file, no outside entity. One for the process,
 * made when the first PDF is asked for; thread-safe.
 */
final class Typesetter {
    private static final URI BASE = URI.create("twinfeed:/");

    /** FOP insists on a title and is choosy about its letters; the seal writes the real one. */
    private static final String WITHOUT_NAME = "Twinfeed";

    /** The id of the box to sign. */
    static final String BOX_TO_SIGN = "signature";

    private final FopFactory factory;
    private final FontSelector typefaces;

    /** Made when it is first asked for. */
    private static final class Holder {
        static final Typesetter ONLY = new Typesetter();
    }

    /**
     * What was set.
     *
     * @param pdf the file
     * @param pages its pages
     * @param signedOn the page of the box to sign, from 1; 0 where there is none
     * @param remarks what FOP found odd, for example text that leaves its box
     */
    record Set(byte[] pdf, int pages, int signedOn, List<String> remarks) {}

    private Typesetter() {
        try (Borrowed loader = new Borrowed();
                InputStream configuration = Typesetter.class.getResourceAsStream("fop.xml")) {
            factory = new FopConfParser(
                            configuration, EnvironmentalProfileFactory.createRestrictedIO(BASE, new Typeface()))
                    .getFopFactoryBuilder()
                    .build();
            factory.getImageManager().getRegistry().registerPreloader(new DrawingPreloader());
            typefaces = new FontSelector();
        } catch (IOException | SAXException broken) {
            throw new IllegalStateException("FOP cannot be set up", broken);
        }
    }

    static Typesetter get() {
        return Holder.ONLY;
    }

    /** The typefaces. */
    FontSelector typefaces() {
        return typefaces;
    }

    /** A new document to be written. */
    FoWriter document() {
        return new FoWriter(typefaces);
    }

    /**
     * Sets a document.
     *
     * @throws IOException if FOP cannot set it
     */
    Set set(FoWriter document, DocumentInfo about) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
        List<String> remarks = new ArrayList<>();
        try (Borrowed loader = new Borrowed()) {
            FOUserAgent agent = factory.newFOUserAgent();
            agent.setTitle(WITHOUT_NAME);
            agent.getEventBroadcaster().addEventListener(event -> {
                if (event.getSeverity() != EventSeverity.INFO) {
                    remarks.add(event.getEventID() + " " + event.getParams());
                }
            });
            AreaTreeHandler areas = new AreaTreeHandler(agent, MimeConstants.MIME_PDF, bytes);
            agent.setFOEventHandlerOverride(areas);
            Fop fop = factory.newFop(MimeConstants.MIME_PDF, agent, bytes);
            parser().newSAXParser().parse(new ByteArrayInputStream(document.bytes()), fop.getDefaultHandler());
            byte[] pdf = new PdfNormalizer(about).close(bytes.toByteArray());
            PageViewport signed = areas.getIDTracker().getFirstPageViewportContaining(BOX_TO_SIGN);
            int signedOn = signed == null ? 0 : signed.getPageIndex() + 1;
            return new Set(pdf, fop.getResults().getPageCount(), signedOn, List.copyOf(remarks));
        } catch (SAXException | ParserConfigurationException | RuntimeException refused) {
            // FOP wraps what goes wrong while it writes into runtime exceptions.
            throw new IOException("the PDF cannot be set: " + refused.getMessage(), refused);
        }
    }

    private static SAXParserFactory parser() throws ParserConfigurationException, SAXException {
        SAXParserFactory parser = SAXParserFactory.newDefaultNSInstance();
        parser.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        parser.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return parser;
    }

    /**
     * The surroundings that FOP needs, given back when it is done. It finds its parts through the thread's class loader, which here is the
     * bundle's, whoever calls. And it counts fonts in the digits of the person's language, which fails where those are not 0 to 9: only
     * there the process counts in those for the time being.
     */
    private static final class Borrowed implements AutoCloseable {
        private final ClassLoader loader = Thread.currentThread().getContextClassLoader();
        private final Locale format = Locale.getDefault(Locale.Category.FORMAT);
        private final boolean otherDigits =
                DecimalFormatSymbols.getInstance(format).getZeroDigit() != '0';

        Borrowed() {
            Thread.currentThread().setContextClassLoader(Typesetter.class.getClassLoader());
            if (otherDigits) {
                Locale.setDefault(Locale.Category.FORMAT, Locale.ROOT);
            }
        }

        @Override
        public void close() {
            Thread.currentThread().setContextClassLoader(loader);
            if (otherDigits) {
                Locale.setDefault(Locale.Category.FORMAT, format);
            }
        }
    }

    /** The typefaces beside this class, and nothing else. */
    private static final class Typeface implements ResourceResolver {
        @Override
        public Resource getResource(URI uri) throws IOException {
            String path = String.valueOf(uri.getPath());
            InputStream stream = BASE.getScheme().equals(uri.getScheme()) && path.startsWith("/fonts/")
                    ? Typesetter.class.getResourceAsStream(path.substring(1))
                    : null;
            if (stream == null) {
                throw new IOException(uri + " is not read");
            }
            return new Resource(stream);
        }

        @Override
        public OutputStream getOutputStream(URI uri) throws IOException {
            throw new IOException(uri + " is not written");
        }
    }
}
