import type { Mark } from '../../drawing/mark.ts'
import { byLayer } from '../by-layer.ts'

/**
 * Marks as groups: one a layer, in it one a subject, then what has no subject. Ids are the names joined by
 * points, "side-frame.cut.front-axle", so that an editor shows what is what; ids have to be unique in a file, so
 * the plain name of the layer stands in `data-layer`, by which a program finds all that is to be cut.
 */
export function layerGroups(
  name: string,
  marks: readonly Mark[],
  uniqueId: (name: string) => string,
  elements: (mark: Mark) => readonly string[],
): readonly string[] {
  return byLayer(marks).flatMap(layer => {
    const subjects = new Map<string | undefined, Mark[]>()
    for (const mark of layer.marks) {
      const own = subjects.get(mark.subject)
      if (own === undefined) subjects.set(mark.subject, [mark])
      else own.push(mark)
    }
    const inside = [...subjects].flatMap(([subject, own]) => {
      const lines = own.flatMap(elements)
      return subject === undefined ? lines : group(uniqueId(`${name}.${layer.layer}.${subject}`), lines)
    })
    return group(uniqueId(`${name}.${layer.layer}`), inside, ` data-layer="${layer.layer}"`)
  })
}

/** Nothing for nothing: an editor lists empty groups too. */
export function group(id: string, content: readonly string[], attributes = ''): readonly string[] {
  return content.length === 0 ? [] : [`<g id="${id}"${attributes}>`, ...content, '</g>']
}
