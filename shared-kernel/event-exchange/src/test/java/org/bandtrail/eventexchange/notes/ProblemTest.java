package org.bandtrail.eventexchange.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** What a running service answers when something is wrong with a request. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ProblemTest {
    private static final String GOOD = """
            {"commandId":"0197a2b0-0000-7000-8000-000000000001","text":"t","reelId":"R-0001","length":"4 ft 1 in",\
            "lines":2,"happenedAt":"2026-05-04T12:00:00Z"}""";
    private final RunningNotes notes = new RunningNotes();

    @AfterAll
    void stop() {
        notes.close();
    }

    @Test
    void with_key_and_person_the_request_is_for_that_person() throws Exception {
        HttpResponse<String> answer = notes.post(GOOD, "p-07");

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(RunningNotes.JSON.readTree(answer.body()).path("by").stringValue())
                .isEqualTo("P-07");
    }

    @Test
    void who_does_not_say_who_acts_is_told_so() throws Exception {
        JsonNode problem = RunningNotes.problem(notes.post(GOOD, ""), 400);

        assertThat(problem.path("type").stringValue()).isEqualTo("/problems/not-understood");
        assertThat(problem.path("detail").stringValue()).contains("Bandtrail-Person");
    }

    /** RFC 9457, section 3, figure 1: the members of its own example, and nothing else. */
    @Test
    void a_refusal_is_a_problem_as_in_the_example_of_rfc_9457() throws Exception {
        HttpResponse<String> answer = notes.get("/notes/1");

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/problem+json");
        assertThat(RunningNotes.JSON.readTree(answer.body())).isEqualTo(RunningNotes.JSON.readTree("""
                {"type": "/problems/out-of-credit",
                 "title": "Out of credit",
                 "status": 403,
                 "detail": "Your current balance is 30, but that costs 50.",
                 "instance": "/notes/1",
                 "balance": 30,
                 "accounts": ["/account/12345", "/account/67890"]}
                """));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "404 | /problems/no-such        | There is no note [404] here.",
                "400 | /problems/not-understood | length [4 parsecs] has no unit we know.",
                "503 | /problems/try-again      | The database is away just now. Nothing was stored; try again.",
                "500 | /problems/our-fault | Something is wrong on our side and was written to the log. Nothing was stored."
            })
    void what_goes_wrong_has_a_status_a_type_and_a_sentence(int status, String type, String detail) throws Exception {
        JsonNode problem = RunningNotes.problem(notes.get("/notes/" + status), status);

        assertThat(problem.path("type").stringValue()).isEqualTo(type);
        assertThat(problem.path("detail").stringValue()).isEqualTo(detail);
        assertThat(problem.toString()).doesNotContain("secret");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"lines\":2           | \"lines\":2,\"lane\":1     | Field [lane] is not known here. Known are: "
                        + "commandId, happenedAt, length, lines, reelId, text.",
                "\"2026-05-04T12:00:00Z\" | \"yesterday\"         | Field [happenedAt] has the value [yesterday], "
                        + "which is not a time such as 2026-05-04T07:30:00Z.",
                "\"lines\":2           | \"lines\":\"two\"         | Field [lines] has the value [two], "
                        + "which is not a whole number.",
                "\"0197a2b0-0000-7000-8000-000000000001\" | \"7\" | Field [commandId] has the value [7], "
                        + "which is not a UUID.",
                "\"lines\":2,          | ''                       | Field [lines] is missing or is not a whole number.",
                "\"text\":\"t\",   | ''                       | Field [text] is missing or is not text.",
                "\"R-0001\"         | null                     | Field [reelId] is missing or is not what is expected.",
                "\"lines\":2 | \"lines\":0 | Field [lines] with the value [0] must be greater than 0.",
                "\"text\":\"t\"        | \"text\":\" \"           | Field [text] with the value [ ] must not be blank.",
            })
    void a_value_that_is_not_understood_is_named(String good, String bad, String detail) throws Exception {
        JsonNode problem = RunningNotes.problem(notes.post(GOOD.replace(good, bad == null ? "" : bad), "P-07"), 400);

        assertThat(problem.path("type").stringValue()).isEqualTo("/problems/not-understood");
        assertThat(problem.path("detail").stringValue()).isEqualTo(detail);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"\"R-0001\" | \"R 0001\" | reelId | R 0001", "\"4 ft 1 in\" | \"4 parsecs\" | length | 4 parsecs"})
    void a_value_that_the_kernel_refuses_is_named_with_its_field(String good, String bad, String field, String value)
            throws Exception {
        JsonNode problem = RunningNotes.problem(notes.post(GOOD.replace(good, bad), "P-07"), 400);

        assertThat(problem.path("field").stringValue()).isEqualTo(field);
        assertThat(problem.path("detail").stringValue()).contains("[" + value + "]");
    }

    @Test
    void what_is_not_json_says_where() throws Exception {
        assertThat(RunningNotes.problem(notes.post("{\"text\":", "P-07"), 400)
                        .path("detail")
                        .stringValue())
                .startsWith("The body is not JSON at line 1");
        assertThat(RunningNotes.problem(notes.post("", "P-07"), 400)
                        .path("detail")
                        .stringValue())
                .isEqualTo("The body is missing or cannot be read.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/feed?limit=0       | 400 | limit [0] must be between 1 and 1000.",
                "/feed?after=-1      | 400 | after [-1] must be between 0 and 9223372036854775807.",
                "/feed?waitSeconds=x | 400 | waitSeconds [x] is not understood. For input string: \"x\"",
                "/nowhere            | 404 | There is nothing at [/nowhere]."
            })
    void a_path_or_parameter_that_is_not_understood_is_named(String path, int status, String detail) throws Exception {
        assertThat(RunningNotes.problem(notes.get(path), status).path("detail").stringValue())
                .isEqualTo(detail);
    }
}
