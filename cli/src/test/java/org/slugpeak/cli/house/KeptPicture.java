package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A picture in the documents, which is what the tool draws today. */
public final class KeptPicture {

    private static final Path FOLDER = Sources.ROOT.resolve("docs").resolve("pictures");

    private KeptPicture() {}

    /** Compares with what is kept, or keeps it where that is asked for. */
    public static void assertIs(String name, String drawn) throws IOException {
        Path file = FOLDER.resolve(name);
        if (Boolean.getBoolean("pictures.write")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, drawn);
        }
        assertEquals(
                Files.readString(file),
                drawn,
                () -> "docs/pictures/" + name
                        + " is not what the tool draws; to draw it anew: mvn -B -q -pl cli -am test"
                        + " -Dtest='*PictureTest' -Dsurefire.failIfNoSpecifiedTests=false -Dpictures.write=true");
    }
}
