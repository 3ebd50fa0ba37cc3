package org.bandtrail.local.season;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import javax.imageio.ImageIO;

/** Draws a trunk with its bark and a tag, in the place of a photograph: the season is invented, and so is this tree. */
final class TrunkDrawing {
    private static final int WIDE = 480;
    private static final int HIGH = 640;
    private static final int FURROWS = 26;
    private static final Color SKY = new Color(0xDDE6DC);
    private static final Color GRASS = new Color(0x8FA36B);
    private static final Color BARK = new Color(0x9A8F80);
    private static final Color FURROW = new Color(0x6E6458);
    private static final Color TAG = new Color(0xE8E2CF);

    private TrunkDrawing() {}

    /** A PNG of a few kilobytes; the same tree always gives the same drawing. */
    static byte[] png(String tree) {
        BufferedImage picture = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Random chance = new Random(tree.hashCode()); // seeded: the demo is the same everywhere
        ground(pen);
        trunk(pen, 90 + chance.nextInt(50), chance);
        pen.dispose();
        return encoded(picture);
    }

    private static void ground(Graphics2D pen) {
        pen.setColor(SKY);
        pen.fillRect(0, 0, WIDE, HIGH);
        pen.setColor(GRASS);
        pen.fill(new Ellipse2D.Double(-WIDE * 0.3, HIGH * 0.85, WIDE * 1.6, HIGH * 0.4));
    }

    private static void trunk(Graphics2D pen, int half, Random chance) {
        double middle = WIDE / 2.0;
        Path2D outline = new Path2D.Double();
        outline.moveTo(middle - half * 0.8, 0);
        outline.curveTo(middle - half, HIGH * 0.5, middle - half, HIGH * 0.8, middle - half * 1.3, HIGH * 0.95);
        outline.lineTo(middle + half * 1.3, HIGH * 0.95);
        outline.curveTo(middle + half, HIGH * 0.8, middle + half, HIGH * 0.5, middle + half * 0.8, 0);
        outline.closePath();
        pen.setColor(BARK);
        pen.fill(outline);
        pen.clip(outline);
        pen.setColor(FURROW);
        for (int i = 0; i < FURROWS; i++) {
            furrow(pen, middle - half + chance.nextInt(2 * half), chance);
        }
        pen.setColor(TAG);
        pen.fillRoundRect((int) middle - 16, HIGH * 2 / 5, 32, 40, 8, 8);
        pen.setColor(FURROW);
        pen.fillOval((int) middle - 3, HIGH * 2 / 5 + 5, 6, 6);
    }

    private static void furrow(Graphics2D pen, double across, Random chance) {
        double from = chance.nextInt(HIGH);
        double length = 60 + chance.nextInt(160);
        double bend = chance.nextInt(17) - 8.0;
        pen.setStroke(new BasicStroke(1.5f + chance.nextInt(3), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D line = new Path2D.Double();
        line.moveTo(across, from);
        line.quadTo(across + bend, from + length / 2, across, from + length);
        pen.draw(line);
    }

    private static byte[] encoded(BufferedImage picture) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture, "png", bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException("A picture in memory cannot fail to be written.", impossible);
        }
        return bytes.toByteArray();
    }
}
