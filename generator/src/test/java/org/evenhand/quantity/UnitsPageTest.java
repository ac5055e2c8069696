package org.evenhand.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.evenhand.docs.Guide;
import org.junit.jupiter.api.Test;

/** The page of units lists the table of units, no more and no less. */
class UnitsPageTest {

    private static final String BEGIN = "<!-- the tables of units begin -->\n";
    private static final String END = "<!-- the tables of units end -->\n";

    /** {@code -Devenhand.renew=true} writes the tables anew; read the difference before committing it. */
    @Test
    void thePageListsEveryUnitAsTheTableHasIt() throws IOException {
        String text = Guide.read("docs/units.md").text();
        if (Boolean.getBoolean("evenhand.renew")) {
            text = text.substring(0, text.indexOf(BEGIN)) + BEGIN + tables() + text.substring(text.indexOf(END));
            Files.writeString(Path.of("../docs/units.md"), text);
        }
        assertEquals(tables(), text.substring(text.indexOf(BEGIN) + BEGIN.length(), text.indexOf(END)));
    }

    private static String tables() {
        Map<String, List<Unit>> groups = new LinkedHashMap<>();
        Set<Unit> units = new LinkedHashSet<>();
        UnitTable.spellings().forEach(s -> units.add(UnitTable.find(s)));
        units.forEach(
                u -> groups.computeIfAbsent(group(u), g -> new ArrayList<>()).add(u));
        StringBuilder text = new StringBuilder();
        groups.forEach((group, members) -> {
            text.append("\n### ").append(group).append("\n\n");
            text.append("| symbol | UCUM code | also read | size | source |\n| --- | --- | --- | --- | --- |\n");
            members.forEach(u -> text.append(row(u)));
        });
        return text.append('\n').toString();
    }

    private static String group(Unit unit) {
        String words = unit.kind() == UnitKind.LEVEL
                ? "levels"
                : unit.kind() == UnitKind.POINT
                        ? "points of temperature"
                        : unit.dimension().words();
        String name = words.replaceFirst("^an? ", "");
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    private static String row(Unit unit) {
        List<String> others = new ArrayList<>();
        UnitTable.spellings().forEach(s -> {
            if (UnitTable.find(s).equals(unit) && !s.equals(unit.symbol()) && !s.equals(unit.code())) {
                others.add("`" + s + "`");
            }
        });
        return "| `" + unit.symbol() + "` | `" + unit.code() + "` | " + String.join(" ", others) + " | " + size(unit)
                + " | " + source(unit) + " |\n";
    }

    /** What one of it is: exact, as a whole number, a decimal, or a fraction. */
    private static String size(Unit unit) {
        if (unit.kind() == UnitKind.LEVEL) {
            return "converts to nothing else";
        }
        if (unit.kind() == UnitKind.POINT) {
            return written(unit.factor()) + " K, its zero at " + written(unit.offset()) + " K";
        }
        String of = coherent(unit);
        return written(unit.factor()) + (of.isEmpty() ? "" : " " + of);
    }

    private static String written(Fraction fraction) {
        String pi = fraction.pi() == 0 ? "" : " π";
        try {
            BigDecimal exact = new BigDecimal(fraction.numerator())
                    .divide(new BigDecimal(fraction.denominator()))
                    .stripTrailingZeros();
            String plain = exact.toPlainString();
            return (plain.length() > 8 && exact.precision() <= 4 ? power(exact) : plain) + pi;
        } catch (ArithmeticException e) {
            return fraction.numerator() + "/" + fraction.denominator() + pi; // no decimal ends
        }
    }

    private static String power(BigDecimal exact) {
        String digits = exact.unscaledValue().toString();
        String mantissa = digits.length() == 1 ? digits : digits.charAt(0) + "." + digits.substring(1);
        return mantissa + "e" + (digits.length() - 1 - exact.scale());
    }

    /** The coherent SI unit in which the size is given; "bit" where the SI has none. */
    private static String coherent(Unit unit) {
        for (String symbol :
                List.of("s", "m", "g", "A", "K", "Hz", "N", "Pa", "J", "W", "C", "V", "Ω", "bit", "rad", "L", "cd")) {
            Unit base = UnitTable.find(symbol);
            if (base.dimension().equals(unit.dimension())) {
                return symbol.equals("g") ? "kg" : symbol.equals("L") ? "m³" : symbol;
            }
        }
        return "";
    }

    /** Where the size comes from. Tables after SI Brochure, 9th edition, and NIST SP 811 (2008). */
    private static String source(Unit unit) {
        String symbol = unit.symbol();
        String prefixed = symbol.matches(".*(Ki|Mi|Gi|Ti)(B|bit)") ? "IEC 80000-13" : "";
        if (!prefixed.isEmpty()) {
            return prefixed;
        }
        if (unit.kind() == UnitKind.LEVEL) {
            return switch (symbol) {
                case "dB" -> "SI Brochure";
                case "dB(A)", "dB(C)", "dB(Z)" -> "IEC 61672-1";
                default -> "common practice, no source";
            };
        }
        if (Set.of("°F", "Btu", "cal", "kcal", "in", "ft", "lb", "psi", "mmH₂O", "atm", "ft³", "bar", "mbar", "kbar")
                .contains(symbol)) {
            return "NIST SP 811, B.8";
        }
        if (Set.of("mmHg", "inHg", "r/min", "r", "turn", "‰", "ppm").contains(symbol)) {
            return "UCUM";
        }
        if (unit.dimension().equals(Dimension.ONE)
                && !Set.of("1", "%", "percentage points").contains(symbol)) {
            return "a name for what is counted";
        }
        return symbol.endsWith("B") || symbol.endsWith("bit") ? "IEC 80000-13" : "SI Brochure";
    }
}
