import { SaxesParser } from 'saxes'
import type { Found } from '../../src/app/found.ts'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { jsonReport } from '../../src/finding/report/json.ts'
import { terminalReport } from '../../src/finding/report/terminal.ts'
import { surroundings } from './surroundings.ts'

const text = (input: string | Uint8Array) => ({ text: input, file: 'plan.yaml' })

/** Far more than the whole demo takes on one large sheet of paper. */
const longestPage = 20_000_000

/** Letters of one finding in a report, with the line that it quotes. */
const longestFinding = 2_000

/**
 * Prints any input as SVG and holds the program to its promise: pages, or findings that say why there are none;
 * never an exception. Throws an error that says which promise was broken.
 */
export function keptAsSvg(input: string | Uint8Array, paper?: string): { readonly pages: number } {
  const printed = printSvg(text(input), paper === undefined ? {} : { paper }, surroundings)
  reported(printed)
  saysWhyNone(printed.pages, printed)
  const names = printed.files.map(f => f.name)
  promise(new Set(names).size === names.length, 'a name of its own for every file')
  promise(names.filter(n => n.startsWith('page-')).length === printed.pages, 'a file for every page')
  for (const { name, bytes } of printed.files) {
    promise(/^[a-z0-9-]+\.svg$/.test(name), 'plain file names')
    promise(bytes.length > 0 && bytes.length < longestPage, 'files of bounded size')
    const parser = new SaxesParser({ xmlns: true })
    parser.on('error', error => {
      throw error
    })
    parser.write(new TextDecoder().decode(bytes)).close()
  }
  return printed
}

/** The same as one PDF. */
export async function keptAsPdf(
  input: string | Uint8Array,
  paper?: string,
): Promise<{ readonly pages: number }> {
  const printed = await printPdf(text(input), paper === undefined ? {} : { paper }, surroundings)
  reported(printed)
  saysWhyNone(printed.pages, printed)
  promise((printed.pdf === undefined) === (printed.pages === 0), 'a PDF exactly where there are pages')
  if (printed.pdf !== undefined) {
    const start = new TextDecoder('latin1').decode(printed.pdf.subarray(0, 5))
    promise(start === '%PDF-', 'a PDF that begins as one')
    promise(printed.pdf.length < longestPage * printed.pages, 'a file of bounded size')
  }
  return printed
}

function saysWhyNone(pages: number, { findings }: Found): void {
  promise(pages > 0 || findings.some(f => f.severity === 'error'), 'pages, or an error that says why not')
}

/** Whatever is found can be reported, in bounded words. */
function reported({ findings, texts, style }: Found): void {
  const report = terminalReport(findings, { texts, style })
  promise(report.length <= longestFinding * (findings.length + 1), 'a bounded report')
  promise(jsonReport(undefined, findings, texts, style).findings.length === findings.length, 'every finding')
}

function promise(kept: boolean, what: string): void {
  if (!kept) throw new Error(`the program promises ${what}`)
}
