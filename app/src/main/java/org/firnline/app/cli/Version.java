package org.firnline.app.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IVersionProvider;

/** The version as packed into the jar. */
final class Version implements IVersionProvider {
  Version() {}

  @Override
  public String[] getVersion() {
    @Nullable String packed = Version.class.getPackage().getImplementationVersion();
    return new String[] {"Firnline " + (packed == null ? "(not packed)" : packed)};
  }
}
