package org.evenhand.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ThermalModelTest {

    private static final Encoder WITHOUT_LEAKAGE = new Encoder(1800, 2, 6, 0, 1, 1);

    /**
     * Source: lumped-capacitance step response, rise = R P (1 − exp(−t/RC)), e.g. Incropera and DeWitt, Fundamentals of Heat and
     * Mass Transfer, chapter 5. Here R = 5 K/W, C = 60 J/K, P = 8 W, so RC = 300 s and the final rise is 40 K.
     */
    @Test
    void theRiseFollowsTheStepResponseOfALumpedBody() {
        ThermalModel model = new ThermalModel(WITHOUT_LEAKAGE, new Cooling(5, 60), 1800, 1, 20);
        for (int second = 0; second < 300; second++) {
            model.advance(1, 20);
        }
        assertEquals(20 + 40 * 0.6321205588285577, model.temperatureC(), 1e-9); // 1 − 1/e
        for (int second = 300; second < 9000; second++) {
            model.advance(1, 20);
        }
        assertEquals(60, model.temperatureC(), 1e-9);
    }

    @Test
    void theControllerKeepsTheDieAboutItsLimitByDroppingTheClock() {
        ThermalModel model = new ThermalModel(Encoder.quillet3("A1"), Cooling.NONE, 1800, 1, 23);
        double hottestC = 0;
        boolean dropped = false;
        for (int second = 0; second < 2700; second++) {
            model.advance(1, 22);
            hottestC = StrictMath.max(hottestC, model.temperatureC());
            dropped |= model.clockMhz() < 1800;
        }
        assertTrue(dropped);
        // One step of a second at full power moves the die by less than P/C = 0.3 K.
        assertEquals(ThermalModel.LIMIT_C, hottestC, 0.3);
    }

    /** Source: Amdahl, AFIPS 1967: with a part s of the time not following the clock, doubling it gives 2 / (1 + s). */
    @Test
    void speedFollowsTheClockOnlyInThePartThatDoesNotWaitForMemory() {
        double doubled = WITHOUT_LEAKAGE.framesPerSecond(3600) / WITHOUT_LEAKAGE.framesPerSecond(1800);
        assertEquals(2 / (1 + Encoder.MEMORY_PART), doubled, 1e-12);
    }
}
