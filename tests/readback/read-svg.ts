import { SaxesParser } from 'saxes'
import {
  after,
  magnification,
  movedCurve,
  type ReadBack,
  type ReadChain,
  type ReadCurve,
  type ReadText,
  type Six,
} from './read-back.ts'
import { readPathData } from './svg-path.ts'

type Element = {
  readonly name: string
  readonly style: Readonly<Record<string, string>>
  readonly ctm: Six
  readonly groups: readonly string[]
  /** Set by a child `title`. */
  title: string | undefined
}

const inherited = ['fill', 'stroke', 'stroke-width', 'stroke-dasharray', 'fill-rule', 'stroke-linejoin']

/** An SVG file of ours, read with saxes and this folder's reader of path data. */
export function readSvg(text: string): ReadBack {
  const parser = new SaxesParser({ xmlns: true })
  const stack: Element[] = []
  const chains: ReadChain[] = []
  const texts: ReadText[] = []
  const ids = new Set<string>()
  let size = { width: 0, height: 0 }
  let inTitle = ''

  parser.on('error', error => {
    throw error
  })
  parser.on('text', piece => {
    inTitle += piece
  })
  parser.on('opentag', ({ local, attributes }) => {
    const given = Object.fromEntries(Object.entries(attributes).map(([name, a]) => [name, a.value]))
    const parent = stack.at(-1)
    if (given.id !== undefined) {
      if (ids.has(given.id)) throw new Error(`two elements are called ${given.id}`)
      if (!/^[A-Za-z_][A-Za-z0-9_.-]*$/.test(given.id)) throw new Error(`${given.id} is no valid id`)
      ids.add(given.id)
    }
    let ctm = parent?.ctm
    if (ctm === undefined) {
      const read = root(given)
      size = read.size
      ctm = read.ctm
    } else if (given.transform !== undefined) {
      ctm = after(ctm, transform(given.transform))
    }
    const own = Object.entries(given).filter(([name]) => inherited.includes(name))
    const element: Element = {
      name: local,
      style: { ...parent?.style, ...Object.fromEntries(own) },
      ctm,
      groups: [...(parent?.groups ?? []), ...(given.id === undefined ? [] : [given.id])],
      title: undefined,
    }
    stack.push(element)
    if (local === 'title') inTitle = ''
    if (local === 'path' || local === 'circle') {
      const shape = local === 'path' ? readPathData(given.d ?? '') : [wholeCircle(given)]
      if (parent?.title !== undefined)
        texts.push({ ...outlines(parent.title, shape, ctm), groups: element.groups })
      else chains.push(...shape.map(chain => painted(chain, element)))
    } else if (!['svg', 'g', 'title'].includes(local)) {
      throw new Error(`a file of ours has no element ${local}`)
    }
  })
  parser.on('closetag', () => {
    const element = stack.pop()!
    // only groups of letters are named for what they read; those of drawings carry an id
    const parent = stack.at(-1)
    if (element.name === 'title' && parent !== undefined && parent.name === 'g' && !named(parent, stack)) {
      parent.title = inTitle
    }
  })
  parser.write(text).close()
  return { ...size, chains, texts }
}

/** Whether an element has an id of its own. */
function named(element: Element, stack: readonly Element[]): boolean {
  return element.groups.length > (stack.at(-2)?.groups.length ?? 0)
}

function root(given: Readonly<Record<string, string>>): {
  size: { width: number; height: number }
  ctm: Six
} {
  const mm = (value: string | undefined): number => {
    const match = /^([\d.]+)mm$/.exec(value ?? '')
    if (match === null) throw new Error(`${value} is no size in millimetres`)
    return Number(match[1])
  }
  const [width, height] = [mm(given.width), mm(given.height)]
  const [x, y, w, h] = (given.viewBox ?? '').split(' ').map(Number) as [number, number, number, number]
  const [sx, sy] = [width / w, height / h]
  return { size: { width, height }, ctm: [sx, 0, 0, -sy, -x * sx, height + y * sy] }
}

function transform(value: string): Six {
  const match = /^matrix\(([^)]*)\)$/.exec(value)
  const six = match?.[1]?.split(' ').map(Number)
  if (six?.length !== 6 || six.some(Number.isNaN)) throw new Error(`cannot read the transform ${value}`)
  return six as unknown as Six
}

function painted(
  chain: { curves: readonly ReadCurve[]; closed: boolean },
  { style, ctm, groups }: Element,
): ReadChain {
  const scale = magnification(ctm)
  const stroke = style.stroke !== 'none'
  if (stroke === (style.fill !== 'none')) throw new Error('a mark is either a stroke or a fill')
  const dashes = (style['stroke-dasharray'] ?? '').split(' ').filter(d => d !== '')
  return {
    paint: stroke ? 'stroke' : 'fill',
    curves: chain.curves.map(c => movedCurve(ctm, c)),
    closed: chain.closed,
    width: stroke ? Number(style['stroke-width']) * scale : 0,
    dashes: stroke ? dashes.map(d => Number(d) * scale) : [],
    groups,
  }
}

function outlines(
  text: string,
  shape: readonly { curves: readonly ReadCurve[] }[],
  ctm: Six,
): Omit<ReadText, 'groups'> {
  const points = shape.flatMap(({ curves }) => curves.map(c => movedCurve(ctm, c).at(0)))
  return { text, place: { kind: 'outlines', points } }
}

function wholeCircle(given: Readonly<Record<string, string>>): { curves: ReadCurve[]; closed: boolean } {
  const [cx, cy, r] = [Number(given.cx), Number(given.cy), Number(given.r)]
  const quarter = (n: number): ReadCurve => ({
    kind: 'curve',
    at: t => ({
      x: cx + r * Math.cos(((n + t) * Math.PI) / 2),
      y: cy + r * Math.sin(((n + t) * Math.PI) / 2),
    }),
  })
  return { curves: [0, 1, 2, 3].map(quarter), closed: true }
}
