package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.Opener;
import org.junit.jupiter.api.Test;

/** What is said when nothing more can be done: one line, with the way out, and the code of a run that could not. */
class ErrorMessagesTest {

    private static String said(ToIntFunction<Invocation> fault) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        Invocation run = new Invocation(
                nowhere,
                nowhere,
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new BufferedReader(new StringReader("")),
                false,
                () -> 80,
                false,
                Path.of("."),
                Optional.empty(),
                Opener.NONE,
                Clock.systemUTC(),
                () -> Locale.ENGLISH,
                () -> Locale.ENGLISH);
        assertEquals(2, fault.applyAsInt(run));
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void a_stack_that_is_too_small_is_made_larger_by_a_setting() {
        assertEquals(
                "Drillwright ran out of memory for its stack. Set the environment variable JDK_JAVA_OPTIONS to -Xss8m and"
                        + " run this again, or choose fewer drills.\n",
                said(run -> ErrorMessages.ofMemory(run, new StackOverflowError())));
    }

    @Test
    void a_class_that_found_no_stack_when_it_was_set_up_is_the_same() {
        Error wrapped = new ExceptionInInitializerError(new StackOverflowError());
        assertEquals(
                said(run -> ErrorMessages.ofMemory(run, new StackOverflowError())),
                said(run -> ErrorMessages.ofMemory(run, wrapped)));
    }

    @Test
    void an_error_that_is_none_of_memory_is_our_own_fault() {
        String said = said(run -> ErrorMessages.ofMemory(run, new AssertionError("odd")));
        assertEquals(
                "A fault in Drillwright itself, not in your drills; please report this line: AssertionError",
                said.substring(0, said.indexOf(" at ")));
    }
}
