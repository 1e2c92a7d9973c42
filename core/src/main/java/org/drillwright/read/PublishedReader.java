package org.drillwright.read;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.published.GroupCells;
import org.drillwright.plan.published.Publication;
import org.drillwright.plan.published.PublishedClass;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.published.PublishedText;
import org.drillwright.wording.Message;

/** Reads a plan of a term that was published; whether its mark fits what it says is for the caller to ask. */
public final class PublishedReader {

    private final NodeReader nodes;
    private final PlanHead head;

    private PublishedReader(NodeReader nodes) {
        this.nodes = nodes;
        this.head = new PlanHead(nodes);
    }

    /** @param name the file's name as it is shown */
    public static Reading<Publication> read(String name, byte[] bytes) {
        return NodeReader.reading(name, bytes, () -> FileKeys.NONE, nodes -> new PublishedReader(nodes).publication());
    }

    private Publication publication() {
        MappingReader keys = nodes.root();
        head.form("published-term", PublishedText.FORM, keys);
        Optional<PlanMark> mark = head.mark("mark", keys);
        Instant published = published(keys);
        String named = keys.needed("term", ReadingLimits.SHORT_TEXT);
        Optional<PlanMark> after = head.mark("after", keys);
        String title = keys.text("title", ReadingLimits.SHORT_TEXT).orElse("");
        String place = keys.text("place", ReadingLimits.SHORT_TEXT).orElse("");
        Optional<ZoneId> zone = zone(keys);
        Optional<LocalDate> exam = keys.date("exam");
        keys.need("classes");
        List<PublishedClass> classes = keys.groups("classes", ReadingLimits.ITEMS, PublishedReader::one);
        keys.finish();
        PublishedTerm term = new PublishedTerm(named, after, title, place, zone, exam, classes);
        return new Publication(mark.orElseGet(() -> term.mark(PlanMark.SHORT)), published, term);
    }

    private Instant published(Keys keys) {
        String written = keys.needed("published", ReadingLimits.SHORT_TEXT);
        try {
            return Instant.parse(written);
        } catch (DateTimeException wrong) {
            head.wrong("published", keys, Message.of(PublishedReader.class, "plan.no.time"));
            return Instant.EPOCH;
        }
    }

    private Optional<ZoneId> zone(Keys keys) {
        try {
            return keys.text("zone", ReadingLimits.SHORT_TEXT).map(ZoneId::of);
        } catch (DateTimeException unknown) {
            head.wrong("zone", keys, Message.of(PublishedReader.class, "plan.no.zone"));
            return Optional.empty();
        }
    }

    private static PublishedClass one(Keys keys) {
        keys.need("date");
        PublishedClass one = new PublishedClass(
                keys.needed("key", ReadingLimits.SHORT_TEXT),
                keys.date("date").orElse(LocalDate.EPOCH),
                keys.time("begins"),
                keys.wholeNumber("minutes", 1, 1_000).orElse(1),
                keys.groups("groups", ReadingLimits.ITEMS, PublishedReader::cells));
        keys.finish();
        return one;
    }

    private static GroupCells cells(Keys keys) {
        GroupCells cells = new GroupCells(
                keys.needed("name", ReadingLimits.SHORT_TEXT),
                keys.texts("new", ReadingLimits.SHORT_TEXT),
                keys.texts("again", ReadingLimits.SHORT_TEXT));
        keys.finish();
        return cells;
    }
}
