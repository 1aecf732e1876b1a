package org.slugpeak.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.cli.display.PageAddress;

/** What is drawn with characters is read by another library, ZXing. */
class QrRowsTest {

    private static final int DOTS = 4;
    private static final String URL = "http://192.168.177.120:8455/33ZWuqsMCcZKXA_OJVPP7Q/";

    private static String read(List<String> rows, boolean halfBlocks) throws Exception {
        int across = halfBlocks ? 1 : 2;
        int down = halfBlocks ? 2 : 1;
        int width = rows.get(0).length() / across * DOTS;
        int height = rows.size() * down * DOTS;
        int[] dots = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                char cell = rows.get(y / DOTS / down).charAt(x / DOTS * across);
                boolean upper = y / DOTS % down == 0;
                boolean light = cell == '#' || cell == '\u2588' || cell == (upper ? '\u2580' : '\u2584');
                dots[y * width + x] = light ? 0xffffff : 0;
            }
        }
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, dots)));
        return new QRCodeReader().decode(bitmap).getText();
    }

    @Test
    void anotherLibraryReadsWhatIsDrawn() throws Exception {
        PageAddress address = QrRows.of(URL);
        assertEquals(URL, read(address.halves(), true));
        assertEquals(URL, read(address.whole(), false));
    }

    @Test
    void itFitsOnTheSmallestTerminalWithRoomForTheAddress() {
        List<String> rows = QrRows.of(URL).halves();
        assertTrue(rows.size() <= 20, rows.size() + " rows");
        assertTrue(rows.get(0).length() <= 80);
    }
}
