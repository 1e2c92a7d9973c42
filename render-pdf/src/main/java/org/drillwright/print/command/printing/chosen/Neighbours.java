package org.drillwright.print.command.printing.chosen;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.model.DrillSet;
import org.drillwright.print.layout.words.CardSubject.Place;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;

/** Where the drills stand that another drill needs, or that need it. */
final class Neighbours {

    private final Map<String, List<Place>> places = new HashMap<>();
    private final Map<String, List<String>> leadsTo = new HashMap<>();

    /** @param sets in which places are counted, the first the one that is named where a drill is in several */
    Neighbours(SchoolFolder school, List<DrillSet> sets) {
        for (DrillSet set : sets) {
            List<String> ids = school.idsOf(set);
            for (int at = 0; at < ids.size(); at++) {
                places.computeIfAbsent(ids.get(at), id -> new ArrayList<>())
                        .add(new Place(set.name(), at + 1, ids.size()));
            }
        }
        for (Entry entry : school.entries()) {
            entry.subject()
                    .map(Subject::drill)
                    .ifPresent(drill -> drill.needs()
                            .forEach(id -> leadsTo.computeIfAbsent(id, needed -> new ArrayList<>())
                                    .add(drill.id())));
        }
    }

    /** A drill that is in no set. */
    ChosenDrill alone(Entry entry) {
        return pick(entry, Optional.empty());
    }

    ChosenDrill at(Place place, Entry entry) {
        return pick(entry, Optional.of(place));
    }

    private ChosenDrill pick(Entry entry, Optional<Place> place) {
        Optional<Drill> drill = entry.subject().map(Subject::drill);
        return new ChosenDrill(
                entry,
                place,
                drill.map(known -> places(known.needs(), place)).orElse(List.of()),
                drill.map(known -> places(leadsTo.getOrDefault(known.id(), List.of()), place))
                        .orElse(List.of()));
    }

    /** Each drill's place, in the set of the one that is asked for if it is there too. */
    private List<Place> places(List<String> ids, Optional<Place> own) {
        String set = own.map(Place::set).orElse("");
        return ids.stream()
                .map(id -> places.getOrDefault(id, List.of()))
                .flatMap(some -> some.stream()
                        .filter(place -> place.set().equals(set))
                        .findFirst()
                        .or(() -> some.stream().findFirst())
                        .stream())
                .sorted((one, other) -> one.set().equals(other.set())
                        ? Integer.compare(one.number(), other.number())
                        : Boolean.compare(!one.set().equals(set), !other.set().equals(set)))
                .toList();
    }
}
