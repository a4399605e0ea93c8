package org.firnline.app.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be put with a run, and how a photo is made small. */
class AttachmentsOfARunTest {

  /** A picture, red at its top left corner. */
  private static byte[] photo(String format, int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, width, height);
    pen.setColor(Color.RED);
    pen.fillRect(0, 0, width / 2, height / 2);
    pen.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, format, bytes);
    return bytes.toByteArray();
  }

  /** The head of a JPEG with an EXIF block (EXIF 2.3, section 4.5.4) that says one orientation. */
  private static byte[] exif(int orientation, boolean little) {
    ByteBuffer block = ByteBuffer.allocate(64);
    block.putShort((short) 0xffd8).putShort((short) 0xffe0).putShort((short) 4);
    block.putShort((short) 0).putShort((short) 0xffe1).putShort((short) 34);
    block.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    block.put((little ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
    block.order(little ? java.nio.ByteOrder.LITTLE_ENDIAN : java.nio.ByteOrder.BIG_ENDIAN);
    block.putShort((short) 42).putInt(8).putShort((short) 1);
    block.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation);
    return block.array();
  }

  @Nested
  class Kinds {
    @Test
    void areToldByTheFirstBytesNotByTheName() throws IOException {
      assertThat(AttachmentKind.of(photo("jpg", 8, 8), "x.txt")).contains(AttachmentKind.JPEG);
      assertThat(AttachmentKind.of(photo("png", 8, 8), "x")).contains(AttachmentKind.PNG);
      assertThat(AttachmentKind.of(photo("gif", 8, 8), "x")).contains(AttachmentKind.GIF);
    }

    @ParameterizedTest
    @CsvSource({
      "RIFF....WEBPVP8,a.webp,WEBP",
      "....ftypheic,a.heic,HEIC",
      "....ftypmif1,a.heic,HEIC",
      "%PDF-1.7,assay.pdf,PDF",
      "water 1.2 %,karl.txt,TEXT",
      "a;b,result.csv,TEXT"
    })
    void areThoseALaboratoryHas(String head, String name, AttachmentKind kind) {
      assertThat(AttachmentKind.of(head.getBytes(StandardCharsets.US_ASCII), name)).contains(kind);
    }

    @Test
    void ofWorkbooksAreZipFilesWithTheEndingOfOne() {
      byte[] zip = {'P', 'K', 3, 4, 0};
      assertThat(AttachmentKind.of(zip, "a.XLSX")).contains(AttachmentKind.OFFICE);
      assertThat(AttachmentKind.of(zip, "a.zip")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"page.html", "drawing.svg", "run.exe", "script.js", "noending"})
    void thatABrowserOrASystemWouldRunAreNotTaken(String name) {
      byte[] head = "<svg xmlns='http://www.w3.org/2000/svg'>".getBytes(StandardCharsets.UTF_8);
      assertThat(AttachmentKind.of(head, name)).isEmpty();
    }

    @Test
    void ofTextHoldNoZeroByte() {
      assertThat(AttachmentKind.of(new byte[] {'a', 0, 'b'}, "a.txt")).isEmpty();
    }
  }

  @Nested
  class SmallPictures {
    @Test
    void fitTheirFrameAndKeepTheirShape() throws IOException {
      BufferedImage small = small(photo("jpg", 3_000, 1_000), 1);
      assertThat(small.getWidth()).isEqualTo(Thumbnail.SIDE);
      assertThat(small.getHeight()).isEqualTo(Thumbnail.SIDE / 3);
    }

    @Test
    void ofSmallPhotosAreNotEnlarged() throws IOException {
      assertThat(small(photo("png", 40, 20), 1).getWidth()).isEqualTo(40);
    }

    /** Where the camera's top left corner goes for each orientation (EXIF 2.3, tag 0x0112). */
    @ParameterizedTest
    @CsvSource({
      "1,true,true", "2,true,false", "3,false,false", "4,false,true",
      "5,true,true", "6,true,false", "7,false,false", "8,false,true"
    })
    void standUpright(int orientation, boolean top, boolean left) throws IOException {
      BufferedImage small = small(photo("png", 80, 40), orientation);
      assertThat(small.getWidth()).isEqualTo(orientation < 5 ? 80 : 40);
      int x = left ? 4 : small.getWidth() - 5;
      int y = top ? 4 : small.getHeight() - 5;
      assertThat(new Color(small.getRGB(x, y)).getGreen()).isLessThan(90);
      int otherX = small.getWidth() - 1 - x;
      int otherY = small.getHeight() - 1 - y;
      assertThat(new Color(small.getRGB(otherX, otherY)).getGreen()).isGreaterThan(200);
    }

    @Test
    void areNotMadeOfBrokenOrMonstrousPictures() throws IOException {
      byte[] broken = photo("png", 40, 20);
      java.util.Arrays.fill(broken, 40, broken.length, (byte) 7);
      assertThat(Thumbnail.of(new ByteArrayInputStream(broken), 1)).isEmpty();
      assertThat(Thumbnail.of(new ByteArrayInputStream(new byte[] {1, 2, 3}), 1)).isEmpty();
      byte[] monstrous = photo("png", 40, 20);
      ByteBuffer.wrap(monstrous).putInt(16, 1_000_000).putInt(20, 1_000_000);
      assertThat(Thumbnail.of(new ByteArrayInputStream(monstrous), 1)).isEmpty();
    }

    private BufferedImage small(byte[] photo, int orientation) throws IOException {
      Optional<byte[]> jpeg = Thumbnail.of(new ByteArrayInputStream(photo), orientation);
      return ImageIO.read(new ByteArrayInputStream(jpeg.orElseThrow()));
    }
  }

  @Nested
  class Orientations {
    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6, 8})
    void areReadInBothByteOrders(int orientation) {
      assertThat(PhotoOrientation.of(exif(orientation, true))).isEqualTo(orientation);
      assertThat(PhotoOrientation.of(exif(orientation, false))).isEqualTo(orientation);
    }

    @Test
    void areUprightWhereNothingOrNonsenseIsSaid() throws IOException {
      assertThat(PhotoOrientation.of(photo("jpg", 8, 8))).isEqualTo(1);
      assertThat(PhotoOrientation.of(photo("png", 8, 8))).isEqualTo(1);
      assertThat(PhotoOrientation.of(exif(77, true))).isEqualTo(1);
      assertThat(PhotoOrientation.of(new byte[0])).isEqualTo(1);
      assertThat(PhotoOrientation.of(java.util.Arrays.copyOf(exif(6, true), 20))).isEqualTo(1);
    }
  }
}
