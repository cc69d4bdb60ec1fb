import { readdir, readFile } from 'node:fs/promises'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { SaxesParser } from 'saxes'
import { expect } from 'vitest'
import { soundPlan, testInFolder } from './call.ts'

const title = '</title><script>alert(1)</script> & "Rack" ]]>'
/** Right to left, from a letter on and by command; the Hebrew is not in the font. */
const label = 'rail \u202eabc\u202c \u05e9 <b>&amp;</b>'

const plan = soundPlan
  .replace('title: Bobbin rack', `title: ${JSON.stringify(title)}`)
  .replace('  rail:\n', `  rail:\n    label: ${JSON.stringify(label)}\n`)

/** Where a letter that cannot be seen, or that the font lacks, is printed as its code. */
const printedLabel = 'rail [U+202E]abc[U+202C] [U+05E9] <b>&amp;</b>'

testInFolder('markup and right-to-left text in labels are shown as text in the PDF', async folder => {
  await folder.write('rack.yaml', plan)
  const { code, err } = await folder.call(['print', 'rack.yaml', '--sheet', 'template'])
  expect(code).toBe(0)
  expect(err).toContain('warning: the font has no picture of U+202E, U+202C, U+05E9')
  const data = new Uint8Array(await readFile(folder.in('rack.pdf')))
  const document = await getDocument({ data, verbosity: 0 }).promise
  const { info } = (await document.getMetadata()) as { info: { Title?: string } }
  expect(info.Title).toBe(title)
  const { items } = await (await document.getPage(1)).getTextContent()
  const text = items.map(item => ('str' in item ? item.str : '')).join('')
  expect(text).toContain(printedLabel)
  expect(text).toContain(title)
})

testInFolder('markup and right-to-left text in labels are no markup in the SVG files', async folder => {
  await folder.write('rack.yaml', plan)
  expect((await folder.call(['svg', 'rack.yaml', '--sheet', 'template'])).code).toBe(0)
  const names = await readdir(folder.in('rack'))
  expect(names).toHaveLength(2)
  for (const name of names) {
    const { elements, text } = readXml(await readFile(folder.in(`rack/${name}`), 'utf8'))
    expect([...elements].filter(element => ['script', 'b'].includes(element))).toEqual([])
    if (name.startsWith('page')) expect(text).toContain(title)
  }
})

function readXml(xml: string): { readonly elements: ReadonlySet<string>; readonly text: string } {
  const elements = new Set<string>()
  let text = ''
  const parser = new SaxesParser()
  parser.on('error', error => {
    throw error
  })
  parser.on('opentag', ({ name, attributes }) => {
    elements.add(name)
    text += Object.values(attributes).join('\n')
  })
  parser.on('text', piece => {
    text += piece
  })
  parser.write(xml).close()
  return { elements, text }
}
