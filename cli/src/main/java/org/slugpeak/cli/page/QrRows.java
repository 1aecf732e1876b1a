package org.slugpeak.cli.page;

import io.nayuki.qrcodegen.QrCode;
import java.util.ArrayList;
import java.util.List;
import org.slugpeak.cli.display.PageAddress;

/**
 * Draws a QR code (ISO/IEC 18004) with characters: what is light in the code is drawn, since most terminals are dark; cameras read it on a
 * light one too. Two modules share a cell where the terminal has half blocks. Stateless.
 */
final class QrRows {

    /** The standard asks for a rim of four modules. */
    static final int RIM = 4;

    private QrRows() {}

    /** The address with its code in both kinds of characters. */
    static PageAddress of(String url) {
        QrCode code = QrCode.encodeText(url, QrCode.Ecc.LOW);
        return new PageAddress(url, halfBlocks(code), plain(code));
    }

    private static List<String> halfBlocks(QrCode code) {
        List<String> rows = new ArrayList<>();
        for (int y = -RIM; y < code.size + RIM; y += 2) {
            StringBuilder row = new StringBuilder();
            for (int x = -RIM; x < code.size + RIM; x++) {
                boolean upper = isLight(code, x, y);
                boolean lower = isLight(code, x, y + 1);
                row.append(upper && lower ? '\u2588' : upper ? '\u2580' : lower ? '\u2584' : ' ');
            }
            rows.add(row.toString());
        }
        return rows;
    }

    private static List<String> plain(QrCode code) {
        List<String> rows = new ArrayList<>();
        for (int y = -RIM; y < code.size + RIM; y++) {
            StringBuilder row = new StringBuilder();
            for (int x = -RIM; x < code.size + RIM; x++) {
                row.append(isLight(code, x, y) ? "##" : "  ");
            }
            rows.add(row.toString());
        }
        return rows;
    }

    /** What lies outside is light: the rim; below it, where an odd number of rows ends, nothing is drawn. */
    private static boolean isLight(QrCode code, int x, int y) {
        return y < code.size + RIM && !code.getModule(x, y);
    }
}
