import { excerpt } from '../../finding/visible.ts'
import { writeDecimal } from '../../number/write-decimal.ts'
import { fault } from '../../yaml/fault.ts'
import type { Setting } from './setting.ts'
import { value } from './value.ts'

const wanted = 'minutes or hours, such as 30 min or 24 h'
const minutesIn: Readonly<Record<string, number>> = { min: 1, minutes: 1, h: 60, hours: 60 }
const mostMinutes = 60 * 24 * 30
const decimals = 2

/** A time, in minutes; `what` it may be at most is a month. */
export const duration: Setting<number> = value(
  wanted,
  ({ text, source }, _, fail) => {
    const [, amount, word] = /^(\d{1,6}(?:\.\d+)?) *(min|minutes|h|hours)$/.exec(text) ?? []
    const minutes = Number(amount) * (minutesIn[word ?? ''] ?? Number.NaN)
    if (minutes >= 0 && minutes <= mostMinutes) return minutes
    return void fail(fault('not-a-time', source, { found: excerpt(text), wanted }))
  },
  minutes => {
    const hours = minutes / 60
    return minutes > 60 && Number.isInteger(hours) ? `${hours} h` : `${writeDecimal(minutes, decimals)} min`
  },
)
