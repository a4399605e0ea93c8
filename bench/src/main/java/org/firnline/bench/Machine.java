package org.firnline.bench;

import java.lang.management.ManagementFactory;
import java.util.Locale;

/**
 * Where a measurement was made.
 *
 * @param cores processors that Java sees
 * @param java name and version of the Java machine
 * @param system name and processor family of the operating system
 * @param load processes that wanted a core in the minute before, as the system counts them;
 *     negative where it does not
 */
record Machine(int cores, String java, String system, double load) {

  /** This machine, now. */
  static Machine here() {
    var system = ManagementFactory.getOperatingSystemMXBean();
    return new Machine(
        system.getAvailableProcessors(),
        System.getProperty("java.vm.name") + " " + Runtime.version(),
        system.getName() + " " + system.getArch(),
        system.getSystemLoadAverage());
  }

  /** One line about it. */
  String described() {
    String words = cores + " cores, " + java + ", " + system;
    return load < 0 ? words : words + String.format(Locale.ROOT, ", load before %.1f", load);
  }
}
