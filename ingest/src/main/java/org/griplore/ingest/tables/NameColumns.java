package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.ColumnWords;
import org.griplore.ingest.recognise.DetailsReader;
import org.griplore.store.tyre.TyreSize;

/** Finds the columns of tyres' names where no header says so, and judges names. */
final class NameColumns {
  private final CellBlock block;
  private final KnownHeads heads;
  private final int body;
  private final IntPredicate headless;

  /**
   * Names of a block.
   *
   * @param headless whether a column has no header
   */
  NameColumns(CellBlock block, KnownHeads heads, int body, IntPredicate headless) {
    this.headless = headless;
    this.block = block;
    this.heads = heads;
    this.body = body;
  }

  /** Whether a role is a part of the tyre's name. */
  static boolean isName(ColumnRole role) {
    return role instanceof ColumnRole.Tyre
        || role instanceof ColumnRole.Maker
        || role instanceof ColumnRole.Model
        || role instanceof ColumnRole.Line
        || role instanceof ColumnRole.Generation;
  }

  /** Sets the roles of columns of names; where no header names them, the leftmost texts are. */
  void find(List<ColumnRole> roles) {
    boolean main =
        roles.stream()
            .anyMatch(
                role ->
                    role instanceof ColumnRole.Tyre
                        || role instanceof ColumnRole.Model
                        || role instanceof ColumnRole.Line);
    List<Integer> texts = new ArrayList<>();
    for (int c = 0; c < roles.size(); c++) {
      if (roles.get(c) instanceof ColumnRole.Unknown && isOfSeasons(c)) {
        roles.set(c, new ColumnRole.Ignored("the season stands with the model"));
      }
      boolean open =
          roles.get(c) instanceof ColumnRole.Unknown
              || roles.get(c) instanceof ColumnRole.Value
              || roles.get(c) instanceof ColumnRole.Remark && c == 0;
      if (open && isOfNames(c)) {
        texts.add(c);
      } else if (!(roles.get(c) instanceof ColumnRole.Maker
          || roles.get(c) instanceof ColumnRole.Ignored
          || roles.get(c) instanceof ColumnRole.Place
          || roles.get(c) instanceof ColumnRole.Size
          || roles.get(c) instanceof ColumnRole.Unknown && isRunningNumber(c))) {
        break;
      }
    }
    if (main || texts.isEmpty()) {
      makers(roles);
      generations(roles);
      return;
    }
    boolean maker = roles.stream().anyMatch(ColumnRole.Maker.class::isInstance);
    int first = texts.get(0);
    if (!maker && texts.size() > 1 && texts.get(1) == first + 1 && isOfMakers(first)) {
      roles.set(first, new ColumnRole.Maker());
      roles.set(texts.get(1), new ColumnRole.Model());
    } else {
      roles.set(first, maker ? new ColumnRole.Model() : new ColumnRole.Tyre());
    }
    generations(roles);
  }

  /** Before a column of models, texts without digits are makers, whatever heads them. */
  private void makers(List<ColumnRole> roles) {
    boolean maker = roles.stream().anyMatch(ColumnRole.Maker.class::isInstance);
    for (int c = 0; c < roles.size() && !maker; c++) {
      boolean models = false;
      for (int after = c + 1; after < roles.size() && after <= c + 2; after++) {
        models |=
            roles.get(after) instanceof ColumnRole.Model
                || roles.get(after) instanceof ColumnRole.Line;
      }
      boolean open =
          roles.get(c) instanceof ColumnRole.Unknown || roles.get(c) instanceof ColumnRole.Tyre;
      if (models && open && isOfNames(c) && isOfMakers(c)) {
        roles.set(c, new ColumnRole.Maker());
        maker = true;
      }
    }
  }

  /** A column without a header right behind the names, of short words, ends the names. */
  private void generations(List<ColumnRole> roles) {
    for (int c = 1; c < roles.size(); c++) {
      ColumnRole left = roles.get(c - 1);
      boolean behind =
          left instanceof ColumnRole.Model
              || left instanceof ColumnRole.Line
              || left instanceof ColumnRole.Tyre;
      if (behind && roles.get(c) instanceof ColumnRole.Unknown && headless.test(c) && isShort(c)) {
        roles.set(c, new ColumnRole.Generation());
      }
    }
  }

  private boolean isShort(int column) {
    int filled = 0;
    for (int r = body; r < block.rows(); r++) {
      String text = block.text(r, column);
      if (!text.isEmpty()) {
        filled++;
        boolean word = text.length() <= 12 && !text.matches("\\d*[.,]\\d+");
        if (!word || heads.isUnit(text) || isSize(text)) {
          return false;
        }
      }
    }
    return filled > 0;
  }

  private boolean isOfSeasons(int column) {
    int filled = 0;
    for (int r = body; r < block.rows(); r++) {
      String text = block.text(r, column);
      if (!text.isEmpty()) {
        filled++;
        if (text.length() > 25 || DetailsReader.seasonOf(text) == null) {
          return false;
        }
      }
    }
    return filled > 0;
  }

  private boolean isRunningNumber(int column) {
    int before = 0;
    for (int r = body; r < block.rows(); r++) {
      String text = block.text(r, column);
      if (!text.isEmpty()) {
        if (!text.matches("\\d{1,3}\\.?")) {
          return false;
        }
        before++;
      }
    }
    return before > 0;
  }

  /** Mostly texts, and few of them headers, units or sizes. */
  private boolean isOfNames(int column) {
    int texts = 0;
    int filled = 0;
    int other = 0;
    for (int r = body; r < block.rows(); r++) {
      CellSort sort = block.sort(r, column);
      if (sort != CellSort.EMPTY) {
        filled++;
        if (sort == CellSort.TEXT) {
          texts++;
          other += isNoName(block.text(r, column)) ? 1 : 0;
        }
      }
    }
    return texts > 0 && texts * 2 > filled && other * 2 < texts;
  }

  private boolean isNoName(String text) {
    return heads.isFigure(text) || heads.isUnit(text) || isSize(text) || text.length() > 90;
  }

  static boolean isSize(String text) {
    return text.length() < 40
        && text.matches(".*\\d{2,3}\\D+\\d.*")
        && TyreSize.find(text)
            .map(size -> 2 * size.toString().length() > text.length())
            .orElse(false);
  }

  /** One word each, or said once for several rows below each other. */
  private boolean isOfMakers(int column) {
    int filled = 0;
    int digits = 0;
    for (int r = body; r < block.rows(); r++) {
      String text = block.text(r, column);
      if (!text.isEmpty()) {
        filled++;
        digits += text.matches(".*\\d.*") ? 1 : 0;
      }
    }
    return filled > 0 && digits == 0;
  }

  /** Whether a text can be no tyre: a measure, a number, a size or a sentence. */
  boolean isNoTyre(String name) {
    return heads.isMeasure(name)
        || ColumnWords.topic(name).isPresent()
        || TableWords.DELTA.is(name)
        || TableWords.INDEX.is(name)
        || heads.isUnit(name)
        || isSize(name)
        || !name.matches(".*\\p{L}.*")
        || isSentence(name);
  }

  static boolean isSentence(String text) {
    int words = text.strip().split("\\s+").length;
    return text.length() > 80
        || words > 8
        || words > 4 && text.strip().matches(".*\\p{Ll}[.!]$")
        || text.strip().matches("^[*\u2020\u2021\u00b9\u00b2].*\\s.*\\s.*")
        || text.matches(
            "(?i)^(note|hinweis|anm|remark|source|quelle|legend|legende|n\\.?b|\u00a9).{0,12}[:.].*");
  }
}
