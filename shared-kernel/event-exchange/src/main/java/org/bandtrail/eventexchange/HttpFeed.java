package org.bandtrail.eventexchange;

import java.net.http.HttpClient;
import java.time.Duration;
import java.util.Objects;
import org.springframework.core.NestedExceptionUtils;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.http.client.JdkClientHttpRequestFactory;
import org.springframework.web.client.RestClient;
import org.springframework.web.client.RestClientException;

/** The feed of a foreign service over HTTP: {@code GET <base>/feed}, long-polled, with the shared service key. */
public final class HttpFeed implements Feed {
    private static final Duration CONNECT_TIMEOUT = Duration.ofSeconds(5);
    /** What an answer may take beyond the wait that was asked for. */
    private static final Duration ANSWER_TIMEOUT = Duration.ofSeconds(15);

    private static final Duration LONGEST_WAIT = Duration.ofSeconds(30);

    private final RestClient client;
    private final String baseUrl;

    /**
     * Reads from one service.
     *
     * @param baseUrl where it is served, for example {@code http://127.0.0.1:8102}
     * @param serviceKey the key the services share
     */
    public HttpFeed(String baseUrl, String serviceKey) {
        var requests = new JdkClientHttpRequestFactory(
                HttpClient.newBuilder().connectTimeout(CONNECT_TIMEOUT).build());
        requests.setReadTimeout(LONGEST_WAIT.plus(ANSWER_TIMEOUT));
        this.baseUrl = baseUrl;
        this.client = RestClient.builder()
                .baseUrl(baseUrl)
                .requestFactory(requests)
                .defaultHeader(HttpHeaders.AUTHORIZATION, "Bearer " + serviceKey)
                .defaultHeader(HttpHeaders.ACCEPT, EnvelopeJson.BATCH)
                .build();
    }

    @Override
    public FeedPage after(long after, int limit, Duration wait) {
        try {
            ResponseEntity<byte[]> answer = client.get()
                    .uri("/feed?after={after}&limit={limit}&waitSeconds={wait}", after, limit, wait.toSeconds())
                    .retrieve()
                    .toEntity(byte[].class);
            byte[] body = answer.getBody();
            String head = answer.getHeaders().getFirst(FeedController.HEAD);
            if (body == null || head == null) {
                throw new FeedUnreachable(
                        "%s answered without a page or without the header %s.".formatted(baseUrl, FeedController.HEAD));
            }
            return new FeedPage(EnvelopeJson.readBatch(body), Long.parseLong(head));
        } catch (UnreadableEvent misfit) {
            throw new FeedUnreachable("%s: %s".formatted(baseUrl, misfit.getMessage()), misfit);
        } catch (RestClientException | NumberFormatException failure) {
            throw new FeedUnreachable("%s: %s".formatted(baseUrl, reason(failure)), failure);
        }
    }

    /** What lies deepest says most: "connection refused" rather than "I/O error". */
    private static String reason(RuntimeException failure) {
        Throwable deepest = NestedExceptionUtils.getMostSpecificCause(failure);
        return Objects.requireNonNullElse(
                deepest.getMessage(), deepest.getClass().getSimpleName());
    }
}
