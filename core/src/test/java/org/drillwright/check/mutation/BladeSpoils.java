package org.drillwright.check.mutation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.check.mutation.Scene.At;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Contact;

/** Blades taken that are not there, renewals of nothing, and turns given to the wrong one. */
final class BladeSpoils {

    private static final List<Contact> NEEDS_CONTACT =
            List.of(Contact.BIND, Contact.CROISE, Contact.ENVELOP, Contact.PRESS, Contact.CHANGE_ENGAGEMENT);

    private BladeSpoils() {}

    static Stream<Mutant> contactDenied(Scene scene) {
        Optional<String> start = Words.swapped(scene.drill().start(), Words.CONTACT);
        if (start.isEmpty() || !scene.isPartnerDrill()) {
            return Stream.empty();
        }
        String opening = Words.swapped(scene.drill().opening(), Words.CONTACT)
                .orElse(scene.drill().opening());
        return first(scene)
                .filter(at -> scene.touches(at).filter(NEEDS_CONTACT::contains).isPresent())
                .map(at -> Mutant.spoilt(
                                "start: " + start.get(),
                                scene.redraft().start(start.get()).opening(opening),
                                Expected.at("blade-not-there", at.step()))
                        .harmlessIf(scene.strike(at.partner()).isPresent()));
    }

    static Stream<Mutant> takenWithoutContact(Scene scene) {
        boolean apart = Words.swapped(scene.drill().start(), Words.APART).isPresent();
        return first(scene)
                .filter(at -> apart && scene.attacks(at) && scene.lunges(at))
                .filter(at -> scene.strike(at.partner()).isEmpty()
                        && scene.touches(at.partner()).isEmpty())
                .map(at -> Mutant.turn(
                        scene,
                        at,
                        "Bind the blade to the low outside line and lunge.",
                        Expected.at("blade-not-there", at.step())));
    }

    private static Stream<At> first(Scene scene) {
        return scene.partnerTurns().filter(at -> at.step() == 0);
    }

    static Stream<Mutant> renewalFirst(Scene scene) {
        String words = scene.isSabre() ? "Remise to the head." : "Remise to the high inside line.";
        return scene.partnerTurns()
                .filter(at -> scene.strike(at).isPresent())
                .filter(at -> scene.partnerTurns()
                        .noneMatch(before -> before.side() == at.side()
                                && before.step() < at.step()
                                && (scene.strike(before).isPresent() || scene.lunges(before))))
                .map(at -> Mutant.turn(scene, at, words, Expected.at("nothing-to-renew", at.step())));
    }

    static Stream<Mutant> agentsSwapped(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.ripostes(at) && scene.strike(at.partner()).isEmpty())
                .map(at -> Mutant.spoilt(
                                at + " and the other: turns swapped",
                                scene.redraft()
                                        .turn(at.step(), at.side(), scene.words(at.partner()))
                                        .turn(at.step(), at.side().other(), scene.words(at)),
                                Expected.at("riposte-without-parry", at.step()))
                        .harmlessIf(scene.parriedBefore(at.partner())));
    }

    static Stream<Mutant> endDropped(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.doesOnly(at, List.of(Action.Answer.class)) && scene.receives(at))
                .filter(at -> scene.attacks(at.partner()))
                .map(at -> Mutant.turn(
                        scene,
                        at,
                        scene.isOnTheLunge(at) ? "Hold the lunge." : "Hold on guard.",
                        Expected.at("attack-unanswered", at.step())));
    }
}
