package org.slugpeak.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ProgramFoldersTest {

    private static List<String> folders(String name, String value, String separator) {
        return ProgramFolders.of(Map.of(name, value, "HOME", "/home/somebody"), separator)
                .map(Path::toString)
                .toList();
    }

    @Test
    void areThoseOfThePathInTheirOrder() {
        assertEquals(List.of("/usr/bin", "/bin"), folders("PATH", "/usr/bin:/bin", ":"));
    }

    @Test
    void areFoundUnderTheNameThatWindowsGivesTheVariableAndWithoutItsQuotes() {
        assertEquals(
                List.of("C:\\Windows", "C:\\Program Files\\tools"),
                folders("Path", "C:\\Windows;;\"C:\\Program Files\\tools\"; ", ";"));
    }

    @Test
    void leaveOutWhatIsNoName() {
        assertEquals(List.of("/bin"), folders("PATH", "/us\0r:/bin", ":"));
    }
}
