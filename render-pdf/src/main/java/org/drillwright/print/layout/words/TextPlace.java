package org.drillwright.print.layout.words;

/**
 * Where a text stands in a drill: keys and item numbers from 0, parted by slashes, as in {@code steps/2/leader}.
 *
 * @param text the way to it
 */
public record TextPlace(String text) {

    public static TextPlace of(String text) {
        return new TextPlace(text);
    }

    /** The place of what stands under a key. */
    public TextPlace key(String key) {
        return new TextPlace(text + "/" + key);
    }

    /** The place of an item of a list, counted from 0. */
    public TextPlace item(int index) {
        return key(Integer.toString(index));
    }
}
