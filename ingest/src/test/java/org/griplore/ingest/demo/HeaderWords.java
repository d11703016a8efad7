package org.griplore.ingest.demo;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How testers head their columns, by language; German and English in two ways. */
final class HeaderWords {
  private static final String TABLE =
      """
      tyre | Tyre | Model | Reifen | Fabrikat | Pneu | D\u00e4ck
      maker | Maker | Brand | Hersteller | Marke | Marque | M\u00e4rke
      model | Model | Pattern | Modell | Profil | Mod\u00e8le | Modell
      place | Place | Rank | Platz | Rang | Rang | Plats
      remark | Remark | Comment | Bemerkung | Anmerkung | Remarque | Anm\u00e4rkning
      overall | Overall | Total | Gesamtwertung | Gesamt | Note globale | Totalbetyg
      wet-braking | Wet braking | Braking wet | Nassbremsen | Bremsen nass | Freinage mouill\u00e9 | Bromsning v\u00e5t
      dry-braking | Dry braking | Braking dry | Trockenbremsen | Bremsen trocken | Freinage sec | Bromsning torr
      snow-braking | Snow braking | Braking snow | Schneebremsen | Bremsen Schnee | Freinage neige | Bromsning sn\u00f6
      ice-braking | Ice braking | Braking ice | Eisbremsen | Bremsen Eis | Freinage glace | Bromsning is
      wet-handling | Wet handling | Handling wet | Nasshandling | Handling nass | Comportement mouill\u00e9 | V\u00e4ggrepp v\u00e5t varvtid
      dry-handling | Dry handling | Handling dry | Trockenhandling | Handling trocken | Comportement sec | V\u00e4ggrepp torr varvtid
      snow-handling | Snow handling | Handling snow | Schneehandling | Handling Schnee | Comportement neige | V\u00e4ggrepp sn\u00f6 varvtid
      wet-circle | Wet circle | Lateral grip wet | Nasskreis | Kreisbahn nass | Cercle mouill\u00e9 | V\u00e5tcirkel
      straight-aquaplaning | Straight aquaplaning | Straight hydroplaning | Aquaplaning l\u00e4ngs | L\u00e4ngsaquaplaning | Aquaplaning ligne droite | Vattenplaning rakt
      curved-aquaplaning | Curved aquaplaning | Curved hydroplaning | Aquaplaning quer | Queraquaplaning | Aquaplaning en courbe | Vattenplaning kurva
      exterior-noise | Exterior noise | Pass-by noise | Au\u00dfenger\u00e4usch | Vorbeifahrger\u00e4usch | Bruit ext\u00e9rieur | Buller utv\u00e4ndigt
      interior-noise | Interior noise | Cabin noise | Innenger\u00e4usch | Ger\u00e4usch innen | Bruit int\u00e9rieur | Buller inv\u00e4ndigt
      rolling-resistance | Rolling resistance | RRC | Rollwiderstand | Rollwiderstandsbeiwert | R\u00e9sistance au roulement | Rullmotst\u00e5nd
      snow-traction | Snow traction | Traction snow | Schneetraktion | Traktion Schnee | Motricit\u00e9 neige | Dragkraft sn\u00f6
      wear | Wear | Tread life | Verschlei\u00df | Laufleistung | Usure | Slitage
      energy-use | Energy use | Consumption | Energieverbrauch | Verbrauch | Consommation | Energif\u00f6rbrukning
      comfort | Comfort | Ride comfort | Komfort | Fahrkomfort | Confort | Komfort
      steering-response | Steering response | Steering | Lenkansprechen | Lenkung | R\u00e9ponse de direction | Styrrespons
      wet-feel | Wet feel | Subjective wet | Fahrgef\u00fchl nass | Subjektiv nass | Ressenti mouill\u00e9 | K\u00f6rk\u00e4nsla v\u00e5t
      dry-feel | Dry feel | Subjective dry | Fahrgef\u00fchl trocken | Subjektiv trocken | Ressenti sec | K\u00f6rk\u00e4nsla torr
      mass | Mass | Weight | Gewicht | Reifengewicht | Masse | Vikt
      price | Price | Price per tyre | Preis | Preis pro Reifen | Prix | Pris
      """;

  private static final Map<String, List<String>> WORDS = new HashMap<>();

  static {
    TABLE
        .lines()
        .map(line -> List.of(line.split(" \\| ")))
        .forEach(cells -> WORDS.put(cells.get(0), cells));
  }

  private HeaderWords() {}

  /** The words for a discipline or column in a language; variant 0 or 1. */
  static String of(String key, Lingo lingo, int variant) {
    int column =
        switch (lingo) {
          case EN -> 1 + variant;
          case DE -> 3 + variant;
          case FR -> 5;
          case SV -> 6;
        };
    return WORDS.get(key).get(column);
  }
}
