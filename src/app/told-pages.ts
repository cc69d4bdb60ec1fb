import type { Packet } from '../drawing/page.ts'
import type { Progress } from './inputs.ts'

/** The same packet, whose pages are told of as they are made. */
export function toldPages(packet: Packet, count: number, progress: Progress | undefined): Packet {
  if (progress === undefined) return packet
  const { pages } = packet
  return {
    ...packet,
    pages: {
      *[Symbol.iterator]() {
        for (const page of pages) {
          progress(page.number, count)
          yield page
        }
      },
    },
  }
}
