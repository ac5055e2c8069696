package org.evenhand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.evenhand.measure.ReferenceTest;
import org.evenhand.quantity.UnitTest;
import org.evenhand.statistics.ReferenceCasesTest;
import org.junit.jupiter.api.Test;

/** Each case of {@code reference/open.json} is run, once, by the test of the package that computes it; none is left out. */
class AllReferenceCasesTest {

    @Test
    void each_of_the_108_cases_is_run() throws IOException {
        List<String> all;
        try (InputStream in = AllReferenceCasesTest.class.getResourceAsStream("/reference/open.json")) {
            all = StreamSupport.stream(new ObjectMapper().readTree(in).spliterator(), false)
                    .map(node -> node.get("id").asText())
                    .sorted()
                    .toList();
        }
        List<String> run = Stream.of(
                        ReferenceCasesTest.referenceCases(), ReferenceTest.referenceCases(), UnitTest.referenceCases())
                .flatMap(List::stream)
                .sorted()
                .toList();
        assertEquals(all, run);
        assertEquals(108, run.size());
    }
}
