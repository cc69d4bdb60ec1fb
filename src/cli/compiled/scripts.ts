import { readFileSync, renameSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { Script } from 'node:vm'

/** The scripts of a folder, each loaded when it is first asked for. */
export type Scripts = {
  /** What a script of the folder gives to others. */
  readonly load: (name: string) => unknown
  /** Writes beside every loaded script what the engine has compiled of it so far. */
  readonly keep: () => void
}

/**
 * The CommonJS scripts of a folder, loaded with the functions that the engine compiled for the build, so that a run
 * need not compile them anew. The engine takes them only where it is the same version with the same flags; where it
 * does not, and where there are none, it compiles as always.
 */
export function scriptsOf(folder: string): Scripts {
  const outside = createRequire(join(folder, 'scripts.cjs'))
  const require = (wanted: string): unknown =>
    wanted.startsWith('./') ? load(wanted.slice(2)) : outside(wanted)
  const loaded = new Map<string, { readonly script: Script; readonly module: { exports: unknown } }>()
  const load = (name: string): unknown => {
    const known = loaded.get(name)
    if (known !== undefined) return known.module.exports
    const path = join(folder, name)
    const compiled = readIfThere(compiledOf(path))
    const script = new Script(wrapped(readFileSync(path, 'utf8')), {
      filename: path,
      ...(compiled === undefined ? {} : { cachedData: compiled }),
    })
    const module = { exports: {} }
    loaded.set(name, { script, module })
    script.runInThisContext()(module.exports, require, module, path, folder)
    return module.exports
  }
  return {
    load,
    keep: () => {
      for (const [name, { script }] of loaded) {
        const kept = compiledOf(join(folder, name))
        writeFileSync(`${kept}.part`, script.createCachedData())
        renameSync(`${kept}.part`, kept)
      }
    },
  }
}

/** A script as the function that CommonJS calls; on one line with the script's first, so that places in it stay. */
export function wrapped(source: string): string {
  return `(function (exports, require, module, __filename, __dirname) {${source}\n})`
}

export function compiledOf(path: string): string {
  return `${path}.compiled`
}

function readIfThere(path: string): Uint8Array | undefined {
  try {
    return readFileSync(path)
  } catch {
    return undefined
  }
}
