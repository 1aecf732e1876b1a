package org.slugpeak.core.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.fitting.leastsquares.StatisticalReferenceDataset;
import org.apache.commons.math3.fitting.leastsquares.StatisticalReferenceDatasetFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.core.word.Refused;

/** Certified results of the NIST Statistical Reference Datasets (StRD), nonlinear regression, as carried by Commons Math. */
class LeastSquaresFitTest {

    static Stream<Arguments> certified() throws IOException {
        return Stream.of(
                Arguments.of("Kirby2", StatisticalReferenceDatasetFactory.createKirby2(), 0),
                Arguments.of("Kirby2", StatisticalReferenceDatasetFactory.createKirby2(), 1),
                Arguments.of("Hahn1", StatisticalReferenceDatasetFactory.createHahn1(), 1),
                Arguments.of("MGH17", StatisticalReferenceDatasetFactory.createMGH17(), 1));
    }

    @ParameterizedTest(name = "{0} from start {2}")
    @MethodSource("certified")
    void meetsTheCertifiedValues(String name, StatisticalReferenceDataset set, int start) throws Refused {
        LeastSquaresFit fit =
                LeastSquaresFit.of(set::getModelValue, set.getData()[0], set.getData()[1], set.getStartingPoint(start));
        for (int i = 0; i < set.getNumParameters(); i++) {
            double certified = set.getParameter(i);
            double sigma = set.getParameterStandardDeviation(i);
            assertEquals(certified, fit.parameter(i), 1e-4 * Math.abs(certified), name + " b" + (i + 1));
            assertEquals(sigma, fit.sigma(i), 2e-3 * sigma, name + " sd of b" + (i + 1));
        }
        double sum = set.getResidualSumOfSquares();
        assertEquals(sum, fit.residualSumOfSquares(), 1e-6 * sum);
    }

    /**
     * NIST StRD Eckerle4, a measured resonance: certified b1 1.5543827178, b2 4.0888321754, b3 451.54121844. Its 35 readings
     * are not at hand, so the curve of the certified parameters is fitted, from the certified start 2.
     */
    @Test
    void findsTheParametersOfEckerle4FromItsCurve() throws Refused {
        double[] b = {1.5543827178, 4.0888321754, 451.54121844};
        LeastSquaresFit.Form form = (x, p) -> p[0] / p[1] * Math.exp(-0.5 * Math.pow((x - p[2]) / p[1], 2));
        double[] x = IntStream.rangeClosed(0, 34)
                .mapToDouble(i -> 400 + i * 100.0 / 34)
                .toArray();
        double[] y = Arrays.stream(x).map(each -> form.at(each, b)).toArray();
        LeastSquaresFit fit = LeastSquaresFit.of(form, x, y, new double[] {1.5, 5, 450});
        for (int i = 0; i < b.length; i++) {
            assertEquals(b[i], fit.parameter(i), 1e-8 * b[i]);
        }
        assertEquals(0.3801532, fit.parameter(0) / fit.parameter(1), 1e-7, "height");
    }

    @Test
    void refusesTooFewPoints() {
        LeastSquaresFit.Form line = (x, p) -> p[0] + p[1] * x;
        assertThrows(
                Refused.class,
                () -> LeastSquaresFit.of(line, new double[] {1, 2}, new double[] {1, 2}, new double[] {0, 0}));
    }
}
