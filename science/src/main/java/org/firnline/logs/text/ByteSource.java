package org.firnline.logs.text;

import java.io.IOException;
import java.io.InputStream;

/** A file's bytes, openable as often as needed, so that large files need not sit in memory. */
@FunctionalInterface
public interface ByteSource {
  /** A fresh stream at the first byte. */
  InputStream open() throws IOException;
}
