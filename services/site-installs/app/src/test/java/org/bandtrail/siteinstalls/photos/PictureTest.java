package org.bandtrail.siteinstalls.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureTest {
    private static BufferedImage read(Picture picture) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(picture.jpeg()));
    }

    private static boolean isRed(BufferedImage image, double across, double down) {
        Color colour = new Color(
                image.getRGB((int) (across * (image.getWidth() - 1)), (int) (down * (image.getHeight() - 1))));
        return colour.getRed() > 200 && colour.getGreen() < 80;
    }

    @Test
    void a_large_picture_is_stored_as_jpeg_with_its_longest_side_at_most_1600() throws IOException {
        Picture picture = Picture.of(SamplePictures.drawn("png", 4000, 3000));
        assertThat(picture.width()).isEqualTo(1600);
        assertThat(picture.height()).isEqualTo(1200);
        assertThat(picture.jpeg()).startsWith(0xFF, 0xD8);
        assertThat(read(picture).getWidth()).isEqualTo(1600);
    }

    @Test
    void a_small_picture_keeps_its_size_and_the_same_file_gives_the_same_identity() throws IOException {
        byte[] file = SamplePictures.drawn("jpeg", 80, 60);
        Picture picture = Picture.of(file);
        assertThat(picture.width()).isEqualTo(80);
        assertThat(PhotoId.of(picture.jpeg()))
                .isEqualTo(PhotoId.of(Picture.of(file).jpeg()));
    }

    /** Where the camera's left top corner lies after turning; from Exif 2.3, orientation (from memory). */
    @ParameterizedTest
    @CsvSource({
        "1, 0.2, 0.2, 80", "2, 0.8, 0.2, 80", "3, 0.8, 0.8, 80", "4, 0.2, 0.8, 80",
        "5, 0.2, 0.2, 60", "6, 0.8, 0.2, 60", "7, 0.8, 0.8, 60", "8, 0.2, 0.8, 60"
    })
    void a_picture_is_stored_as_it_was_seen_and_without_metadata(int orientation, double across, double down, int width)
            throws IOException {
        Picture picture = Picture.of(SamplePictures.turned(orientation, 80, 60));
        assertThat(picture.width()).isEqualTo(width);
        assertThat(isRed(read(picture), across, down)).isTrue();
        assertThat(isRed(read(picture), 1 - across, 1 - down)).isFalse();
        assertThat(new String(picture.jpeg(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
    }

    @Test
    void what_is_no_picture_is_refused() throws IOException {
        assertThatThrownBy(() -> Picture.of("<svg/>".getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(PhotoRefused.NoPicture.class)
                .hasMessageContaining("neither JPEG nor PNG");
        byte[] half = Arrays.copyOf(SamplePictures.drawn("png", 80, 60), 50);
        assertThatThrownBy(() -> Picture.of(half)).isInstanceOf(PhotoRefused.NoPicture.class);
        assertThatThrownBy(() -> Picture.of(new byte[(int) Picture.MOST_BYTES + 1]))
                .isInstanceOf(PhotoRefused.TooLarge.class);
    }

    @Test
    void a_small_file_that_unfolds_to_very_many_pixels_is_refused_before_it_is_decoded() throws IOException {
        byte[] bomb = SamplePictures.drawn("png", 10, 10);
        // Width and height stand in the first chunk of a PNG, after 8 + 8 bytes; the checksum is not asked for.
        ByteBuffer.wrap(bomb).putInt(16, 60_000).putInt(20, 60_000);
        assertThatThrownBy(() -> Picture.of(bomb))
                .isInstanceOf(PhotoRefused.TooManyPixels.class)
                .hasMessageContaining("60000 x 60000");
    }

    @Test
    void damaged_metadata_counts_as_upright() throws IOException {
        byte[] file = SamplePictures.turned(6, 80, 60);
        ByteBuffer.wrap(file).putInt(2 + 14, Integer.MAX_VALUE); // the directory lies beyond the file
        assertThat(Picture.of(file).width()).isEqualTo(80);
        assertThat(Picture.of(SamplePictures.turned(99, 80, 60)).width()).isEqualTo(80);
    }
}
