package org.griplore.ingest.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Labels as people write them above a table (from memory), no phrase of the lists. */
class DetailLabelsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Date de l'essai | 27/01/2024 | date",
        "Дата испытаний | 24.10.2016 | date",
        "Rengaskoko | 205/55 R16 91V | size",
        "Däckdimension fram | 235/55 R19 | size",
        "Art | Winterreifen | season",
        "Type | All seasons | season",
        "Versuchsfahrzeug | compact hatchback | vehicle",
        "Vettura | berlina media | vehicle",
        "Plats | Norrhed | venue",
        "Testgelände | Hollerfeld | venue",
        "Место проведения | Norrhed | venue",
      })
  void aWordTellsTheTopicWhereTheValueIsOfItsKind(String label, String value, String topic) {
    assertThat(DetailLabels.topic(label, value)).contains(topic);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Datenquelle | eigene Messung",
        "Type | Hatchback",
        "Plats | 1",
        "Plats | Däck",
        "Art | 17",
        "Remark on the way in which the date is told | 27/01/2024",
      })
  void aValueOfAnotherKindTellsNothing(String label, String value) {
    assertThat(DetailLabels.topic(label, value)).isEmpty();
  }
}
