package org.griplore.ui.command;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMapReader;
import org.griplore.query.option.Choices;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import picocli.CommandLine.ParseResult;

/**
 * Column maps in files: the one given with {@code --map}, the one asked for by {@code --map-out}.
 */
final class MapFile {
  private MapFile() {}

  /** The map that is given; one that says nothing when none is. */
  static ColumnMap read(ParseResult words, DisciplineCatalogue catalogue) {
    String given = words.matchedOptionValue("--map", null);
    if (given == null) {
      return ColumnMap.NONE;
    }
    Path file = CommonWords.path("map", given);
    Paths.refuseMissing(java.util.List.of(file));
    try {
      return ColumnMapReader.read(Files.readString(file), file.getFileName().toString(), catalogue);
    } catch (CharacterCodingException e) {
      throw new Refusal(file + " is no text in UTF-8: a column map is JSON.", e);
    } catch (IOException e) {
      throw new Refusal(file + " cannot be read: it is no file, or access is denied.", e);
    }
  }

  /** Where the map that was understood is to go; null when nobody asks for it. */
  static Path target(ParseResult words) {
    String given = words.matchedOptionValue("--map-out", null);
    return given == null ? null : CommonWords.path("map-out", given);
  }

  static void refuseTarget(ParseResult words) {
    if (target(words) != null) {
      throw Choices.refusal(
          "map-out", target(words).toString(), "--explain beside it, as nothing is added then");
    }
  }

  /** Writes a map to a file of its own; a file that is there is never overwritten. */
  static void write(Path file, ColumnMap map) {
    try {
      Files.writeString(file, ColumnMapReader.pretty(map), StandardOpenOption.CREATE_NEW);
    } catch (java.nio.file.FileAlreadyExistsException e) {
      throw new Refusal(
          file + " is there already, and nothing was overwritten: name another file.",
          e,
          new Problem("map-out", file.toString(), "a file that is not there yet"));
    } catch (IOException e) {
      throw new Refusal(file + " cannot be written: its folder is missing or read-only.", e);
    }
  }
}
