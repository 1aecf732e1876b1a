package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.cli.house.KeptPicture;
import org.slugpeak.cli.run.PlayedDemo;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The picture of a report in the documents is made of what the report of the demo is made of. */
class ReportPictureTest {

    private static String picture() throws Exception {
        RecordSentences sentences = new RecordSentences();
        StoryTeller teller = null;
        for (SessionRecord record : PlayedDemo.records()) {
            if (record instanceof SessionStart start) {
                teller = new StoryTeller("demo.jsonl", start);
            } else {
                teller.take(new LogEntry(record, "", sentences.of(record)));
            }
        }
        return ReportPicture.of(teller.story(""), Sessions.COVER);
    }

    @Test
    void theDemo() throws Exception {
        KeptPicture.assertIs("report.svg", picture());
    }

    @Test
    void itIsWellFormedAndHoldsBothCharts() throws Exception {
        Document picture = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(picture())));
        assertEquals(3, picture.getElementsByTagName("svg").getLength());
    }
}
