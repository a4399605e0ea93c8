package org.firnline.app.plan;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.firnline.app.planfile.DesignedPlan;
import org.firnline.app.words.Words;
import org.firnline.evidence.Band;
import org.firnline.lab.RecipeStep;
import org.firnline.units.Figures;
import org.firnline.units.Unit;
import org.springframework.stereotype.Component;

/** The recipe as a table for spreadsheets, and its end as a calendar entry. */
@Component
class RecipeFiles {
  private static final Unit CELSIUS = Unit.parse("°C");
  private static final double MINUTE_S = 60;
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT);
  private static final String END = "\r\n";

  private final ZoneId zone;
  private final Clock clock;

  RecipeFiles(ZoneId zone, Clock clock) {
    this.zone = zone;
    this.clock = clock;
  }

  /** One line a step; empty pressures where the dryer pumps without control. */
  String csv(DesignedPlan plan) {
    StringBuilder text =
        new StringBuilder("step,phase,shelf_degC,ramp_K_per_min,pressure_Pa,hold_min");
    text.append(END);
    int number = 1;
    for (RecipeStep step :
        plan.first().recipe().map(recipe -> recipe.steps()).orElse(java.util.List.of())) {
      text.append(number++)
          .append(',')
          .append(step.phase().label())
          .append(',')
          .append(plain(CELSIUS.fromSi(step.shelfTarget()), 1))
          .append(',')
          .append(plain(step.ramp() * MINUTE_S, 2))
          .append(',')
          .append(step.pressure().isPresent() ? plain(step.pressure().getAsDouble(), 1) : "")
          .append(',')
          .append(plain(step.hold() / MINUTE_S, 0))
          .append(END);
    }
    return text.toString();
  }

  /** The band of the finish as one event of a calendar (RFC 5545). */
  String calendar(DesignedPlan plan, Words words) {
    Band last = plan.first().outlook().lastTime_s();
    LocalDateTime start = plan.input().start().orElseGet(() -> LocalDateTime.now(clock));
    String from = utc(start.plusSeconds(Math.round(last.low())));
    String to = utc(start.plusSeconds(Math.round(last.high())));
    String title = escaped(words.say("design.calendar", plan.input().title()));
    return String.join(
            END,
            "BEGIN:VCALENDAR",
            "VERSION:2.0",
            "PRODID:-//Firnline//plan//EN",
            "BEGIN:VEVENT",
            "UID:"
                + from
                + "-"
                + Integer.toUnsignedString(plan.input().title().hashCode())
                + "@firnline",
            "DTSTAMP:" + STAMP.format(clock.instant().atOffset(ZoneOffset.UTC)),
            "DTSTART:" + from,
            "DTEND:" + to,
            "SUMMARY:" + title,
            "DESCRIPTION:" + escaped(words.say("design.calendar.text")),
            "END:VEVENT",
            "END:VCALENDAR")
        + END;
  }

  private String utc(LocalDateTime time) {
    return STAMP.format(time.atZone(zone).toInstant().atOffset(ZoneOffset.UTC));
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\\\")
        .replace(";", "\\;")
        .replace(",", "\\,")
        .replaceAll("\\R", "\\\\n");
  }

  private static String plain(double value, int decimals) {
    return Figures.decimals(value, decimals).replace('−', '-');
  }
}
