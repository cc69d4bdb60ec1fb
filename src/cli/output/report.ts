import { type Found, terminalReport } from '../../app/index.ts'
import { paintOn } from './colours.ts'

/** Writes what was found, for people to read. */
export function report({ findings, texts, style }: Found, stream: NodeJS.WriteStream): void {
  stream.write(terminalReport(findings, { texts, style, paint: paintOn(stream) }))
}

/** Whether the check found something that would spoil the piece. */
export function hasErrors({ findings }: Pick<Found, 'findings'>): boolean {
  return findings.some(({ severity }) => severity === 'error')
}
