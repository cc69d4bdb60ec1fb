import type { Layer, Mark } from '../drawing/mark.ts'

/** From the paper up; all is black, so the order shows only in the structure of the file. */
const order: Readonly<Record<Layer, number>> = {
  paper: 0,
  cut: 1,
  drill: 2,
  engrave: 3,
  dimension: 4,
  text: 5,
}

export const layersFromPaperUp = (Object.keys(order) as Layer[]).sort((a, b) => order[a] - order[b])

/** The marks of each layer that has any, in their own order. */
export function byLayer(marks: readonly Mark[]): readonly { layer: Layer; marks: readonly Mark[] }[] {
  return layersFromPaperUp.flatMap(layer => {
    const own = marks.filter(mark => mark.layer === layer)
    return own.length > 0 ? [{ layer, marks: own }] : []
  })
}
