package org.griplore.ingest.grid.markup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.source.DocumentReader;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;

/** Large pages take time in proportion to their size, and memory within bounds. */
class HtmlSizeTest {
  /** A second or two on a machine of its own; some minutes if each cell looked at its table. */
  private static final Duration LONG_ENOUGH = Duration.ofMinutes(2);

  private static List<Grid> read(String page) {
    Content content = DocumentReader.readText("page.html", page);
    assertThat(content).isInstanceOf(Content.Tables.class);
    return ((Content.Tables) content).grids();
  }

  @Test
  void aTableOfFiftyThousandCellsIsReadInAMoment() {
    StringBuilder page = new StringBuilder("<h1>All tests</h1><table>");
    for (int row = 1; row <= 4000; row++) {
      page.append("<tr>");
      for (int column = 1; column <= 12; column++) {
        page.append("<td>").append(row).append('.').append(column).append("</td>");
      }
      page.append("</tr>");
    }

    List<Grid> grids = assertTimeoutPreemptively(LONG_ENOUGH, () -> read(page + "</table>"));

    assertThat(grids).hasSize(1);
    assertThat(grids.get(0).preamble()).extracting(GridCell::text).containsExactly("All tests");
    assertThat(grids.get(0).rows()).hasSize(4000).allSatisfy(row -> assertThat(row).hasSize(12));
    assertThat(grids.get(0).rows().get(3999).get(11).text()).isEqualTo("4000.12");
  }

  @Test
  void hundredsOfTablesAreReadInAMoment() {
    StringBuilder page = new StringBuilder();
    for (int table = 1; table <= 400; table++) {
      page.append("<h2>Test ").append(table).append("</h2><table>");
      page.append("<tr><td>A<td>1<td>2".repeat(25)).append("</table>");
    }

    List<Grid> grids = assertTimeoutPreemptively(LONG_ENOUGH, () -> read(page.toString()));

    assertThat(grids).hasSize(400);
    assertThat(grids.get(399).name()).isEqualTo("Test 400");
  }

  @Test
  void aPageTooLargeForTheMemoryIsRefusedUnread() {
    byte[] page = "<p>x</p>".repeat((32 << 20) / 8 + 1).getBytes(StandardCharsets.UTF_8);

    assertThatThrownBy(() -> DocumentReader.read("page.html", page))
        .isInstanceOf(Refusal.class)
        .hasMessage("page.html is a page of more than 32 MB: save its table as CSV.");
  }
}
