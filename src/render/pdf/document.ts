import type { Packet } from '../../drawing/page.ts'
import { legible } from '../../text/shown.ts'
import { xmlText } from '../xml-text.ts'
import { ByteSink } from './byte-sink.ts'

/** An object of the file that is written when it is ended. */
export type Reference = {
  readonly data: Record<string, unknown>
  write(chunk: string): void
  end(chunk?: string): void
}

/** What a page shows, as the library holds it until the page ends. */
export type PageStream = Reference & { buffer: readonly Uint8Array[]; compress: boolean }

/** A font that is being embedded: it gives the codes of letters and notes which of them the file needs. */
export type EmbeddedFont = {
  readonly id: string
  /** Codes of four hexadecimal digits, and positions that we do not use. */
  encode(text: string): readonly [readonly string[], unknown]
  ref(): Reference
}

/** An entry of the list of contents, or the whole list. A new entry leads to the document's last page. */
export type OutlineItem = {
  addItem(title: string, options: { readonly fit: boolean; readonly expanded: boolean }): OutlineItem
}

/**
 * As much of a pdfkit document as we use. Names with an underline are not part of its public face: the version
 * is pinned, and tests read the finished bytes.
 */
type LibraryDocument = {
  readonly page: {
    readonly height: number
    readonly content: PageStream
    readonly fonts: Record<string, Reference>
    readonly dictionary: Reference
    readonly resources: Reference
  }
  readonly outline: OutlineItem
  info: { CreationDate?: Date } & Readonly<Record<string, string | Date>>
  _addInfo(): void
  _write(piece: Uint8Array | string): void
  _offset: number
  readonly _root: Reference
  readonly _font: EmbeddedFont
  addPage(options: { size: readonly [number, number]; margin: number }): void
  addContent(operators: Uint8Array): void
  ref(data?: Record<string, unknown> | readonly unknown[]): Reference
  font(bytes: Uint8Array): void
  end(): void
}

export type PdfDocument = LibraryDocument & {
  /** Ends an object in its turn, behind the content of the page before, which may still be packed. */
  endInTurn(object: Reference): void
  /** Writes the objects whose turn has come. */
  endWaiting(): void
}

/** A document that is being written, and what is written of it: all of it once it has ended. */
export type OpenDocument = { readonly document: PdfDocument; readonly written: ByteSink }

type PdfKit = new (options: object) => LibraryDocument

/** The library makes the file's identity from a date, so it gets one even where the file is to say none. */
const noDate = new Date(0)

/** Opens a document without pages. The library is loaded here, when the first PDF is asked for. */
export async function openDocument(packet: Packet, producer: string): Promise<OpenDocument> {
  const { default: PDFDocument } = await import('pdfkit')
  const written = new ByteSink()
  // the library's stream would keep every piece, most of them a line of a few bytes, until somebody reads it
  class Document extends (PDFDocument as unknown as PdfKit) {
    readonly waiting: Reference[] = []
    endInTurn(object: Reference): void {
      this.waiting.push(object)
    }
    endWaiting(): void {
      for (const object of this.waiting.splice(0)) object.end()
    }
    override _write(piece: Uint8Array | string): void {
      if (typeof piece === 'string') written.addLine(piece)
      else written.add(piece)
      this._offset = written.length
    }
    push(): boolean {
      return true
    }
  }
  const options = {
    autoFirstPage: false,
    font: null,
    pdfVersion: '1.7',
    lang: legible(packet.language),
    displayTitle: true,
    tagged: true,
    info: {
      Title: legible(packet.title),
      Producer: legible(producer),
      Creator: legible(producer),
      CreationDate: packet.date ?? noDate,
    },
  }
  const document = new Document(options)
  if (packet.date === undefined) delete document.info.CreationDate
  const preferences = document._root.data.ViewerPreferences as Reference
  // what the print dialogue is asked to begin with: the size left alone, the tray with the page's own paper, and
  // nothing on the back of what is cut up
  preferences.data.PrintScaling = 'None'
  preferences.data.PickTrayByPDFSize = true
  preferences.data.Duplex = 'Simplex'
  escapeMetadata(document)
  return { document, written }
}

/** The library copies title and names into a piece of XML as they are, where a title may hold markup. */
function escapeMetadata(document: PdfDocument): void {
  const addInfo = document._addInfo
  document._addInfo = () => {
    const info = document.info
    // the library wants a date in it; a file that is to say none goes without this copy of its properties
    if (info.CreationDate === undefined) return
    const escaped = Object.entries(info).map(([key, v]) => [key, typeof v === 'string' ? xmlText(v) : v])
    document.info = Object.fromEntries(escaped)
    addInfo.call(document)
    document.info = info
  }
}
