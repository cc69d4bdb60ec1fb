import { CallError } from '../call-error.ts'

/** The last second that JavaScript, and a PDF's year of four digits, can say. */
const lastSecond = Date.UTC(9999, 11, 31, 23, 59, 59) / 1000

/**
 * The date that files say they were made. None unless SOURCE_DATE_EPOCH gives one, so that the same plan gives the same
 * bytes today and tomorrow.
 *
 * Source: https://reproducible-builds.org/specs/source-date-epoch/
 *
 * @throws CallError where the variable holds anything but seconds since 1970
 */
export function fileDate(environment: NodeJS.ProcessEnv): Date | undefined {
  const written = environment.SOURCE_DATE_EPOCH
  if (written === undefined || written === '') return undefined
  const seconds = Number(written)
  if (!/^\d+$/.test(written) || seconds > lastSecond) {
    throw new CallError(`SOURCE_DATE_EPOCH is ${JSON.stringify(written)}; it counts whole seconds since 1970`)
  }
  return new Date(seconds * 1000)
}
