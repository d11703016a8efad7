package org.griplore.ui.web.notes;

import java.util.List;
import java.util.Map;
import org.griplore.ui.web.page.Form;

/**
 * The page to write a note on.
 *
 * @param token what its form must hold
 * @param closed why no note can be added; null when one can
 * @param tests the tests it may be on; one when the test is known
 * @param models the tyres it may be on
 * @param typed what was filled in, by field
 * @param problem what is wrong with the text; null when nothing is
 */
public record NoteView(
    String token,
    String closed,
    List<String> tests,
    List<String> models,
    List<Form.Choice> disciplines,
    Map<String, String> typed,
    String problem) {
  /** What was filled in; empty when nothing was. */
  public String typed(String field) {
    return typed.getOrDefault(field, "");
  }
}
