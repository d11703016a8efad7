package org.griplore.ingest.messy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** The words of a language for headings and labels, with ways to say each. */
record DrawnWords(String language, Map<String, List<String>> ways) {
  private static final Path FILE =
      Path.of("src/test/resources/org/griplore/ingest/messy/drawn/words.txt");

  static List<DrawnWords> all() {
    Map<String, DrawnWords> languages = new LinkedHashMap<>();
    DrawnWords current = null;
    try {
      for (String line : Files.readAllLines(FILE)) {
        if (line.startsWith("[")) {
          current = new DrawnWords(line.substring(1, line.indexOf(']')), new HashMap<>());
          languages.put(current.language(), current);
        } else if (!line.isBlank() && !line.startsWith("#")) {
          String[] parts = line.split(": ", 2);
          current.ways().put(parts[0], List.of(parts[1].split(" / ")));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return List.copyOf(languages.values());
  }

  /** One way to say it. */
  String say(String key, Random random) {
    List<String> said = ways.get(key);
    if (said == null) {
      throw new IllegalArgumentException(language + " has no word for " + key);
    }
    return said.get(random.nextInt(said.size()));
  }

  /** Whether its figures are usually printed with a decimal comma. */
  boolean comma() {
    return !language.equals("en") && !language.equals("ja");
  }

  /** A day as usually written. */
  String day(String iso) {
    String year = iso.substring(0, 4);
    String month = iso.substring(5, 7);
    String day = iso.substring(8);
    return switch (language) {
      case "fr", "es", "it", "pt" -> day + "/" + month + "/" + year;
      case "nl" -> day + "-" + month + "-" + year;
      case "sv" -> iso;
      case "en" ->
          Integer.parseInt(day) + " " + MONTHS.get(Integer.parseInt(month) - 1) + " " + year;
      case "ja" -> year + "年" + Integer.parseInt(month) + "月" + Integer.parseInt(day) + "日";
      default -> day + "." + month + "." + year;
    };
  }

  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");
}
