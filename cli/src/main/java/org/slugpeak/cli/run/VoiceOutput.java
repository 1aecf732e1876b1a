package org.slugpeak.cli.run;

import org.slugpeak.cli.voice.SystemVoice;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * What is spoken of a session; at its end the last sentence is waited for.
 *
 * @param voice speaks before and after the session, too
 * @param talker takes every record
 */
public record VoiceOutput(SystemVoice voice, RecordSink talker) implements SessionOutput {

    /**
     * Says a line to its end that belongs to no session; silent where there is no voice.
     *
     * @param line as it is written
     */
    public static void sayAlone(String line) {
        SystemVoice voice = SystemVoice.open(nobody -> {});
        voice.say(line);
        voice.finish();
    }

    @Override
    public void take(SessionRecord record) {
        talker.take(record);
    }

    @Override
    public void close() {
        voice.finish();
    }
}
