package org.firnline.bench;

import org.openjdk.jmh.annotations.Threads;

/** The hot spot of window map and risk bands on both cores of a small machine. */
@Question(
    asks = "How many vials at constant settings can two threads dry?",
    counts = "trajectories",
    baseline = "the same integrator on the same balance as for one core, on two threads as well",
    trap =
        "Two threads on both sides, which share nothing but the table of ice; on a machine with"
            + " one idle core this row says no more than the one before it.")
@Threads(2)
public class TwoCores extends WindowTrajectory {}
