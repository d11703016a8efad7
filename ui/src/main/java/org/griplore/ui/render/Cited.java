package org.griplore.ui.render;

import org.griplore.query.answer.SourceReference;

/** Words a source as lists of sources have it. */
final class Cited {
  private Cited() {}

  static String told(SourceReference source) {
    return "%s%s%s (%s)"
        .formatted(
            source.title(),
            source.date() == null ? "" : ", " + source.date(),
            source.kind() == null ? "" : ", " + source.kind(),
            source.file());
  }
}
