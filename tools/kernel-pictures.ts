/**
 * Draws the pictures of docs/kernel.md from the kernel's own results: `tsx tools/kernel-pictures.ts` writes
 * docs/kernel/*.svg.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { drawClassification, drawOperations, drawPieces } from './kernel-pictures/booleans.ts'
import { drawData } from './kernel-pictures/data.ts'
import { drawEllipse, drawMeasures } from './kernel-pictures/measures.ts'
import { drawJoins, drawRawOffset, drawSteps } from './kernel-pictures/offsets.ts'
import { drawSigns } from './kernel-pictures/signs.ts'
import { drawSnapping } from './kernel-pictures/snapping.ts'

const pictures: Readonly<Record<string, () => string>> = {
  data: drawData,
  signs: drawSigns,
  snapping: drawSnapping,
  classification: drawClassification,
  pieces: drawPieces,
  operations: drawOperations,
  'raw-offset': drawRawOffset,
  joins: drawJoins,
  steps: drawSteps,
  measures: drawMeasures,
  ellipse: drawEllipse,
}

const folder = new URL('../docs/kernel/', import.meta.url)
mkdirSync(folder, { recursive: true })
for (const [name, draw] of Object.entries(pictures)) writeFileSync(new URL(`${name}.svg`, folder), draw())
