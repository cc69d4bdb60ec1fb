import type { PaperFacts } from '../paper-facts.ts'
import { quoted, visible } from '../visible.ts'
import { didYouMean, listed, type Sentences } from './wording.ts'

export const paperSentences: Sentences<keyof PaperFacts> = {
  'does-not-fit': ({ facts }, { show }) =>
    `the ${visible(facts.sheet)} of ${visible(facts.of)} is ${show(facts.width)} by ${show(facts.height)} and does not fit on ${visible(facts.paper)} paper, which has ${show(facts.freeWidth)} by ${show(facts.freeHeight)} to draw on, and it cannot be joined true from several pages; ${facts.words === 'printed' ? 'its words and tables that fit are printed without it; ' : ''}choose larger paper`,
  'seam-crosses': ({ facts }) =>
    `a seam between the pages of the ${visible(facts.sheet)} runs through ${visible(facts.what)}, and no other position spares them; check them when the pages are joined`,
  'no-room-on-paper': ({ facts }) =>
    `${visible(facts.paper)} paper has no room to draw on between such margins; choose larger paper or smaller margins`,
  'unusable-length': ({ facts, limit }, { show }) =>
    `${quoted(facts.found)} is no ${visible(facts.name)}; wanted: a length from ${show(facts.least)} to ${limit === undefined ? 'more' : show(limit)}, such as 10 mm`,
  'reading-not-a-length': ({ facts }) =>
    `the reading ${visible(facts.what)} is ${quoted(facts.found)}; wanted: a length such as 179.1, 7 1/16" or 17.91 cm (a bare number is millimetres)`,
  'unknown-bars': ({ facts }) =>
    `${quoted(facts.found)} are no bars of a scale sheet; wanted: the two lengths that the sheet prints, such as 180x240`,
  'readings-swapped': () =>
    'the readings across and along are given one for the other; give --across the bar that lies across the sheet',
  'printer-too-far-off': ({ facts }, { show }) =>
    `the bars measure ${show(facts.across)} across and ${show(facts.along)} along instead of ${show(facts.barAcross)} and ${show(facts.barAlong)}, which is ${percentOff(facts.across.value / facts.barAcross.value)} and ${percentOff(facts.along.value / facts.barAlong.value)}: more than a printer is off by itself; ${
      facts.page === undefined
        ? 'look for “fit to page”, “scale to fit” or “shrink” in the print dialog, choose 100 %, and print the scale sheet again'
        : `it looks as if the print dialog said “fit to page” and a ${visible(facts.page)} page were fitted to ${visible(facts.sheet ?? facts.page)} paper; choose 100 % and print the scale sheet again`
    }`,
  'printer-leans': ({ facts }, { show }) =>
    `the two diagonals say that the paper went through at a lean of ${show(facts.lean)}; measure them again, or print the scale sheet again with the paper guides set`,
  'diagonals-disagree': ({ facts }, { show }) =>
    `the diagonals do not belong to a square as the bars measure it, whose diagonals are about ${show(facts.first)} and ${show(facts.second)}; measure them from corner to corner`,
  'unusable-printer-name': ({ facts }) =>
    `${quoted(facts.found)} is no name for a printer; wanted: 1 to 40 letters, figures, spaces and signs on one line`,
  'unknown-printer': ({ facts }) =>
    `there is no printer ${quoted(facts.found)}${didYouMean(facts.nearest)}${listed('printers', facts.allowed)}; print a scale sheet and measure it first`,
  'printers-unreadable': () =>
    'the file of measured printers cannot be read; move it away and measure the printers again',
  'letters-missing': ({ facts }) =>
    `the font has no picture of ${visible(facts.codes)}; the codes are printed in place of the letters`,
  'unknown-part': ({ facts }) =>
    `there is no part ${quoted(facts.found)}${didYouMean(facts.nearest)}${listed('parts', facts.allowed)}`,
  'unusable-reference': ({ facts }) =>
    `${quoted(facts.found)} names no row; wanted: a part, a full stop and a row or hole of it, such as ${visible(facts.example)}${didYouMean(facts.nearest)}`,
  'no-strip': ({ facts }) => `there is no drill strip for ${quoted(facts.found)}: ${visible(facts.why)}`,
  'unknown-sheet': ({ facts }) =>
    `there is no kind of sheet ${quoted(facts.found)}${didYouMean(facts.nearest)}${listed('sheets', facts.allowed)}`,
  'unknown-paper': ({ facts }) =>
    `${quoted(facts.found)} is no paper; wanted: ${visible(facts.wanted)}${didYouMean(facts.nearest)}`,
  'narrower-than-kerf': ({ facts, limit }, { show }) =>
    `${visible(facts.what)} is too narrow in places for a kerf of ${limit === undefined ? 'that width' : show(limit)}: the machine cannot cut it as it is drawn`,
  'kerf-not-compensated': ({ facts, limit }, { show }) =>
    `the lines of ${visible(facts.sheet)} cannot be moved by half of ${limit === undefined ? 'the kerf' : `a kerf of ${show(limit)}`}; there is no file of it`,
}

/** `2.1 % short`, `0.3 % long`, `true`. */
function percentOff(share: number): string {
  const percent = Math.abs(share - 1) * 100
  const rounded = percent.toFixed(1)
  return rounded === '0.0' ? 'true' : `${rounded} % ${share < 1 ? 'short' : 'long'}`
}
