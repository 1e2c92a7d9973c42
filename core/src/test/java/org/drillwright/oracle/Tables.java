package org.drillwright.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The tables of the handbooks, for two with foils. Lines are named from the one attacked: {@code HI} high
 * inside, {@code HO} high outside, {@code LI} low inside, {@code LO} low outside.
 */
final class Tables {

    /** Position, the line it protects (Britannica, 11th ed., p. 593; Warford 1884, p. 11-15). */
    private static final String PROTECTS = """
            quarte  HI
            sixte   HO
            septime LI
            octave  LO
            """;

    /**
     * Where the hand stands, where the attack comes, what meets it. A parry to another position ends in the attacked line
     * (Warford 1884, p. 10-15; Technical Rules t.14); a circular one starts and ends where the hand stands and meets the
     * other line of that height (Warford p. 16-17; Britannica, 11th ed., p. 593; low lines by deduction).
     */
    private static final String MEETS = """
            quarte  HI
            quarte  HO parry-sixte circular-quarte
            quarte  LI parry-septime
            quarte  LO parry-octave
            sixte   HI parry-quarte circular-sixte
            sixte   HO
            sixte   LI parry-septime
            sixte   LO parry-octave
            septime HI parry-quarte
            septime HO parry-sixte
            septime LI
            septime LO parry-octave circular-septime
            octave  HI parry-quarte
            octave  HO parry-sixte
            octave  LI parry-septime circular-octave
            octave  LO
            """;

    /** Where a disengage or a cut-over ends, by the line it leaves (Warford 1884, p. 18-19; Technical Rules t.11.2). */
    private static final String PASSES = """
            HI HO
            HO HI
            LI LO
            LO LI
            """;

    /**
     * Into which lines a blade that touches another can go straight, by the line in which they touch: not past that blade
     * (Warford 1884, p. 17; of ripostes Technical Rules t.11.1); low from high and high from low under and over the hand
     * (L'Abbat, ch. VI, VIII).
     */
    private static final String STRAIGHT = """
            HI HI LI LO
            HO HO LI LO
            LI LI HI HO
            LO LO HI HO
            """;

    static final List<String> POSITIONS = List.of("quarte", "sixte", "septime", "octave");

    static final List<String> LINES = List.of("HI", "HO", "LI", "LO");

    private static final Map<String, List<String>> ROWS = new HashMap<>();

    static {
        read("protects", 1, PROTECTS);
        read("meets", 2, MEETS);
        read("passes", 1, PASSES);
        read("straight", 1, STRAIGHT);
    }

    private Tables() {}

    private static void read(String name, int keys, String table) {
        table.lines().forEach(row -> {
            List<String> cells = List.of(row.split(" +"));
            ROWS.put(name + " " + String.join(" ", cells.subList(0, keys)), cells.subList(keys, cells.size()));
        });
    }

    private static List<String> row(String key) {
        return ROWS.getOrDefault(key, List.of());
    }

    static String protects(String position) {
        return row("protects " + position).get(0);
    }

    static List<String> meets(String hand, String line) {
        return new ArrayList<>(row("meets " + hand + " " + line));
    }

    static String passesTo(String line) {
        return row("passes " + line).get(0);
    }

    /** Lines are named for their height first. */
    static boolean sameHeight(String one, String other) {
        return one.charAt(0) == other.charAt(0);
    }

    static List<String> straight(String line) {
        return row("straight " + line);
    }
}
