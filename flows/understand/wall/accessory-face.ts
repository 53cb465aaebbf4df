/** Which face of the wall words are about. */
export const FAR =
  /\b(?:other|far|back|opposite|reverse) (?:side|face|room)\b|\bnext (?:room|door)\b|\bbehind (?:it|the wall|this wall)\b|\bnothing behind\b|\bround the back\b|\bon the other\b/;
export const NEAR = /\b(?:this|near|my|our) (?:side|face)\b|\bhere\b/;
export const BOTH =
  /\b(?:either|both|each|any)(?: of the)? (?:sides?|faces?|walls?|ends?|rooms?)\b|\bneither (?:side|face)\b/;
