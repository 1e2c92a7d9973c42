package org.drillwright.read;

import java.util.Arrays;
import org.drillwright.source.Span;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;

/** The written form of a scalar, cut into atoms: each gives one UTF-16 unit of text. */
final class ScalarAtoms {

    private final StringBuilder units = new StringBuilder();
    private int[] starts = new int[32];
    private int[] ends = new int[32];

    private ScalarAtoms() {}

    static ScalarAtoms cut(String source, Span written, ScalarStyle style) {
        ScalarAtoms atoms = new ScalarAtoms();
        switch (style) {
            case SINGLE_QUOTED -> atoms.cutSingleQuoted(source, written.start() + 1, written.end() - 1);
            case DOUBLE_QUOTED -> atoms.cutDoubleQuoted(source, written.start() + 1, written.end() - 1);
            case LITERAL, FOLDED -> atoms.cutPlain(source, behindHeader(source, written), written.end());
            default -> atoms.cutPlain(source, written.start(), written.end());
        }
        return atoms;
    }

    int count() {
        return units.length();
    }

    char unit(int atom) {
        return units.charAt(atom);
    }

    int start(int atom) {
        return starts[atom];
    }

    int end(int atom) {
        return ends[atom];
    }

    /** The first atom from here on that is not white space; the count of atoms if there is none. */
    int nextSolid(int from) {
        int atom = from;
        while (atom < count() && ScalarPlaces.isBlank(unit(atom))) {
            atom++;
        }
        return atom;
    }

    private static int behindHeader(String source, Span written) {
        int at = written.start();
        while (at < written.end() && source.charAt(at) != '\n' && source.charAt(at) != '\r') {
            at++;
        }
        return at;
    }

    private void cutPlain(String source, int from, int to) {
        for (int at = from; at < to; at++) {
            add(source.charAt(at), at, at + 1);
        }
    }

    private void cutSingleQuoted(String source, int from, int to) {
        for (int at = from; at < to; at++) {
            boolean doubled = source.charAt(at) == '\'' && at + 1 < to && source.charAt(at + 1) == '\'';
            add(source.charAt(at), at, doubled ? at + 2 : at + 1);
            if (doubled) {
                at++;
            }
        }
    }

    private void cutDoubleQuoted(String source, int from, int to) {
        int at = from;
        while (at < to) {
            if (source.charAt(at) != '\\' || at + 1 >= to) {
                add(source.charAt(at), at, at + 1);
                at++;
            } else {
                at = cutEscape(source, at, to);
            }
        }
    }

    /** An escape as YAML 1.1 section 5.6 and 1.2 section 5.7 list them. */
    private int cutEscape(String source, int at, int to) {
        char kind = source.charAt(at + 1);
        int digits = switch (kind) {
            case 'x' -> 2;
            case 'u' -> 4;
            case 'U' -> 8;
            default -> 0;
        };
        int end = Math.min(to, at + 2 + digits);
        if (digits > 0) {
            String made = Character.toString(Integer.parseInt(source.substring(at + 2, end), 16));
            made.chars().forEach(unit -> add((char) unit, at, end));
        } else if (!ScalarPlaces.isBlank(kind) || kind == ' ' || kind == '\t') {
            add(named(kind), at, end);
        }
        return end;
    }

    private static char named(char kind) {
        return switch (kind) {
            case '0' -> '\0';
            case 'a' -> '\u0007';
            case 'b' -> '\b';
            case 't' -> '\t';
            case 'n' -> '\n';
            case 'v' -> '\u000B';
            case 'f' -> '\f';
            case 'r' -> '\r';
            case 'e' -> '\u001B';
            case 'N' -> '\u0085';
            case '_' -> '\u00A0';
            case 'L' -> '\u2028';
            case 'P' -> '\u2029';
            default -> kind;
        };
    }

    private void add(char unit, int start, int end) {
        int atom = units.length();
        if (atom == starts.length) {
            starts = Arrays.copyOf(starts, atom * 2);
            ends = Arrays.copyOf(ends, atom * 2);
        }
        units.append(unit);
        starts[atom] = start;
        ends[atom] = end;
    }
}
