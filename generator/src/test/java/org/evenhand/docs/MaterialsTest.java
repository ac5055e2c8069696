package org.evenhand.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.evenhand.docs.Materials.Library;
import org.evenhand.read.Sha256;
import org.junit.jupiter.api.Test;

/**
 * What the program is made of: nothing is resolved that is not declared, and the licences and the bill of materials are those of
 * what is resolved. Needs no network.
 *
 * <p>{@code -Devenhand.renew=true} writes both anew; read the difference before committing it.
 */
class MaterialsTest {

    private static final Path LICENCES = Path.of("../docs/licences.md");
    private static final Path BILL = Path.of("../docs/bill-of-materials.json");
    private static final String BEGIN = "<!-- the libraries begin -->\n";
    private static final String END = "<!-- the libraries end -->\n";
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private static final Materials MATERIALS = Materials.ofThisBuild();

    @Test
    void nothingIsResolvedThatNothingDeclares() {
        Set<String> strangers = new TreeSet<>(MATERIALS.all().keySet());
        strangers.removeAll(MATERIALS.needed(Materials.declared()));
        assertEquals(Set.of(), strangers);
        assertTrue(MATERIALS.all().keySet().containsAll(Materials.declared()));
    }

    /** Licences that allow the program to be handed on under Apache-2.0: apache.org/legal/resolved.html, category A. */
    @Test
    void whatIsPackedIsUnderLicencesThatAllowIt() {
        assertTrue(MATERIALS.packed().size() > 10);
        assertFalse(MATERIALS.packed().contains("org.jsoup:jsoup"));
        MATERIALS
                .packed()
                .forEach(id -> assertTrue(
                        Set.of("Apache-2.0", "BSD-2-Clause", "MIT")
                                .contains(MATERIALS.all().get(id).licence()),
                        id));
    }

    @Test
    void thePageOfLicencesListsWhatIsResolved() throws IOException {
        String text = Files.readString(LICENCES);
        String expected =
                text.substring(0, text.indexOf(BEGIN) + BEGIN.length()) + tables() + text.substring(text.indexOf(END));
        if (Boolean.getBoolean("evenhand.renew")) {
            Files.writeString(LICENCES, expected);
        }
        assertEquals(expected, Files.readString(LICENCES));
    }

    @Test
    void theBillOfMaterialsIsThatOfWhatIsPacked() throws IOException {
        String expected = JSON.writeValueAsString(bill()).replace("\r\n", "\n") + "\n";
        if (Boolean.getBoolean("evenhand.renew")) {
            Files.writeString(BILL, expected);
        }
        assertEquals(expected, Files.readString(BILL));
    }

    private static String tables() {
        StringBuilder text = new StringBuilder("\n## Packed into the program\n");
        table(text, true);
        text.append("\n## Used by the tests only\n");
        table(text, false);
        return text.append('\n').toString();
    }

    private static void table(StringBuilder text, boolean packed) {
        text.append("\n| library | version | licence |\n| --- | --- | --- |\n");
        MATERIALS.all().forEach((id, library) -> {
            if (MATERIALS.packed().contains(id) == packed) {
                text.append("| `").append(id).append("` | ").append(library.version());
                text.append(" | ").append(library.licence()).append(" |\n");
            }
        });
    }

    /** CycloneDX 1.6 (ECMA-424), without a serial number and a time, which would change from build to build. */
    private static ObjectNode bill() throws IOException {
        ObjectNode bill = JSON.createObjectNode();
        bill.put("bomFormat", "CycloneDX").put("specVersion", "1.6").put("version", 1);
        ObjectNode program = JSON.createObjectNode();
        String self = "pkg:maven/org.evenhand/evenhand@" + version();
        program.put("type", "application").put("bom-ref", self).put("group", "org.evenhand");
        program.put("name", "evenhand").put("version", version());
        licence(program, "Apache-2.0");
        program.put("purl", self);
        bill.putObject("metadata").set("component", program);
        ArrayNode components = bill.putArray("components");
        ArrayNode dependencies = bill.putArray("dependencies");
        Set<String> declared = new TreeSet<>(Materials.declared());
        declared.retainAll(MATERIALS.packed());
        dependency(dependencies, self, declared);
        for (String id : MATERIALS.packed()) {
            Library library = MATERIALS.all().get(id);
            ObjectNode component = components.addObject();
            component.put("type", "library").put("bom-ref", address(id)).put("group", library.group());
            component
                    .put("name", library.name())
                    .put("version", library.version())
                    .put("scope", "required");
            component.putArray("hashes").addObject().put("alg", "SHA-256").put("content", Sha256.of(library.jar()));
            licence(component, library.licence());
            component.put("purl", address(id));
            Set<String> needs = new TreeSet<>(library.needs());
            needs.retainAll(MATERIALS.packed());
            dependency(dependencies, address(id), needs);
        }
        return bill;
    }

    private static void licence(ObjectNode component, String spdx) {
        component.putArray("licenses").addObject().putObject("license").put("id", spdx);
    }

    private static void dependency(ArrayNode dependencies, String from, Set<String> needs) {
        ArrayNode on = dependencies.addObject().put("ref", from).putArray("dependsOn");
        needs.forEach(need -> on.add(address(need)));
    }

    /** A package URL: github.com/package-url/purl-spec, type maven. */
    private static String address(String id) {
        Library library = MATERIALS.all().get(id);
        return "pkg:maven/" + library.group() + "/" + library.name() + "@" + library.version();
    }

    private static String version() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        int at = pom.indexOf("<version>") + "<version>".length();
        return pom.substring(at, pom.indexOf("</version>", at));
    }
}
