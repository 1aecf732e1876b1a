package org.slugpeak.cli.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Maps values to places on the paper, and finds round marks. Immutable; any thread may use it.
 *
 * @param from value at the beginning
 * @param to value at the end; may be less than from, never equal
 * @param fromPixel place of the beginning
 * @param toPixel place of the end
 */
record Axis(double from, double to, double fromPixel, double toPixel) {

    double pixel(double value) {
        return fromPixel + (value - from) / (to - from) * (toPixel - fromPixel);
    }

    /** Round values, about so many: steps of 1, 2 or 5 times a power of ten. */
    List<Double> marks(int about) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        BigDecimal step = roundStep((high - low) / about);
        List<Double> marks = new ArrayList<>();
        BigDecimal mark = new BigDecimal(Math.ceil(low / step.doubleValue() - 1e-9)).multiply(step);
        while (mark.doubleValue() <= high + step.doubleValue() * 1e-9) {
            marks.add(mark.doubleValue());
            mark = mark.add(step);
        }
        return marks;
    }

    private static BigDecimal roundStep(double rough) {
        int power = (int) Math.floor(Math.log10(rough));
        double lead = rough / Math.pow(10, power);
        int digit = lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10;
        return BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
    }
}
