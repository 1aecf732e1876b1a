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

    @Override
    public void take(SessionRecord record) {
        talker.take(record);
    }

    @Override
    public void close() {
        voice.finish();
    }
}
