package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CrystalLoopTest {

    private static final double CRYSTAL_HZ = 455350;

    private static final CrystalLoop LOOP = new CrystalLoop(CRYSTAL_HZ, 3, 3500, 4000, 60);

    /** spice/crystal_filter.csv: ngspice, 2 kHz to either side, the load in tune and 2 % of inductance to either side. */
    @Test
    void passesWhatTheCircuitSimulatorSays() {
        Golden table = Golden.spice("crystal_filter.csv");
        assertEquals(243, table.size());
        for (int row = 0; row < table.size(); row++) {
            double loadHz = CRYSTAL_HZ / Math.sqrt(1 + table.number(row, "load_coil_change"));
            double expected = table.number(row, "load_V");
            assertEquals(
                    expected, LOOP.response(table.number(row, "frequency_Hz"), loadHz), 0.01 * expected, "row " + row);
        }
    }

    @Test
    void isAsWideAsItsLossAndCoilMakeIt() {
        double half =
                LOOP.response(CRYSTAL_HZ + LOOP.widthHz() / 2, CRYSTAL_HZ) / LOOP.response(CRYSTAL_HZ, CRYSTAL_HZ);
        assertEquals(Math.sqrt(0.5), half, 0.01);
    }
}
