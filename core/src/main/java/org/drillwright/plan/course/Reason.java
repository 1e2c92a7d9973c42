package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.Optional;
import org.drillwright.wording.Message;

/**
 * Why a drill stands in a class.
 *
 * @param because a part of a sentence
 * @param rung the review that this is, from 1; 0 for what is new, and for practice between two reviews
 * @param due by when it is to come again, if it is
 */
public record Reason(Message because, int rung, Optional<LocalDate> due) {}
