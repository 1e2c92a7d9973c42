package org.drillwright.oracle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every move open to either of two foil fencers of the same hand, and what it leads to.
 *
 * <p>Moves are words: {@code L forward}, {@code F to quarte}, {@code L lunge disengage HI}, {@code F circular-sixte}. The
 * leader is L, the follower F; a stroke without {@code lunge} is made by the arm alone.
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

    /** Both on guard in one position, at lunge distance. */
    public static Node start(String guard, boolean engaged) {
        return new Node(Scene.start(guard, engaged));
    }

    private Map<String, Scene> list() {
        for (int who : new int[] {1, 2}) {
            if (scene.attacked() == who) {
                answers(who);
            } else if (scene.attacked() == 0) {
                feet(who);
                hand(who);
                strokes(who);
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
            add(
                    who,
                    parry,
                    over.with(who, me.in(position))
                            .with(3 - who, scene.person(3 - who).met())
                            .blades(Tables.protects(position), who)
                            .mayRiposte(who, position));
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
        String contact = scene.engagedFirst() && !scene.contact().equals(Scene.APART) ? Scene.UNSAID : Scene.APART;
        Scene up = scene.with(who, Person.onGuard(scene.guard()))
                .blades(contact, 0)
                .noRight(who);
        add(who, "recover back", up.at(scene.measure() + 1));
        add(who, "recover forward", up);
    }

    private void hand(int who) {
        Person me = scene.person(who);
        if (me.lunged()) {
            return;
        }
        String contact = scene.touching() ? Scene.UNSAID : scene.contact();
        for (String position : Tables.POSITIONS) {
            if (!position.equals(me.hand())) {
                add(
                        who,
                        "to " + position,
                        scene.with(who, me.in(position)).blades(contact, 0).noRight(who));
            }
        }
    }

    private void strokes(int who) {
        for (String line : straight(who)) {
            thrust(who, "", line, scene.contact());
        }
        String leaves = leaves(who);
        if (!leaves.isEmpty() && isBladeThere(who, leaves)) {
            thrust(who, "disengage ", Tables.passesTo(leaves), Scene.APART);
            thrust(who, "cut-over ", Tables.passesTo(leaves), Scene.APART);
        }
    }

    /** Where a blade goes straight to: not past the one that it touches, unless that has gone elsewhere. */
    private List<String> straight(int who) {
        if (!scene.touching()) {
            return Tables.LINES;
        }
        if (scene.right() == who) {
            return Tables.straight(Tables.protects(scene.parry()));
        }
        Person partner = scene.person(3 - who);
        boolean gone = partner.out() && !partner.aims().equals(scene.contact());
        return gone ? Tables.LINES : Tables.straight(leaves(who));
    }

    /** A stroke into an open line, by the arm alone within its reach, else with a lunge within that. */
    private void thrust(int who, String way, String line, String contactAfter) {
        if (isClosed(3 - who, line)) {
            return;
        }
        Person me = scene.person(who);
        Person partner = scene.person(3 - who);
        boolean lunges = scene.measure() == 1 && !me.lunged() && !partner.lunged();
        if (scene.measure() > 0 && !lunges) {
            return;
        }
        boolean riposte = scene.right() == who;
        Scene next = scene.with(who, me.thrusting(line, lunges))
                .at(lunges ? 0 : scene.measure())
                .attack(3 - who, line)
                .blades(contactAfter, contactAfter.equals(Scene.APART) ? 0 : scene.holder())
                .noRight(who);
        add(
                who,
                (lunges ? "lunge " : "") + way + line,
                riposte && partner.out() ? next.with(3 - who, partner.met()) : next);
    }

    /** A guard closes its line, and a contact the line of whoever has it; a blade that is met or out closes none. */
    private boolean isClosed(int whose, String line) {
        Person person = scene.person(whose);
        boolean passed = scene.contact().equals(line) && scene.holder() == 3 - whose;
        return !passed && person.closesLine(line);
    }

    /** The line that a blade which goes round the other's leaves: aimed at, in contact, or before one's own guard. */
    private String leaves(int who) {
        Person me = scene.person(who);
        if (!me.aims().isEmpty()) {
            return me.aims();
        }
        if (scene.contact().equals(Scene.UNSAID)) {
            return "";
        }
        return scene.touching() ? scene.contact() : Tables.protects(me.hand());
    }

    /** One only leaves a blade that is there (L'Abbat XII); whether it is may be unsaid. */
    private boolean isBladeThere(int who, String leaves) {
        Person partner = scene.person(3 - who);
        return !scene.contact().equals(Scene.APART)
                || partner.out()
                || Tables.protects(partner.hand()).equals(leaves);
    }
}
