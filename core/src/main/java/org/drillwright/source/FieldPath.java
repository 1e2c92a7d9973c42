package org.drillwright.source;

/**
 * The way to a value in a file: keys and item numbers from 0, parted by slashes, as in {@code steps/2/leader}.
 *
 * @param text the way as text, empty for the file's own mapping
 */
public record FieldPath(String text) {

    public static final FieldPath ROOT = new FieldPath("");

    public static FieldPath of(String text) {
        return new FieldPath(text);
    }

    /** The path of the value under a key. */
    public FieldPath key(String key) {
        return new FieldPath(text.isEmpty() ? key : text + "/" + key);
    }

    /** The path of an item of a list, counted from 0. */
    public FieldPath item(int index) {
        return key(Integer.toString(index));
    }
}
