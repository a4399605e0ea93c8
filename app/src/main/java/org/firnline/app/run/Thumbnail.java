package org.firnline.app.run;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * Makes a small picture of a photo. Only every n-th pixel of a large one is ever held in memory,
 * and a picture that claims to be larger than any camera's is not opened.
 */
final class Thumbnail {
  /** Longer side of the small picture, pixels. */
  static final int SIDE = 480;

  private static final long MOST_PIXELS = 200_000_000;
  private static final int MOST_SIDE = 30_000;

  private Thumbnail() {}

  /**
   * The small picture as JPEG; empty where the bytes are no picture that can be read.
   *
   * @param orientation how the camera was held, 1 to 8 as in EXIF; 1 is upright
   */
  static Optional<byte[]> of(InputStream photo, int orientation) throws IOException {
    try (ImageInputStream input = ImageIO.createImageInputStream(photo)) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(input);
      if (!readers.hasNext()) {
        return Optional.empty();
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(input, true, true);
        return read(reader).map(image -> upright(image, orientation)).map(Thumbnail::jpeg);
      } catch (IOException | RuntimeException e) {
        // Broken pictures make readers throw all sorts of things; such a file stays a file.
        return Optional.empty();
      } finally {
        reader.dispose();
      }
    }
  }

  private static Optional<BufferedImage> read(ImageReader reader) throws IOException {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    if (width > MOST_SIDE || height > MOST_SIDE || (long) width * height > MOST_PIXELS) {
      return Optional.empty();
    }
    ImageReadParam every = reader.getDefaultReadParam();
    int step = Math.max(1, Math.max(width, height) / (2 * SIDE));
    every.setSourceSubsampling(step, step, 0, 0);
    return Optional.of(reader.read(0, every));
  }

  private static BufferedImage upright(BufferedImage image, int orientation) {
    double scale = Math.min(1, SIDE / (double) Math.max(image.getWidth(), image.getHeight()));
    int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
    int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
    boolean turned = orientation >= 5;
    BufferedImage small =
        new BufferedImage(
            turned ? height : width, turned ? width : height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = small.createGraphics();
    pen.setColor(java.awt.Color.WHITE);
    pen.fillRect(0, 0, small.getWidth(), small.getHeight());
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.transform(turn(orientation, width, height));
    pen.drawImage(image, 0, 0, width, height, null);
    pen.dispose();
    return small;
  }

  /** The eight ways a camera can be held (EXIF 2.3, tag 0x0112). */
  private static AffineTransform turn(int orientation, int width, int height) {
    return switch (orientation) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
      default -> new AffineTransform();
    };
  }

  private static byte[] jpeg(BufferedImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpg", bytes);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException("memory cannot be written", e);
    }
    return bytes.toByteArray();
  }
}
