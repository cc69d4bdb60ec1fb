import { dot, minus } from '../../geometry/solid/point3.ts'
import type { Face } from '../../model/part.ts'

/** What goes so deep into a face. */
type Sunk = { readonly face: Face; readonly depth: number }

/** Whether two cuts are of one face, or of front and back and at one depth somewhere: then a face shows how they lie. */
export function areOnOneFace(first: Sunk, second: Sunk): boolean {
  if (first.face.id === second.face.id) return true
  const broad = (id: string) => id === 'front' || id === 'back'
  if (!broad(first.face.id) || !broad(second.face.id)) return false
  const thickness = Math.abs(dot(minus(first.face.pose.origin, second.face.pose.origin), first.face.pose.out))
  return first.depth + second.depth > thickness
}
