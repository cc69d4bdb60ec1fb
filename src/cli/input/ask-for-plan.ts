import { jsonReport, type NewPlan, newPlan, usualPlan } from '../../app/index.ts'
import { visible } from '../../finding/visible.ts'
import type { Shell } from '../shell.ts'
import { type Ask, withQuestions } from './questions.ts'

/** Asks what a plan is begun with. What cannot stand in a plan is said at once, and asked again. */
export function askForPlan(
  usual: NewPlan,
  units: NewPlan['units'] | undefined,
  shell: Shell,
): Promise<NewPlan> {
  return withQuestions(shell, async ask => {
    let plan = await answer(ask, 'What is it called', usual, 'title')
    if (units === undefined) {
      const unit = await ask('inch or mm', usual.units, given =>
        given === 'inch' || given === 'mm' ? undefined : 'answer inch or mm',
      )
      plan = { ...usualPlan(unit === 'mm' ? 'mm' : 'inch'), title: plan.title }
    }
    plan = await answer(ask, 'How thick is the board', plan, 'thickness')
    plan = await answer(ask, 'What is the first part called', plan, 'part')
    return answer(ask, 'Its length x width', plan, 'size')
  })
}

async function answer(
  ask: Ask,
  question: string,
  plan: NewPlan,
  key: 'title' | 'thickness' | 'part' | 'size',
) {
  const given = await ask(question, plan[key], text => complaint({ ...plan, [key]: text }))
  return { ...plan, [key]: given }
}

/** The first thing that is wrong with a plan. A note, such as one on a small piece, is for the check to say. */
function complaint(plan: NewPlan): string | undefined {
  const { findings, texts, style } = newPlan(plan)
  const [first] = jsonReport(undefined, findings, texts, style).findings.filter(f => f.severity === 'error')
  return first === undefined ? undefined : visible(first.message)
}
