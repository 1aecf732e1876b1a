package org.slugpeak.cli.page;

import io.nayuki.qrcodegen.QrCode;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws a QR code (ISO/IEC 18004) with characters: what is light in the code is drawn, since most terminals are dark; cameras read it on a
 * light one too. Two modules share a cell where the terminal has half blocks. Stateless.
 */
final class QrRows {

    /** The standard asks for a rim of four modules. */
    static final int RIM = 4;

    private QrRows() {}

    /** Rows from the top; in half blocks or, where there are none, in number signs. */
    static List<String> of(String text, Charset charset) {
        QrCode code = QrCode.encodeText(text, QrCode.Ecc.LOW);
        boolean blocks = charset.canEncode() && charset.newEncoder().canEncode('\u2580');
        return blocks ? halfBlocks(code) : plain(code);
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
