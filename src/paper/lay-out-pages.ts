import type { Drawing } from '../drawing/drawing.ts'
import type { Page, Paper } from '../drawing/page.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import { identity, shift } from '../geometry/shape/matrix.ts'
import type { Unit } from '../length/unit.ts'
import { coincident } from '../number/tolerance.ts'
import type { Fonts } from '../text/fonts.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { type Frame, frameOf } from './frame.ts'
import { furniture } from './furniture.ts'
import { lying, upright } from './papers.ts'

/** A sheet as it comes to paper: the same content arranged in one way or another, the best first. */
export type Arrangements = { readonly id: string; readonly drawings: readonly Drawing[] }

/** A sheet that no arrangement of fits the paper, with the room it wants and the room there is, in millimetres. */
export type Misfit = {
  readonly id: string
  readonly wanted: { readonly width: number; readonly height: number }
  readonly available: { readonly width: number; readonly height: number }
}

export type LaidPages = {
  readonly count: number
  /** The pages, each made when it is asked for. */
  readonly pages: Iterable<Page>
  readonly misfits: readonly Misfit[]
}

/**
 * One sheet a page, in the order given, true to size. The paper stands upright where an arrangement fits so, else
 * it lies; what fits neither way is left out and named.
 */
export function layOutPages(
  sheets: readonly Arrangements[],
  paper: Paper,
  units: Unit,
  workshop: Workshop,
  fonts: Fonts,
): LaidPages {
  const frames = [frameOf(upright(paper), workshop), frameOf(lying(paper), workshop)]
  const chosen: Chosen[] = []
  const misfits: Misfit[] = []
  for (const sheet of sheets) {
    const fit = firstFit(sheet, frames)
    if (fit === undefined) misfits.push(misfit(sheet, frames))
    else chosen.push(fit)
  }
  return {
    count: chosen.length,
    pages: { [Symbol.iterator]: () => makePages(chosen, units, fonts) },
    misfits,
  }
}

type Chosen = { readonly drawing: Drawing; readonly frame: Frame }

function firstFit(sheet: Arrangements, frames: readonly Frame[]): Chosen | undefined {
  for (const frame of frames) {
    for (const drawing of sheet.drawings) if (fits(drawing, frame)) return { drawing, frame }
  }
  return undefined
}

function fits(drawing: Drawing, frame: Frame): boolean {
  const wanted = sizeOf(drawing.bounds)
  const available = sizeOf(frame.body)
  return wanted.width <= available.width + coincident && wanted.height <= available.height + coincident
}

/** The arrangement that comes nearest to fitting, and the page, upright or lying, on which it does. */
function misfit({ id, drawings }: Arrangements, frames: readonly Frame[]): Misfit {
  const tried = frames.flatMap(frame =>
    drawings.map(drawing => {
      const wanted = sizeOf(drawing.bounds)
      const available = sizeOf(frame.body)
      const over = (side: 'width' | 'height'): number => Math.max(0, wanted[side] - available[side])
      return { wanted, available, over: over('width') + over('height') }
    }),
  )
  const { wanted, available } = tried.reduce((best, next) => (next.over < best.over ? next : best))
  return { id, wanted, available }
}

function sizeOf({ left, bottom, right, top }: Bounds): { width: number; height: number } {
  return { width: right - left, height: top - bottom }
}

function* makePages(chosen: readonly Chosen[], units: Unit, fonts: Fonts): Generator<Page> {
  for (const [i, { drawing, frame }] of chosen.entries()) {
    yield {
      paper: frame.paper,
      number: i + 1,
      // in the upper left of the body, where a page is begun
      placed: [
        {
          drawing,
          matrix: shift(frame.body.left - drawing.bounds.left, frame.body.top - drawing.bounds.top),
        },
      ],
      furniture: furniture(
        frame,
        { caption: drawing.caption, number: i + 1, count: chosen.length, units },
        fonts,
      ),
      correction: identity,
    }
  }
}
