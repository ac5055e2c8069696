package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The mean of levels and its uncertainty. The energetic mean itself is held against the reference cases. */
class SoundLevelTest {

    private static final double[] LEVELS_DB = {38.2, 41.5, 40.3, 36.9, 39.8, 42.1};

    @Test
    void by_hand_50_dB_and_60_dB_have_a_mean_energy_of_which_the_louder_is_ten_elevenths() {
        // 10 lg((10^5 + 10^6)/2) = 57.4036 dB; shares 1/11 and 10/11; 10/ln 10 = 4.34294 dB.
        double[] linearised = SoundLevel.linearisedDb(50, 60);
        assertEquals(57.4036, (linearised[0] + linearised[1]) / 2, 5e-5);
        assertEquals(57.4036 - 4.34294 * 9 / 11, linearised[0], 5e-5);
        assertEquals(57.4036 + 4.34294 * 9 / 11, linearised[1], 5e-5);
    }

    @Test
    void the_mean_is_the_energetic_one_of_ISO_3744_2010_8_2_2() {
        assertEquals(
                SoundLevel.energeticMeanDb(LEVELS_DB),
                Sample.of(SoundLevel.linearisedDb(LEVELS_DB)).mean(),
                1e-12);
    }

    @Test
    void the_uncertainty_is_that_of_the_mean_energy_after_JCGM_100_5_1_2() {
        Sample energies = Sample.of(
                Arrays.stream(LEVELS_DB).map(l -> Math.pow(10, l / 10)).toArray());
        double ofEnergy = energies.standardDeviation().orElseThrow() / Math.sqrt(LEVELS_DB.length);
        double inDb = 10 / Math.log(10) * ofEnergy / energies.mean();
        assertEquals(
                inDb,
                Estimate.ofMean(Sample.of(SoundLevel.linearisedDb(LEVELS_DB)))
                        .orElseThrow()
                        .standardUncertainty(),
                1e-12);
    }

    @Test
    void the_shares_are_the_changes_of_the_mean_with_each_level() {
        double[] shares = SoundLevel.energyShares(LEVELS_DB);
        assertEquals(1, Arrays.stream(shares).sum(), 1e-15);
        for (int i = 0; i < LEVELS_DB.length; i++) {
            double[] raised = LEVELS_DB.clone();
            raised[i] += 1e-6;
            double change = (SoundLevel.energeticMeanDb(raised) - SoundLevel.energeticMeanDb(LEVELS_DB)) / 1e-6;
            assertEquals(change, shares[i], 1e-6);
        }
    }

    @Test
    void equal_levels_are_their_own_mean_exactly() {
        assertArrayEquals(new double[] {31.4, 31.4, 31.4}, SoundLevel.linearisedDb(31.4, 31.4, 31.4));
    }
}
