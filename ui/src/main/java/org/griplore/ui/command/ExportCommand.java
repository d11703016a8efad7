package org.griplore.ui.command;

import java.nio.file.Path;
import org.griplore.query.option.Choices;
import org.griplore.store.archive.Archive;
import org.griplore.store.export.DataPackage;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Writes the whole archive as a Frictionless Data Package. */
final class ExportCommand implements Action {
  private ExportCommand() {}

  static CommandSpec spec() {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new ExportCommand());
    spec.usageMessage()
        .description(
            "Write the whole archive as a Frictionless Data Package: its views as CSV tables,"
                + " each figure with its cell, their description in datapackage.json, and the"
                + " originals. The same archive gives the same bytes.")
        .footer(
            "",
            "Example: griplore export my-package --archive my-archive",
            "The format: https://specs.frictionlessdata.io/data-package/");
    spec.addPositional(
        PositionalParamSpec.builder()
            .type(String.class)
            .arity("0..1")
            .paramLabel("DIR")
            .description("A folder that is not there yet, or is empty")
            .build());
    spec.addOption(CommonWords.archive());
    return spec;
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    String given = words.matchedPositionalValue(0, "");
    if (given.isBlank()) {
      throw Choices.refusal("DIR", given, "a new folder, as in `griplore export my-package`");
    }
    Path folder = CommonWords.path("DIR", given);
    try (Archive archive = Archive.open(CommonWords.archive(words));
        ProgressLine progress = new ProgressLine(terminal)) {
      Paths.refuseInside(archive.folder(), folder);
      DataPackage.Written written =
          DataPackage.write(
              archive,
              CommonWords.catalogue(archive),
              folder,
              (table, rows, about) ->
                  progress.show("writing " + table, (int) rows, (int) Math.max(about, 1)));
      progress.end();
      terminal
          .out()
          .println(
              folder
                  + ": "
                  + new Counts()
                      .add(written.tables(), "table")
                      .add(written.rows(), "row")
                      .add(written.originals(), "original")
                      .orElse("")
                  + ", described in datapackage.json.");
      return ExitCode.ANSWERED;
    }
  }
}
