package org.firnline.planning.forecast;

import org.firnline.evidence.Band;

/**
 * What a program does to one item of a load. Bands hold nine chances in ten.
 *
 * @param name of its product
 * @param owner who answers for it
 * @param typicalTime_s until a typical vessel is dry
 * @param lastTime_s until its last vessel is dry
 * @param warmest_K greatest temperature of its warmest vessel
 * @param overheatingRisk share of the drawn runs in which that exceeds its critical temperature
 */
public record ItemForecast(
    String name,
    String owner,
    Band typicalTime_s,
    Band lastTime_s,
    Band warmest_K,
    double overheatingRisk) {}
