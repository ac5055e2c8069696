import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

/** The least that a program with Jackson takes to start: it reads one number. */
public final class Start {

    private Start() {}

    public static void main(String[] arguments) throws Exception {
        JsonNode node = new ObjectMapper().readTree("{\"a\": 1}");
        System.out.println(node.get("a").asInt());
    }
}
