import { describe, expect, it } from 'vitest'
import type { Finding, Place, RuleId } from '../../src/finding/finding.ts'
import { sentence } from '../../src/finding/sentence.ts'
import { checkCases } from './check-cases.ts'
import type { Case } from './sentence-case.ts'

const inches = { unit: 'inch', precision: 25.4 / 64 } as const
const _peg: Place = { part: 'beam', feature: 'peg', side: 'top' }
const mm = (value: number) => ({ value, unit: 'mm' as const })

/** One finding of every rule and what it says; a rule that is missing here fails the type check. */
const cases: { readonly [R in RuleId]: Case<R> } = {
  'not-utf-8': {
    facts: { byte: '0xFF' },
    says: 'the byte 0xFF is not UTF-8 text; save it as plain text in UTF-8',
  },
  'forbidden-character': {
    facts: { character: 'U+0007' },
    says: 'the character U+0007 cannot be seen and may not stand here; delete it',
  },
  'limit-passed': {
    facts: { of: 'cuts in a part' },
    measured: { value: 3000, unit: 'count' },
    limit: { value: 2000, unit: 'count' },
    says: '3,000 cuts in a part are more than is read: at most 2,000',
  },
  'findings-left-out': {
    facts: {},
    says: 'there is more from here on; mend what stands above and try again',
  },
  'empty-plan': { facts: {}, says: 'there is nothing in this file; a plan begins with paperjig: 1' },
  'not-yaml': {
    facts: { found: '-hole: a', wanted: 'a space behind the -' },
    says: 'this does not read: "-hole: a"; wanted: a space behind the -',
  },
  'colon-without-space': {
    facts: { key: 'bottom', value: '5/8' },
    says: 'a colon wants a space behind it; write "bottom: 5/8"',
  },
  'colon-in-text': {
    facts: { text: 'Loom 1: 16' },
    says: 'a colon and a space inside a text begin a new key; put quotes around it: "Loom 1: 16"',
  },
  'comment-eats-value': {
    facts: { key: 'diameter', comment: '#4' },
    says: 'a # begins a comment, so "diameter" has no value; put quotes around it: "#4"',
  },
  'comment-in-text': {
    facts: { value: 'Beam', comment: '#4' },
    says: '"#4" is read as a comment; if it belongs to the value, put quotes around both: "Beam #4"',
  },
  'comma-in-braces': {
    facts: { found: '5', before: 'left' },
    says: 'a comma inside { } ends the value of "left"; decimals have a point',
  },
  'bare-tilde': {
    facts: { key: 'left' },
    says: 'a ~ alone means nothing at all; write the size behind it, "left: ~ 3/8", or unknown',
  },
  'tab-indent': { facts: {}, says: 'a tab stands here; indent with spaces' },
  'tag-refused': {
    facts: { tag: '!important' },
    says: 'tags are not read ("!important"); put quotes around a text that begins with !',
  },
  'merge-key': { facts: {}, says: 'merge keys (<<) are not read; write the keys out' },
  'alias-unknown': {
    facts: { name: 'new*' },
    says: '"*new*" stands for nothing; put quotes around a text that begins with *',
  },
  'alias-loop': { facts: { name: 'a' }, says: '"*a" stands inside what it stands for' },
  'second-document': { facts: {}, says: 'a second document begins here; a file holds one' },
  'yaml-version': {
    facts: { found: '1.1' },
    says: 'the file says YAML "1.1"; only YAML 1.2 is read, leave the line out',
  },
  'unknown-key': {
    facts: {
      found: 'tickness',
      within: 'a stock',
      nearest: 'thickness',
      allowed: 'thickness, width, length',
    },
    says: '"tickness" is no key of a stock; did you mean "thickness"? (known: thickness, width, length)',
  },
  'later-key': {
    facts: { found: 'outline', within: 'a part' },
    says: 'this version does not read "outline" in a part yet; leave it out',
  },
  'missing-key': {
    facts: { key: 'diameter', within: 'a hole', wanted: 'a size, such as 2 1/2, or unknown' },
    says: 'a hole needs "diameter": a size, such as 2 1/2, or unknown',
  },
  'key-not-text': {
    facts: { found: '[a]' },
    says: '"[a]" cannot be a key; a key is one word, such as size',
  },
  'duplicate-key': {
    facts: { key: 'make' },
    says: '"make" stands here a second time; keep one of the two',
  },
  'missing-value': { facts: { wanted: 'a text' }, says: 'nothing stands here; wanted: a text' },
  'wrong-kind': {
    facts: { found: 'a text', text: '3', wanted: 'a list of cuts' },
    says: 'a text, "3", stands here; wanted: a list of cuts',
  },
  'not-a-choice': {
    facts: { found: 'inches', of: 'a unit', nearest: 'inch', allowed: 'inch, mm' },
    says: '"inches" is not a unit; did you mean "inch"? (one of: inch, mm)',
  },
  'not-an-id': {
    facts: { found: 'Side Frame', nearest: 'side-frame' },
    says: '"Side Frame" cannot be a name; names are a small letter, then small letters, digits and hyphens; did you mean "side-frame"?',
  },
  'not-a-name': {
    facts: { found: 'a-b', wanted: 'letters, digits and _', nearest: 'a_b' },
    says: '"a-b" cannot name a size; wanted: letters, digits and _; did you mean "a_b"?',
  },
  'reserved-name': {
    facts: { name: 'left', means: 'a side of the part' },
    says: '"left" already means a side of the part; choose another name',
  },
  'not-a-count': {
    facts: { found: 'two', wanted: 'a whole number from 1 to 1000' },
    says: '"two" does not count; wanted: a whole number from 1 to 1000',
  },
  'not-a-size': {
    facts: { found: '5 fot', wanted: 'a unit', nearest: 'foot', why: 'unknown-unit' },
    says: '"5 fot" does not make a size; wanted: a unit; did you mean "foot"?',
  },
  'wrong-version': {
    facts: { found: '2', wanted: '1' },
    says: 'this plan is of version "2"; this program reads version 1',
  },
  'nothing-in-it': {
    facts: { key: 'parts', wanted: 'one part at least' },
    says: '"parts" holds nothing; wanted: one part at least',
  },
  'odd-mirrored': {
    facts: { count: '3' },
    says: "half of a mirrored part's pieces are mirrored, so their number is even; found: 3",
  },
  'duplicate-edge': {
    facts: { name: 'foot' },
    says: 'two edges of this outline are called "foot"; give each a name of its own',
  },
  'side-twice': { facts: { side: 'deck' }, says: '"deck" stands here twice; name each side once' },
  'faces-differ': {
    facts: { first: 'front', second: 'top' },
    says: 'a cut on "front" and "top" has no place that serves both; make two cuts of it',
  },
  'precision-unusable': {
    facts: { found: '1/10', wanted: '1/64, 1/32' },
    says: 'sizes cannot be shown in steps of "1/10"; wanted: 1/64, 1/32',
  },
  'unknown-cut': {
    facts: { found: 'pivt', within: 'arm', nearest: 'pivot', allowed: 'pivot, slot' },
    says: '"arm" has no cut or side "pivt"; did you mean "pivot"? (cuts: pivot, slot)',
  },
  'unknown-pin': {
    facts: { found: 'axel', nearest: 'axle', allowed: 'axle' },
    says: 'there is no pin "axel"; did you mean "axle"? (pins: axle)',
  },
  'unknown-edge': {
    facts: { found: 'fot', nearest: 'foot', allowed: 'front, foot' },
    says: '"fot" is neither a side nor a straight edge of the outline with that name; did you mean "foot"? (known: front, foot)',
  },
  'unknown-arc': {
    facts: { found: 'top-left', allowed: '' },
    says: 'no rounded corner and no arc of the outline is called "top-left", so it has no centre',
  },
  'unknown-piece': {
    facts: { found: 'arm/3', part: 'arm', pieces: { value: 2, unit: 'count' } },
    says: 'there is no piece "arm/3"; of "arm" the plan makes 2',
  },
  'unknown-member': {
    facts: { found: 'posts.7', row: 'posts', count: { value: 6, unit: 'count' } },
    says: 'there is no hole "posts.7"; "posts" has 6',
  },
  'unknown-confirmed': {
    facts: { found: 'gage', nearest: 'gauge', allowed: 'gauge' },
    says: '"gage" cannot be confirmed, nothing is called that; did you mean "gauge"? (known: gauge)',
  },
  'place-cycle': {
    facts: { chain: 'a → b → a' },
    says: 'these cuts are placed from each other, and none from a side: a → b → a',
  },
  'from-other-face': {
    facts: { cut: 'pivot', face: 'front', wanted: 'a cut on the same face or on the opposite one' },
    says: '"pivot" lies on the front, so nothing here can be placed from it; wanted: a cut on the same face or on the opposite one',
  },
  'no-joint': {
    facts: { found: 'floor.slot', wanted: 'a hole, such as part.hole' },
    says: '"floor.slot" does not serve in this joint; wanted: a hole, such as part.hole',
  },
  'outline-needs-size': {
    facts: { side: 'right' },
    says: 'a distance from the right wants a part that says its size; give the part a size: beside its outline, or measure from the left and the bottom',
  },
  'arc-radius-too-small': {
    facts: { radius: mm(25.4), least: mm(50.8) },
    says: 'a radius of 1" (25.4 mm) does not reach from one end of the arc to the other; at least 2" (50.8 mm) is wanted',
  },
  'arc-impossible': {
    facts: { why: 'in-line' },
    says: 'this arc cannot be drawn: the three points lie in one line; write to: for a straight edge',
  },
  'corner-no-room': {
    facts: { corner: 'nose', why: 'no-room', size: mm(25.4) },
    says: 'there is no room for 1" (25.4 mm) at nose: the edges that meet there are too short',
  },
  'curve-impossible': {
    facts: { points: { value: 3, unit: 'count' } },
    says: 'two neighbouring points of this curve are one; leave one of them out',
  },
  'no-arris': {
    facts: { face: 'left', edge: 'top', why: 'corner' },
    says: 'the left and the top meet in a corner of the outline; write it there, as a corner (corners:) or a notch',
  },
  'no-straight-edge': {
    facts: { edge: 'right' },
    says: 'the right of the outline is not one straight edge, so nothing can be worked along it; name a straight edge (name:), or write edges: all where it is chamfered or rounded over',
  },
  'nothing-to-run-in': {
    facts: { stops: mm(152.4), available: mm(127) },
    says: 'stops and length together take 6" (152.4 mm), and it is 5" (127 mm) from end to end',
  },
  'nothing-left': {
    facts: { what: 'the inside of the ring', size: mm(50.8), limit: mm(25.4) },
    says: 'the inside of the ring comes to 2" (50.8 mm), and the limit is 1" (25.4 mm): nothing is left of the part',
  },
  'duplicate-id': {
    facts: { id: 'peg' },
    says: 'two cuts of this part are called "peg"; give each a name of its own',
  },
  'cut-kind-missing': {
    facts: { allowed: 'hole, row' },
    says: 'a cut begins with what it is and its name (one of: hole, row)',
  },
  'two-cut-kinds': {
    facts: { first: 'hole', second: 'slot' },
    says: 'a cut is one thing, and this is a hole and a slot; make two of it, each with its own -',
  },
  'side-off-face': {
    facts: { found: 'front', on: 'front', allowed: 'left or right, and bottom or top' },
    says: '"front" says nothing about a place on the front; there it is a distance from left or right, and bottom or top',
  },
  'lean-off-face': {
    facts: { found: 'front', on: 'front', allowed: 'left, right, bottom, top' },
    says: 'a hole on the front cannot lean toward "front" (one of: left, right, bottom, top)',
  },
  'leans-alike': {
    facts: { first: 'right', second: 'left', allowed: 'bottom, top' },
    says: 'a hole that leans toward "right" has no second lean toward "left" (one of: bottom, top)',
  },
  'not-both': { facts: { first: 'left', second: 'right' }, says: 'give left or right, not both' },
  'setting-out-of-range': {
    facts: { what: 'the kerf', size: mm(304.8), least: mm(0), largest: mm(25.4) },
    says: 'the kerf comes to 12" (304.8 mm); wanted: 0" (0 mm) to 1" (25.4 mm)',
  },
  'not-a-time': {
    facts: { found: 'soon', wanted: 'minutes or hours, such as 30 min or 24 h' },
    says: '"soon" is no time; wanted: minutes or hours, such as 30 min or 24 h',
  },
  'steps-backward': {
    facts: { found: '5 to 3 by 1' },
    says: '"5 to 3 by 1" leads from the larger to the smaller; wanted: the smallest first, such as 1/32 to 1/2 by 1/64',
  },
  'size-formula': {
    facts: { found: 'gage', wanted: 'a named size', nearest: 'gauge' },
    says: '"gage" cannot be worked out; wanted: a named size; did you mean "gauge"?',
  },
  'size-not-positive': {
    facts: { what: 'the diameter', size: mm(-25.4) },
    says: 'the diameter comes to -1" (-25.4 mm); it must be more than nothing',
  },
  'size-too-large': {
    facts: { what: 'the length', size: mm(25400), largest: mm(2540) },
    says: 'the length comes to 1000" (25400 mm); at most 100" (2540 mm) can be drawn',
  },
  'unknown-stock': {
    facts: { found: 'plnk', nearest: 'plank', allowed: 'plank, block' },
    says: 'there is no stock "plnk"; did you mean "plank"? (in stock: plank, block)',
  },
  'thickness-missing': {
    facts: {},
    says: 'the thickness is missing; write length x width x thickness, or the stock it is cut from (from:)',
  },
  'corners-too-large': {
    facts: { edge: 'left', corners: mm(50.8), available: mm(25.4) },
    says: 'the corners along the left take 2" (50.8 mm), and it is 1" (25.4 mm) long',
  },
  'row-direction': {
    facts: { found: 'front', allowed: 'left, right' },
    says: 'a row on this face cannot run toward "front" (one of: left, right)',
  },
  'angle-out-of-range': {
    facts: {
      what: 'the lean',
      angle: { value: 70, unit: 'degree' },
      above: { value: 0, unit: 'degree' },
      below: { value: 60, unit: 'degree' },
    },
    says: 'the lean comes to 70°; wanted: more than 0° and less than 60°',
  },
  'mouth-too-narrow': {
    facts: { what: 'counterbore', mouth: mm(6.35), hole: mm(12.7) },
    says: 'the counterbore is 1/4" (6.35 mm) wide and the hole 1/2" (12.7 mm); it must be wider than the hole',
  },
  'mouth-too-deep': {
    facts: { what: 'countersink', depth: mm(6.35), available: mm(3.175), of: 'hole' },
    says: 'the countersink goes 1/4" (6.35 mm) deep, and the hole 1/8" (3.18 mm); it must be less deep than that',
  },
  'mouth-too-shallow': {
    facts: { depth: mm(3.175), least: mm(6.35) },
    says: 'the counterbore is 1/8" (3.18 mm) deep, and leaning so far it comes out of the face again; at least 1/4" (6.35 mm) is wanted',
  },
  ...checkCases,
  'does-not-fit': {
    facts: {
      sheet: 'template',
      of: 'hatch (2 pieces)',
      words: 'left out',
      paper: 'A4',
      width: mm(254),
      height: mm(254),
      freeWidth: mm(127),
      freeHeight: mm(254),
    },
    says: 'the template of hatch (2 pieces) is 10" (254 mm) by 10" (254 mm) and does not fit on A4 paper, which has 5" (127 mm) by 10" (254 mm) to draw on, and it cannot be joined true from several pages; choose larger paper',
  },
  'letters-missing': {
    facts: { codes: 'U+6728' },
    says: 'the font has no picture of U+6728; the codes are printed in place of the letters',
  },
  'seam-crosses': {
    facts: { sheet: 'template', what: '1 hole and 2 labels' },
    says: 'a seam between the pages of the template runs through 1 hole and 2 labels, and no other position spares them; check them when the pages are joined',
  },
  'no-room-on-paper': {
    facts: { paper: 'A5' },
    says: 'A5 paper has no room to draw on between such margins; choose larger paper or smaller margins',
  },
  'unusable-length': {
    facts: { name: 'overlap', found: '2', least: mm(12.7) },
    limit: mm(50.8),
    says: '"2" is no overlap; wanted: a length from 1/2" (12.7 mm) to 2" (50.8 mm), such as 10 mm',
  },
  'reading-not-a-length': {
    facts: { what: 'across', found: 'about 7' },
    says: 'the reading across is "about 7"; wanted: a length such as 179.1, 7 1/16" or 17.91 cm (a bare number is millimetres)',
  },
  'unknown-bars': {
    facts: { found: '18x24' },
    says: '"18x24" are no bars of a scale sheet; wanted: the two lengths that the sheet prints, such as 180x240',
  },
  'readings-swapped': {
    facts: {},
    says: 'the readings across and along are given one for the other; give --across the bar that lies across the sheet',
  },
  'printer-too-far-off': {
    facts: {
      across: mm(171.45),
      along: mm(228.6),
      barAcross: mm(177.8),
      barAlong: mm(228.6),
      page: 'Letter',
      sheet: 'A4',
    },
    says: 'the bars measure 6 3/4" (171.45 mm) across and 9" (228.6 mm) along instead of 7" (177.8 mm) and 9" (228.6 mm), which is 3.6 % short and true: more than a printer is off by itself; it looks as if the print dialog said “fit to page” and a Letter page were fitted to A4 paper; choose 100 % and print the scale sheet again',
  },
  'printer-leans': {
    facts: { lean: { value: 2.5, unit: 'degree' } },
    says: 'the two diagonals say that the paper went through at a lean of 2.5°; measure them again, or print the scale sheet again with the paper guides set',
  },
  'diagonals-disagree': {
    facts: { first: mm(254), second: mm(254) },
    says: 'the diagonals do not belong to a square as the bars measure it, whose diagonals are about 10" (254 mm) and 10" (254 mm); measure them from corner to corner',
  },
  'unusable-printer-name': {
    facts: { found: '' },
    says: '"" is no name for a printer; wanted: 1 to 40 letters, figures, spaces and signs on one line',
  },
  'unknown-printer': {
    facts: { found: 'attik', nearest: 'attic', allowed: 'attic, shop' },
    says: 'there is no printer "attik"; did you mean "attic"? (printers: attic, shop); print a scale sheet and measure it first',
  },
  'printers-unreadable': {
    facts: {},
    says: 'the file of measured printers cannot be read; move it away and measure the printers again',
  },
  'unusable-reference': {
    facts: { found: 'side-frame', example: 'side-frame.posts', nearest: 'side-frame.posts' },
    says: '"side-frame" names no row; wanted: a part, a full stop and a row or hole of it, such as side-frame.posts; did you mean "side-frame.posts"?',
  },
  'no-strip': {
    facts: { found: 'floor.slot', why: 'it is not bored' },
    says: 'there is no drill strip for "floor.slot": it is not bored',
  },
  'unknown-sheet': {
    facts: { found: 'templat', nearest: 'template', allowed: 'cover, template' },
    says: 'there is no kind of sheet "templat"; did you mean "template"? (sheets: cover, template)',
  },
  'unknown-paper': {
    facts: { found: 'A44', nearest: 'a4', wanted: 'letter, a4, or a size' },
    says: '"A44" is no paper; wanted: letter, a4, or a size; did you mean "a4"?',
  },
  'narrower-than-kerf': {
    facts: { what: 'heddle.eye' },
    limit: { value: 1.5875, unit: 'mm' },
    says: 'heddle.eye is too narrow in places for a kerf of 1/16" (1.59 mm): the machine cannot cut it as it is drawn',
  },
  'kerf-not-compensated': {
    facts: { sheet: 'heddle-template' },
    limit: { value: 1.5875, unit: 'mm' },
    says: 'the lines of heddle-template cannot be moved by half of a kerf of 1/16" (1.59 mm); there is no file of it',
  },
  'unknown-part': {
    facts: { found: 'bem', nearest: 'beam', allowed: 'beam' },
    says: 'there is no part "bem"; did you mean "beam"? (parts: beam)',
  },
}

describe('every rule has its sentence', () => {
  it.each(Object.entries(cases))('%s', (rule, { says, ...finding }) => {
    const whole = { severity: 'error', places: [], ...finding, rule } as unknown as Finding
    expect(sentence(whole, inches)).toBe(says)
  })
})

describe('a sentence', () => {
  const unknown = (found: string, allowed = 'size'): Finding => ({
    rule: 'unknown-key',
    severity: 'error',
    places: [],
    facts: { found, within: 'a part', allowed },
  })

  it("shows what cannot be seen in the maker's text", () => {
    expect(sentence(unknown('si\u202eez\u001b[2J\n'), inches)).toBe(
      '"si⟨U+202E⟩ez⟨U+001B⟩[2J⟨U+000A⟩" is no key of a part (known: size)',
    )
  })

  it('stays short whatever it repeats', () => {
    const long = sentence(unknown('k'.repeat(10_000), 'name, '.repeat(10_000)), inches)
    expect(long.length).toBeLessThan(400)
    expect(long).toContain('…')
  })

  it('says of a crowd of cuts how many there are, and begins to say which', () => {
    const { says, ...meeting } = cases['features-meet']
    const facts = { ...meeting.facts, count: { value: 1200, unit: 'count' }, names: 'peg, pin, and 9 more' }
    const finding = { severity: 'error', ...meeting, facts, rule: 'features-meet' } as unknown as Finding
    expect(sentence(finding, inches)).toBe(
      'hole peg of beam overlaps slot mouth by 1/8" (3.18 mm), the worst of 1,200 cuts that run into one another (peg, pin, and 9 more); move them apart, or leave one of them',
    )
    expect(says).not.toContain('the worst of')
  })

  it('says of holes that would be shown to reach nothing into each other that they just touch', () => {
    const { says, ...meeting } = cases['holes-meet-inside']
    const touching = (value: number): string =>
      sentence({ ...meeting, measured: mm(value), rule: 'holes-meet-inside' } as Finding, inches)
    expect(touching(0)).toContain('; they just touch: move one of them')
    expect(touching(0.02)).toContain('; they just touch: move one of them')
    expect(touching(0.03)).toContain('; they reach ≈ 0" (0.001", 0.03 mm) into each other')
    expect(says).not.toContain('just touch')
  })

  it('says of an edge that is eased from front and back that nothing is left of it', () => {
    const facts = {
      what: 'chamfer',
      other: 'chamfer',
      how: 'meets',
      count: { value: 2, unit: 'count' },
      names: 'c',
    }
    const places = [
      { part: 'beam', feature: 'c.front' },
      { part: 'beam', feature: 'c.back' },
    ]
    const finding = {
      severity: 'warning',
      rule: 'features-meet',
      places,
      measured: mm(3.175),
      facts,
    } as Finding
    expect(sentence(finding, inches)).toBe(
      'chamfer c.front of beam meets chamfer c.back in the thickness, which is 1/8" (3.18 mm) less than both are deep; nothing is left of the edge between them: make one of them less deep',
    )
  })

  it('shows lengths in the unit of the plan first', () => {
    const { says, ...outside } = cases['outside-part']
    const finding = { severity: 'error', ...outside, rule: 'outside-part' } as unknown as Finding
    expect(sentence(finding, { unit: 'mm', precision: 0.1 })).toContain('goes 3.18 mm (1/8")')
    expect(says).toContain('1/8" (3.18 mm)')
  })
})
