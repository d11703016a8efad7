/**
 * What users keep beside the evidence: drafts, retractions, answers, plans and the runs of a day.
 */
package org.griplore.store.archive.kept;
