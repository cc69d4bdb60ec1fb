import type { Progress } from '../../app/index.ts'

/** Work that is done sooner needs no counting. */
const patience = 500
/** Nobody reads faster, and writing takes time. */
const between = 100

export type Counter = { readonly tell: Progress; readonly clear: () => void }

/**
 * Counts pages on a terminal while they are made, once that has taken longer than half a second, and wipes the line when
 * it is done. In a pipe it says nothing. `now` is in milliseconds.
 */
export function pageCounter(
  stream: Pick<NodeJS.WriteStream, 'isTTY' | 'write'>,
  now: () => number = () => performance.now(),
): Counter {
  if (stream.isTTY !== true) return { tell: () => undefined, clear: () => undefined }
  const started = now()
  let last: number | undefined
  return {
    tell: (page, count) => {
      const at = now()
      if (at - started < patience || (last !== undefined && at - last < between)) return
      last = at
      stream.write(`\r${wipe}page ${page} of ${count}`)
    },
    clear: () => {
      if (last !== undefined) stream.write(`\r${wipe}`)
      last = undefined
    },
  }
}

/** The control sequence that empties the line from here on. Source: ECMA-48, EL */
const wipe = '\x1b[K'
