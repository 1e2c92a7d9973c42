package org.drillwright.oracle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every move open to either of two foil fencers, and what it leads to.
 *
 * <p>Moves are words: {@code L forward}, {@code F to quarte}, {@code L lunge disengage HI}, {@code F circular-sixte}. The
 * leader is L, the follower F; a stroke without {@code lunge} is made by the arm alone. Where the blades are worked with:
 * {@code L engage quarte}, {@code L change sixte}, {@code L beat quarte}, {@code L press}, {@code L bind octave}, {@code L
 * glide HI}, {@code L counter HO}, {@code L renew LI}.
 */
public final class Enumeration {

    private final Scene scene;
    private final Map<String, Scene> open = new LinkedHashMap<>();

    private Enumeration(Scene scene) {
        this.scene = scene;
    }

    /** A position, as nobody outside sees it. */
    public static final class Node {
        private final Scene scene;

        private Node(Scene scene) {
            this.scene = scene;
        }

        /** All moves, each with the position that it leads to. */
        public Map<String, Node> moves() {
            Map<String, Node> moves = new LinkedHashMap<>();
            new Enumeration(scene).list().forEach((move, next) -> moves.put(move, new Node(next)));
            return moves;
        }

        /** How many sequences of so many moves there are. */
        public long phrases(int depth) {
            if (depth == 0) {
                return 1;
            }
            return moves().values().stream()
                    .mapToLong(next -> next.phrases(depth - 1))
                    .sum();
        }
    }

    /** Two of the same hand, both on guard in one position, at lunge distance; of the blades nothing is done. */
    public static Node start(String guard, boolean engaged) {
        return new Node(Scene.start(new Terms(guard, guard, engaged, false, false)));
    }

    /**
     * Two on guard at lunge distance, who work with the blades and renew their attacks. Two of opposite hands stand as they
     * engage: one inside where the other is outside (L'Abbat XXII).
     */
    public static Node wide(String guard, boolean engaged, boolean opposite) {
        return new Node(Scene.start(new Terms(guard, opposite ? facing(guard) : guard, engaged, opposite, true)));
    }

    /** The guard of the same height on the other side. */
    public static String facing(String guard) {
        return Tables.POSITIONS.stream()
                .filter(other -> Tables.protects(other).equals(Tables.passesTo(Tables.protects(guard))))
                .findFirst()
                .orElseThrow();
    }

    private Map<String, Scene> list() {
        for (int who : new int[] {1, 2}) {
            if (scene.attacked() == who) {
                answers(who);
            } else if (scene.attacked() == 0) {
                feet(who);
                hand(who);
                strokes(who);
                if (scene.terms().wide()) {
                    blade(who);
                    further(who);
                }
            }
        }
        return open;
    }

    private void add(int who, String move, Scene next) {
        open.put((who == 1 ? "L " : "F ") + move, next);
    }

    /** Who is attacked parries, steps out of reach, or is touched. */
    private void answers(int who) {
        Person me = scene.person(who);
        Scene over = scene.attack(0, "");
        for (String parry : Tables.meets(me.hand(), scene.line())) {
            String position = parry.substring(parry.indexOf('-') + 1);
            Scene met = over.with(who, me.in(position))
                    .with(3 - who, scene.person(3 - who).met())
                    .touchingIn(Tables.protects(position), who)
                    .mayRiposte(who, position);
            add(who, parry, met.with(met.blades().settled()));
        }
        if (!me.lunged() && scene.measure() + 1 > 0) {
            add(who, "back", over.at(scene.measure() + 1));
        }
        add(who, "touched", over.noRight(who));
    }

    private void feet(int who) {
        Person me = scene.person(who);
        if (!me.lunged()) {
            add(who, "forward", scene.at(scene.measure() - 1));
            add(who, "back", scene.at(scene.measure() + 1));
            return;
        }
        boolean unsaid = scene.terms().engagedFirst() && !scene.blades().apart();
        Scene up = scene.with(who, me.up(scene.terms().guardOf(who)))
                .with(Blades.first(unsaid ? Blades.UNSAID : Blades.APART))
                .noRight(who);
        add(who, "recover back", up.at(scene.measure() + 1));
        add(who, "recover forward", up);
    }

    private void hand(int who) {
        Person me = scene.person(who);
        if (me.lunged()) {
            return;
        }
        Blades blades = scene.touching() ? scene.blades().now(Blades.UNSAID, 0) : scene.blades();
        for (String position : Tables.POSITIONS) {
            if (!position.equals(me.hand())) {
                add(
                        who,
                        "to " + position,
                        scene.with(who, me.in(position)).with(blades).noRight(who));
            }
        }
    }

    private void strokes(int who) {
        boolean riposte = scene.right() == who;
        for (String line : straight(who, riposte)) {
            thrust(who, "", line, riposte);
        }
        String leaves = leaves(who);
        if (!leaves.isEmpty() && isBladeThere(who, leaves)) {
            thrust(who, "disengage ", Tables.passesTo(leaves), riposte);
            thrust(who, "cut-over ", Tables.passesTo(leaves), riposte);
        }
    }

    /** What is done to the other's blade by who stands on guard. */
    private void blade(int who) {
        Person me = scene.person(who);
        Person partner = scene.person(3 - who);
        if (me.lunged()) {
            return;
        }
        for (String position : Tables.POSITIONS) {
            String line = Tables.protects(position);
            Scene placed = scene.with(who, me.in(position));
            Scene taken = placed.with(scene.blades().changed(scene.from(who, line), who))
                    .ripostesFrom(who, position);
            add(who, "engage " + position, taken);
            boolean elsewhere = scene.touching() && !scene.contact(who).equals(line);
            if (elsewhere || scene.blades().contact().equals(Blades.UNSAID)) {
                add(who, "change " + position, taken);
            }
            if (Tables.sameHeight(line, height(who, line))) {
                add(
                        who,
                        "beat " + position,
                        placed.with(3 - who, partner.beaten()).with(parted()));
            }
            if (isTakeable(partner)) {
                Scene bound = scene.with(3 - who, partner.met());
                add(
                        who,
                        "bind " + position,
                        elsewhere
                                ? bound.with(who, me.in(position))
                                        .touchingIn(line, who)
                                        .ripostesFrom(who, position)
                                : held(bound, who));
            }
        }
        if (isTakeable(partner)) {
            add(who, "press", held(scene.with(3 - who, partner.met()), who));
        }
    }

    /** A contact that is there is now somebody's. */
    private Scene held(Scene next, int who) {
        return scene.touching() ? next.with(scene.blades().now(scene.blades().contact(), who)) : next;
    }

    private Blades parted() {
        return scene.blades().now(Blades.APART, 0);
    }

    /** What takes a blade needs it in contact, or an arm that is out (L'Abbat IX; Warford p. 17). */
    private boolean isTakeable(Person partner) {
        return !scene.blades().apart() || partner.out();
    }

    /** The line at whose height the other's blade is, else the wanted one: in contact, or before the guard. */
    private String height(int who, String wanted) {
        Person partner = scene.person(3 - who);
        if (scene.touching()) {
            return scene.contact(who);
        }
        boolean known = scene.blades().apart() && !partner.out();
        return known ? Tables.protects(partner.hand()) : wanted;
    }

    /** Along the blade, round a change of engagement, and once more. */
    private void further(int who) {
        if (scene.touching()) {
            thrust(who, "glide ", scene.contact(3 - who), false);
        }
        boolean changed = scene.blades().changedBy() == 3 - who
                && Tables.LINES.contains(scene.blades().left());
        if (changed) {
            thrust(who, "counter ", scene.from(3 - who, scene.blades().left()), false);
        }
        if (scene.person(who).struck()) {
            for (String line : straight(who, false)) {
                thrust(who, "renew ", line, false);
            }
        }
    }

    /** Where a blade goes straight to: not past the one that it touches, unless that has gone elsewhere. */
    private List<String> straight(int who, boolean riposte) {
        if (!scene.touching()) {
            return Tables.LINES;
        }
        if (riposte) {
            return Tables.straight(scene.terms().across(Tables.protects(scene.parry())));
        }
        Person partner = scene.person(3 - who);
        boolean gone = partner.out() && !partner.aims().equals(scene.contact(who));
        return gone ? Tables.LINES : Tables.straight(leaves(who));
    }

    /** A stroke into an open line, by the arm alone within its reach, else with a lunge within that. */
    private void thrust(int who, String way, String line, boolean riposte) {
        boolean along = way.equals("glide ");
        if (!along && isClosed(3 - who, line)) {
            return;
        }
        Person me = scene.person(who);
        Person partner = scene.person(3 - who);
        boolean lunges = scene.measure() == 1 && !me.lunged() && !partner.lunged();
        if (scene.measure() > 0 && !lunges) {
            return;
        }
        boolean leavesBlade = way.equals("disengage ") || way.equals("cut-over ") || way.equals("counter ");
        Scene next = scene.with(who, me.thrusting(line, lunges))
                .at(lunges ? 0 : scene.measure())
                .attack(3 - who, line)
                .with(leavesBlade ? parted() : scene.blades())
                .noRight(who);
        add(
                who,
                (lunges ? "lunge " : "") + way + line,
                riposte && partner.out() ? next.with(3 - who, partner.met()) : next);
    }

    /**
     * A guard closes its line, and a contact the line of whoever presses it (Waite 1880, p. 19-20); a blade that is met or out
     * closes none.
     */
    private boolean isClosed(int whose, String line) {
        Person person = scene.person(whose);
        boolean here = scene.contact(whose).equals(line);
        boolean passed = here && scene.blades().holder() == 3 - whose;
        boolean pressed = here && scene.blades().holder() == whose && person.closes() && !person.out();
        return !passed && (pressed || person.closesLine(line));
    }

    /** The line that a blade which goes round the other's leaves: aimed at, in contact, or before one's own guard. */
    private String leaves(int who) {
        Person me = scene.person(who);
        if (!me.aims().isEmpty()) {
            return me.aims();
        }
        if (scene.blades().contact().equals(Blades.UNSAID)) {
            return "";
        }
        return scene.touching() ? scene.contact(3 - who) : scene.terms().across(Tables.protects(me.hand()));
    }

    /** One only leaves a blade that is there (L'Abbat XII); whether it is may be unsaid. */
    private boolean isBladeThere(int who, String leaves) {
        Person partner = scene.person(3 - who);
        return !scene.blades().apart()
                || partner.out()
                || partner.comesBack()
                || Tables.protects(partner.hand()).equals(leaves);
    }
}
