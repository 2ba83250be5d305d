// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import javax.xml.transform.Source;
import javax.xml.transform.dom.DOMSource;
import org.apache.fop.image.loader.batik.BatikImageFlavors;
import org.apache.xmlgraphics.image.loader.ImageContext;
import org.apache.xmlgraphics.image.loader.ImageInfo;
import org.apache.xmlgraphics.image.loader.ImageSize;
import org.apache.xmlgraphics.image.loader.impl.AbstractImagePreloader;
import org.apache.xmlgraphics.image.loader.impl.ImageXMLDOM;
import org.apache.xmlgraphics.util.MimeConstants;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;

/**
 * Takes the size of a drawing from what the drawing says. FOP's own way asks for the typefaces of the machine first, which takes half a
 * second, looks up the machine's name and leaves a file in the person's home.
 */
final class DrawingPreloader extends AbstractImagePreloader {
    private static final String SPACE = "http://www.w3.org/2000/svg";
    private static final double MILLIPOINTS_PER_INCH = 72_000;

    @Override
    public int getPriority() {
        return DEFAULT_PRIORITY / 2;
    }

    @Override
    public @Nullable ImageInfo preloadImage(String name, Source source, ImageContext context) {
        if (!(source instanceof DOMSource dom)
                || !(dom.getNode() instanceof Document drawing)
                || !SPACE.equals(drawing.getDocumentElement().getNamespaceURI())) {
            return null;
        }
        ImageInfo info = new ImageInfo(name, MimeConstants.MIME_SVG);
        ImageSize size = new ImageSize();
        double pixel = MILLIPOINTS_PER_INCH / context.getSourceResolution();
        size.setSizeInMillipoints(length(drawing, "width", pixel), length(drawing, "height", pixel));
        size.setResolution(context.getSourceResolution());
        size.calcPixelsFromSize();
        info.setSize(size);
        info.getCustomObjects()
                .put(ImageInfo.ORIGINAL_IMAGE, new ImageXMLDOM(info, drawing, BatikImageFlavors.SVG_DOM));
        return info;
    }

    /** Our drawings say their width and height in pixels, without a unit. */
    private static int length(Document drawing, String attribute, double pixel) {
        return (int) Math.round(
                pixel * Double.parseDouble(drawing.getDocumentElement().getAttribute(attribute)));
    }
}
