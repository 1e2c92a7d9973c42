package org.drillwright.print.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Properties;

/** The words of a room in one language: a file of keys in UTF-8 that lies with the room. */
public final class Bundle {

    private final String file;
    private final Properties words;

    private Bundle(String file, Properties words) {
        this.file = file;
        this.words = words;
    }

    /**
     * @param room a class of the room
     * @throws IllegalStateException if the room has no such file
     */
    public static Bundle of(Class<?> room, String file) {
        Properties words = new Properties();
        try (InputStream in = room.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no " + file);
            }
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be read", broken);
        }
        return new Bundle(file, words);
    }

    public Optional<String> find(String key) {
        return Optional.ofNullable(words.getProperty(key));
    }

    /**
     * Words with {@code {0}}, {@code {1}} … filled in; a gap that a value brings with it stays as it is.
     *
     * @throws IllegalStateException if the file lacks the key
     */
    public String text(String key, Object... values) {
        String text = find(key).orElseThrow(() -> new IllegalStateException("no " + key + " in " + file));
        if (values.length == 0) {
            return text;
        }
        StringBuilder filled = new StringBuilder();
        for (int at = 0; at < text.length(); at++) {
            int gap = gap(text, at);
            if (gap >= 0 && gap < values.length) {
                filled.append(values[gap]);
                at += "{0".length();
            } else {
                filled.append(text.charAt(at));
            }
        }
        return filled.toString();
    }

    /** The number of the gap that begins here; -1 if none does. */
    private static int gap(String text, int at) {
        boolean gap = text.charAt(at) == '{' && at + 2 < text.length() && text.charAt(at + 2) == '}';
        return gap ? Character.digit(text.charAt(at + 1), 10) : -1;
    }
}
