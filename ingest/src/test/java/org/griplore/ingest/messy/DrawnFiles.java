package org.griplore.ingest.messy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Files drawn from a stated truth: what was measured, and each oddity for itself. A file depends on
 * its number alone, so that more files leave the others as they are.
 */
final class DrawnFiles {
  private static final long SEED = 20_240_517;

  private DrawnFiles() {}

  /** So many files of each format. */
  static List<MessyFile> files(int each) {
    List<DrawnWords> languages = DrawnWords.all();
    List<MessyFile> files = new ArrayList<>();
    for (DrawnLook.Format format : DrawnLook.Format.values()) {
      for (int i = 0; i < each; i++) {
        files.add(file(format, i, languages));
      }
    }
    return files;
  }

  private static MessyFile file(DrawnLook.Format format, int number, List<DrawnWords> languages) {
    Random random = new Random(SEED * 31 * (1000L * format.ordinal() + number + 1));
    DrawnTest test = DrawnTest.draw(random);
    DrawnLook look = DrawnLook.draw(format, languages, random);
    String about =
        look.words().language()
            + ", "
            + look.toString()
                .replaceAll(".*shape=", "shape=")
                .replaceAll("\\w+=(false|NONE|\\[])(, )?", "");
    String kind = format.toString().toLowerCase(Locale.ROOT).replace('_', ' ');
    String name = String.format("%s-%02d%s", kind.replace(' ', '-'), number, ending(format));
    if (format.json()) {
      DrawnTruth truth = new DrawnTruth(test);
      DrawnLook flat = flat(look);
      String text =
          DrawnJson.write(test, flat, new DrawnHeads(flat, test.measures(), random), truth);
      Map<String, String> details =
          look.heading() == DrawnLook.Heading.NONE ? Map.of() : test.details();
      return new MessyFile(
          "drawn: " + kind,
          name,
          text.getBytes(StandardCharsets.UTF_8),
          Map.of(),
          truth.truth(about, look, details));
    }
    DrawnLayout layout = new DrawnLayout(test, look, random);
    byte[] content = content(layout.sketches(), look, random);
    return new MessyFile("drawn: " + kind, name, content, Map.of(), layout.truth(about));
  }

  /** Times in an interface are seconds. */
  private static DrawnLook flat(DrawnLook look) {
    return new DrawnLook(
        look.format(),
        look.words(),
        false,
        look.shape(),
        look.names(),
        DrawnLook.Units.NOWHERE,
        false,
        false,
        false,
        false,
        List.of(),
        false,
        DrawnLook.Total.NONE,
        false,
        look.heading(),
        false,
        false,
        false,
        DrawnLook.Breaks.NONE,
        false);
  }

  private static byte[] content(List<Sketch> sketches, DrawnLook look, Random random) {
    Sketch first = sketches.get(0);
    return switch (look.format()) {
      case SEMICOLONS -> text(SketchText.delimited(first, ";", false), look, random);
      case COMMAS -> text(SketchText.delimited(first, ",", false), look, random);
      case TABS -> text(SketchText.delimited(first, "\t", false), look, random);
      case BARE_COMMAS -> text(SketchText.delimited(first, ",", true), look, random);
      case FIXED -> text(SketchText.fixed(first), look, random);
      case PASTED -> text(SketchText.pasted(first), look, random);
      case MARKDOWN -> text(SketchText.markdown(first), look, random);
      case PAGE -> SketchPage.write(sketches, first.name()).getBytes(StandardCharsets.UTF_8);
      case WORKBOOK -> SketchBook.write(sketches);
      case OLD_WORKBOOK -> SketchOldBook.write(sketches);
      case OPEN_DOCUMENT -> SketchXml.openDocument(sketches);
      case SPREADSHEET_XML -> SketchXml.spreadsheet(sketches);
      case DOCUMENT -> SketchXml.document(sketches);
      case RICH_TEXT -> SketchMail.richText(sketches);
      case LETTER -> SketchMail.letter(first);
      case FOLDER -> SketchMail.folder(first);
      case JSON_FLAT, JSON_NESTED -> throw new IllegalArgumentException("JSON is no sketch");
    };
  }

  private static byte[] text(String text, DrawnLook look, Random random) {
    return text.getBytes(charset(look, random));
  }

  private static Charset charset(DrawnLook look, Random random) {
    boolean western =
        List.of("en", "de", "fr", "sv", "es", "it", "nl", "da", "fi", "pt")
            .contains(look.words().language());
    int draw = random.nextInt(10);
    if (draw == 0 && western) {
      return Charset.forName("windows-1252");
    }
    return draw == 1 ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
  }

  private static String ending(DrawnLook.Format format) {
    return switch (format) {
      case SEMICOLONS, COMMAS, BARE_COMMAS -> ".csv";
      case TABS -> ".tsv";
      case WORKBOOK -> ".xlsx";
      case PAGE -> ".html";
      case MARKDOWN -> ".md";
      case FIXED, PASTED -> ".txt";
      case JSON_FLAT, JSON_NESTED -> ".json";
      case OLD_WORKBOOK -> ".xls";
      case OPEN_DOCUMENT -> ".ods";
      case SPREADSHEET_XML -> ".xml";
      case DOCUMENT -> ".docx";
      case RICH_TEXT -> ".rtf";
      case LETTER -> ".eml";
      case FOLDER -> ".zip";
    };
  }
}
