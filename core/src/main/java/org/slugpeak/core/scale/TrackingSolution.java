package org.slugpeak.core.scale;

import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.slugpeak.core.receiver.TrackingCircuit;

/** Solves for the trimmer and the low-end part that explain a dial's errors at both ends, by Newton's method. */
final class TrackingSolution {

    /** All frequencies depend on ratios of parts only, so any signal coil will do. */
    static final double ANY_COIL_HENRY = 220e-6;

    private static final int MOST_STEPS = 40;

    /** Done when both ends fit this well, Hz. */
    private static final double CLOSE_HZ = 0.01;

    /** Step for the derivative, as a part of the value (for the trimmer: of the gang's smallest capacitance). */
    private static final double NUDGE = 1e-6;

    private final ReceiverDial dial;
    private final double trimmerUnit;

    private TrackingSolution(ReceiverDial dial) {
        this.dial = dial;
        this.trimmerUnit = dial.design().gangFarad(dial.high().trueHz());
    }

    static Optional<TrackingCircuit> explaining(ReceiverDial dial) {
        return new TrackingSolution(dial).solve();
    }

    private Optional<TrackingCircuit> solve() {
        TrackingCircuit circuit = dial.design();
        for (int step = 0; step < MOST_STEPS; step++) {
            RealVector miss = missHz(circuit);
            if (miss.getLInfNorm() < CLOSE_HZ) {
                return Optional.of(circuit);
            }
            Array2DRowRealMatrix slopes = new Array2DRowRealMatrix(2, 2);
            slopes.setColumnVector(
                    0, missHz(moved(circuit, NUDGE, 0)).subtract(miss).mapDivide(NUDGE));
            slopes.setColumnVector(
                    1, missHz(moved(circuit, 0, NUDGE)).subtract(miss).mapDivide(NUDGE));
            RealVector change =
                    new LUDecomposition(slopes).getSolver().solve(miss).mapMultiply(-1);
            circuit = moved(circuit, gently(change.getEntry(0)), gently(change.getEntry(1)));
        }
        return Optional.empty();
    }

    /** No step turns a part negative or doubles it. */
    private static double gently(double change) {
        return Math.max(-0.3, Math.min(0.3, change));
    }

    private TrackingCircuit moved(TrackingCircuit circuit, double trimmer, double lowEnd) {
        TrackingCircuit moved = circuit.withTrimmer(circuit.trimmerFarad() + trimmer * trimmerUnit);
        return dial.lowEndPart() == LowEndPart.PADDER
                ? moved.withPadder(moved.padderFarad() * (1 + lowEnd))
                : moved.withOscillatorCoil(moved.oscillatorCoilHenry() * (1 + lowEnd));
    }

    private RealVector missHz(TrackingCircuit circuit) {
        return new ArrayRealVector(new double[] {missHz(circuit, dial.low()), missHz(circuit, dial.high())});
    }

    private double missHz(TrackingCircuit circuit, KnownPoint point) {
        double tuned = circuit.oscillatorHz(circuit.gangFarad(point.dialHz())) - dial.intermediateHz();
        return tuned - point.trueHz();
    }
}
