package org.bandtrail.local.doors;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** A multipart form (RFC 7578) with files, fields and JSON parts, built in memory; for files of a few megabytes. */
public final class FormData {
    private static final String BOUNDARY = "bandtrail-demo-season-7d1f2c";
    private final ByteArrayOutputStream content = new ByteArrayOutputStream();

    /** Adds a file part. */
    public FormData file(String name, String fileName, byte[] bytes) {
        header("name=\"" + name + "\"; filename=\"" + fileName + "\"", "text/csv");
        content.writeBytes(bytes);
        text("\r\n");
        return this;
    }

    /** Adds a PNG picture. */
    public FormData png(String name, String fileName, byte[] bytes) {
        header("name=\"" + name + "\"; filename=\"" + fileName + "\"", "image/png");
        content.writeBytes(bytes);
        text("\r\n");
        return this;
    }

    /** Adds a field of text. */
    public FormData field(String name, String value) {
        header("name=\"" + name + "\"", "text/plain; charset=UTF-8");
        text(value + "\r\n");
        return this;
    }

    /** Adds a JSON part. */
    public FormData json(String name, String json) {
        header("name=\"" + name + "\"", "application/json");
        text(json + "\r\n");
        return this;
    }

    private void header(String disposition, String contentType) {
        text("--" + BOUNDARY + "\r\nContent-Disposition: form-data; " + disposition + "\r\nContent-Type: " + contentType
                + "\r\n\r\n");
    }

    private void text(String text) {
        content.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    }

    public String contentType() {
        return "multipart/form-data; boundary=" + BOUNDARY;
    }

    /** The whole body, closed by the last boundary. */
    public byte[] bytes() {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(content.toByteArray());
        whole.writeBytes(("--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return whole.toByteArray();
    }
}
