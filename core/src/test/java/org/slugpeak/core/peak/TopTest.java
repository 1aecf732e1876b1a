package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TopTest {

    private static final int RUNS = 300;

    private Blocks blocks = new Blocks();
    private Smoother smoother = new Smoother();
    private Top top = new Top(blocks.front);

    @BeforeEach
    void begin() {
        blocks = new Blocks();
        smoother = new Smoother();
        top = new Top(blocks.front);
    }

    private void look() {
        smoother.look(blocks.front.pyramid, blocks.front.noise, Blocks.SECONDS);
        top.look(smoother.value());
    }

    /** Crosses a resonance of height one. */
    private void cross(double halfWidth, double sigma, long seed) {
        begin();
        Gauss gauss = new Gauss(seed);
        int topAt = (int) Math.round(3 * halfWidth);
        var level = Blocks.resonance(topAt, halfWidth);
        blocks.add(2 * topAt, i -> level.applyAsDouble(i) + sigma * gauss.next(), this::look);
    }

    /** With what is taken off for chance it is a little low; without the extrapolation it would be low by two to three sigma. */
    @ParameterizedTest
    @ValueSource(doubles = {12, 25, 50})
    void isTheHeightOnTheAverageOfManyCrossings(double halfWidth) {
        double error = 0;
        double square = 0;
        double sigma = 0;
        for (int seed = 0; seed < RUNS; seed++) {
            cross(halfWidth, 0.003, seed);
            error += (top.value() - 1) / RUNS;
            square += (top.value() - 1) * (top.value() - 1) / RUNS;
            sigma += top.sigma() / RUNS;
        }
        assertEquals(0, error, 0.8 * sigma);
        assertEquals(sigma, Math.sqrt(square), 0.4 * sigma);
    }

    @Test
    void isNotAboveWhatWasReachedWhileTheReadingRises() {
        blocks.add(100, i -> 0.5 + 0.004 * i, () -> {
            look();
            assertTrue(!(top.value() > smoother.value()));
        });
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void isNeverAboveTheMostThatItCanBe(long seed) {
        cross(25, 0.01, seed);
        assertTrue(top.value() <= top.most());
    }

    @Test
    void isWhereTheHighestMeanWas() {
        cross(25, 0.003, 7);
        assertEquals(76 * Blocks.SECONDS, top.atNanos() / 1e9, 8 * Blocks.SECONDS);
    }

    @Test
    void aForgottenOneBeginsAnew() {
        cross(25, 0, 8);
        top.forget();
        assertTrue(Double.isNaN(top.value()));
        assertTrue(Double.isNaN(top.most()));
        blocks.add(8, i -> 0.25, this::look);
        assertEquals(0.25, top.value(), 0.001);
    }
}
