package org.griplore.store.text;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Part of a note, cut into pieces that match and pieces that do not. Plain text: whoever shows it
 * on a page escapes it.
 */
public record Snippet(List<Piece> pieces) {
  /** Keeps the list from changing. */
  public Snippet {
    pieces = List.copyOf(pieces);
  }

  /** A stretch of text, and whether it is what was looked for. */
  public record Piece(String text, boolean hit) {}

  /** The text without marks. */
  public String text() {
    return pieces.stream().map(Piece::text).collect(Collectors.joining());
  }
}
