import type { Unit } from '../length/unit.ts'
import { version, versionKey, workshopFile } from './file/workshop-file.ts'
import type { Workshop } from './workshop.ts'

/** A workshop as a file with remarks, every figure of it, in a unit. Reading it gives the same workshop. */
export function writeWorkshop(workshop: Workshop, unit: Unit): string {
  const lines = workshopFile.write(workshop, unit)
  return `${[...heading, `${versionKey}: ${version}`, `units: ${unit}`, ...lines].join('\n')}\n`
}

const heading = [
  '# The shop that plans are made for. Change what is different in yours and delete what is not: a figure that is',
  '# left out is the usual one. The figures are common practice; the manuals of your machines come first.',
  '',
]
