package org.griplore.ui.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Kept pages")
class KeptPagesTest {
  private final AtomicLong stamp = new AtomicLong(1);
  private final List<String> laidOut = new ArrayList<>();
  private final KeptPages pages = new KeptPages(stamp::get, 40);

  private String page(String address) {
    return pages.at(
        address,
        () -> {
          laidOut.add(address);
          return address + " at " + stamp.get();
        });
  }

  @Test
  @DisplayName("are laid out once, and anew when the archive has changed")
  void once() {
    assertThat(page("/a")).isEqualTo("/a at 1");
    assertThat(page("/a")).isEqualTo("/a at 1");
    stamp.set(2);
    assertThat(page("/a")).isEqualTo("/a at 2");
    assertThat(laidOut).containsExactly("/a", "/a");
  }

  @Test
  @DisplayName("are not kept when the archive changed while they were laid out")
  void changedMeanwhile() {
    pages.at("/a", () -> "old" + stamp.incrementAndGet());
    assertThat(page("/a")).isEqualTo("/a at 2");
  }

  @Test
  @DisplayName("go when there is no room, the longest unused first")
  void room() {
    List.of("/a", "/b", "/c", "/d", "/e", "/a", "/f").forEach(this::page);
    laidOut.clear();
    page("/a");
    page("/b");
    assertThat(laidOut).containsExactly("/b");
  }

  @Test
  @DisplayName("that fill a quarter of the room are not kept at all")
  void tooLong() {
    pages.at("/long", () -> "x".repeat(11));
    assertThat(pages.at("/long", () -> "anew")).isEqualTo("anew");
  }
}
