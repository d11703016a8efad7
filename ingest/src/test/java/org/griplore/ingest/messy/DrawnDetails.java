package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** The details of a drawn test where its look puts them. */
final class DrawnDetails {
  private final List<List<String>> above = new ArrayList<>();
  private final List<List<String>> below = new ArrayList<>();
  private final Map<String, String> stated = new LinkedHashMap<>();

  DrawnDetails(DrawnTest test, DrawnLook look, Random random) {
    Map<String, String> all = test.details();
    DrawnWords words = look.words();
    switch (look.heading()) {
      case NONE -> {}
      case TITLE -> {
        String year = all.get("date").substring(0, 4);
        String size = all.get("size").substring(0, 10);
        above.add(
            List.of(
                words.say("test", random)
                    + " "
                    + year
                    + ": "
                    + words.say(all.get("season"), random)
                    + ", "
                    + size));
        above.add(List.of());
        stated.put("date", year);
        stated.put("size", size);
        stated.put("season", all.get("season"));
      }
      case ONE_CELL, TWO_CELLS, BELOW -> {
        List<List<String>> lines = look.heading() == DrawnLook.Heading.BELOW ? below : above;
        if (lines == below) {
          lines.add(List.of());
        }
        for (Map.Entry<String, String> detail : all.entrySet()) {
          if (random.nextInt(3) > 0) {
            String label = words.say(detail.getKey(), random);
            String text = text(detail.getKey(), detail.getValue(), words, random);
            lines.add(
                look.heading() == DrawnLook.Heading.TWO_CELLS
                    ? List.of(label, text)
                    : List.of(label + ": " + text));
            stated.put(detail.getKey(), detail.getValue());
          }
        }
        if (lines == above) {
          lines.add(List.of());
        }
      }
    }
  }

  private static String text(String topic, String value, DrawnWords words, Random random) {
    return switch (topic) {
      case "date" -> words.day(value);
      case "season" -> words.say(value, random);
      default -> value;
    };
  }

  List<List<String>> above() {
    return above;
  }

  List<List<String>> below() {
    return below;
  }

  /** What they say, by topic. */
  Map<String, String> stated() {
    return stated;
  }
}
