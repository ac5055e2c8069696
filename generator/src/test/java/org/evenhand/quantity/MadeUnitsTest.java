package org.evenhand.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.evenhand.quantity.MisreadException.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Units made of others: what is accepted is written so that it is read again with the same meaning.
 *
 * <p>The notation is that of the SI Brochure, 9th edition, 5.4.2 and 5.4.3, and of the UCUM, section 2.1.
 */
class MadeUnitsTest {

    @ParameterizedTest(name = "{0} is written {1}, and its code {2}")
    @CsvSource({
        "(s-1)-1, (s⁻¹)⁻¹, (s-1)-1",
        "(m/s2)2, (m/s²)², (m/s2)2",
        "((m2)3)2, ((m²)³)², ((m2)3)2",
        "(ft³)2, (ft³)², [cft_i]2",
        "(1)3, 1, 1",
        "W/(1), W, W",
        "s/(1/W), s/(1/W), s/(1/W)",
        "s⁰, s⁰, s0",
        "{sheets}2, sheets², {sheets}2",
    })
    void aPowerOfAPowerStandsInParentheses(String text, String symbol, String code) throws MisreadException {
        Unit unit = Unit.parse(text);
        assertEquals(symbol, unit.symbol());
        assertEquals(code, unit.code());
        same(unit, Unit.parse(code), text);
    }

    /** By the rules of powers: (a^m)^n is a^(m·n), and a/(b/c) is a·c/b. */
    @ParameterizedTest(name = "{0} is as much as {1}")
    @CsvSource({
        "(s-1)-1, s",
        "(km2)2, km4",
        "s/(1/W), W·s",
        "W/(W/h), h",
        "(min/s)-2, s2/min2",
        "(kg·m/s²)·m, J",
        "/Hz, s",
        "/s-1/Hz-1/(s-1/(1/W)/W), s",
    })
    void powersAndQuotientsMeanWhatTheyMeanInAlgebra(String text, String same) throws MisreadException {
        assertEquals(Unit.parse(same).dimension(), Unit.parse(text).dimension());
        assertEquals(Unit.parse(same).factor(), Unit.parse(text).factor());
    }

    @Test
    void whateverIsAcceptedIsReadAgainFromItsSymbolAndFromItsCode() throws MisreadException {
        List<String> atoms = new ArrayList<>();
        UnitTable.spellings().forEach(atoms::add);
        Random random = new Random(20261125);
        int accepted = 0;
        for (int i = 0; i < 200_000; i++) {
            String text = text(random, atoms, 3);
            Unit unit;
            try {
                unit = Unit.parse(text);
            } catch (MisreadException e) {
                assertEquals(Fault.UNIT_UNKNOWN, e.fault(), text);
                continue;
            }
            accepted++;
            same(unit, Unit.parse(unit.symbol()), text);
            same(unit, Unit.parse(unit.code()), text);
        }
        assertTrue(accepted > 50_000, "accepted: " + accepted);
    }

    @Test
    void towersOfPowersAreRefusedAtOnce() {
        for (String base : List.of("d", "s", "turn", "(lb/kg)", "°", "ppm")) {
            StringBuilder tower = new StringBuilder(base);
            while (tower.length() < 37) {
                tower.insert(0, '(').append(")9");
                String text = tower.toString();
                assertTimeoutPreemptively(Duration.ofMillis(500), () -> {
                    try {
                        Unit.parse(text).factor().toDouble();
                    } catch (MisreadException e) {
                        assertEquals(Fault.UNIT_UNKNOWN, e.fault());
                    }
                });
            }
            assertThrows(MisreadException.class, () -> Unit.parse(tower.toString()));
        }
    }

    @Test
    void aNinthPowerAndTheSquareOfOneAreNoTower() throws MisreadException {
        assertEquals(Math.pow(86400, 9), Unit.parse("d9").factor().toDouble(), 0);
        assertEquals(1e-216, Unit.parse("(pm9)2").factor().toDouble(), 1e-230);
    }

    @ParameterizedTest
    @ValueSource(strings = {"{W}", "{m}", "{s-1}/h", "{Wh}", "{percentage points}", "{}", "{1}", "{a}b}"})
    void whatIsCountedCannotBeCalledLikeAUnit(String text) {
        assertThrows(MisreadException.class, () -> Unit.parse(text));
    }

    @Test
    void aTextThatWouldHaveALongerSymbolThanIsReadIsRefused() {
        String text = "%{points}.%{points}.%{points}.%{points}";
        assertTrue(text.length() <= 40);
        assertThrows(MisreadException.class, () -> Unit.parse(text));
    }

    private static String text(Random random, List<String> atoms, int depth) {
        StringBuilder text = new StringBuilder(random.nextInt(12) == 0 ? "/" : "");
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            text.append(i == 0 ? "" : List.of("/", "·", ".").get(random.nextInt(3)));
            if (depth > 0 && random.nextInt(3) == 0) {
                text.append('(').append(text(random, atoms, depth - 1)).append(')');
            } else {
                text.append(atoms.get(random.nextInt(atoms.size())));
            }
            if (random.nextInt(3) == 0) {
                text.append(List.of("2", "-1", "⁻¹", "³", "0", "1", "9").get(random.nextInt(7)));
            }
        }
        return text.toString();
    }

    private static void same(Unit unit, Unit again, String text) {
        assertEquals(unit.symbol(), again.symbol(), text);
        assertEquals(unit.dimension(), again.dimension(), text);
        assertEquals(unit.kind(), again.kind(), text);
        assertEquals(unit.factor(), again.factor(), text);
        assertEquals(unit.offset(), again.offset(), text);
    }
}
