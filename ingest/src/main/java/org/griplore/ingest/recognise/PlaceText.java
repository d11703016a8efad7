package org.griplore.ingest.recognise;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads places as they are printed: {@code 3}, {@code 3.}, {@code 3rd}, {@code =3}, {@code 3e}. */
public final class PlaceText {
  private static final Pattern PLACE =
      Pattern.compile(
          "[=t#]?\\s*(\\d{1,4})(?:[.,]0+)?\\s*(?:[.=]|st|nd|rd|th|er|re|e|\u00e8me|eme|:[ae]|t|\\*+)?(?:\\s*(?:/|of|von|sur|av)\\s*\\d+)?");

  private PlaceText() {}

  /** The place; empty when the text is none. */
  public static OptionalInt of(String text) {
    Matcher place = PLACE.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!place.matches()) {
      return OptionalInt.empty();
    }
    int number = Integer.parseInt(place.group(1));
    return number < 1 ? OptionalInt.empty() : OptionalInt.of(number);
  }
}
