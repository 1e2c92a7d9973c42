package org.drillwright.print.bench.peers.card;

/** Text between tags. */
final class Xml {

    private Xml() {}

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
