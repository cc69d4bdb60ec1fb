/** The stages of one cold run of `print`, each timed; prints them as JSON. Bundled by the bench before it runs. */
import { readFileSync } from 'node:fs'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import { lettersMissing } from '../../src/app/letters-missing.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { check } from '../../src/check/registry.ts'
import { readFonts } from '../../src/cli/input/read-fonts.ts'
import { optimiseLater } from '../../src/cli/optimise-later.ts'
import { buildModel } from '../../src/model/build/model.ts'
import { readPlan } from '../../src/plan/read-plan.ts'
import { renderPdf } from '../../src/render/pdf/render-pdf.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'

optimiseLater()
const [file = ''] = process.argv.slice(2)
const stages: Record<string, number> = {}
let last = performance.now()
stages['start node, load the program'] = last

function lap(stage: string): void {
  const now = performance.now()
  stages[stage] = now - last
  last = now
}

const text = readFileSync(file)
const fontBytes = readFonts()
lap('read the files')
const { plan } = readPlan(text, file)
lap('read the plan')
const { model } = buildModel(plan!)
lap('work out the model')
check(model!, defaultWorkshop)
lap('check')
const fonts = openFonts(fontBytes)
lap('open the fonts')
const laid = layOutPacket(model!, {}, fonts, undefined)
lettersMissing(laid, fonts)
lap('draw the sheets')
const pages = [...laid.packet.pages]
lap('lay out the pages')
await import('pdfkit')
lap('load pdfkit')
await renderPdf({ ...laid.packet, pages }, fonts, '0')
lap('render')
console.log(JSON.stringify(stages))
