package org.drillwright.print.command.printing.picks;

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
import org.drillwright.print.layout.Problem;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Coverage;
import org.drillwright.print.text.Typefaces;
import org.drillwright.read.ReadingRule;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/**
 * Finds what cannot be printed in drill after drill, and says it once: which characters the typeface lacks, and that
 * words in letters that join, other than Arabic ones, cannot be set.
 */
public final class Glyphs {

    private static final String RULE = ReadingRule.UNPRINTABLE.id();

    private static final Message NAME_A_FONT = Message.of(Glyphs.class, "glyphs.give.a.truetype.font");

    /** More characters than this need not be named: the font is not for their script. */
    private static final int NAMED = 5;

    private final Typefaces faces;
    private final Coverage coverage;
    private final Cause lacking = new Cause();
    private final Cause shaped = new Cause();
    private final Map<Message, Finding> settings = new LinkedHashMap<>();

    public Glyphs(Typefaces faces) {
        this.faces = faces;
        this.coverage = new Coverage(faces);
    }

    /** What stops drills, where it stands first and in which drills. */
    private static final class Cause {
        private final Set<Integer> characters = new LinkedHashSet<>();
        private final Set<String> drills = new LinkedHashSet<>();
        private final List<Finding> first = new ArrayList<>();
    }

    /** What of a pick can be printed as far as its words go; the rest is lost, and what stops it shown. */
    public List<Pick> printable(Picks picks, School school, Refusal refusal) {
        Labels labels = Labels.in(school.language());
        List<Pick> printable = new ArrayList<>();
        for (Pick pick : picks.drills()) {
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
        List<Problem> problems = CardLayout.unprintable(card, faces);
        for (Problem problem : problems) {
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
        Cause cause = Coverage.isShaped(codePoint) ? shaped : lacking;
        cause.characters.add(codePoint);
        cause.drills.add(drill.drill().id());
        if (cause.first.isEmpty()) {
            int at = Math.max(0, words.text().indexOf(codePoint));
            Span place = words.span(at, at + Character.charCount(codePoint));
            cause.first.add(new Finding(RULE, Severity.ERROR, drill.file(), place, Message.none(), Message.none()));
        }
    }

    /** One for each cause, at the place where it stands first. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(settings.values());
        for (Finding first : lacking.first) {
            Message what = where("lacks", lacking, named());
            findings.add(said(first, what, NAME_A_FONT));
        }
        for (Finding first : shaped.first) {
            Message what = where("shaped", shaped, Message.none());
            findings.add(said(first, what, Message.of(Glyphs.class, "glyphs.of.the.righttoleft.scripts")));
        }
        return findings;
    }

    private static Finding said(Finding at, Message what, Message wayOut) {
        return new Finding(at.rule(), at.severity(), at.file(), at.span(), what, wayOut);
    }

    private Message named() {
        List<Message> names =
                lacking.characters.stream().limit(NAMED).map(Glyphs::name).toList();
        int more = lacking.characters.size() - NAMED;
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
    private static Message where(String key, Cause cause, Message characters) {
        return cause.drills.size() < 2
                ? Message.of(Glyphs.class, "glyphs." + key, characters)
                : Message.of(Glyphs.class, "glyphs." + key + ".in", characters, cause.drills.size());
    }
}
