package org.firnline.app.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.firnline.logs.text.ByteSource;

/** A file named on the command line. */
final class GivenFile {
  private GivenFile() {}

  /** The bytes of a file that need not fit in memory. */
  static ByteSource source(Path file) {
    mustExist(file);
    return () -> Files.newInputStream(file);
  }

  static void mustExist(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new BadInput(file + ": there is no such file. Check the name and the folder.");
    }
    if (!Files.isReadable(file)) {
      throw new BadInput(file + ": cannot be read. Check who may read it.");
    }
  }

  static byte[] bytes(Path file) {
    mustExist(file);
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new BadInput(file + ": cannot be read (" + e.getMessage() + ").");
    }
  }

  static String text(Path file) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes(file))).toString();
    } catch (CharacterCodingException e) {
      throw new BadInput(file + ": is not UTF-8 text. Save it as UTF-8.");
    }
  }

  static String name(Path file) {
    Path name = file.getFileName();
    return name == null ? file.toString() : name.toString();
  }
}
