package org.griplore.ingest.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnWordsTest {
  private static final ColumnWords WORDS = ColumnWords.standard();
  private static final DisciplineCatalogue DISCIPLINES = DisciplineCatalogue.standard();

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Model | model
          Tyre | model
          Tire model | model
          Reifen | model
          Reifenmodell | model
          Modèle | model
          Pneu | model
          Däck | model
          Brand | maker
          Marke | maker
          Hersteller | maker
          Marque | maker
          Tillverkare | maker
          Tyre size | size
          Größe | size
          Reifengroesse | size
          Dimension | size
          Taille | size
          Dimensions du pneu | size
          Storlek | size
          Place | place
          Rank | place
          Pos. | place
          '#' | place
          Platz | place
          Gesamtrang | place
          Overall rank | place
          Classement | place
          Classement général | place
          Placering | place
          Gesamtnote | total
          Total | total
          Slutbetyg | total
          Note globale | total
          Gesamtnote Nass | subtotal
          Zwischensumme | subtotal
          Wet | subtotal
          Remarks | note
          note | note
          Bemerkungen | note
          Remarque | note
          Kommentar | note
          Date | date
          Test date | date
          Testdatum | date
          Année | date
          År | date
          Vehicle | vehicle
          Testfahrzeug | vehicle
          Voiture d'essai | vehicle
          Testbil | vehicle
          vehicle_mass_kg | vehicle-mass
          Kerb weight | vehicle-mass
          Leergewicht | vehicle-mass
          Tjänstevikt | vehicle-mass
          Venue | venue
          Prüfgelände | venue
          Lieu | venue
          Provbana | venue
          Runs | runs
          Anzahl Messungen | runs
          Nombre de passages | runs
          Antal körningar | runs
          Standard deviation | spread
          Std.-Abw. | spread
          Écart-type | spread
          Spridning | spread
          Unit | unit
          Einheit | unit
          Unité | unit
          Enhet | unit
          value | value
          Messwert | value
          Discipline | discipline
          Kriterium | discipline
          Critère | discipline
          Load index | load-index
          Tragfähigkeitsindex | load-index
          Indice de charge | load-index
          Belastningsindex | load-index
          Speed symbol | speed-symbol
          Indice de vitesse | speed-symbol
          Season | season
          Säsong | season
          Title | title
          source | source
          source_kind | source-kind
          Quelle | source
          Källa | source
          test | test
          Country of origin | origin
          DOT | production
          Profiltiefe (mm) | tread-depth
          Shore hardness | hardness
          Luftdruck (bar) | pressure
          Track temperature (°C) | surface-temperature
          Fahrbahntemperatur | surface-temperature
          Température de la piste | surface-temperature
          surface_c | surface-temperature
          air_c | air-temperature
          Lufttemperatur | air-temperature
          EU label | label
          Wet grip class | label
          """)
  void roleIsRecognised(String header, String role) {
    assertThat(WORDS.byHeader(header).map(match -> match.role().key())).contains(role);
  }

  @ParameterizedTest(name = "{0} is no known column")
  @CsvSource({"Wibble", "''", "12", "(m)"})
  void unknownStaysUnknown(String header) {
    assertThat(WORDS.byHeader(header)).isEmpty();
  }

  @ParameterizedTest(name = "{0}: discipline {1} is surer than any role")
  @CsvSource({
    "Wet braking (m),wet-braking",
    "Handling nass,wet-handling",
    "Tyre weight,mass",
    "Reifengewicht,mass",
    "Bruit de passage,exterior-noise",
    "Varvtid våt bana,wet-handling"
  })
  void longerPhraseDecidesBetweenDisciplineAndRole(String header, String key) {
    DisciplineCatalogue.Match discipline = DISCIPLINES.byHeader(header).orElseThrow();
    assertThat(discipline.discipline().key()).isEqualTo(key);
    assertThat(WORDS.byHeader(header))
        .satisfiesAnyOf(
            none -> assertThat(none).isEmpty(),
            vague -> assertThat(vague.orElseThrow().vague()).isTrue(),
            shorter ->
                assertThat(shorter.orElseThrow().letters()).isLessThan(discipline.letters()));
  }

  @ParameterizedTest(name = "{0}: role is surer than the total")
  @CsvSource({"Gesamtnote Nass", "Overall rank", "Gesamtwertung trocken"})
  void subtotalsAndPlacesAreNotTakenForTheTotal(String header) {
    int total = DISCIPLINES.byHeader(header).orElseThrow().letters();
    assertThat(WORDS.byHeader(header).orElseThrow().letters()).isGreaterThan(total);
  }

  @Test
  void everyRoleHasWords() throws Exception {
    var columns =
        new com.fasterxml.jackson.databind.ObjectMapper()
            .readTree(ColumnWords.class.getResourceAsStream("column-words.json"))
            .get("columns");
    Set<ColumnRole> missing = EnumSet.allOf(ColumnRole.class);
    columns.forEach(
        column -> missing.removeIf(role -> role.key().equals(column.get("role").textValue())));
    assertThat(missing).isEmpty();
  }
}
