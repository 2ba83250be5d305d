// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads JSON into maps, lists, texts, doubles, booleans and nulls. */
final class JsonText {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private JsonText() {}

    /** @throws IllegalArgumentException if the bytes are no JSON, name a key twice, or go on behind the value */
    static @Nullable Object read(byte[] bytes) {
        try (JsonParser parser = FACTORY.createParser(bytes)) {
            Object value = value(parser, parser.nextToken());
            if (parser.nextToken() != null) {
                throw new IOException("something follows the JSON value");
            }
            return value;
        } catch (JsonProcessingException broken) {
            JsonLocation place = broken.getLocation();
            String where = place == null ? "" : " (line " + place.getLineNr() + ", column " + place.getColumnNr() + ")";
            throw new IllegalArgumentException(broken.getOriginalMessage() + where, broken);
        } catch (IOException broken) {
            throw new IllegalArgumentException(broken.getMessage(), broken);
        }
    }

    private static @Nullable Object value(JsonParser parser, @Nullable JsonToken token) throws IOException {
        if (token == null) {
            throw new IOException("the JSON ends too early");
        }
        return switch (token) {
            case START_OBJECT -> map(parser);
            case START_ARRAY -> list(parser);
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> Boolean.TRUE;
            case VALUE_FALSE -> Boolean.FALSE;
            case VALUE_NULL -> null;
            default -> throw new IOException("unexpected " + token);
        };
    }

    private static Map<String, @Nullable Object> map(JsonParser parser) throws IOException {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            map.put(key, value(parser, parser.nextToken()));
        }
        return map;
    }

    private static List<@Nullable Object> list(JsonParser parser) throws IOException {
        List<@Nullable Object> list = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            list.add(value(parser, token));
        }
        return list;
    }
}
