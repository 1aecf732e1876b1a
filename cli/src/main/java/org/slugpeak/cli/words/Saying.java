package org.slugpeak.cli.words;

/**
 * The key of a sentence, or of a word on a screen or in a table; what it says stands in a file for each language, as
 * {@code kind.NAME}. Immutable; any thread may use it.
 */
public sealed interface Saying
        permits AskPhrase,
                BriefPhrase,
                CheckPhrase,
                CuePhrase,
                ComparePhrase,
                DoctorPhrase,
                CurvePhrase,
                EndPhrase,
                EventPhrase,
                FormulaPhrase,
                GeneratorPhrase,
                KeyPhrase,
                PagePhrase,
                Phrase,
                ReportFact,
                ReportPhrase,
                LinkPhrase,
                ScalePhrase,
                ScreenPhrase,
                SeekPhrase,
                SessionsPhrase,
                SheetPhrase,
                SourcePhrase,
                SuperhetPhrase,
                VoicePhrase {

    /**
     * What its key begins with.
     *
     * @return a word of the file
     */
    String kind();

    /**
     * The name of the constant.
     *
     * @return what its key ends with
     */
    String name();

    /**
     * The sentence in today's language.
     *
     * @param gaps what its gaps are filled with, in order
     * @return a sentence
     */
    default String of(Object... gaps) {
        return Language.today().say(kind() + "." + name(), gaps);
    }

    /**
     * The sentence as it is where no other language has it, to know again what was written in it.
     *
     * @param gaps what its gaps are filled with, in order
     * @return a sentence
     */
    default String inEnglish(Object... gaps) {
        return Language.ENGLISH.say(kind() + "." + name(), gaps);
    }
}
