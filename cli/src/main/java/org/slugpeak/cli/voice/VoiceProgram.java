package org.slugpeak.cli.voice;

import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.slugpeak.cli.program.ProgramFolders;

/**
 * A program that speaks one sentence and ends when it is spoken. Immutable; any thread may use it.
 *
 * @param command how it is run; the sentence comes on its standard input, or else as its last argument
 * @param readsInput whether it reads the sentence
 * @param silence stops what is being spoken, where to end the program is not enough; may be empty
 */
record VoiceProgram(List<String> command, boolean readsInput, List<String> silence) {

    private static final VoiceProgram DISPATCHER =
            new VoiceProgram(List.of("spd-say", "--wait", "--"), false, List.of("spd-say", "--cancel"));
    private static final VoiceProgram ESPEAK = new VoiceProgram(List.of("espeak-ng", "--stdin"), true, List.of());
    private static final VoiceProgram MAC = new VoiceProgram(List.of("say", "-f", "-"), true, List.of());
    private static final VoiceProgram WINDOWS = new VoiceProgram(
            List.of(
                    "powershell.exe",
                    "-NoProfile",
                    "-Command",
                    "Add-Type -AssemblyName System.Speech;"
                            + "$text = New-Object IO.StreamReader([Console]::OpenStandardInput(), [Text.Encoding]::UTF8);"
                            + "(New-Object System.Speech.Synthesis.SpeechSynthesizer).Speak($text.ReadToEnd())"),
            true,
            List.of());

    /**
     * Those that are there, the one that the user has set up for the whole system first.
     *
     * @param system name of the operating system, as Java has it
     * @param environment of the process, for its {@code PATH}
     */
    static List<VoiceProgram> found(String system, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        Stream<VoiceProgram> usual = name.startsWith("windows")
                ? Stream.of(WINDOWS)
                : name.startsWith("mac") ? Stream.of(MAC) : Stream.of(DISPATCHER, ESPEAK);
        return usual.filter(program -> program.isIn(environment)).toList();
    }

    private boolean isIn(Map<String, String> environment) {
        return ProgramFolders.of(environment).anyMatch(folder -> Files.isExecutable(folder.resolve(command.get(0))));
    }
}
