package org.firnline.app;

/** Entry point of the {@code firnline} command. */
public final class Firnline {
  private Firnline() {}

  public static void main(String[] arguments) {}
}
