package org.drillwright.print.phone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.pair.Group;

/** What is said of a group beside who is in it and where. */
record GroupSentences(EveningPeople people, Voice voice) {

    /** To one of them: who leads first, who counts in a three, whether the drill is new to both, and who watches. */
    List<String> to(String person, Group group) {
        List<String> said = new ArrayList<>();
        boolean isThree = group.people().size() > 2;
        boolean isMiddle = group.middle().filter(person::equals).isPresent();
        if (isThree) {
            three(group, isMiddle).ifPresent(said::add);
        }
        if (group.people().size() > 1 && !isMiddle) {
            String first = group.people().get(0);
            said.add(
                    first.equals(person)
                            ? voice.text(PhoneText.YOU_LEAD)
                            : voice.text(PhoneText.LEADS, people.within(first)));
        }
        if (isThree) {
            String counts = group.people().get(2);
            said.add(
                    counts.equals(person)
                            ? voice.text(PhoneText.YOU_COUNT)
                            : voice.text(PhoneText.COUNTS_FIRST, people.within(counts)));
        }
        said.addAll(watched(group));
        return said;
    }

    /** To whoever teaches; who leads first is shown there by a sign. */
    List<String> of(Group group) {
        List<String> said = new ArrayList<>();
        if (group.people().size() > 2) {
            three(group, false).ifPresent(said::add);
            said.add(voice.text(
                    PhoneText.COUNTS_FIRST, people.within(group.people().get(2))));
        }
        said.addAll(watched(group));
        return said;
    }

    private Optional<String> three(Group group, boolean isMiddle) {
        if (isMiddle) {
            return Optional.of(voice.text(PhoneText.YOU_IN_THE_MIDDLE));
        }
        return Optional.of(group.middle()
                .map(middle -> voice.text(PhoneText.IN_THE_MIDDLE, people.within(middle)))
                .orElseGet(() -> voice.text(PhoneText.THREE)));
    }

    private List<String> watched(Group group) {
        List<String> said = new ArrayList<>();
        if (group.eyes().isPresent() || group.kind() == Group.Kind.BOTH_NEW) {
            said.add(voice.text(PhoneText.ALL_NEW));
        }
        group.eyes().ifPresent(eyes -> said.add(voice.text(PhoneText.WATCHED, people.within(eyes))));
        return said;
    }
}
