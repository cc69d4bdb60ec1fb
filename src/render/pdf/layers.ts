import type { Layer } from '../../drawing/mark.ts'
import { layersFromPaperUp } from '../by-layer.ts'
import type { ByteSink } from './byte-sink.ts'
import type { PdfDocument, Reference } from './document.ts'
import { textString } from './text-string.ts'

/** The layers of a document, which a viewer lists and can hide: optional content of ISO 32000-1, 8.11. */
export type Layers = {
  /** What is written to the document's last page until {@link Layers.close} is on the layer. */
  readonly open: (layer: Layer, out: ByteSink) => void
  readonly close: (out: ByteSink) => void
  readonly finish: () => void
}

export function layers(document: PdfDocument): Layers {
  const used = new Map<Layer, Reference>()
  const groupOf = (layer: Layer): Reference => {
    const known = used.get(layer)
    if (known !== undefined) return known
    const made = document.ref({ Type: 'OCG', Name: textString(layer) })
    document.endInTurn(made)
    used.set(layer, made)
    return made
  }
  return {
    open: (layer, out) => {
      const resources = document.page.resources.data
      const named = (resources.Properties ?? {}) as Record<string, Reference>
      named[layer] = groupOf(layer)
      resources.Properties = named
      out.addLine(`/OC /${layer} BDC`)
    },
    close: out => {
      out.addLine('EMC')
    },
    finish: () => {
      if (used.size === 0) return
      const groups = layersFromPaperUp.flatMap(layer => used.get(layer) ?? [])
      document._root.data.OCProperties = { OCGs: groups, D: { Order: groups } }
    },
  }
}
