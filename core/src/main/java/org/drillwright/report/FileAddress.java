package org.drillwright.report;

import java.nio.charset.StandardCharsets;

/**
 * A file's name as a URI (RFC 3986): each unit of UTF-8 that is not unreserved, and no slash, as a percent sign and two
 * figures.
 */
record FileAddress(String uri, boolean isRelative) {

    private static final String UNRESERVED = "-._~/";

    /** @param name with forward slashes; absolute if it begins with one, or with a drive's letter */
    static FileAddress of(String name) {
        if (name.startsWith("/")) {
            return new FileAddress("file://" + encoded(name), false);
        }
        if (name.matches("[A-Za-z]:/.*")) {
            return new FileAddress("file:///" + name.substring(0, 2) + encoded(name.substring(2)), false);
        }
        return new FileAddress(encoded(name), true);
    }

    private static String encoded(String name) {
        StringBuilder uri = new StringBuilder();
        for (byte unit : name.getBytes(StandardCharsets.UTF_8)) {
            boolean letter =
                    (unit >= 'a' && unit <= 'z') || (unit >= 'A' && unit <= 'Z') || (unit >= '0' && unit <= '9');
            if (letter || UNRESERVED.indexOf(unit) >= 0) {
                uri.append((char) unit);
            } else {
                uri.append(String.format("%%%02X", unit));
            }
        }
        return uri.toString();
    }
}
