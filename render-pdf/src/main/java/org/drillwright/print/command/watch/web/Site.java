package org.drillwright.print.command.watch.web;

import java.util.Optional;

/** What there is to be had. */
@FunctionalInterface
public interface Site {

    /** @param path as it was decoded; nothing is there unless it is known letter by letter */
    Optional<Answer> answer(String path, Query query);
}
