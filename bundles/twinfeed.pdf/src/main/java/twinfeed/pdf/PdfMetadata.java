// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;
import java.util.Locale;

/** What a file says about itself, in both forms that readers look for (ISO 32000-1, 14.3), the time in UTC. */
final class PdfMetadata {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyyMMddHHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final DocumentInfo about;

    PdfMetadata(DocumentInfo about) {
        this.about = about;
    }

    /** The dictionary of the document's information. */
    String info() {
        return "<< /Title " + text(about.title())
                + (about.author().isEmpty() ? "" : " /Author " + text(about.author()))
                + " /Creator " + text(about.producer())
                + " /Producer " + text(about.producer())
                + " /CreationDate (D:" + TIME.format(about.time()) + "Z) >>";
    }

    private static String text(String text) {
        return "<FEFF" + HexFormat.of().withUpperCase().formatHex(text.getBytes(StandardCharsets.UTF_16BE)) + ">";
    }

    /** The XMP packet (ISO 16684-1), which also claims PDF/UA-1. */
    String packet() {
        String author = about.author().isEmpty()
                ? ""
                : "  <dc:creator><rdf:Seq><rdf:li>" + escaped(about.author()) + "</rdf:li></rdf:Seq></dc:creator>\n";
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                 <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                  <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
                    xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                    xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
                  <dc:format>application/pdf</dc:format>
                  <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
                %s  <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
                  <xmp:CreateDate>%s</xmp:CreateDate>
                  <xmp:CreatorTool>%s</xmp:CreatorTool>
                  <pdf:Producer>%s</pdf:Producer>
                  <pdfuaid:part>1</pdfuaid:part>
                  </rdf:Description>
                 </rdf:RDF>
                </x:xmpmeta>
                <?xpacket end="r"?>"""
                .formatted(
                        escaped(about.title()),
                        author,
                        FoWriter.language(about.locale()),
                        about.time(),
                        escaped(about.producer()),
                        escaped(about.producer()));
    }

    /** Text of an element; what XML 1.0 cannot carry becomes the sign for what cannot be shown. */
    private static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                default -> out.appendCodePoint(allowed(letter) ? letter : 0xFFFD);
            }
        });
        return out.toString();
    }

    private static boolean allowed(int letter) {
        return letter >= ' ' && letter < 0xFFFE && !(letter >= 0xD800 && letter < 0xE000) || letter > 0xFFFF;
    }
}
