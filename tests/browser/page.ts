/** What the test's page runs: the whole job as the library gives it, with bytes as base 64 on the way in and out. */
import { printPdf, printSvg } from '../../src/app/index.ts'

/** All that a page needs to print a plan. */
export type Job = {
  readonly plan: string
  readonly file: string
  readonly version: string
  readonly regular: readonly string[]
  readonly bold: readonly string[]
}

export type Printed = {
  readonly pdf: string
  readonly svg: readonly { readonly name: string; readonly text: string }[]
  readonly rules: readonly string[]
}

const fromBase64 = (text: string): Uint8Array => Uint8Array.from(atob(text), letter => letter.charCodeAt(0))
const toBase64 = (bytes: Uint8Array): string => btoa(Array.from(bytes, b => String.fromCharCode(b)).join(''))

export async function printJob({ plan, file, version, regular, bold }: Job): Promise<Printed> {
  const around = { fonts: { regular: regular.map(fromBase64), bold: bold.map(fromBase64) }, version }
  const text = { text: plan, file }
  const { pdf, findings } = await printPdf(text, {}, around)
  if (pdf === undefined) throw new Error('nothing was printed')
  const { files } = printSvg(text, {}, around)
  const decoder = new TextDecoder()
  return {
    pdf: toBase64(pdf),
    svg: files.map(({ name, bytes }) => ({ name, text: decoder.decode(bytes) })),
    rules: findings.map(({ rule }) => rule),
  }
}

Object.assign(globalThis, { printJob })
