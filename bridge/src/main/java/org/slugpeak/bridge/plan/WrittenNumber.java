package org.slugpeak.bridge.plan;

import java.math.BigDecimal;

/** Numbers as somebody would write them into a plan. All methods are pure. */
final class WrittenNumber {

    private WrittenNumber() {}

    static String of(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
