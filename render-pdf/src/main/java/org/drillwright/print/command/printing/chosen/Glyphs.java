package org.drillwright.print.command.printing.chosen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.drillwright.check.Subject;
import org.drillwright.model.School;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.CardProblem;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.GlyphCoverage;
import org.drillwright.print.text.Typefaces;
import org.drillwright.read.ReadingRule;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** Finds what cannot be printed in drill after drill, and says once which characters the typeface lacks. */
public final class Glyphs {

    private static final String RULE = ReadingRule.UNPRINTABLE.id();

    private static final Message NAME_A_FONT = Message.of(Glyphs.class, "glyphs.give.a.truetype.font");

    /** More characters than this need not be named: the font is not for their script. */
    private static final int NAMED = 5;

    private final Typefaces faces;
    private final GlyphCoverage coverage;
    private final Set<Integer> lacking = new LinkedHashSet<>();
    private final Set<String> drills = new LinkedHashSet<>();

    /** Where the first of them stands. */
    private final List<Finding> first = new ArrayList<>();

    private final Map<Message, Finding> settings = new LinkedHashMap<>();

    public Glyphs(Typefaces faces) {
        this.faces = faces;
        this.coverage = new GlyphCoverage(faces);
    }

    /** What of a pick can be printed as far as its words go; the rest is lost, and what stops it shown. */
    public List<ChosenDrill> printable(ChosenDrills picks, School school, PrintRefusal refusal) {
        Labels labels = Labels.in(school.language());
        List<ChosenDrill> printable = new ArrayList<>();
        for (ChosenDrill pick : picks.drills()) {
            pick.entry().subject().ifPresent(drill -> {
                if (look(drill, pick.words(drill, school, labels))) {
                    printable.add(pick);
                } else {
                    refusal.lose(pick);
                }
            });
        }
        refusal.show(findings());
        return printable;
    }

    /** Looks at a drill; whether all of its card can be printed. */
    public boolean look(Subject drill, CardSubject card) {
        List<CardProblem> problems = CardLayout.unprintable(card, faces);
        for (CardProblem problem : problems) {
            List<Written> written = PrintedWords.of(drill, problem.field());
            if (written.isEmpty()) {
                // What the settings say has no place in the drill's file.
                settings.putIfAbsent(
                        problem.sentence(),
                        new Finding(RULE, Severity.ERROR, drill.file(), Span.at(0), problem.sentence(), NAME_A_FONT));
            }
            for (Written words : written) {
                coverage.missing(words.text()).forEach(codePoint -> note(drill, words, codePoint));
            }
        }
        return problems.isEmpty();
    }

    private void note(Subject drill, Written words, int codePoint) {
        lacking.add(codePoint);
        drills.add(drill.drill().id());
        if (first.isEmpty()) {
            int at = Math.max(0, words.text().indexOf(codePoint));
            Span place = words.span(at, at + Character.charCount(codePoint));
            first.add(new Finding(RULE, Severity.ERROR, drill.file(), place, Message.none(), Message.none()));
        }
    }

    /** What the typeface lacks, at the place where it stands first; and what of the settings it lacks. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(settings.values());
        for (Finding place : first) {
            findings.add(new Finding(place.rule(), place.severity(), place.file(), place.span(), what(), NAME_A_FONT));
        }
        return findings;
    }

    private Message named() {
        List<Message> names = lacking.stream().limit(NAMED).map(Glyphs::name).toList();
        int more = lacking.size() - NAMED;
        return more > 0
                ? Message.of(Glyphs.class, "glyphs.and.more", Message.listed(names), more)
                : Message.listed(names);
    }

    private static Message name(int codePoint) {
        String name = Character.getName(codePoint);
        return Message.of(
                Glyphs.class,
                "glyphs.character",
                String.format(Locale.ROOT, "U+%04X", codePoint),
                name == null ? Message.of(Glyphs.class, "glyphs.not.assigned") : name);
    }

    /** What is lacking, and in how many drills if in more than one. */
    private Message what() {
        return drills.size() < 2
                ? Message.of(Glyphs.class, "glyphs.lacks", named())
                : Message.of(Glyphs.class, "glyphs.lacks.in", named(), drills.size());
    }
}
