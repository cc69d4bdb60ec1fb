import { type Finding, type Found, terminalReport, usualStyle } from '../../app/index.ts'
import { paintOn } from './colours.ts'

/** Writes what was found, for people to read. */
export function report({ findings, texts, style }: Found, stream: NodeJS.WriteStream): void {
  stream.write(terminalReport(findings, { texts, style, paint: paintOn(stream) }))
}

/** Whether the check found something that would spoil the piece. */
export function hasErrors({ findings }: Pick<Found, 'findings'>): boolean {
  return findings.some(({ severity }) => severity === 'error')
}

/** What is wrong with the words of a call, which stand in no file. */
export function foundInCall(...findings: readonly Finding[]): Found {
  return { findings, texts: new Map(), style: usualStyle.mm }
}
