package org.evenhand.command;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version of this program, from its jar. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"evenhand " + current()};
    }

    /** Such as "0.1.0"; "unpacked" where the classes do not come from a jar. */
    static String current() {
        return Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .orElse("unpacked");
    }

    /** Name and version of the program, as pages print them. */
    static String named() {
        return "Evenhand " + current();
    }
}
