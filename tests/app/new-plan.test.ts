import fc from 'fast-check'
import { expect, test } from 'vitest'
import { newPlan, titleFromFileName, usualPlan } from '../../src/app/new-plan.ts'
import { readModel } from '../../src/app/read-model.ts'

for (const units of ['inch', 'mm'] as const) {
  test(`the usual plan in ${units} reads without a finding`, () => {
    expect(newPlan(usualPlan(units)).findings).toEqual([])
  })

  test(`so it does when every example in it is taken out of its remark, in ${units}`, () => {
    const { text } = newPlan(usualPlan(units))
    const [before, examples] = text.split(/ {4}# Take the # away.*\n {4}#\n/)
    const whole = before! + examples!.replaceAll(/^ {4}# /gm, '    ')
    const { model, findings } = readModel({ text: whole, file: 'whole.yaml' })
    expect(findings).toEqual([])
    expect(model!.parts[0]!.pieces.map(({ hand }) => hand)).toEqual(['drawn', 'mirrored'])
    expect(model!.parts[0]!.drawn.features).toHaveLength(7)
  })
}

const read = (answers: Partial<ReturnType<typeof usualPlan>>) => {
  const { text, findings } = newPlan({ ...usualPlan('inch'), ...answers })
  return { findings, model: readModel({ text, file: 'new.yaml' }).model }
}

test('the answers stand in the plan as they were given', () => {
  const { findings, model } = read({
    title: 'Loom: no. 2 #b',
    thickness: '1/2',
    part: 'Left cheek',
    size: '14 1/2 x 3',
  })
  expect(findings).toEqual([])
  expect(model!.title).toBe('Loom: no. 2 #b')
  expect(model!.parts[0]).toMatchObject({
    id: 'left-cheek',
    label: 'Left cheek',
    length: { mm: 368.3 },
    width: { mm: 76.2 },
    thickness: { mm: 12.7 },
  })
})

test('a part with letters that no reference can have keeps its name beside the plain one', () => {
  for (const [part, id] of [
    ['Règle', 'regle'],
    ['2nd rail', 'part-2nd-rail'],
    ['梁', 'part'],
  ] as const) {
    const { findings, model } = read({ part })
    expect(findings).toEqual([])
    expect(model!.parts[0]).toMatchObject({ id, label: part })
  }
})

test('what cannot stand in a plan is found', () => {
  for (const wrong of [{ size: '6' }, { size: 'six x two' }, { thickness: '0' }, { thickness: 'board' }]) {
    expect(read(wrong).findings.filter(({ severity }) => severity === 'error')).not.toEqual([])
  }
})

test('whatever the title, it comes back word for word, white space made plain, or is refused', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', minLength: 1 }), title => {
      const { findings, model } = read({ title })
      if (findings.length === 0) expect(model!.title).toBe(title.trim().replace(/\s+/g, ' '))
    }),
  )
})

test.each([
  ['pier-lamp', 'Pier lamp'],
  ['loom_2--beam', 'Loom 2 beam'],
  ['élan', 'Élan'],
  ['-', ''],
])('a file called %s holds "%s"', (name, title) => {
  expect(titleFromFileName(name)).toBe(title)
})
