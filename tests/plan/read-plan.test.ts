import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { CutPlan, HolePlan, Located, PartPlan, WrittenLength } from '../../src/plan/plan.ts'
import { readPlan } from '../../src/plan/read-plan.ts'
import { planOf, withCut, withPart } from './reading.ts'

const plan = (name: string) => readFileSync(new URL(`fixtures/plans/${name}.yaml`, import.meta.url), 'utf8')
const written = (length: WrittenLength | undefined) => length?.size.written
const rectangle = (part: PartPlan | undefined) => {
  if (part?.shape.kind !== 'rectangle') throw new Error('no rectangle')
  return part.shape
}
const faces = (cut: CutPlan) => (cut.kind === 'notch' ? [cut.edge.value] : cut.on.map(value))
const diameterOf = ({ bore }: HolePlan) => (bore.kind === 'diameter' ? bore.diameter : undefined)
const value = <T>(located: Located<T> | undefined) => located?.value

describe('a plan', () => {
  const text = plan('cliff-car')
  const car = planOf(text)
  const [frame, bolster, floor] = car.parts

  it('has a title, units, precision, named sizes and stock', () => {
    expect(car).toMatchObject({ file: 'plan.yaml', version: 1, units: 'inch' })
    expect(value(car.title)).toBe('Cliff railway car, 1:16')
    expect(written(car.precision)).toBe('1/64')
    expect(car.names.map(({ name, length }) => [value(name), written(length)])).toEqual([
      ['gauge', '2 3/16'],
      ['axle', '3/16'],
      ['board', '7/16'],
    ])
    expect(car.stock.map(({ id, wood, count }) => [value(id), value(wood), value(count)])).toEqual([
      ['plank', 'hard maple', 2],
      ['block', 'yellow birch', undefined],
    ])
  })

  it('has parts with their sizes, pieces and corners', () => {
    expect(car.parts.map(({ id, make, mirrored }) => [value(id), value(make), mirrored])).toEqual([
      ['side-frame', 2, true],
      ['bolster', 2, false],
      ['floor', 1, false],
    ])
    expect(written(rectangle(frame).size.length)).toBe('6 7/8')
    expect(written(frame?.thickness)).toBe('board')
    expect(floor?.thickness).toBeUndefined()
    expect(value(frame?.from)).toBe('plank')
    expect(Object.keys(rectangle(frame).corners)).toEqual(['bottom-right', 'top-left'])
    expect(rectangle(frame).corners['bottom-right']?.kind).toBe('chamfer')
    expect([value(frame?.faceEdge), value(frame?.referenceEnd)]).toEqual(['bottom', 'left'])
  })

  it('has cuts of every kind', () => {
    expect(frame?.cuts.map(cut => [cut.kind, cut.id.value, faces(cut)])).toEqual([
      ['hole', 'front-axle', ['front']],
      ['hole', 'rear-axle', ['front']],
      ['row', 'rail-posts', ['top']],
      ['slot', 'cross-member', ['front']],
      ['notch', 'step', ['bottom']],
    ])
    const row = frame?.cuts[2]
    expect(row?.kind === 'row' && row.count.value).toBe(6)
    expect(row?.kind === 'row' && row.run).toMatchObject({
      kind: 'spacing',
      toward: { value: 'right' },
      spacing: { size: { written: '1 3/16' } },
    })
    expect(row?.kind === 'row' && row.at).toMatchObject({ kind: 'from-sides', across: { kind: 'centre' } })
    const slot = floor?.cuts[0]
    expect(slot?.kind === 'slot' && [written(slot.along), written(slot.across), slot.ends.value]).toEqual([
      'board',
      '1 1/2',
      'round',
    ])
  })

  it('keeps a label as it was meant and a note in one piece', () => {
    expect(value(floor?.label)).toBe('Floor, 7/16" board')
    expect(value(floor?.note)).toBe('The grain runs along the length.')
  })

  it('carries along what is unknown and what has no place', () => {
    const drain = floor?.cuts[1]
    expect(drain?.kind === 'hole' && diameterOf(drain)?.size.kind).toBe('unknown')
    expect(drain?.kind === 'hole' && Object.keys(drain.at)).toEqual(['kind', 'source'])
    const axle = bolster?.cuts[0]
    expect(axle?.kind === 'hole' && axle.depth?.size).toMatchObject({ kind: 'size', scaled: true })
  })

  it('says of every value where it stands', () => {
    const at = ({ from, to }: { from: number; to: number }) => text.slice(from, to)
    const sizes: WrittenLength[] = []
    const collect = (node: unknown): void => {
      if (typeof node !== 'object' || node === null) return
      if ('size' in node && 'source' in node && 'kind' in (node.size as object)) {
        sizes.push(node as WrittenLength)
      }
      for (const child of Object.values(node)) collect(child)
    }
    collect(car)
    expect(sizes.length).toBeGreaterThan(30)
    for (const { size, source } of sizes) expect(at(source)).toBe(size.written)
    expect(at(frame!.id.source)).toBe('side-frame')
    expect(at(frame!.cuts[0]!.source)).toMatch(/^hole: front-axle\n.*\n.*axle \+ 1\/64$/)
    const [axle] = frame!.cuts
    expect(axle?.kind === 'hole' && at(axle.at.source)).toBe('{ left: 1 3/16, bottom: 5/8 }')
  })

  it('is the same with a byte order mark, with CR LF and as bytes', () => {
    const bare = JSON.stringify(car, withoutSources)
    for (const other of [`\uFEFF${text}`, text.replaceAll('\n', '\r\n'), new TextEncoder().encode(text)]) {
      const { plan, findings } = readPlan(other, 'plan.yaml')
      expect(findings).toEqual([])
      expect(JSON.stringify(plan, withoutSources)).toBe(bare)
    }
  })

  it('in millimetres shows tenths unless it says otherwise', () => {
    const bracket = planOf(plan('pier-bracket'))
    expect(written(bracket.precision)).toBe('0.1')
    expect(bracket.parts[0]?.faceEdge.value).toBe('top')
    const stop = bracket.parts[0]?.cuts[1]
    expect(stop?.kind === 'hole' && written(stop.depth)).toBe('8.0')
    expect(value(stop?.note)).toBe("not through; 'brad point'")
    expect(Object.keys(rectangle(bracket.parts[1]).corners)).toHaveLength(4)
  })
})

describe('a value', () => {
  it('that looks like a number is read from its letters', () => {
    for (const size of ['0.10', '1.50', '007', '"3"', "'2 1/2'"]) {
      const [part] = planOf(withCut('hole: peg', `diameter: ${size}`)).parts
      const cut = part?.cuts[0]
      expect(cut?.kind === 'hole' && written(diameterOf(cut))).toBe(size.replace(/['"]/g, ''))
    }
  })

  it('that looks like a number, a truth or a date can be a text', () => {
    for (const label of ['12', 'true', '0x10', '2024-05-01', 'no', '1:16', '.5']) {
      expect(planOf(withPart(`label: ${label}`)).parts[0]?.label?.value).toBe(label)
    }
  })

  it('in a label keeps the writing of every language and the direction it is given', () => {
    for (const label of ['עץ אורן', '\u202Eabc', '<b>&amp;</b>', '木の板', '🪵']) {
      expect(planOf(withPart(`label: "${label}"`)).parts[0]?.label?.value).toBe(label)
    }
  })

  it('can be repeated by an alias', () => {
    const [part] = planOf(
      withPart(
        'cuts:',
        '- hole: a',
        '  at: &place { left: 1 }',
        '  diameter: 1',
        '- hole: b',
        '  at: *place',
        '  diameter: 1',
      ),
    ).parts
    const [first, second] = part!.cuts.filter(cut => cut.kind === 'hole')
    expect(first?.at).toMatchObject({ along: { side: 'left' } })
    expect(second?.at).toEqual(first?.at)
  })
})

describe('a position', () => {
  const at = (...lines: readonly string[]) => {
    const cut = planOf(withCut(...lines, 'diameter: 1')).parts[0]!.cuts[0]!
    if (cut.kind !== 'hole' || cut.at.kind !== 'from-sides') throw new Error('no hole, or not from sides')
    return cut.at
  }

  it('in the center is in the middle both ways', () => {
    for (const word of ['center', 'centre']) {
      const position = at('hole: peg', `at: ${word}`)
      expect([position.along?.kind, position.across?.kind]).toEqual(['centre', 'centre'])
    }
  })

  it('runs from front to back and from bottom to top on the ends', () => {
    const position = at('hole: peg', 'on: left', 'at: { back: 1/4, top: center }')
    expect(position.along).toMatchObject({ kind: 'from-side', side: 'back' })
    expect(position.across).toMatchObject({ kind: 'centre' })
  })

  it('that is left out in one direction is absent there', () => {
    const position = at('hole: peg', 'on: bottom', 'at: { right: 1 }')
    expect(position.along).toMatchObject({ side: 'right' })
    expect(position.across).toBeUndefined()
  })

  it('of a notch has only the direction along its edge', () => {
    const notch = planOf(withCut('notch: step', 'on: right', 'at: center', 'size: 1 x 1/2')).parts[0]?.cuts[0]
    expect(notch).toMatchObject({ kind: 'notch', edge: { value: 'right' }, at: { kind: 'centre' } })
  })
})

function withoutSources(key: string, value: unknown): unknown {
  return key === 'source' ? undefined : value
}
