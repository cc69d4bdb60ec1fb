import { promisify } from 'node:util'
import { deflate } from 'node:zlib'

/** Packs bytes on a thread of its own. */
export const pack: (bytes: Uint8Array) => Promise<Uint8Array> = promisify(deflate)
