package org.griplore.ingest.demo;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import org.griplore.store.scenario.ScenarioModel;

/** How a table writes the names of models. */
enum NameStyle {
  /** Maker and name as in the lineage table. */
  EXACT,
  /** All capitals, as label data often come. */
  CAPITALS,
  /** Without accents. */
  PLAIN,
  /** Hyphens and apostrophes left out. */
  SPACED,
  /** An alias of the lineage table where there is one. */
  ALIAS,
  /** One name in the table misspelt; the others exact. */
  MISSPELT;

  /** Slips of the pen: right name, written name. One letter each, never in the generation. */
  static final Map<String, String> SLIPS =
      Map.of(
          "Quillarn Tarvion 11", "Quilarn Tarvion 11",
          "Velmora Aurelis 5", "Velmora Aurelys 5",
          "Ostran\u00e9 Corvant II", "Ostran\u00e9 Corvannt II",
          "Drevanox Fervaro Sport Evo", "Drevanox Ferwaro Sport Evo",
          "Hjortm\u00e5ne Sn\u00f6klar 8", "Hjortm\u00e5ne Sn\u00f6klarr 8",
          "Zelvartis Omnivar AS2", "Zelvartis Omnivvar AS2");

  String write(ScenarioModel model) {
    String name = model.fullName();
    return switch (this) {
      case EXACT -> name;
      case CAPITALS -> name.toUpperCase(Locale.ROOT);
      case PLAIN -> Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
      case SPACED -> name.replace('-', ' ');
      case ALIAS -> model.aliases().isEmpty() ? name : model.aliases().get(0);
      case MISSPELT -> SLIPS.getOrDefault(name, name);
    };
  }
}
