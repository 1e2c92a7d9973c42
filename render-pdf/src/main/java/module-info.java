/*
 * Cards, sheets and pages drawn, and the command line. What a library may use is exported; the module is open, because the
 * command line finds its options by reflection, and the words that people read are found from their classes by core.
 */
open module org.drillwright.print {
    requires static org.jspecify;
    requires transitive org.drillwright.core;
    requires com.fasterxml.jackson.core;
    requires com.google.gson;
    requires info.picocli;
    requires java.desktop;
    requires java.logging;
    requires jdk.httpserver;
    requires jdk.unsupported;
    requires net.sf.jasperreports.fonts;
    requires org.apache.commons.logging;
    requires org.apache.fontbox;
    requires org.apache.pdfbox;
    requires org.apache.pdfbox.io;
    requires org.eclipse.lsp4j;
    requires org.eclipse.lsp4j.jsonrpc;

    exports org.drillwright.print.diagram;
    exports org.drillwright.print.frame;
    exports org.drillwright.print.impose;
    exports org.drillwright.print.layout.fit;
    exports org.drillwright.print.layout.words;
    exports org.drillwright.print.layout;
    exports org.drillwright.print.pdf;
    exports org.drillwright.print.svg;
    exports org.drillwright.print.text;
}
