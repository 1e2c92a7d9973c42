package org.drillwright.print.diagram.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The smallest outline without dents round dots: Andrew's monotone chain. */
public final class Hull {

    private Hull() {}

    public static List<Dot> of(List<Dot> dots) {
        List<Dot> sorted = dots.stream()
                .sorted(Comparator.comparingDouble(Dot::x).thenComparingDouble(Dot::y))
                .toList();
        List<Dot> hull = chain(sorted);
        List<Dot> reversed = new ArrayList<>(sorted);
        java.util.Collections.reverse(reversed);
        hull.addAll(chain(reversed));
        return hull;
    }

    /** One side, without its last dot. */
    private static List<Dot> chain(List<Dot> sorted) {
        List<Dot> chain = new ArrayList<>();
        for (Dot dot : sorted) {
            while (chain.size() > 1 && !turns(chain.get(chain.size() - 2), chain.get(chain.size() - 1), dot)) {
                chain.remove(chain.size() - 1);
            }
            chain.add(dot);
        }
        chain.remove(chain.size() - 1);
        return chain;
    }

    private static boolean turns(Dot a, Dot b, Dot c) {
        Dot first = b.minus(a);
        Dot second = c.minus(a);
        return first.x() * second.y() - first.y() * second.x() > 1e-9;
    }
}
