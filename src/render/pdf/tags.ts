import { drawingInWords } from '../../drawing/in-words.ts'
import type { Placed } from '../../drawing/page.ts'
import { legible } from '../../text/shown.ts'
import type { ByteSink } from './byte-sink.ts'
import type { PdfDocument, Reference } from './document.ts'
import { textString } from './text-string.ts'

/** Left, bottom, right and top in points from the lower left corner of the paper. */
export type PointBox = readonly [number, number, number, number]

/**
 * What a document says to somebody who has it read aloud, as the structure of ISO 32000-1, 14.7 and 14.8: a section
 * for each page, in it the drawings one after another, of each first the picture, told by its words, and then its
 * lines of text. What every page carries for the paper's sake is not part of it.
 */
export type Tags = {
  /** Begins the section of the document's last page; its content is written before the next page begins. */
  readonly page: () => PageTags
  readonly finish: () => void
}

export type PageTags = {
  readonly drawing: (placed: Placed, box: PointBox) => DrawingTags
  /** What is written until {@link PageTags.close} is furniture. */
  readonly openFurniture: (out: ByteSink) => void
  readonly close: (out: ByteSink) => void
  readonly finish: () => void
}

export type DrawingTags = {
  /** What is written until {@link PageTags.close} belongs to the picture. */
  readonly openPicture: (out: ByteSink) => void
  /** What is written until {@link PageTags.close} is one line of text. */
  readonly openLine: (out: ByteSink) => void
}

export function tags(document: PdfDocument): Tags {
  const root = document._root.data.StructTreeRoot as Reference
  const whole = document.ref({ S: 'Document', P: root })
  const sections: Reference[] = []
  /** For each page its number here and the array of the owners of what is on it. */
  const parents: (number | Reference)[] = []
  return {
    page: () => {
      const key = sections.length
      const section = document.ref({ S: 'Sect', P: whole })
      const owners: Reference[] = []
      const ownersArray = document.ref(owners)
      document.page.dictionary.data.StructParents = key
      sections.push(section)
      parents.push(key, ownersArray)
      const drawings: (() => readonly Reference[])[] = []
      return {
        drawing: (placed, box) => {
          const made = drawingTags(document, section, owners, placed, box)
          drawings.push(made.finish)
          return made
        },
        openFurniture: out => {
          out.addLine('/Artifact <</Type /Pagination>> BDC')
        },
        close: out => {
          out.addLine('EMC')
        },
        finish: () => {
          section.data.K = drawings.flatMap(finishDrawing => finishDrawing())
          section.end()
          ownersArray.end()
          // both are in the file; the next pages need the room
          delete section.data.K
          owners.length = 0
        },
      }
    },
    finish: () => {
      whole.data.K = sections
      whole.end()
      root.data.K = [whole]
      root.data.ParentTree = { Nums: parents }
      root.data.ParentTreeNextKey = sections.length
    },
  }
}

/** `owners` tells of each marked content of the page, in turn, which element it belongs to. */
function drawingTags(
  document: PdfDocument,
  section: Reference,
  owners: Reference[],
  placed: Placed,
  box: PointBox,
): DrawingTags & { readonly finish: () => readonly Reference[] } {
  const page = document.page.dictionary
  const open = (tag: string, owner: Reference, out: ByteSink): number => {
    const content = owners.push(owner) - 1
    out.addLine(`/${tag} <</MCID ${content}>> BDC`)
    return content
  }
  let figure: Reference | undefined
  const pictures: number[] = []
  const lines: Reference[] = []
  return {
    openPicture: out => {
      figure ??= document.ref({
        S: 'Figure',
        P: section,
        Pg: page,
        Alt: textString(legible(drawingInWords(placed.drawing))),
        A: { O: 'Layout', Placement: 'Block', BBox: box },
        K: pictures,
      })
      pictures.push(open('Figure', figure, out))
    },
    openLine: out => {
      const line = document.ref({ S: 'P', P: section, Pg: page })
      line.data.K = open('P', line, out)
      document.endInTurn(line)
      lines.push(line)
    },
    finish: () => {
      figure?.end()
      return figure === undefined ? lines : [figure, ...lines]
    },
  }
}
