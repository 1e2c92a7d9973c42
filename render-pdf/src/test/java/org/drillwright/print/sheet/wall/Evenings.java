package org.drillwright.print.sheet.wall;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.pdf.Family;

/** Invented plans, made without the planner. */
final class Evenings {

    static final Family FACES = Family.dejaVu();

    private static final List<String> HELPERS = List.of("Tess", "Iris", "\u017Baneta");

    private Evenings() {}

    /** Short names such as a class has, all different. */
    static List<String> people(int count) {
        return IntStream.range(0, count)
                .mapToObj(at -> "" + (char) ('A' + at % 26) + (char) ('a' + at / 26) + (at % 3 == 0 ? "x" : ""))
                .toList();
    }

    /** Everybody anywhere, in pairs; an odd one out in a three, with a helper, alone, or away. */
    static PairingPlan random(int people, int rounds, int worked, Random chance) {
        List<Round> planned = new ArrayList<>();
        for (int round = 1; round <= rounds; round++) {
            List<String> order = new ArrayList<>(people(people));
            Collections.shuffle(order, chance);
            planned.add(new Round(round, "drill-" + (round / 4), groups(order, chance)));
        }
        return PairingPlan.printed(planned, worked, List.of());
    }

    private static List<Group> groups(List<String> order, Random chance) {
        List<Group> groups = new ArrayList<>();
        int at = 0;
        while (at < order.size()) {
            int left = order.size() - at;
            int many = Math.min(left, chance.nextInt(8) == 0 ? 1 + 2 * chance.nextInt(2) : 2);
            List<String> some = order.subList(at, at + many);
            at += many;
            int place = groups.size() + 1;
            Optional<String> helper = Optional.of(HELPERS.get(chance.nextInt(HELPERS.size())));
            if (many == 3) {
                groups.add(new Group(Group.Kind.THREE, place, some, Optional.empty()));
            } else if (many == 2) {
                Group.Kind kind = chance.nextInt(9) == 0 ? Group.Kind.BOTH_NEW : Group.Kind.PAIR;
                groups.add(new Group(kind, place, some, Optional.empty()));
            } else if (chance.nextInt(3) > 0) {
                boolean alone = chance.nextBoolean();
                groups.add(new Group(
                        alone ? Group.Kind.SOLO : Group.Kind.HELPED,
                        alone ? 0 : place,
                        some,
                        alone ? Optional.empty() : helper));
            }
        }
        return groups;
    }

    /** One line stays, the other moves one post up at each change; so as from one round on. */
    static PairingPlan walked(int places, int rounds, int from) {
        List<Round> planned = new ArrayList<>();
        for (int round = 1; round <= rounds; round++) {
            List<Group> groups = new ArrayList<>();
            for (int place = 0; place < places; place++) {
                String walker = "W" + Math.floorMod(place - (round - from), places);
                String stays = "Stays" + place;
                List<String> two = round % 2 == 1 ? List.of(stays, walker) : List.of(walker, stays);
                groups.add(new Group(Group.Kind.PAIR, place + 1, two, Optional.empty()));
            }
            planned.add(new Round(round, "drill-" + (round / 4), groups));
        }
        Walk walk = new Walk(
                from,
                rounds,
                IntStream.range(0, places).mapToObj(at -> "Stays" + at).toList(),
                IntStream.range(0, places).mapToObj(at -> "W" + at).toList());
        return PairingPlan.printed(planned, 0, List.of(walk));
    }

    /** Two formings of three rounds: for the second, half of each line changes. */
    static PairingPlan walkedTwice(int places) {
        Walk first = walked(places, 3, 1).walks().get(0);
        int half = places / 2;
        List<String> stays = new ArrayList<>(first.stays().subList(0, half));
        stays.addAll(first.moves().subList(half, places));
        List<String> moves = new ArrayList<>(first.moves().subList(0, half));
        moves.addAll(first.stays().subList(half, places));
        Walk second = new Walk(4, 6, stays, moves);
        List<Round> rounds = new ArrayList<>(walked(places, 3, 1).rounds());
        for (int round = 4; round <= 6; round++) {
            List<Group> groups = new ArrayList<>();
            for (int place = 0; place < places; place++) {
                String walker = moves.get(Math.floorMod(place - (round - 4), places));
                String stayer = stays.get(place);
                List<String> two = round % 2 == 1 ? List.of(stayer, walker) : List.of(walker, stayer);
                groups.add(new Group(Group.Kind.PAIR, place + 1, two, Optional.empty()));
            }
            rounds.add(new Round(round, "drill-1", groups));
        }
        return PairingPlan.printed(rounds, 0, List.of(first, second));
    }

    static EveningSheet sheet(PairingPlan plan, SheetSize size) {
        return sheet(plan, size, Language.ENGLISH);
    }

    static EveningSheet sheet(PairingPlan plan, SheetSize size, Language language) {
        WallTexts words = WallTexts.in(language);
        Notice notice = new Notice(
                words,
                words.day(LocalDate.of(2026, 12, 2)),
                words.text(WallText.PLAN, "C31H-J"),
                drill -> "Parry of quarte, " + drill,
                drill -> 8,
                size,
                FACES);
        return EveningSheet.of(notice, plan, Naming.full());
    }
}
