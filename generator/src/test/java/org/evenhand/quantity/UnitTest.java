package org.evenhand.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.evenhand.measure.Reference;
import org.evenhand.quantity.MisreadException.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of units against what standards define; sources are in the names of the tests. */
public class UnitTest {

    /** The cases of the reference that run here, by their ids. */
    public static List<String> referenceCases() {
        return Reference.cases("units").stream()
                .filter(node -> node.get("expected").has("conversions")
                        || node.get("inputs").has("pairs"))
                .map(node -> node.get("id").asText())
                .toList();
    }

    static Stream<Arguments> conversions() {
        return Reference.cases("units").stream()
                .filter(node -> node.get("expected").has("conversions"))
                .flatMap(node -> StreamSupport.stream(
                                node.get("expected").get("conversions").spliterator(), false)
                        .map(conversion ->
                                Arguments.of(node.get("source").asText(), conversion, node.get("tolerance"))));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("conversions")
    void conversions_are_those_of_the_standards(String source, JsonNode conversion, JsonNode tolerance)
            throws MisreadException {
        Unit from = Unit.parse(conversion.get("from_ucum").asText());
        Unit to = Unit.parse(conversion.get("to_ucum").asText());
        double expected = conversion.get("result").asDouble();
        double allowed = tolerance.has("abs")
                ? tolerance.get("abs").asDouble()
                : Math.abs(expected) * tolerance.get("rel").asDouble();
        BigDecimal value = new BigDecimal(conversion.get("value").asText());
        // A kelvin is a difference here, so that 25 °C as a point in K goes by way of the difference to 0 K.
        boolean point = "point".equals(conversion.path("temperature_kind").asText());
        boolean difference =
                "difference".equals(conversion.path("temperature_kind").asText());
        double result;
        if (difference) {
            result = from.differenceTo(to).apply(value);
        } else if (point && to.symbol().equals("K")) {
            result = from.differenceTo(to).apply(value) + from.offset().toDouble();
        } else {
            result = from.to(to).apply(value);
        }
        assertEquals(expected, result, allowed);
        if (!point) {
            double fast = difference
                    ? from.differenceTo(to).fast().apply(value.doubleValue())
                    : from.to(to).fast().apply(value.doubleValue());
            assertEquals(expected, fast, Math.max(allowed, 4 * Math.ulp(expected)));
        }
    }

    static Stream<Arguments> rejects() {
        return Reference.cases("units").stream()
                .filter(node -> node.get("inputs").has("pairs"))
                .flatMap(node -> StreamSupport.stream(
                                node.get("inputs").get("pairs").spliterator(), false)
                        .map(pair -> Arguments.of(
                                node.get("source").asText(),
                                pair.get(0).asText(),
                                pair.get(1).asText())));
    }

    @ParameterizedTest(name = "{0}: {1} is not {2}")
    @MethodSource("rejects")
    void conversions_that_must_be_refused_are(String source, String from, String to) throws MisreadException {
        Unit left = Unit.parse(from);
        Unit right = Unit.parse(to);
        assertFalse(left.convertsTo(right));
        assertThrows(IllegalArgumentException.class, () -> left.to(right));
    }

    @Test
    void every_unit_of_the_table_is_read_again_from_its_symbol_and_its_code() throws MisreadException {
        int count = 0;
        List<String> wrong = new ArrayList<>();
        for (String spelling : UnitTable.spellings()) {
            Unit unit = UnitTable.find(spelling);
            if (!Unit.parse(unit.symbol()).equals(unit)
                    || !Unit.parse(unit.code()).equals(unit)
                    || !Unit.parse(spelling).equals(unit)
                    || !Quantity.parse("-3.2e-3 " + unit.symbol()).unit().equals(unit)) {
                wrong.add(spelling);
            }
            count++;
        }
        assertEquals(List.of(), wrong);
        assertTrue(count > 200, "spellings: " + count);
    }

    @Test
    void units_made_of_others_are_read_again_from_their_symbol_and_code() throws MisreadException {
        for (String text : List.of(
                "frames/mWh",
                "W/(m2.K)",
                "mWh²",
                "s/(r/min)",
                "m3/h",
                "K/min",
                "kg·m/s²",
                "mW.h",
                "/h",
                "W/K",
                "s⁻¹")) {
            Unit unit = Unit.parse(text);
            Unit bySymbol = Unit.parse(unit.symbol());
            Unit byCode = Unit.parse(unit.code());
            assertEquals(unit, bySymbol, text);
            assertEquals(unit.factor(), byCode.factor(), text);
            assertEquals(unit.dimension(), byCode.dimension(), text);
        }
    }

    @Test
    void a_name_for_what_is_counted_is_read_again_from_its_code() throws MisreadException {
        Unit unit = Unit.parse("{sheets}/min");
        assertEquals("sheets/min", unit.symbol());
        assertEquals(unit, Unit.parse(unit.code()));
    }

    @ParameterizedTest(name = "“{0}” suggests “{1}”")
    @CsvSource({
        "mw, mW",
        "degC, °C",
        "MHZ, MHz",
        "hz, Hz",
        "sec, s",
        "fps, frames/s",
        "KW, kW",
        "dba, dB(A)",
        "pct, %",
    })
    void a_unit_that_is_not_known_suggests_the_one_meant(String written, String meant) {
        MisreadException fault = assertThrows(MisreadException.class, () -> Unit.parse(written));
        assertEquals(Fault.UNIT_UNKNOWN, fault.fault());
        assertEquals("did you mean “" + meant + "”? Capitals count", fault.remedy());
    }

    @ParameterizedTest(name = "UCUM and the SI Brochure, 5.2: {0} is not {1}")
    @CsvSource({"mW, MW", "mA, MA", "Pa, PA", "s, S", "K, k", "g, G"})
    void capitals_count(String known, String other) throws MisreadException {
        Unit unit = Unit.parse(known);
        boolean different;
        try {
            different = !Unit.parse(other).equals(unit);
        } catch (MisreadException e) {
            different = true;
        }
        assertTrue(different);
    }

    @Test
    void levels_of_different_weighting_do_not_convert() {
        assertFalse(Unit.of("dB(A)").convertsTo(Unit.of("dB")));
        assertTrue(Unit.of("dB(A)").convertsTo(Unit.of("dB(A)")));
    }

    @Test
    void si_brochure_2_3_1_a_point_does_not_convert_to_a_difference() {
        assertFalse(Unit.of("°C").convertsTo(Unit.of("K")));
        assertEquals("K", Unit.of("°F").ofDifference().symbol());
        assertThrows(ArithmeticException.class, () -> Unit.of("°C").times(Unit.of("s")));
    }

    @Test
    void milli_degrees_of_a_log_become_degrees_to_the_last_bit() {
        Conversion conversion = Unit.of("m°C").to(Unit.of("°C"));
        for (int milli = -40_000; milli <= 120_000; milli += 7) {
            double expected = new BigDecimal(milli).movePointLeft(3).doubleValue();
            assertEquals(expected, conversion.apply((double) milli));
            assertEquals(expected, conversion.fast().apply(milli));
        }
    }

    @Test
    void aDifferenceOfPercentagesIsInPercentagePoints() {
        Unit points = Unit.of("%").ofDifference();
        assertEquals("percentage points", points.symbol());
        assertEquals(5, Quantity.of("5 percentage points").in(Unit.of("%")), 0);
    }
}
