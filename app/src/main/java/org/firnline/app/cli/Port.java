package org.firnline.app.cli;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;

/** Which port to listen on. */
final class Port {
  /** Listened on when nothing else is said. */
  static final int USUAL = 8017;

  private static final int ANY_FREE = 0;
  private static final int HIGHEST = 65_535;

  private Port() {}

  /** The wanted port, or "any free one" when somebody else listens there. */
  static int orAnyFree(int wanted) {
    return isFree(valid(wanted)) ? wanted : ANY_FREE;
  }

  /** Refuses a taken port. */
  static void mustBeFree(int wanted) {
    if (!isFree(valid(wanted))) {
      throw new BadInput(
          "Port " + wanted + " is taken by another program. Choose another one with --port.");
    }
  }

  private static int valid(int wanted) {
    if (wanted < 0 || wanted > HIGHEST) {
      throw new BadInput("Port " + wanted + " does not exist; use 1 to " + HIGHEST + ".");
    }
    return wanted;
  }

  private static boolean isFree(int port) {
    try (ServerSocket socket = new ServerSocket()) {
      socket.setReuseAddress(true);
      socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
