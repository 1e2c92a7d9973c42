package org.drillwright.print.command.console;

import java.lang.module.ModuleDescriptor;
import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that the archive's manifest states, or else the module. */
public final class VersionText implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"drillwright " + number()};
    }

    public static String number() {
        return Optional.ofNullable(VersionText.class.getPackage().getImplementationVersion())
                .or(VersionText::ofTheModule)
                .orElse("(run from class files)");
    }

    /** In an image with a Java of its own there is no archive, but a module. */
    private static Optional<String> ofTheModule() {
        return Optional.ofNullable(VersionText.class.getModule().getDescriptor())
                .flatMap(ModuleDescriptor::rawVersion);
    }
}
