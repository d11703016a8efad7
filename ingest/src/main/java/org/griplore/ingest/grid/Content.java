package org.griplore.ingest.grid;

import java.util.List;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Finding;

/**
 * What a source holds once it is read. What cannot be read is a {@link
 * org.griplore.store.vocabulary.Refusal}.
 */
public sealed interface Content {
  /** What was left out or assumed while reading, with its cell; often nothing. */
  List<Finding> findings();

  /**
   * One or more tables.
   *
   * @param form what it was read as, in a word or two: {@code workbook}, {@code page}, {@code
   *     JSON}, {@code Markdown}, {@code delimited text} ...
   * @param grids in the order of the source
   * @param findings what was left out or assumed
   */
  record Tables(String form, List<Grid> grids, List<Finding> findings) implements Content {
    /** Keeps the lists from changing. */
    public Tables {
      grids = List.copyOf(grids);
      findings = List.copyOf(findings);
    }

    /** Tables of which nothing was left out. */
    public Tables(String form, List<Grid> grids) {
      this(form, grids, List.of());
    }
  }

  /**
   * Text without tables: plain or Markdown.
   *
   * @param lines its lines
   * @param findings what was left out or assumed
   */
  record Prose(List<Line> lines, List<Finding> findings) implements Content {
    /** Keeps the lists from changing. */
    public Prose {
      lines = List.copyOf(lines);
      findings = List.copyOf(findings);
    }

    /** Text of which nothing was left out. */
    public Prose(List<Line> lines) {
      this(lines, List.of());
    }
  }

  /**
   * Several documents in one file (a packed folder, a letter with its attachments): each is a
   * source of its own, read and refused by itself.
   *
   * @param form what it was read as: {@code packed folder}, {@code letter}, {@code saved page}
   * @param members the documents; a member's origin is {@code ORIGIN!PATH}, its name the last part
   *     of its path
   * @param passedOver paths of members that are no documents: lock files, thumbnails, pictures in a
   *     letter's signature
   * @param findings what was left out or assumed
   */
  record Members(
      String form, List<Original> members, List<String> passedOver, List<Finding> findings)
      implements Content {
    /** Keeps the lists from changing. */
    public Members {
      members = List.copyOf(members);
      passedOver = List.copyOf(passedOver);
      findings = List.copyOf(findings);
    }
  }

  /** A line of text with its number from 1. */
  record Line(int number, String text) {}
}
