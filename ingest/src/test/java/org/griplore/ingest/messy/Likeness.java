package org.griplore.ingest.messy;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Unit;

/** When a figure or a detail that was read is the one that was stated. */
final class Likeness {
  /** Figures are printed with five digits at most; a conversion may cost the last bits. */
  private static final double RELATIVE = 2e-6;

  private Likeness() {}

  /** The read figure that says what was stated, the one of the likest test; null when none. */
  static ReadBack.Read best(Truth.Stated stated, Truth.Test test, List<ReadBack.Read> open) {
    return open.stream()
        .filter(read -> same(stated, read))
        .max(Comparator.comparingLong(read -> likeness(stated, test, read)))
        .orElse(null);
  }

  private static long likeness(Truth.Stated stated, Truth.Test test, ReadBack.Read read) {
    return details(test, stated).entrySet().stream()
        .filter(detail -> same(detail.getKey(), detail.getValue(), found(detail.getKey(), read)))
        .count();
  }

  private static boolean same(Truth.Stated stated, ReadBack.Read read) {
    return stated.isOf(read.model())
        && stated.discipline().equals(read.discipline())
        && stated.place() == read.place()
        && stated.figures().stream().anyMatch(figure -> same(figure, read))
        && stated.marks().getOrDefault("state", "new").equals(read.marks().get("state"))
        && (stated.marks().get("window") == null
            || read.marks().get("window") == null
            || stated.marks().get("window").equals(read.marks().get("window")));
  }

  private static boolean same(Truth.Figure stated, ReadBack.Read read) {
    if (read.place()) {
      return stated.value() == read.value();
    }
    Unit unit = stated.unit();
    if (unit != read.unit() && !unit.convertsTo(read.unit())) {
      return false;
    }
    double value = unit.convert(stated.value(), read.unit());
    return Math.abs(value - read.value()) <= RELATIVE * Math.max(1e-3, Math.abs(value));
  }

  /** The details that hold for a stated figure: its own before its test's, its window and kind. */
  static Map<String, String> details(Truth.Test test, Truth.Stated stated) {
    Map<String, String> details = new LinkedHashMap<>(test.details());
    details.putAll(stated.own());
    details.putAll(stated.marks());
    details.remove("state");
    return details;
  }

  /** A detail of a read figure as text; null when it is not known. */
  static String found(String topic, ReadBack.Read read) {
    if (topic.equals("window") || topic.equals("kind")) {
      return read.marks().get(topic);
    }
    return topic.equals("size") && read.size() != null ? read.size() : found(topic, read.test());
  }

  /** A detail of a read test as text; null when it is not known. */
  static String found(String topic, Details test) {
    Object found =
        switch (topic) {
          case "title" -> test.title();
          case "date" -> test.date();
          case "source_kind" -> test.kind() == null ? null : test.kind().key();
          case "source" -> test.publication();
          case "size" -> test.size();
          case "season" -> test.season() == null ? null : test.season().key();
          case "vehicle" -> test.vehicle();
          case "mass" -> test.vehicleMassKg();
          case "venue" -> test.venue();
          case "surface" -> test.surfaceC();
          case "air" -> test.airC();
          default -> throw new IllegalArgumentException("no such detail: " + topic);
        };
    return found == null ? null : found.toString();
  }

  /** Whether a detail that was read says one of what was stated. */
  static boolean same(String topic, String stated, String found) {
    if (found == null) {
      return false;
    }
    for (String way : stated.split(" or ")) {
      boolean same =
          switch (topic) {
            case "title", "vehicle", "venue", "source" ->
                NameKey.of(found).contains(NameKey.of(way));
            case "mass", "surface", "air" -> Double.parseDouble(way) == Double.parseDouble(found);
            default -> squeezed(way).equals(squeezed(found));
          };
      if (same) {
        return true;
      }
    }
    return false;
  }

  private static String squeezed(String text) {
    return text.replace(" ", "").toUpperCase(Locale.ROOT);
  }
}
