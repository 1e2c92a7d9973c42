package org.drillwright.model;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A drill as its author wrote it. A text that is absent is empty, a list that is absent is empty.
 *
 * @param id the file's name without its ending
 * @param level the name of one of the school's levels
 * @param worksOn the school's fundamentals that the drill works
 * @param needs ids of the drills to be known first
 * @param gear what is worn, item by item; empty if the school's default is meant
 * @param start the state in which the first count begins
 * @param opening from attention to {@code start}
 * @param closing from where the last count left both to the end
 * @param repeat how often the counts are gone through, 1 or more
 * @param swap whether leader and follower change over
 * @param tempo time for a count, if the drill has its own
 * @param cautions printed at the card's foot
 * @param variantOf the id of the drill that this one varies, if any
 * @param revised the date of the last revision, if stated
 * @param accept warnings that are accepted, rule by rule, each with a reason
 * @param language that its turns are most likely written in, if stated
 * @param madeFrom the language that it was written in, of a drill whose words were put into another
 */
public record Drill(
        String id,
        String title,
        String level,
        Form form,
        Weapon weapon,
        Hands hands,
        List<String> worksOn,
        List<String> needs,
        List<String> gear,
        String purpose,
        String start,
        String opening,
        List<Step> steps,
        String closing,
        int repeat,
        boolean swap,
        Optional<Duration> tempo,
        String note,
        List<String> cautions,
        Optional<String> variantOf,
        List<String> tags,
        Optional<LocalDate> revised,
        Map<String, String> accept,
        Optional<Language> language,
        Optional<Language> madeFrom) {

    /** A drill that says nothing of its language. */
    public Drill(
            String id,
            String title,
            String level,
            Form form,
            Weapon weapon,
            Hands hands,
            List<String> worksOn,
            List<String> needs,
            List<String> gear,
            String purpose,
            String start,
            String opening,
            List<Step> steps,
            String closing,
            int repeat,
            boolean swap,
            Optional<Duration> tempo,
            String note,
            List<String> cautions,
            Optional<String> variantOf,
            List<String> tags,
            Optional<LocalDate> revised,
            Map<String, String> accept) {
        this(
                id,
                title,
                level,
                form,
                weapon,
                hands,
                worksOn,
                needs,
                gear,
                purpose,
                start,
                opening,
                steps,
                closing,
                repeat,
                swap,
                tempo,
                note,
                cautions,
                variantOf,
                tags,
                revised,
                accept,
                Optional.empty(),
                Optional.empty());
    }

    public Drill {
        worksOn = List.copyOf(worksOn);
        needs = List.copyOf(needs);
        gear = List.copyOf(gear);
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
        tags = List.copyOf(tags);
        accept = Map.copyOf(accept);
    }

    /** This drill for other hands. */
    public Drill withHands(Hands other) {
        return new Drill(
                id, title, level, form, weapon, other, worksOn, needs, gear, purpose, start, opening, steps, closing,
                repeat, swap, tempo, note, cautions, variantOf, tags, revised, accept, language, madeFrom);
    }

    /** This drill with other counts. */
    public Drill withSteps(List<Step> others) {
        return new Drill(
                id, title, level, form, weapon, hands, worksOn, needs, gear, purpose, start, opening, others, closing,
                repeat, swap, tempo, note, cautions, variantOf, tags, revised, accept, language, madeFrom);
    }

    /** This drill at another level. */
    public Drill withLevel(String other) {
        return new Drill(
                id, title, other, form, weapon, hands, worksOn, needs, gear, purpose, start, opening, steps, closing,
                repeat, swap, tempo, note, cautions, variantOf, tags, revised, accept, language, madeFrom);
    }

    /** This drill in another form. */
    public Drill withForm(Form other) {
        return new Drill(
                id, title, level, other, weapon, hands, worksOn, needs, gear, purpose, start, opening, steps, closing,
                repeat, swap, tempo, note, cautions, variantOf, tags, revised, accept, language, madeFrom);
    }

    /** This drill with another weapon. */
    public Drill withWeapon(Weapon other) {
        return new Drill(
                id, title, level, form, other, hands, worksOn, needs, gear, purpose, start, opening, steps, closing,
                repeat, swap, tempo, note, cautions, variantOf, tags, revised, accept, language, madeFrom);
    }
}
