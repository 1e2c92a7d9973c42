package org.drillwright.print.pdf;

/** The document's metadata packet, written by hand so that it never varies. */
final class Xmp {

    /** The last part describes the first's PDF/UA property, as PDF/A asks for any that it does not know itself. */
    private static final String PACKET = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
             <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
              <rdf:Description rdf:about=""
                xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
                xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
                xmlns:dc="http://purl.org/dc/elements/1.1/">
               <pdfaid:part>2</pdfaid:part>
               <pdfaid:conformance>A</pdfaid:conformance>
               <pdfuaid:part>1</pdfuaid:part>
               <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
               <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>
              </rdf:Description>
              <rdf:Description rdf:about=""
                xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
                xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
                xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
               <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
                <pdfaSchema:schema>PDF/UA Universal Accessibility Schema</pdfaSchema:schema>
                <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
                 <pdfaProperty:name>part</pdfaProperty:name>
                 <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
                 <pdfaProperty:category>internal</pdfaProperty:category>
                 <pdfaProperty:description>Part of ISO 14289 that the file follows</pdfaProperty:description>
                </rdf:li></rdf:Seq></pdfaSchema:property>
               </rdf:li></rdf:Bag></pdfaExtension:schemas>
              </rdf:Description>
             </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="w"?>
            """;

    private Xmp() {}

    static String packet(DocumentInfo info) {
        String language = escaped(info.language().toLanguageTag());
        return PACKET.replace("{language}", language).replace("{title}", escaped(info.title()));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
