package org.drillwright.print.command;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that the archive's manifest states. */
final class VersionText implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"drillwright " + number()};
    }

    static String number() {
        return Optional.ofNullable(VersionText.class.getPackage().getImplementationVersion())
                .orElse("(run from class files)");
    }
}
