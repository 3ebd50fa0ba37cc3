package org.bandtrail.frontdesk.neighbours;

import java.net.http.HttpClient;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.bandtrail.frontdesk.people.SignedIn;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.client.JdkClientHttpRequestFactory;
import org.springframework.util.MultiValueMap;
import org.springframework.web.client.RestClient;
import org.springframework.web.client.RestClientException;
import org.springframework.web.client.RestClientResponseException;
import org.springframework.web.util.UriBuilder;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** One service, spoken to over HTTP with the shared key and the identity of whoever is signed in. */
public final class Neighbour {
    private static final Duration CONNECT = Duration.ofSeconds(2);
    private static final Duration ANSWER = Duration.ofSeconds(15);
    private static final String PERSON = "Bandtrail-Person";
    private static final int PAGES_AT_MOST = 1_000;
    private final String name;
    private final RestClient client;
    private final JsonMapper json;

    /** A service under this URL, for example {@code http://127.0.0.1:8101}. */
    public Neighbour(String name, String url, String key, JsonMapper json) {
        this.name = name;
        this.json = json;
        HttpClient http = HttpClient.newBuilder().connectTimeout(CONNECT).build();
        JdkClientHttpRequestFactory requests = new JdkClientHttpRequestFactory(http);
        requests.setReadTimeout(ANSWER);
        this.client = RestClient.builder()
                .baseUrl(url)
                .requestFactory(requests)
                .defaultHeader(HttpHeaders.AUTHORIZATION, "Bearer " + key)
                .build();
    }

    /** Asks for one thing. Parameters that are null or blank are left out. */
    public <T> T get(String path, Map<String, ? extends @Nullable Object> asked, Class<T> type) {
        return get(path, asked, ParameterizedTypeReference.forType(type));
    }

    /** Asks for something whose type has parameters, such as one page of a list. */
    public <T> T get(String path, Map<String, ? extends @Nullable Object> asked, ParameterizedTypeReference<T> type) {
        return spoken(() -> client.get()
                .uri(to(path, asked))
                .headers(this::person)
                .retrieve()
                .body(type));
    }

    /** Reads a list to its end, page by page. */
    public <T> List<T> everything(Function<@Nullable String, Rows<T>> page) {
        List<T> all = new ArrayList<>();
        String after = null;
        for (int pages = 0; pages < PAGES_AT_MOST; pages++) {
            Rows<T> rows = page.apply(after);
            all.addAll(rows.rows());
            after = rows.next();
            if (after == null) {
                return all;
            }
        }
        throw new NeighbourSilent(name, "gave more than " + PAGES_AT_MOST + " pages", new IllegalStateException());
    }

    /** Passes a command on and returns the answer. */
    public <T> T post(String path, Object body, Class<T> type) {
        return spoken(() -> client.post()
                .uri(path)
                .headers(this::person)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .retrieve()
                .body(type));
    }

    /** Passes a change of a setting on. */
    public void put(String path, Object body) {
        spoken(() -> client.put()
                .uri(path)
                .headers(this::person)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .retrieve()
                .toBodilessEntity());
    }

    /** Passes a command on whose answer does not matter beyond that it was done. */
    public void send(String path, Object body) {
        spoken(() -> client.post()
                .uri(path)
                .headers(this::person)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .retrieve()
                .toBodilessEntity());
    }

    /** As {@link #send}, for a person who signs at somebody else's screen with their own sign-in. */
    public void sendAs(String personId, String path, Object body) {
        spoken(() -> client.post()
                .uri(path)
                .header(PERSON, personId)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .retrieve()
                .toBodilessEntity());
    }

    /** Sends a file with its settings. */
    public <T> T upload(String path, MultiValueMap<String, Object> parts, Class<T> type) {
        return spoken(() -> client.post()
                .uri(path)
                .headers(this::person)
                .contentType(MediaType.MULTIPART_FORM_DATA)
                .body(parts)
                .retrieve()
                .body(type));
    }

    private static Function<UriBuilder, java.net.URI> to(String path, Map<String, ? extends @Nullable Object> asked) {
        return uri -> {
            uri.path(path);
            List<Object> values = new ArrayList<>();
            asked.forEach((key, value) -> {
                if (value != null && !value.toString().isBlank()) {
                    uri.queryParam(key, "{" + key + "}");
                    values.add(value);
                }
            });
            return uri.build(values.toArray());
        };
    }

    private void person(HttpHeaders headers) {
        SignedIn reader = SignedIn.current();
        if (reader != null) {
            headers.set(PERSON, reader.personId());
        }
    }

    private <T> T spoken(Supplier<@Nullable T> exchange) {
        try {
            T answer = exchange.get();
            if (answer == null) {
                throw new NeighbourSilent(name, "answered nothing", new IllegalStateException());
            }
            return answer;
        } catch (RestClientResponseException refused) {
            if (refused.getStatusCode().is4xxClientError()) {
                throw new NeighbourRefused(refused.getStatusCode().value(), problem(refused));
            }
            throw new NeighbourSilent(name, "answered " + refused.getStatusCode(), refused);
        } catch (RestClientException silent) {
            throw new NeighbourSilent(name, "did not answer", silent);
        }
    }

    private Problem problem(RestClientResponseException refused) {
        String body = refused.getResponseBodyAsString();
        try {
            return json.readValue(body, Problem.class);
        } catch (JacksonException notAProblem) {
            // Something in between answered for the service; its words are still better than none.
            String words = body.isBlank() ? refused.getStatusText() : body;
            return new Problem(null, "The " + name + " service said no", null, words, List.of());
        }
    }
}
