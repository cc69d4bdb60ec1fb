import type { Bored } from '../../model/inside/bored.ts'
import type { Hollow } from '../../model/inside/hollow.ts'

export function isBored(cut: Bored | Hollow): cut is Bored {
  return 'axis' in cut
}
