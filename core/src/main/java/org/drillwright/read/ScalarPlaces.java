package org.drillwright.read;

import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;

/**
 * Finds for each unit of a scalar's text the place in the file that it was written at.
 *
 * <p>The written form is cut into atoms (a unit, an escape, a doubled quote). Whatever the style does with line ends and
 * indents, the atoms that are not white space stand in the same order as in the text; so those are paired one by one, and
 * each run of white space in the text is laid on the run between its neighbours.
 */
final class ScalarPlaces {

    private final String text;
    private final int[] starts;
    private final int[] ends;
    private final ScalarAtoms atoms;

    private ScalarPlaces(String text, ScalarAtoms atoms) {
        this.text = text;
        this.starts = new int[text.length()];
        this.ends = new int[text.length()];
        this.atoms = atoms;
    }

    /**
     * @param written the whole scalar with its quotes or its block header
     * @param text the text that the YAML library made of it
     */
    static Written find(SourceFile file, Span written, ScalarStyle style, String text) {
        int quote = style == ScalarStyle.SINGLE_QUOTED || style == ScalarStyle.DOUBLE_QUOTED ? 1 : 0;
        if (written.length() == text.length() + 2 * quote && file.text().startsWith(text, written.start() + quote)) {
            return Written.asItStands(text, written.start() + quote);
        }
        ScalarAtoms atoms = ScalarAtoms.cut(file.text(), written, style);
        return new ScalarPlaces(text, atoms).pair(written);
    }

    private Written pair(Span whole) {
        int atom = 0;
        for (int at = 0; at < text.length(); at++) {
            if (isBlank(text.charAt(at))) {
                atom = layBlank(at, atom, whole);
            } else {
                atom = atoms.nextSolid(atom);
                if (atom >= atoms.count() || atoms.unit(atom) != text.charAt(at)) {
                    return everywhere(whole);
                }
                set(at, atoms.start(atom), atoms.end(atom));
                atom++;
            }
        }
        return new Written(text, starts, ends);
    }

    private int layBlank(int at, int atom, Span whole) {
        if (atom < atoms.count() && isBlank(atoms.unit(atom))) {
            set(at, atoms.start(atom), atoms.end(atom));
            return atom + 1;
        }
        int place = atom > 0 ? atoms.end(atom - 1) : whole.start();
        set(at, place, place);
        return atom;
    }

    private void set(int at, int start, int end) {
        starts[at] = start;
        ends[at] = end;
    }

    /** The coarse answer, for a form of writing that could not be followed: each unit stands for the whole scalar. */
    private Written everywhere(Span whole) {
        for (int at = 0; at < text.length(); at++) {
            set(at, whole.start(), whole.end());
        }
        return new Written(text, starts, ends);
    }

    static boolean isBlank(char unit) {
        return unit == ' '
                || unit == '\t'
                || unit == '\n'
                || unit == '\r'
                || unit == '\u0085'
                || unit == '\u2028'
                || unit == '\u2029';
    }
}
