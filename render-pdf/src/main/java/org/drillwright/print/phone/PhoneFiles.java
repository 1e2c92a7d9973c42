package org.drillwright.print.phone;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The files of this room. */
final class PhoneFiles {

    private PhoneFiles() {}

    static String text(String name) {
        try (InputStream in = PhoneFiles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(name + " cannot be read", broken);
        }
    }
}
