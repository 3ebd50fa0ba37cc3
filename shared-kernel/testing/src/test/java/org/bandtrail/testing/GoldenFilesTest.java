package org.bandtrail.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Golden files that are sound pass; edited, removed, unlisted and misnamed ones are named in the failure. */
class GoldenFilesTest {

    sealed interface HeapEvent {
        @StoredAs("heap.grown")
        @Revision("10")
        record Grown(long mm) implements HeapEvent {}

        @StoredAs("heap.emptied")
        @Revision("1")
        record Emptied() implements HeapEvent {}
    }

    sealed interface RivalEvent {
        @StoredAs("heap.grown")
        @Revision("11")
        record Swollen() implements RivalEvent {}
    }

    sealed interface BareEvent {
        record Forgotten() implements BareEvent {}
    }

    @Test
    void sound_files_pass() {
        GoldenFiles files = GoldenFiles.in("golden/sound");

        assertThatCode(files::assertNoOldFileWasEdited).doesNotThrowAnyException();
        assertThatCode(() -> files.assertCover(HeapEvent.class)).doesNotThrowAnyException();
        assertThat(files.files()).hasSize(4);
    }

    @Test
    void the_revisions_of_a_name_come_oldest_first() {
        assertThat(GoldenFiles.in("golden/sound").of("heap.grown"))
                .extracting(GoldenFile::revision)
                .containsExactly("1", "2", "10");
        assertThat(GoldenFiles.in("golden/sound").of("heap.emptied"))
                .extracting(GoldenFile::fileName)
                .containsExactly("heap.emptied.1-by-hand.json");
    }

    @Test
    void edited_and_removed_files_are_named() {
        assertThatThrownBy(GoldenFiles.in("golden/edited")::assertNoOldFileWasEdited)
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("heap.grown.1.json was edited")
                .hasMessageContaining("heap.grown.2.json was removed")
                .hasMessageNotContaining("heap.grown.10.json");
    }

    @Test
    void a_new_file_is_answered_with_the_line_to_add() {
        assertThatThrownBy(GoldenFiles.in("golden/unlisted")::assertNoOldFileWasEdited)
                .hasMessageContaining(
                        Digests.sha256("{\n  \"reelId\": \"T-0001\"\n}\n") + "  heap.emptied.1-by-hand.json")
                .hasMessageContaining("[nonsense]");
    }

    @Test
    void a_stored_name_that_is_not_listed_or_listed_twice_is_named() {
        assertThatThrownBy(() -> GoldenFiles.in("golden/unlisted").assertCover(HeapEvent.class))
                .hasMessageContaining("stored-names.txt lacks [heap.emptied]")
                .hasMessageContaining("[heap.grown] twice");
    }

    @Test
    void a_reused_name_and_a_revision_without_a_file_are_named() {
        assertThatThrownBy(() -> GoldenFiles.in("golden/reused").assertCover(HeapEvent.class, RivalEvent.class))
                .hasMessageContaining("[heap.grown] is used by two events")
                .hasMessageContaining("Swollen has no golden file: add heap.grown.11.json");
    }

    @Test
    void an_event_without_its_annotations_is_named() {
        assertThatThrownBy(() -> GoldenFiles.in("golden/sound").assertCover(BareEvent.class))
                .hasMessageContaining("Forgotten has no @StoredAs or no @Revision");
        assertThatThrownBy(() -> GoldenFiles.in("golden/sound").assertCover())
                .hasMessageContaining("nothing would be checked");
    }

    @Test
    void misnamed_files_and_folders_without_files_are_refused() {
        assertThatThrownBy(() -> GoldenFiles.in("golden/misnamed")).hasMessageContaining("[Heap_Grown.json]");
        assertThatThrownBy(() -> GoldenFiles.in("golden/nowhere")).hasMessageContaining("no golden file");
    }

    @Test
    void a_folder_inside_a_jar_is_read_as_well(@TempDir Path folder) throws IOException {
        Path jar = folder.resolve("contract.jar");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar))) {
            zip.putNextEntry(new ZipEntry("packed/"));
            zip.putNextEntry(new ZipEntry("packed/heap.grown.1.json"));
            zip.write("{\"mm\":1}".getBytes(StandardCharsets.UTF_8));
        }
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, before)) {
            thread.setContextClassLoader(loader);

            assertThat(GoldenFiles.in("packed")
                            .of("heap.grown")
                            .getFirst()
                            .json()
                            .get("mm")
                            .asLong())
                    .isEqualTo(1);
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    @Test
    void json_is_compared_by_meaning() {
        assertThatCode(() -> GoldenJson.assertSame("reel", "{\"a\":1,\"b\":[1.50,2]}", "{\"b\": [1.5, 2.0], \"a\": 1}"))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> GoldenJson.assertSame("reel", "{\"a\":[1,2]}", "{\"a\":[2,1]}"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("reel: the JSON differs")
                .hasMessageContaining("[2,1]");
        assertThatThrownBy(() -> GoldenJson.assertSame("reel", "{\"a\":null}", "{}"))
                .hasMessageContaining("differs");
        assertThatThrownBy(() -> GoldenJson.assertSame("reel", "{\"a\":1}", "{\"a\":\"1\"}"))
                .hasMessageContaining("differs");
        assertThatThrownBy(() -> GoldenJson.assertSame("reel", "{", "{}"))
                .hasMessageContaining("reel, expected is not JSON");
    }
}
