package org.bandtrail.siteinstalls.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import tools.jackson.databind.JsonNode;

@OnPostgres
class PhotosOnPostgresTest {
    private final Http http;
    private final Photos photos;

    @Autowired
    PhotosOnPostgresTest(@LocalServerPort int port, Photos photos) {
        this.http = new Http(port);
        this.photos = photos;
    }

    private Http.Answer attach(String commandId, String of, String subject, byte[] file) {
        MultiValueMap<String, Object> form = new LinkedMultiValueMap<>();
        form.add("file", new ByteArrayResource(file) {
            @Override
            public String getFilename() {
                return "trunk.jpg";
            }
        });
        form.add("commandId", commandId);
        form.add("of", of);
        form.add("subject", subject);
        return http.upload("/photos", form);
    }

    @Test
    void a_photo_is_attached_once_by_its_command_and_shown_with_its_tree() throws IOException {
        byte[] file = SamplePictures.drawn("jpeg", 90, 70);
        String commandId = Http.commandId();
        Http.Answer first = attach(commandId, "tree", "oak-7", file);
        assertThat(first.status()).as("%s", first.body()).isEqualTo(200);
        assertThat(attach(commandId, "tree", "oak-7", file)).isEqualTo(first);
        attach(Http.commandId(), "band", "B-7", file);

        JsonNode rows = http.get("/photos?of=tree&subject=OAK-7").body().path("rows");
        assertThat(rows).hasSize(1);
        assertThat(rows.path(0).path("width").asInt()).isEqualTo(90);
        PhotoId photo = new PhotoId(rows.path(0).path("photoId").asString());
        assertThat(photos.jpeg(photo)).isPresent();
        assertThat(http.get("/photos?of=band&subject=B-7")
                        .body()
                        .path("rows")
                        .path(0)
                        .path("photoId")
                        .asString())
                .isEqualTo(photo.value());
    }

    @Test
    void an_erased_picture_is_gone_and_the_note_stays() throws IOException {
        String photo = attach(Http.commandId(), "site", "OAK", SamplePictures.drawn("png", 33, 44))
                .body()
                .path("photoId")
                .asString();
        String body = "{\"commandId\":\"%s\",\"why\":\"shows a person\"}";
        assertThat(http.post("/photos/" + photo + "/erase", body.formatted(Http.commandId()))
                        .status())
                .isEqualTo(200);
        assertThat(photos.jpeg(new PhotoId(photo))).isEmpty();
        assertThat(http.get("/photos/" + photo).status()).isEqualTo(404);
        JsonNode row =
                http.get("/photos?of=site&subject=OAK").body().path("rows").path(0);
        assertThat(row.path("erasedWhy").asString()).isEqualTo("shows a person");
        assertThat(http.post("/photos/" + photo + "/erase", body.formatted(Http.commandId()))
                        .status())
                .isEqualTo(404);
    }

    @Test
    void what_is_no_picture_is_refused_with_what_to_do() {
        Http.Answer refused = attach(Http.commandId(), "tree", "OAK-8", new byte[] {1, 2, 3});
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body().path("type").asString()).isEqualTo("/problems/photo-unreadable");
        assertThat(attach(Http.commandId(), "cloud", "OAK-8", new byte[] {1, 2, 3})
                        .status())
                .isEqualTo(400);
    }
}
