package org.griplore.ingest.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ways of writing dates: common practice, no source. */
class DateReaderTest {
  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "14.06.2021 | 2021-06-14 | false",
        "14.-16.06.2021 | 2021-06-14 | true",
        "14-16 June 2021 | 2021-06-14 | true",
        "14. bis 16. Juni 2021 | 2021-06-14 | true",
        "June 14-16, 2021 | 2021-06-14 | true",
        "14.06. - 16.06.2021 | 2021-06-14 | true",
        "30 June - 2 July 2021 | 2021-06-30 | true",
        "2021-06-14 to 2021-06-16 | 2021-06-14 | true",
        "14.06.2021 - 16.06.2021 | 2021-06-14 | true",
        "2017年5月22日 | 2017-05-22 | false",
        "14.6.21 | 2021-06-14 | false",
        "22 maja 2017 | 2017-05-22 | false",
        "22 de mayo de 2017 | 2017-05-22 | false",
        "22 мая 2017 | 2017-05-22 | false",
        "22. toukokuuta 2017 | 2017-05-22 | false",
      })
  void isRead(String text, String date, boolean range) {
    DateReader.Reading read = DateReader.read(text).orElseThrow();
    assertThat(read.date().toString()).isEqualTo(date);
    assertThat(read.range()).isEqualTo(range);
  }

  @ParameterizedTest(name = "{0} tells {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Winter tyre test 2022/23 - 205/55 R16 | 2022",
        "Wet tests 12 May 2020, 195/65 R15 91H | 2020-05-12",
        "Summer tyres 2021 compared | 2021",
        "Test of 225/50 R17, June 2019 | 2019-06",
      })
  void isFoundInATitle(String title, String date) {
    assertThat(DateReader.within(title).orElseThrow().date().toString()).isEqualTo(date);
  }

  @ParameterizedTest
  @CsvSource({"Wet handling 1450 kg", "205/55 R16", "2050 m lap"})
  void isNotInvented(String title) {
    assertThat(DateReader.within(title)).isEmpty();
  }
}
