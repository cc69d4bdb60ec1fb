import type { End, Join } from './options.ts'

/**
 * The points that a straight join leads through between the ends a and b of the two offset edges at a corner;
 * none for a bevel.
 *
 * Laws: a mitre's tip lies on both offset edges run on along their directions, at |delta|/cos(half the turn)
 * from the corner; a bevel is the straight edge from a to b, nowhere nearer to the corner than
 * |delta|·cos(half the turn).
 *
 * @param ax unit direction of travel of the edge before the corner
 * @param bx unit direction of travel of the edge after it
 */
export function cornerTips(
  join: Exclude<Join, 'round'>,
  mitreLimit: number,
  delta: number,
  vx: number,
  vy: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
): readonly number[] {
  if (join === 'bevel') return []
  const dot = ax * bx + ay * by
  if (!(mitreReach(dot) <= mitreLimit)) return []
  const scale = delta / (1 + dot)
  return [vx + scale * (ay + by), vy - scale * (ax + bx)]
}

/**
 * How far a mitre's tip lies from its corner, as a multiple of the offset: 1/cos(half the turn).
 *
 * @param dot cosine of the turn between the two directions
 */
export function mitreReach(dot: number): number {
  return dot <= -1 ? Number.POSITIVE_INFINITY : Math.sqrt(2 / (1 + dot))
}

/**
 * The points that a straight end leads through; none for a flat one. Laws: a flat end runs straight through
 * the end point; a square one runs |delta| beyond it, square to the path.
 *
 * @param tx unit direction in which the path arrives at its end
 */
export function endTips(
  end: Exclude<End, 'round'>,
  delta: number,
  vx: number,
  vy: number,
  tx: number,
  ty: number,
): readonly number[] {
  if (end === 'flat') return []
  const reach = Math.abs(delta)
  const x = vx + reach * tx
  const y = vy + reach * ty
  return [x + delta * ty, y - delta * tx, x - delta * ty, y + delta * tx]
}
