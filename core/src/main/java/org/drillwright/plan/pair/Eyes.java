package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.plan.match.Edge;
import org.drillwright.plan.match.Matching;
import org.drillwright.plan.roster.Mode;

/**
 * Who has an eye on those who are new and work together. Whoever of the instructor and the assistants has no partner takes
 * his share of the posts, side by side, and all change shares each round.
 */
final class Eyes {

    private static final int NOBODY = 1_000;

    private final PairingRequest request;

    Eyes(PairingRequest request) {
        this.request = request;
    }

    /** The rounds that were planned, with who watches; those already played stay as they are. */
    List<Round> on(List<Round> rounds) {
        List<Round> seen = new ArrayList<>(rounds.subList(0, request.played().size()));
        int turn = 0;
        for (Round round : rounds.subList(seen.size(), rounds.size())) {
            boolean needed = round.groups().stream().anyMatch(group -> needsEyes(round, group));
            seen.add(needed ? on(round, turn) : round);
            turn += needed ? 1 : 0;
        }
        return seen;
    }

    private boolean needsEyes(Round round, Group group) {
        return request.mode() == Mode.LEARNING
                && group.people().size() > 1
                && group.helper().isEmpty()
                && group.people().stream().allMatch(name -> request.isNew(name, round.drill()));
    }

    private Round on(Round round, int turn) {
        List<String> free = request.helpers().stream()
                .filter(name -> round.groups().stream()
                        .noneMatch(group -> group.helper().filter(name::equals).isPresent()))
                .toList();
        List<Integer> posts = IntStream.range(0, round.groups().size())
                .filter(at -> needsEyes(round, round.groups().get(at)))
                .boxed()
                .toList();
        List<Group> groups = new ArrayList<>(round.groups());
        int[] watcher = shared(posts.stream().map(groups::get).toList(), free, turn);
        for (int at = 0; at < watcher.length; at++) {
            Group group = groups.get(posts.get(at));
            groups.set(posts.get(at), watcher[at] < 0 ? unseen(group) : group.under(free.get(watcher[at])));
        }
        return new Round(round.number(), round.drill(), groups);
    }

    private static Group unseen(Group group) {
        return group.kind() == Group.Kind.WATCHED ? group.of(Group.Kind.BOTH_NEW) : group;
    }

    /**
     * For each post who of the free ones watches it: as their shares say, but for those from whom somebody is kept apart;
     * less than 0 where nobody may.
     */
    private int[] shared(List<Group> posts, List<String> free, int turn) {
        int places = Math.max(request.ways().eyes(), (posts.size() + free.size() - 1) / Math.max(1, free.size()));
        int slots = free.size() * places;
        List<Edge> edges = new ArrayList<>();
        for (int post = 0; post < posts.size(); post++) {
            edges.add(new Edge(post, posts.size() + slots + post, NOBODY));
            for (int slot = 0; slot < slots; slot++) {
                int share = (post * free.size() / posts.size() + turn) % free.size();
                if (mayWatch(free.get(slot / places), posts.get(post))) {
                    edges.add(new Edge(post, posts.size() + slot, slot / places == share ? 0 : 1));
                }
            }
        }
        int first = posts.size();
        int unused = first + slots + posts.size();
        for (int slot = first; slot < unused; slot++) {
            for (int spare = unused; spare < unused + slots; spare++) {
                edges.add(new Edge(slot, spare, 0));
            }
        }
        int[] mates = Matching.leastWeight(unused + slots, edges).orElseThrow();
        return IntStream.range(0, first)
                .map(post -> mates[post] < first + slots ? (mates[post] - first) / places : -1)
                .toArray();
    }

    private boolean mayWatch(String helper, Group group) {
        return group.people().stream()
                .noneMatch(name -> request.apart().stream().anyMatch(pair -> pair.parts(name, helper)));
    }
}
