/**
 * Names of tyres: what a written name says of a tyre beside its model, and which models a name
 * could mean, with the reasons. Reading files, decisions, filters and search all ask here.
 */
package org.griplore.store.names;
