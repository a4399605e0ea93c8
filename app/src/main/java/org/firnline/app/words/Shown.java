package org.firnline.app.words;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.firnline.units.Figures;
import org.firnline.units.Unit;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;

/** Numbers and times as people read them here. Templates call it {@code shown}. */
@Component("shown")
public class Shown {
  /** Stands between a number and its unit. */
  private static final String THIN = Quantities.THIN;

  private static final Unit CELSIUS = Unit.parse("°C");
  private static final int HOUR_MIN = 60;
  private static final double WHOLE_HOURS_S = 10 * 3_600;
  private static final int LONG_AGO_DAYS = 30;

  private final ZoneId zone;
  private final Words words;
  private final DateTimeFormatter clock;
  private final DateTimeFormatter day;
  private final DateTimeFormatter dayAndClock;
  private final DateTimeFormatter longAgo;
  private final DateTimeFormatter yearDayAndClock;

  /** Shows times of a zone in English. */
  @Autowired
  public Shown(ZoneId zone) {
    this(zone, Words.in(Locale.ENGLISH));
  }

  public Shown(ZoneId zone, Words words) {
    this.zone = zone;
    this.words = words;
    this.clock = format("HH:mm", words);
    this.day = format("EEE d MMM", words);
    this.dayAndClock = format("EEE d MMM HH:mm", words);
    this.longAgo = format("d MMM yyyy", words);
    this.yearDayAndClock = format("EEE d MMM yyyy HH:mm", words);
  }

  /** The zone in which times are shown. */
  public ZoneId zone() {
    return zone;
  }

  /** "14:32". */
  public String clock(Instant at) {
    return clock.format(local(at));
  }

  /** "Wed 5 Mar". */
  public String day(Instant at) {
    return day.format(local(at));
  }

  /** "Wed 5 Mar 14:32". */
  public String moment(Instant at) {
    return dayAndClock.format(local(at));
  }

  /** "Wed 5 Mar 2025 14:32". */
  public String fullMoment(Instant at) {
    return yearDayAndClock.format(local(at));
  }

  /** "14:32 to 17:20", or with days where they differ. */
  public String span(Instant from, Instant to) {
    boolean sameDay = local(from).toLocalDate().equals(local(to).toLocalDate());
    return words.say("shown.span", moment(from), sameDay ? clock(to) : moment(to));
  }

  /** The same, for times already read by the clock here. */
  public String localSpan(LocalDateTime from, LocalDateTime to) {
    boolean sameDay = from.toLocalDate().equals(to.toLocalDate());
    return words.say("shown.span", localMoment(from), sameDay ? clock.format(to) : localMoment(to));
  }

  /** "Wed 5 Mar 14:32". */
  public String localMoment(LocalDateTime at) {
    return dayAndClock.format(at);
  }

  /** The calendar day here. */
  public LocalDate date(Instant at) {
    return local(at).toLocalDate();
  }

  /** "28 h 20 min", "12 min", "40 s"; "never" for what does not come. */
  public static String duration(double seconds) {
    if (Double.isInfinite(seconds)) {
      return "never";
    }
    if (seconds < HOUR_MIN) {
      return Math.round(seconds) + THIN + "s";
    }
    long minutes = Math.round(seconds / 60);
    if (minutes < HOUR_MIN) {
      return minutes + THIN + "min";
    }
    long rest = minutes % 60;
    String hours = minutes / 60 + THIN + "h";
    return minutes >= 48 * 60 || rest == 0 ? hoursOnly(minutes) : hours + " " + rest + THIN + "min";
  }

  private static String hoursOnly(long minutes) {
    return Math.round(minutes / 60.0) + THIN + "h";
  }

  /** "45 to 71 h", "4 h 20 min to 6 h 10 min"; whole hours where both are long. */
  public String durations(double low_s, double high_s) {
    if (!Double.isFinite(high_s)) {
      return words.say("shown.open", duration(low_s));
    }
    return low_s >= WHOLE_HOURS_S
        ? words.say(
            "shown.span",
            String.valueOf(Math.round(low_s / 3_600)),
            Math.round(high_s / 3_600) + THIN + "h")
        : words.say("shown.span", duration(low_s), duration(high_s));
  }

  /** "3 h 10 min ago", coarser the longer it is ago. */
  public String ago(Instant at, Instant now) {
    Duration past = Duration.between(at, now);
    if (past.toDays() >= LONG_AGO_DAYS) {
      return longAgo.format(local(at));
    }
    if (past.toDays() >= 2) {
      return words.say("shown.days-ago", past.toDays());
    }
    return words.say("shown.ago", duration((double) Math.max(0, past.toSeconds())));
  }

  /** "−31.0 °C". */
  public String celsius(double kelvin) {
    return celsiusFigure(kelvin) + THIN + "°C";
  }

  /** "−31.0". */
  public String celsiusFigure(double kelvin) {
    return Figures.decimals(CELSIUS.fromSi(kelvin), 1);
  }

  /** "8.0 Pa". */
  public String pascal(double pressure_Pa) {
    return Figures.significant(pressure_Pa, 2) + THIN + "Pa";
  }

  /** "1.2 MB". */
  public String size(long bytes) {
    if (bytes < 1_000) {
      return bytes + THIN + "B";
    }
    return bytes < 1_000_000
        ? Figures.significant(bytes / 1e3, 3) + THIN + "kB"
        : Figures.significant(bytes / 1e6, 3) + THIN + "MB";
  }

  private ZonedDateTime local(Instant at) {
    return at.atZone(zone);
  }

  /** "20 to 31 h": from one text to another. */
  public String between(String from, String to) {
    return words.say("shown.span", from, to);
  }

  /** Words for times in a log whose start nobody knows. */
  String sinceStart(String duration) {
    return words.say("shown.after", duration);
  }

  String sinceStart(String from, String to) {
    return words.say("shown.after-span", from, to);
  }

  private static DateTimeFormatter format(String pattern, Words words) {
    return DateTimeFormatter.ofPattern(pattern, words.locale());
  }
}
