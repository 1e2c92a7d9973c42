package org.drillwright.print.pose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.drillwright.print.pose.body.PosedBody;

/** Where feet were before they came to where a pose has them. */
final class Moved {

    private final List<PosedBody> people;

    Moved(List<PosedBody> people) {
        this.people = List.copyOf(people);
    }

    /** What feet did, in their order. */
    List<FootMove> feet(List<Footing> done) {
        List<FootMove> moves = new ArrayList<>();
        for (PosedBody person : people) {
            double toe = person.front().toe().x();
            double heel = person.rear().heel().x();
            for (int at = done.size() - 1; at >= 0; at--) {
                Footing footing = done.get(at);
                if (footing.by() != person.side()) {
                    continue;
                }
                boolean rear = footing.kind().ofTheRearFoot();
                double way = footing.forward() * person.ahead().x();
                double to = rear ? heel : toe;
                moves.add(new FootMove(footing.by(), footing.kind(), to - way, to));
                toe -= rear ? 0 : way;
                heel -= rear || footing.kind() != FootMove.Kind.FRONT_FOOT ? way : 0;
            }
        }
        Collections.reverse(moves);
        return moves;
    }
}
