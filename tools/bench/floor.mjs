// The least that a PDF of these marks can cost: pdfkit by itself, told what to draw. Plain JavaScript, no build.
//   node floor.mjs MARKS.json OUT.pdf [PAGES]     as many pages, those of the file over and over
import { createWriteStream, readFileSync } from 'node:fs'
import PDFDocument from 'pdfkit'

const [marks, out, count] = process.argv.slice(2)
const { pages, fonts } = JSON.parse(readFileSync(marks, 'utf8'))
const document = new PDFDocument({ autoFirstPage: false, font: null, pdfVersion: '1.7' })
document.pipe(createWriteStream(out))
for (let i = 0; i < Number(count ?? pages.length); i++) {
  const { width, height, paths, texts } = pages[i % pages.length]
  document.addPage({ size: [width, height], margin: 0 })
  for (const { lineWidth, dashes, curves, fill } of paths) {
    for (const [kind, ...at] of curves) {
      if (kind === 'm') document.moveTo(...at)
      else if (kind === 'l') document.lineTo(...at)
      else if (kind === 'c') document.bezierCurveTo(...at)
      else document.closePath()
    }
    if (fill) document.fill('even-odd')
    else {
      document.lineWidth(lineWidth)
      if (dashes.length > 0) document.dash(dashes[0], { space: dashes[1] })
      else document.undash()
      document.stroke()
    }
  }
  for (const { weight, size, at, angle, text } of texts) {
    document.save().rotate(angle, { origin: at })
    document
      .font(fonts[weight])
      .fontSize(size)
      .text(text, at[0], at[1], { lineBreak: false, baseline: 'alphabetic' })
    document.restore()
  }
}
document.end()
