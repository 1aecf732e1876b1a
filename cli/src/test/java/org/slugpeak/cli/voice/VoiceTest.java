package org.slugpeak.cli.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.cli.words.VoicePhrase;

/** With programs that stand in for a voice, and write down what they are given. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "they are shell scripts")
class VoiceTest {

    @TempDir
    private Path folder;

    private final List<String> told = Collections.synchronizedList(new ArrayList<>());

    private Path heard() {
        return folder.resolve("heard");
    }

    /** A voice program; {@code $1} of its lines is what it was given. */
    private void program(String name, String lines) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, "#!/bin/sh\nPATH=/usr/bin:/bin\nH=" + heard() + "\n" + lines + "\n");
        assertTrue(file.toFile().setExecutable(true));
    }

    private List<VoiceProgram> programs() {
        return VoiceProgram.found("Linux", Map.of("PATH", folder.toString())).stream()
                .map(it -> new VoiceProgram(
                        withFolder(it.command()),
                        it.readsInput(),
                        it.silence().isEmpty() ? List.of() : withFolder(it.silence())))
                .toList();
    }

    /** The tests' own process has another PATH than the one that was searched. */
    private List<String> withFolder(List<String> command) {
        List<String> whole = new ArrayList<>(command);
        whole.set(0, folder.resolve(command.get(0)).toString());
        return whole;
    }

    private Mouth mouth() {
        return new Mouth(programs(), Utterance.Patience.usual(), told::add);
    }

    private List<String> lines() throws IOException {
        return Files.exists(heard()) ? Files.readAllLines(heard(), StandardCharsets.UTF_8) : List.of();
    }

    @Test
    void aSentenceIsGivenToTheProgramAsItIs() throws IOException {
        program("espeak-ng", "{ cat; echo; } >> $H");
        Mouth mouth = mouth();
        mouth.sentence("-x halve the generator");
        mouth.finish();
        assertEquals(List.of("-x halve the generator"), lines());
    }

    @Test
    void theVoiceOfTheSystemIsTakenFirstAndWhatComesLooksLikeNoOption() throws IOException {
        program("espeak-ng", "{ cat; echo; } >> $H");
        program("spd-say", "echo \"$@\" >> $H");
        Mouth mouth = mouth();
        mouth.sentence("-x");
        mouth.finish();
        assertEquals(List.of("--wait -- -x"), lines());
    }

    /** The first program speaks until it is stopped; that the test ends shows that it was. */
    @Test
    void aWordCutsOffASentenceAndAnOldSentenceIsDroppedForANewOne() throws IOException {
        program("espeak-ng", "text=$(cat); echo \"$text\" >> $H; case $text in long*) exec tail -f /dev/null;; esac");
        Mouth mouth = mouth();
        mouth.onSpeaking(speaks -> told.add(speaks ? "speaks" : "still"));
        mouth.sentence("long story");
        mouth.sentence("long story, other");
        mouth.word("back, 3 tenths");
        mouth.sentence("now: T1 top");
        mouth.finish();
        List<String> lines = new ArrayList<>(lines());
        lines.removeIf(line -> line.startsWith("long"));
        assertEquals("now: T1 top", lines.get(lines.size() - 1));
        assertTrue(lines.size() <= 2, lines.toString());
        assertEquals("still", told.get(told.size() - 1));
    }

    @Test
    void aSentenceWaitsUntilAWordHasBeenSpoken() throws IOException {
        Path gate = folder.resolve("gate");
        program(
                "espeak-ng",
                "text=$(cat); [ \"$text\" = held ] && while [ ! -e " + gate + " ]; do :; done; echo $text >> $H");
        Mouth mouth = mouth();
        mouth.word("held");
        mouth.sentence("now: T1 top");
        Files.createFile(gate);
        mouth.finish();
        assertTrue(lines().contains("now: T1 top"), lines().toString());
        assertEquals(lines().size() == 2 ? "held" : "now: T1 top", lines().get(0));
    }

    @Test
    void aProgramThatFailsGivesWayToTheNextAndSilenceIsToldOnce() throws IOException {
        program("spd-say", "exit 1");
        program("espeak-ng", "{ cat; echo; } >> $H; grep -q third $H && exit 3");
        program("espeak-ng", "cat > $H.now; cat $H.now >> $H; echo >> $H; ! grep -q third $H.now");
        Mouth mouth = mouth();
        mouth.sentence("first");
        mouth.finish();
        mouth.sentence("third");
        mouth.finish();
        mouth.sentence("fourth");
        mouth.finish();
        assertEquals(List.of("first", "third"), lines());
        assertEquals(List.of(VoicePhrase.NO_VOICE.of()), told);
    }

    /** One whose server does not answer: it runs until it is killed. */
    private static final String STUCK = "echo \"$@\" >> $H; trap '' TERM; exec tail -f /dev/null";

    private String followed() {
        return folder.resolve("spd-say") + " does not answer: the next voice program speaks";
    }

    /** Waits no longer for a long sentence than for a short one. */
    private Mouth impatient() {
        Duration moment = Duration.ofSeconds(2);
        return new Mouth(programs(), new Utterance.Patience(moment, Duration.ZERO, moment), told::add);
    }

    @Test
    void aVoiceThatHangsIsKilledAndTheNextOneSaysTheSentence() throws IOException {
        program("spd-say", STUCK);
        program("espeak-ng", "{ cat; echo; } >> $H");
        Mouth mouth = impatient();
        mouth.sentence("halve the generator");
        mouth.finish();
        mouth.sentence("now: T1 top");
        mouth.finish();
        assertEquals(List.of("--wait -- halve the generator", "halve the generator", "now: T1 top"), lines());
        assertEquals(List.of(followed()), told);
    }

    @Test
    void aWordForTheHandThatHungIsNotSaidLate() throws IOException {
        program("spd-say", STUCK);
        program("espeak-ng", "{ cat; echo; } >> $H");
        Mouth mouth = impatient();
        mouth.word("stop");
        mouth.finish();
        mouth.word("held");
        mouth.finish();
        assertEquals(List.of("--wait -- stop", "held"), lines());
    }

    @Test
    void whereTheServerDoesNotEvenFallSilentTheNextVoiceSaysTheNewestWord() throws IOException {
        program("spd-say", STUCK);
        program("espeak-ng", "{ cat; echo; } >> $H");
        Utterance.Patience forever = new Utterance.Patience(Duration.ofHours(1), Duration.ZERO, Duration.ofMillis(300));
        Mouth mouth = new Mouth(programs(), forever, told::add);
        mouth.sentence("halve the generator");
        awaitLine("--wait -- halve the generator");
        mouth.word("back, 3 tenths");
        mouth.finish();
        assertEquals("back, 3 tenths", lines().get(lines().size() - 1));
        assertEquals(List.of(followed()), told);
    }

    private void awaitLine(String line) throws IOException {
        while (!lines().contains(line)) {
            Thread.onSpinWait();
        }
    }

    @Test
    void whereTheOnlyVoiceHangsThatIsToldOnceAndNothingWaitsForItAnyMore() throws IOException {
        program("spd-say", STUCK);
        Mouth mouth = impatient();
        mouth.sentence("halve the generator");
        mouth.finish();
        mouth.sentence("now: T1 top");
        mouth.finish();
        assertEquals(List.of("--wait -- halve the generator"), lines());
        assertEquals(List.of(VoicePhrase.NO_VOICE.of()), told);
    }

    /** They were never run: what can be known without is that no text gets into a command line, where quoting could change it. */
    @ParameterizedTest
    @ValueSource(strings = {"Mac OS X", "Windows 11"})
    void whereItWasNeverRunTheSentenceIsNoPartOfTheCommandAndTheCommandNeedsNoEscapes(String system)
            throws IOException {
        program("say", ":");
        program("powershell.exe", ":");
        List<VoiceProgram> found = VoiceProgram.found(system, Map.of("PATH", folder.toString()));
        assertEquals(1, found.size());
        assertTrue(found.get(0).readsInput());
        assertTrue(found.get(0).silence().isEmpty(), "it falls silent when it ends");
        // On Windows the arguments become one line again: a quote, or a backslash at the end of an argument, would be
        // read otherwise there.
        assertTrue(found.get(0).command().stream().noneMatch(part -> part.contains("\"") || part.endsWith("\\")));
        assertTrue(found.get(0).command().stream().noneMatch(String::isBlank));
    }

    @Test
    void onWindowsTheSentenceIsReadAsTheUtf8ThatItIsWrittenIn() throws IOException {
        program("powershell.exe", ":");
        List<String> command = VoiceProgram.found("Windows 11", Map.of("PATH", folder.toString()))
                .get(0)
                .command();
        assertEquals(List.of("powershell.exe", "-NoProfile", "-Command"), command.subList(0, 3));
        assertTrue(command.get(3).contains("OpenStandardInput(), [Text.Encoding]::UTF8"), command.get(3));
        assertEquals(4, command.size());
    }

    @Test
    void aSentenceIsWrittenInUtf8() throws IOException {
        program("espeak-ng", "{ cat; echo; } >> $H");
        Mouth mouth = mouth();
        mouth.sentence("now: Kreis \u00e4u\u00dfen");
        mouth.finish();
        assertEquals(List.of("now: Kreis \u00e4u\u00dfen"), lines());
    }

    @Test
    void whereThereIsNoVoiceOneLineSaysSo() {
        SystemVoice voice = SystemVoice.open("Linux", Map.of("PATH", folder.toString()), told::add);
        voice.say("nobody hears this");
        voice.finish();
        assertEquals(List.of(VoicePhrase.NO_VOICE.of()), told);
    }

    @ParameterizedTest
    @CsvSource({"Linux,spd-say espeak-ng", "Mac OS X,say", "Windows 11,powershell.exe", "FreeBSD,spd-say espeak-ng"})
    void eachSystemHasItsVoices(String system, String names) throws IOException {
        for (String name : List.of("spd-say", "espeak-ng", "say", "powershell.exe")) {
            program(name, ":");
        }
        assertEquals(
                names,
                VoiceProgram.found(system, Map.of("PATH", folder.toString())).stream()
                        .map(program -> program.command().get(0))
                        .collect(Collectors.joining(" ")));
    }
}
