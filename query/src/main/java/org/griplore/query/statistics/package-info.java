/**
 * Statistics on plain numbers: no archive, no text, nothing remembered. Arrays in, small records
 * out. Samples too small for a figure are refused with an {@link IllegalArgumentException} or give
 * an empty {@link java.util.Optional}, as each method says; NaN is neither taken nor given.
 */
package org.griplore.query.statistics;
