package org.drillwright.print.layout;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drillwright.print.frame.Frame;

/**
 * A composition at the largest scale that fits.
 *
 * @param shares the number of counts on each card
 */
record Fitting(Composition composition, List<Integer> shares) {

    Fitting {
        shares = List.copyOf(shares);
    }

    /**
     * Searches from the floor up. Nothing if even the floor does not fit. A larger scale must need no more cards than
     * the floor does and break no word.
     */
    static Optional<Fitting> find(Function<Scale, Composition> composed, Scale floor) {
        Optional<Fitting> best = at(composed.apply(floor));
        if (best.isEmpty() || !best.get().broken().isEmpty()) {
            return best;
        }
        int cards = best.get().shares().size();
        int fits = 0;
        int tooLarge = floor.steps() + 1;
        while (tooLarge - fits > 1) {
            int middle = (fits + tooLarge) / 2;
            Optional<Fitting> tried = at(composed.apply(floor.larger(middle)));
            if (tried.filter(made ->
                            made.shares().size() <= cards && made.broken().isEmpty())
                    .isPresent()) {
                best = tried;
                fits = middle;
            } else {
                tooLarge = middle;
            }
        }
        return best;
    }

    private static Optional<Fitting> at(Composition composition) {
        return composition.shares().map(shares -> new Fitting(composition, shares));
    }

    /** Whether it is one card without a broken word. */
    boolean isAtItsBest() {
        return shares.size() == 1 && broken().isEmpty();
    }

    /** Whether it needs no more cards than another and breaks no more words. */
    boolean isNoWorseThan(Fitting other) {
        return shares.size() <= other.shares().size()
                && broken().size() <= other.broken().size();
    }

    boolean hasPictures() {
        return composition.hasPictures();
    }

    List<Frame> cards() {
        return composition.cards(shares);
    }

    List<String> broken() {
        return composition.broken();
    }
}
